import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { KeptWork } from './work';

const NAME = 'edgewise';
const VERSION = 1;
/** So many untouched samples are kept; the oldest ones give way. What a knitter made never does. */
const MOST_UNTOUCHED = 6;

interface Schema extends DBSchema {
  works: { key: string; value: KeptWork };
}

/** What became of a writing: kept under a new revision, or not, because a newer one is there. */
export type Written =
  { readonly ok: true; readonly revision: number } | { readonly ok: false; readonly newer: KeptWork };

/**
 * The designs in the browser's database. Every method rejects with a DOMException where the browser refuses: its store
 * is full (QuotaExceededError), shut, or broken. What was kept before is then as it was.
 */
export class Works {
  #database: Promise<IDBPDatabase<Schema>> | null = null;

  /** Everything kept, the latest first. */
  async list(): Promise<KeptWork[]> {
    const database = await this.#open();
    const all = await database.getAll('works');
    return all.sort((a, b) => b.at - a.at);
  }

  async get(id: string): Promise<KeptWork | null> {
    const database = await this.#open();
    return (await database.get('works', id)) ?? null;
  }

  /**
   * Keeps a work that was made from its `revision` (0: from nothing that is kept). Where a later one is there already,
   * nothing is written, unless it says the very same. A work that was taken away meanwhile is kept again.
   */
  async write(work: KeptWork): Promise<Written> {
    const database = await this.#open();
    const tx = database.transaction('works', 'readwrite');
    const write = async (): Promise<Written> => {
      const old = await tx.store.get(work.id);
      if (old && old.revision > work.revision) {
        return old.text === work.text ? { ok: true, revision: old.revision } : { ok: false, newer: old };
      }
      const revision = work.revision + 1;
      await tx.store.put({ ...work, revision });
      if (!work.own) await this.#thin(tx.store, work.id);
      return { ok: true, revision };
    };
    const [written] = await Promise.all([write(), tx.done]);
    return written;
  }

  /** Takes a work away; it comes back so that it can be kept again. Null where there was none. */
  async remove(id: string): Promise<KeptWork | null> {
    const database = await this.#open();
    const tx = database.transaction('works', 'readwrite');
    const remove = async () => {
      const old = await tx.store.get(id);
      await tx.store.delete(id);
      return old ?? null;
    };
    const [removed] = await Promise.all([remove(), tx.done]);
    return removed;
  }

  /** Lets go of the database, as a page does that is left. */
  async close(): Promise<void> {
    const database = await this.#database;
    this.#database = null;
    database?.close();
  }

  async #thin(
    store: { getAll(): Promise<KeptWork[]>; delete(id: string): Promise<void> },
    keep: string,
  ): Promise<void> {
    const untouched = (await store.getAll()).filter(({ own, id }) => !own && id !== keep);
    untouched.sort((a, b) => b.at - a.at);
    for (const { id } of untouched.slice(MOST_UNTOUCHED)) await store.delete(id);
  }

  /** Opened when it is first needed, and again after it was refused, shut from outside, or closed for a newer page. */
  #open(): Promise<IDBPDatabase<Schema>> {
    const known = this.#database;
    if (known) return known;
    const forget = () => {
      if (this.#database === opening) this.#database = null;
    };
    const opening = openDB<Schema>(NAME, VERSION, {
      upgrade: (database) => {
        database.createObjectStore('works', { keyPath: 'id' });
      },
      blocking: (_current, _wanted, event) => {
        (event.target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    });
    this.#database = opening;
    opening.catch(forget);
    return opening;
  }
}

import { quietly } from './quietly';
import { isWork, type KeptWork } from './work';

/** Earlier versions kept all designs here, under the same keys. */
const PREFIX = 'edgewise.work.';

/**
 * Works that wait to be moved into the database: those that were kept before there was one, and the last changes of a
 * page that was left before they could be written. They lie in the browser's small store, which is written at once.
 * Where that is refused, nothing waits: the database alone has to do.
 */
export class Waiting {
  readonly #store: () => Storage;

  /** @param store gives the store, or throws a DOMException where the browser has it shut */
  constructor(store: () => Storage) {
    this.#store = store;
  }

  /** @returns whether it is kept there */
  add(work: KeptWork): boolean {
    return quietly(() => {
      this.#store().setItem(PREFIX + work.id, JSON.stringify(work));
      return true;
    }, false);
  }

  /** Every work that waits; what is none of ours is passed over. */
  list(): KeptWork[] {
    return quietly(() => {
      const store = this.#store();
      const keys = Array.from({ length: store.length }, (_, i) => store.key(i) ?? '');
      return keys.flatMap((key) => {
        const text = key.startsWith(PREFIX) ? store.getItem(key) : null;
        return text === null ? [] : (read(key.slice(PREFIX.length), text) ?? []);
      });
    }, []);
  }

  /** Forgets a work that has been written, unless a later one took its place meanwhile. */
  remove(work: KeptWork): void {
    quietly(() => {
      const text = this.#store().getItem(PREFIX + work.id);
      if (text !== null && read(work.id, text)?.text === work.text) this.#store().removeItem(PREFIX + work.id);
    }, undefined);
  }
}

function read(id: string, text: string): KeptWork | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
  if (!isWork(value)) return null;
  const { name, at, own, text: design, revision } = value;
  return { id, name, at, own, text: design, revision: typeof revision === 'number' ? revision : 0 };
}

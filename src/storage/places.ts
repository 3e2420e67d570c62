import { quietly } from './quietly';

const PREFIX = 'edgewise.place.';
/** A place whose design is gone is forgotten after this long, ms: the design may be brought back meanwhile. */
const PATIENCE = 7 * 24 * 60 * 60 * 1000;

/** The places in the pick-ups of one work. */
interface Kept {
  readonly at: number;
  /** The pick-up whose view is open. */
  readonly open: string | null;
  readonly places: Readonly<Record<string, unknown>>;
}

/**
 * Where knitters are in the pick-ups of their works. They lie in the browser's small store, which is written before
 * the next thing happens, so that not even a tab that is killed loses a step.
 */
export class Places {
  readonly #store: () => Storage;
  readonly #now: () => number;

  /** @param store gives the store, or throws a DOMException where the browser has it shut */
  constructor(store: () => Storage, now: () => number = Date.now) {
    this.#store = store;
    this.#now = now;
  }

  /** The pick-up of a work whose view was left open; null where none was. */
  opened(work: string): string | null {
    return this.#read(work)?.open ?? null;
  }

  /** What is kept of a place, or undefined. */
  get(work: string, pickup: string): unknown {
    const places = this.#read(work)?.places ?? {};
    return Object.hasOwn(places, pickup) ? places[pickup] : undefined;
  }

  /** Keeps a place as that of the pick-up that is open. @returns whether the browser let it */
  put(work: string, pickup: string, place: unknown): boolean {
    const places = { ...this.#read(work)?.places, [pickup]: place };
    return this.#write(work, { at: this.#now(), open: pickup, places });
  }

  /** Nothing of this work is open any more. */
  leave(work: string): void {
    const kept = this.#read(work);
    if (kept) this.#write(work, { ...kept, open: null });
  }

  /** A work goes on as another one, from the same places. */
  copy(from: string, to: string): void {
    const kept = this.#read(from);
    if (kept) this.#write(to, kept);
  }

  /** Calls when another tab has written a place of a work. @returns what ends that */
  listen(work: string, onchange: () => void): () => void {
    const hear = (event: StorageEvent) => {
      if (event.key === PREFIX + work) onchange();
    };
    addEventListener('storage', hear);
    return () => removeEventListener('storage', hear);
  }

  /** Forgets the old places of works that are none of these. */
  keepOnly(works: ReadonlySet<string>): void {
    quietly(() => {
      const store = this.#store();
      const keys = Array.from({ length: store.length }, (_, i) => store.key(i) ?? '');
      for (const key of keys.filter((one) => one.startsWith(PREFIX))) {
        const work = key.slice(PREFIX.length);
        const at = this.#read(work)?.at ?? 0;
        if (!works.has(work) && at < this.#now() - PATIENCE) store.removeItem(key);
      }
    }, undefined);
  }

  #read(work: string): Kept | null {
    const text = quietly(() => this.#store().getItem(PREFIX + work), null);
    if (text === null) return null;
    let value: unknown;
    try {
      value = JSON.parse(text);
    } catch (error) {
      if (error instanceof SyntaxError) return null;
      throw error;
    }
    if (typeof value !== 'object' || value === null) return null;
    const { at, open, places } = value as Partial<Record<keyof Kept, unknown>>;
    if (typeof at !== 'number' || typeof places !== 'object' || places === null) return null;
    return { at, open: typeof open === 'string' ? open : null, places: places as Kept['places'] };
  }

  #write(work: string, kept: Kept): boolean {
    return quietly(() => {
      this.#store().setItem(PREFIX + work, JSON.stringify(kept));
      return true;
    }, false);
  }
}

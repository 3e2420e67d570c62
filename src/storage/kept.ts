import { DesignError, writeDesign, type Design } from '../piece';

/** One design as the browser keeps it between visits. */
export interface KeptWork {
  readonly id: string;
  readonly name: string;
  /** When it was last changed, ms since 1970. */
  readonly at: number;
  /** Whether the knitter changed or opened it; an untouched sample is not worth a list. */
  readonly own: boolean;
}

const PREFIX = 'edgewise.work.';
/** Which work this tab has on its bench. */
const HERE = 'edgewise.here';
/** So many untouched samples are kept; the oldest ones give way. What a knitter made never does. */
const MOST = 6;

interface Entry extends KeptWork {
  readonly text: string;
}

/**
 * The designs kept in the browser, each under a key of its own, so that two tabs never write over each other. All
 * methods may throw a DOMException where the browser refuses its store.
 */
export class Kept {
  readonly #store: Storage;
  readonly #tab: Storage;

  constructor(store: Storage, tab: Storage) {
    this.#store = store;
    this.#tab = tab;
  }

  /** Keeps a design and says that this tab works on it. */
  keep(id: string, design: Design, own: boolean, at: number): void {
    const entry: Entry = { id, name: design.name, at, own, text: writeDesign(design) };
    this.#store.setItem(PREFIX + id, JSON.stringify(entry));
    this.#tab.setItem(HERE, id);
    const untouched = this.list().filter((old) => !old.own && old.id !== id);
    for (const old of untouched.slice(MOST)) this.#store.removeItem(PREFIX + old.id);
  }

  /** Everything kept, the latest first. */
  list(): KeptWork[] {
    const found: KeptWork[] = [];
    for (let i = 0; i < this.#store.length; i++) {
      const key = this.#store.key(i);
      const entry = key?.startsWith(PREFIX) ? this.#entry(key.slice(PREFIX.length)) : null;
      if (entry) found.push({ id: entry.id, name: entry.name, at: entry.at, own: entry.own });
    }
    return found.sort((a, b) => b.at - a.at);
  }

  /** The design kept under an id; null where there is none, or none that can be read any more. */
  async read(id: string): Promise<Design | null> {
    const entry = this.#entry(id);
    if (!entry) return null;
    const { readDesign } = await import('../piece/read');
    try {
      return readDesign(entry.text).design;
    } catch (error) {
      if (error instanceof DesignError) return null;
      throw error;
    }
  }

  /** The id of the work to go on with: this tab's own, else the latest of all; null on a first visit. */
  last(): string | null {
    const here = this.#tab.getItem(HERE);
    if (here !== null && this.#store.getItem(PREFIX + here) !== null) return here;
    return this.list()[0]?.id ?? null;
  }

  #entry(id: string): Entry | null {
    const text = this.#store.getItem(PREFIX + id);
    if (text === null) return null;
    try {
      const entry = JSON.parse(text) as Entry;
      return typeof entry.text === 'string' && typeof entry.at === 'number' ? { ...entry, id } : null;
    } catch (error) {
      if (error instanceof SyntaxError) return null;
      throw error;
    }
  }
}

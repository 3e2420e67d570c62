import type { Design } from '../piece';
import { Waiting, workOf, Works, type KeptWork } from '../storage';

/** A design that could not be written over what is kept of its work, for that is newer. */
export interface Unwritten {
  readonly id: string;
  readonly design: Design;
}

/** Writes designs into the browser's database, and knows what of them is written. */
export class Writer {
  readonly works = new Works();
  readonly waiting = new Waiting(() => localStorage);
  readonly #isOwn: (id: string, design: Design) => boolean;
  /** What this tab knows to be kept. */
  readonly #known = new Map<string, { readonly work: KeptWork; readonly design: Design }>();
  /** What is changed and not yet kept. */
  readonly #unwritten = new Map<string, Design>();
  /** Why the browser's store refused when it was last asked; null where it did not. */
  refusal: 'full' | 'refused' | null = null;

  /** @param isOwn whether a design is the knitter's own, no untouched sample */
  constructor(isOwn: (id: string, design: Design) => boolean) {
    this.#isOwn = isOwn;
  }

  /** Takes note of what is kept of a work. */
  know(work: KeptWork, design: Design): void {
    this.#known.set(work.id, { work, design });
    this.#unwritten.delete(work.id);
  }

  /** The count of writings that this tab has seen of a work; 0 for none. */
  revision(id: string): number {
    return this.#known.get(id)?.work.revision ?? 0;
  }

  /** A work is to be written with this design; what is kept already need not be. */
  set(id: string, design: Design): void {
    if (this.#known.get(id)?.design === design) this.#unwritten.delete(id);
    else this.#unwritten.set(id, design);
  }

  get(id: string): Design | undefined {
    return this.#unwritten.get(id);
  }

  get isDone(): boolean {
    return this.#unwritten.size === 0;
  }

  /** What is not written of a work will not be. */
  drop(id: string): void {
    this.#unwritten.delete(id);
  }

  /** Nothing is kept of a work any more. */
  forget(id: string): void {
    this.#known.delete(id);
    this.#unwritten.delete(id);
  }

  /** The work as it would be written now. */
  work(id: string, design: Design): KeptWork {
    return workOf(id, design, this.#isOwn(id, design), Date.now(), this.revision(id));
  }

  /**
   * Writes what is not written. Where the store refuses, that stays to be written.
   * @returns the ids of what was written, and what met something newer
   */
  async writeAll(): Promise<{ readonly written: string[]; readonly newer: Unwritten[] }> {
    const written: string[] = [];
    const newer: Unwritten[] = [];
    for (const [id, design] of [...this.#unwritten]) {
      const work = this.work(id, design);
      const known = this.#known.get(id)?.work;
      const same = known?.text === work.text && known.own === work.own;
      const outcome = same
        ? ({ ok: true, revision: known.revision } as const)
        : await this.try(() => this.works.write(work));
      if (!outcome) continue;
      this.refusal = null;
      if (outcome.ok) {
        this.#written({ ...work, revision: outcome.revision }, design);
        if (!same) written.push(id);
      } else newer.push({ id, design: this.#unwritten.get(id) ?? design });
    }
    return { written, newer };
  }

  #written(work: KeptWork, design: Design): void {
    const { id } = work;
    this.#known.set(id, { work, design });
    if (this.#unwritten.get(id) === design) this.#unwritten.delete(id);
    this.waiting.remove(work);
  }

  /** Puts aside at once what is not written, for the page may be gone before the database answers. */
  putAside(): void {
    for (const [id, design] of this.#unwritten) this.waiting.add(this.work(id, design));
  }

  /** Does something with the database; undefined, and `refusal` says why, where the browser refuses. */
  async try<T>(work: () => Promise<T>): Promise<T | undefined> {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      this.refusal = error.name === 'QuotaExceededError' ? 'full' : 'refused';
      return undefined;
    }
  }
}

import type { Outcome } from './workbench.svelte';

/** A design on the shelf. */
export interface ShelfWork {
  readonly id: string;
  readonly name: string;
  /** When it was last changed, ms since 1970. */
  readonly at: number;
  /** Changes with every writing. */
  readonly revision: number;
  /** The design, written as a design file. */
  readonly text: string;
  /** On this tab's bench, on another's, or on none. */
  readonly place: 'here' | 'elsewhere' | 'away';
}

/** What the shelf can do, wherever the designs are kept. */
export interface ShelfDesk {
  /** The knitter's own designs, the latest first; null where the browser keeps nothing. */
  list(): Promise<readonly ShelfWork[] | null>;
  /** Calls back when another tab has changed what is kept. @returns what ends it */
  listen(onchange: () => void): () => void;
  open(id: string): Promise<Outcome>;
  openSample(file: string): Promise<void>;
  /** The text of a sample; null where it can't be fetched. */
  sampleText(file: string): Promise<string | null>;
  rename(id: string, name: string): Promise<Outcome>;
  /** Puts a copy beside a design. */
  duplicate(id: string): Promise<Outcome & { readonly name?: string }>;
  remove(id: string): Promise<Outcome>;
  /** Brings back what was removed. */
  restore(id: string): Promise<Outcome>;
}

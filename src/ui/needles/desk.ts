import type { NeedlePlace } from '../../pickup';

/** Where the places in the pick-ups of the design on the bench are kept. */
export interface NeedlesDesk {
  /** The pick-up that was left open, by its id; null where none was. */
  readonly opened: string | null;
  /** What is kept of a pick-up's place, whatever it is. */
  get(pickup: string): unknown;
  /** Keeps a place at once, as that of the pick-up that is open. False where the browser refuses. */
  put(pickup: string, place: NeedlePlace): boolean;
  /** Nothing is open any more. */
  leave(): void;
  /** Calls when another tab has moved on. @returns what ends that */
  listen(onchange: () => void): () => void;
}

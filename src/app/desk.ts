import type { Design, Notice } from '../piece';
import type { Keeps } from '../text';
import type { NeedlesDesk, Outcome, Workbench } from '../ui';

/** What the parts of the page that are fetched later know of it and do to it. */
export interface Desk {
  readonly bench: Workbench | null;
  /** What becomes of the work on the bench in this browser. */
  keeps: Keeps;
  /** One sentence for the user about a file or the store; empty when there is none. */
  message: string;
  /** Keeps the place at the needles while that view is open; null while it is not. */
  needles: NeedlesDesk | null;
  /** Takes the newer version of the page that stands ready; null while there is none, or it is put off. */
  update: (() => void) | null;
  /** Samples as they were opened, by the works they began. */
  readonly untouched: Map<string, Design>;
  /** Puts a design on the bench; what was there comes back with undo. */
  put(design: Design, origin: string, notices?: readonly Notice[]): Outcome;
  /** Puts a sample on the bench, as a work of its own. */
  putSample(design: Design): void;
  /** Puts the sample on the bench that came with the page. */
  putFirst(): void;
  /** Tells something good: for the eye for a moment, and for the ear. */
  say(sentence: string): void;
}

export function untouchedSamples(): Map<string, Design> {
  return new Map();
}

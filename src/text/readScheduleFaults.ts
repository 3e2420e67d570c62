import type { Terms } from './terms';
import { quoted } from './words';

/** Most stitches of one step, and most rows of an edge and times of a step, that a design may have. */
export const MOST_STITCHES = 2000;
export const MOST_ROWS = 5000;

export type FaultReason =
  | 'empty'
  | 'not-understood'
  | 'not-whole'
  | 'range'
  | 'bracket'
  | 'comma'
  | 'rows'
  | 'even-rows'
  | 'no-amount'
  | 'no-stitches'
  | 'no-times'
  | 'no-way'
  | 'co'
  | 'once-only'
  | 'odd-rows'
  | 'which-times'
  | 'nothing-before'
  | 'too-many-stitches'
  | 'too-many-rows';

/** Thrown while a schedule is read, at the first words that can't be. Places are in characters from 0. */
export class ScheduleFault extends Error {
  override readonly name = 'ScheduleFault';
  readonly reason: FaultReason;
  readonly start: number;
  readonly end: number;

  constructor(reason: FaultReason, start: number, end: number) {
    super(reason);
    this.reason = reason;
    this.start = start;
    this.end = end;
  }
}

/** A schedule as it is usually written, for those who look for the words. */
export function scheduleExample({ bindOff, even }: Pick<Terms, 'bindOff' | 'even'>): string {
  return `${bindOff} 3, 2, 2; decrease 1 every 2 rows 4 times; work 6 rows ${even}`;
}

/** What can't be understood of the words marked, and how to say it, in one sentence. */
export function scheduleFaultText(reason: FaultReason, words: string, terms: Terms): string {
  const said = quoted(words);
  const { bindOff, even } = terms;
  switch (reason) {
    case 'empty':
      return `Nothing is written; write the shaping from the bottom up, as in "${scheduleExample(terms)}".`;
    case 'not-understood':
      return `${said} is not understood here; write the shaping as in "${scheduleExample(terms)}".`;
    case 'not-whole':
      return `${said} is not whole, and stitches and rows are; write ${Math.floor(Number(words))} or ${Math.ceil(Number(words))}.`;
    case 'range':
      return `${said} joins two numbers, so it is not clear which is meant; write one number, or several with commas as in "${bindOff} 3, 2, 2".`;
    case 'bracket':
      return `${said} is a bracket without its partner; close it or take it out, as in "${bindOff} 3, 2 (4 times)".`;
    case 'comma':
      return `${said} follows another number; put a comma between them, as in "${bindOff} 3, 2, 2".`;
    case 'rows':
      return `It is not clear at ${said} on which rows; write as in "every 2 rows", "every other row" or "every 4th row".`;
    case 'even-rows':
      return `${said} does not say clearly how many rows are worked without shaping; write as in "work 6 rows ${even}".`;
    case 'no-amount':
      return `It is not clear at ${said} how many stitches; write the number, as in "${bindOff} 3" or "decrease 1 every 2 rows 4 times".`;
    case 'no-stitches':
      return `${said} stitches shape nothing; write rows without shaping as in "work 6 rows ${even}".`;
    case 'no-times':
      return `It is not clear how often at ${said}; add "once", "twice" or a number of times, as in "decrease 1 every 2 rows 4 times".`;
    case 'no-way':
      return `It is not clear whether ${said} takes stitches in or brings them out; write as in "${bindOff} 3", "decrease 1", "cast on 3" or "increase 1".`;
    case 'co':
      return `${said} may stand for cast on or for cast off; write one of the two in full, as in "cast off 3".`;
    case 'once-only':
      return `${said} says a second time what was already said; leave it out, or part what is meant with a semicolon, as in "${bindOff} 3; decrease 1 every 2 rows 4 times".`;
    case 'odd-rows':
      return `Each edge is shaped at the start of every second row, and ${said} is odd; write an even number of rows, or as in "${bindOff} 3 every 2 rows twice".`;
    case 'which-times':
      return `It is not clear whether ${said} is said of all the numbers before it or of the last one; write as in "${bindOff} 5, 3, then 2 every 2 rows 3 times".`;
    case 'nothing-before':
      return `${said} has nothing before it that it could be said of; write as in "decrease 1 every 2 rows 4 times".`;
    case 'too-many-stitches':
      return `${said} is more stitches than a piece may have; write ${MOST_STITCHES} at most.`;
    case 'too-many-rows':
      return `${said} comes to more rows than a piece may have; write ${MOST_ROWS} rows in all at most.`;
  }
}

import { evenAhead, readEven, WORK, type EvenPart } from './readScheduleEven';
import { ScheduleFault } from './readScheduleFaults';
import { countsRows, readRows, rowsAhead, type RowsSaid } from './readScheduleRows';
import type { TokenRun } from './readScheduleRun';
import { VERB, verbOf, type Verb } from './readScheduleVerb';

/** What is said between two commas, breaks or joining words. */
export interface Part {
  readonly kind: 'shaping';
  readonly start: number;
  readonly end: number;
  readonly verb: Verb | null;
  readonly amount: number | null;
  readonly times: number | null;
  /** The times stand in brackets behind a number of a list: `3, 2 (4 times)`. */
  readonly inBrackets: boolean;
  readonly rows: RowsSaid | null;
  /** At the beginning of those rows, so on every second one for either edge. */
  readonly atStart: boolean;
}

const ONCE: Readonly<Record<string, number>> = { once: 1, twice: 2, thrice: 3 };
/** Where on the piece: nothing is read from it, since the edge is known. */
const PLACE =
  /^(?:the|this|that|same|each|both|neck|armhole|side|sides|front|back|right|left|hand|shoulder|outer|outside|inner|inside|raglan|sleeve|cap|underarm|center|centre|top|edge|edges|end|ends)$/;
const PLACE_END = /^(?:edge|edges|end|ends|side|sides)$/;
const BEGINNING = /^(?:beg|beginning|start)$/;

/** Whether a part of another kind begins here. */
function partAhead(run: TokenRun): boolean {
  return run.is(VERB) || run.is(WORK);
}

/** Passes over so many words, and over `of the` behind them. */
function pass(run: TokenRun, words: number): true {
  for (let i = 0; i < words; i++) run.next();
  run.take(/^of$/);
  run.take(/^the$/);
  return true;
}

/** Passes over `at the neck edge`, `each end of`; false where there is nothing of the kind. */
function passPlace(run: TokenRun): boolean {
  const first = run.is(/^(?:at|on|from|in)$/) ? 1 : 0;
  let last = first;
  while (run.is(PLACE, last)) last += 1;
  return last > first && run.is(PLACE_END, last - 1) && pass(run, last);
}

/** Passes over `at the beginning of`; false where there is nothing of the kind. */
function passBeginning(run: TokenRun): boolean {
  const first = run.is(/^(?:at|on|from|in)$/) ? 1 : 0;
  const the = run.is(/^the$/, first) ? 1 : 0;
  return run.is(BEGINNING, first + the) && pass(run, first + the + 1);
}

function timesAhead(run: TokenRun): boolean {
  if (run.is(/^(?:once|twice|thrice)$/)) return true;
  if (run.is(/^x$/)) return run.isKind('number', 1);
  if (!run.isKind('number')) return false;
  const more = run.is(/^more$/, 1) ? 1 : 0;
  return run.is(/^times?$/, 1 + more) || (run.is(/^x$/, 1) && !run.isKind('number', 2));
}

function readTimes(run: TokenRun): number {
  const word = run.take(/^(?:once|twice|thrice)$/);
  if (word !== null) {
    run.take(/^more$/);
    return ONCE[word] ?? 1;
  }
  run.take(/^x$/);
  const times = run.takeNumber() ?? 0;
  run.take(/^more$/);
  run.take(/^(?:times?|x)$/);
  run.take(/^more$/);
  return times;
}

type Draft = { -readonly [K in keyof Part]: Part[K] };

/**
 * Reads up to the next comma, break, `then`, `and` or the beginning of another clause; null where nothing stands there.
 * @throws ScheduleFault at the first words that can't be read
 */
export function readPart(run: TokenRun): Part | EvenPart | null {
  const start = run.peek()?.start ?? 0;
  if (evenAhead(run)) return readEven(run, start);
  const part: Draft = {
    kind: 'shaping',
    start,
    end: start,
    verb: null,
    amount: null,
    times: null,
    inBrackets: false,
    rows: null,
    atStart: false,
  };
  let bracket = false;
  for (;;) {
    const token = run.peek();
    if (bracket ? token === undefined : run.ended() && token?.kind !== 'open') break;
    if (run.is(/^(?:then|and)$/) || (partAhead(run) && (part.verb !== null || part.amount !== null))) break;
    if (token?.kind === 'open') {
      if (bracket) run.refuse('bracket');
      bracket = true;
      run.next();
    } else if (token?.kind === 'close') {
      bracket = false;
      run.next();
    } else readPiece(run, part, bracket);
    part.end = run.before()?.end ?? start;
  }
  if (bracket) throw new ScheduleFault('bracket', part.start, part.end);
  return part.end === start ? null : part;
}

/** Takes one thing that a part says: a verb, a number of stitches, how often, on which rows, or where. */
function readPiece(run: TokenRun, part: Draft, bracket: boolean): void {
  if (run.is(VERB)) {
    part.verb = verbOf(run.take(VERB) ?? '');
  } else if (timesAhead(run)) {
    if (part.times !== null) run.refuse('once-only');
    part.times = readTimes(run);
    part.inBrackets = bracket;
  } else if (rowsAhead(run) || countedRowsAhead(run, part) || passBefore(run)) {
    takeRows(run, part, bracket);
  } else if (run.isKind('number') || maybeStitches(run)) {
    takeAmount(run, part);
  } else if (passBeginning(run)) {
    part.atStart = true;
  } else if (!passPlace(run)) run.refuse(faultOf(run));
}

/** A number of rows, where a number of stitches stands already or none is to come: `4 foll alt rows`. */
function countedRowsAhead(run: TokenRun, part: Draft): boolean {
  return run.isKind('number') && countsRows(run) && (part.amount !== null || part.verb === null);
}

function takeRows(run: TokenRun, part: Draft, bracket: boolean): void {
  const known = part.rows;
  const start = run.peek();
  const rows = readRows(run);
  if (known === null) part.rows = rows;
  // In brackets it may be told again on which side of the fabric those rows are.
  else if (!bracket || known.every % rows.every !== 0) {
    throw new ScheduleFault('once-only', start?.start ?? 0, run.before()?.end ?? 0);
  }
}

/** Passes over `on` and `of` where rows follow: `on RS rows`, `on every 4th row`, `on 4 foll alt rows`. */
function passBefore(run: TokenRun): boolean {
  if (!run.is(/^(?:on|at|of|in)$/)) return false;
  const the = run.is(/^the$/, 1) ? 1 : 0;
  const first = run.peek(1 + the);
  const rows =
    run.is(/^(?:every|ea|next|foll|following|alt|alternate|rs|ws)$/, 1 + the) ||
    (run.is(/^each$/, 1 + the) && run.is(/^(?:row|rs|ws|foll|following|alt|alternate)$/, 2 + the)) ||
    (first?.kind === 'number' && run.is(/^(?:foll|following|alt|alternate|rs|ws)$/, 2 + the));
  if (!rows) return false;
  for (let i = 0; i <= the; i++) run.next();
  return true;
}

/** `1st` may be one stitch. */
function maybeStitches(run: TokenRun): boolean {
  const token = run.peek();
  return token?.kind === 'ordinal' && token.maybeStitches;
}

function takeAmount(run: TokenRun, part: Draft): void {
  if (part.amount !== null) run.refuse('comma');
  const token = run.peek();
  if (token?.kind !== 'number' && token?.kind !== 'ordinal') return;
  if (token.value === 0) run.refuse('no-stitches');
  part.amount = token.value;
  run.next();
  run.take(/^(?:st|sts|stitch|stitches)$/);
}

function faultOf(run: TokenRun): 'not-whole' | 'range' | 'not-understood' {
  const token = run.peek();
  if (token?.kind === 'decimal') return 'not-whole';
  const between = token?.kind === 'other' && run.before()?.kind === 'number' && run.isKind('number', 1);
  return between && /^[-–—/]$/.test(token.text) ? 'range' : 'not-understood';
}

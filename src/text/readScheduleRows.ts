import type { TokenRun } from './readScheduleRun';

/** On which rows something is done. */
export interface RowsSaid {
  /**
   * `every`: again and again. `next`: on the row that comes, which takes only that row. `counted`: on so many rows from
   * here on, or on one that lies so far ahead.
   */
  readonly kind: 'every' | 'next' | 'counted';
  readonly every: number;
  readonly times: number | null;
  /** So many rows one after the other, `next 4 rows`: at the start of them each edge gets every second one. */
  readonly inARow: boolean;
}

const ROW = /^rows?$/;
const FACING = /^(?:rs|ws)$/;
const ALTERNATE = /^(?:alt|alternate|other)$/;
const FOLLOWING = /^(?:foll|following)$/;

const said = (kind: RowsSaid['kind'], every: number, more: Partial<RowsSaid> = {}): RowsSaid => ({
  kind,
  every,
  times: null,
  inARow: false,
  ...more,
});

/** Whether `rows` begins here: every, each, next, following, alternate, right side. */
export function rowsAhead(run: TokenRun): boolean {
  if (run.is(/^(?:every|ea|eor|next)$/) || run.is(FOLLOWING) || run.is(FACING)) return true;
  if (run.is(/^each$/)) return !run.is(/^(?:end|ends|side|sides|edge|edges|neck|front|armhole)$/, 1);
  return run.is(ALTERNATE);
}

/** Whether the number that stands here counts rows: `4 foll alt rows`. */
export function countsRows(run: TokenRun): boolean {
  return run.is(FOLLOWING, 1) || (run.is(/^next$/, 1) && !run.is(ROW, 2));
}

/** Passes over `RS rows`, `row`; says whether only rows of one side were meant. */
function facingRows(run: TokenRun, needed: boolean): boolean {
  const facing = run.take(FACING) !== null;
  const rows = run.take(ROW) !== null;
  if (needed && !rows && !facing) run.refuse('rows');
  return facing;
}

/**
 * Reads on which rows: `every 2 rows`, `every other RS row`, `next 4 rows`, `following 5 alt rows`, `alternate rows`.
 * @throws ScheduleFault by `run` where it can't be read
 */
export function readRows(run: TokenRun): RowsSaid {
  if (run.take(/^(?:every|each|ea)$/)) return everyRows(run);
  // Every other row.
  if (run.take(/^eor$/)) return said('every', 2);
  const before = run.takeNumber();
  const next = run.take(/^next$/) !== null;
  const following = run.take(FOLLOWING) !== null;
  if (next && (run.ended() || run.is(/^and$/))) return said('next', 2);
  const count = before ?? run.takeNumber();
  return comingRows(run, count, next || following);
}

function everyRows(run: TokenRun): RowsSaid {
  run.take(FOLLOWING);
  const number = run.takeNumber();
  if (number !== null) {
    if (run.is(/^(?:times?|x)$/)) run.refuse('rows');
    return said('every', number * (facingRows(run, false) ? 2 : 1));
  }
  return said('every', spacing(run) * (facingRows(run, true) ? 2 : 1));
}

/** 4 in `4th`, 2 in `other`; 1 where nothing is said. */
function spacing(run: TokenRun): number {
  const ordinal = run.takeOrdinal();
  if (ordinal !== null) return ordinal;
  return run.take(ALTERNATE) ? 2 : 1;
}

function comingRows(run: TokenRun, count: number | null, counted: boolean): RowsSaid {
  const apart = spacing(run);
  const facing = facingRows(run, true);
  const every = apart * (facing ? 2 : 1);
  if (!counted) return said('every', every);
  const lies = apart > 1 || (facing && count !== null);
  if (count === null) return lies ? said('counted', every, { times: 1 }) : said('next', 2);
  return said('counted', every, { times: count, inARow: !lies });
}

import { ScheduleFault } from './readScheduleFaults';
import type { TokenRun } from './readScheduleRun';
import { VERB } from './readScheduleVerb';

/** Rows worked without shaping. */
export interface EvenPart {
  readonly kind: 'even';
  readonly start: number;
  readonly end: number;
  readonly rows: number;
}

/** What works rows, shaped or not. */
export const WORK = /^(?:work|working|knit|knitting|k|cont|continue|continuing)$/;
const EVEN = /^(?:even|straight|plain|evenly)$/;

/** `work 6 rows even`, `work even for 6 rows`, `6 rows straight`, `knit 6 rows without shaping`. */
export function readEven(run: TokenRun, start: number): EvenPart {
  const worked = run.take(WORK) !== null;
  let rows: number | null = null;
  let named = false;
  let even = false;
  while (!run.ended() && !run.is(VERB) && !run.is(/^(?:then|and)$/)) {
    const number: number | null = rows === null ? run.takeNumber() : null;
    if (number !== null) rows = number;
    else if (rows !== null && !named && run.take(/^rows?$/)) named = true;
    else if (run.take(EVEN)) even = true;
    else if (run.is(/^without$/)) {
      run.next();
      run.take(/^(?:any|further|more)$/);
      if (!run.take(/^shaping$/)) run.refuse('not-understood');
      even = true;
    } else if (!run.take(/^(?:for|over|the|next|in|patt|pattern|more|further)$/)) run.refuse('not-understood');
  }
  const end = run.before()?.end ?? start;
  if (rows === null || rows === 0 || !(named || even) || !(worked || even)) {
    throw new ScheduleFault('even-rows', start, end);
  }
  return { kind: 'even', start, end, rows };
}

/** Whether rows without shaping begin here. */
export function evenAhead(run: TokenRun): boolean {
  if (run.is(WORK) || run.is(EVEN) || run.is(/^without$/)) return true;
  if (!run.isKind('number')) return false;
  const more = run.is(/^more$/, 1) ? 1 : 0;
  return run.is(/^rows?$/, 1 + more) || run.is(EVEN, 1 + more);
}

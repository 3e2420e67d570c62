import type { ScheduleStep } from '../piece';
import { MOST_ROWS, ScheduleFault, scheduleFaultText } from './readScheduleFaults';
import { Gathering, type Draft, type Way } from './readScheduleGathering';
import { readPart } from './readSchedulePart';
import { TokenRun } from './readScheduleRun';
import { normalisedSteps } from './readScheduleSteps';
import { tokensOf, type Token } from './readScheduleTokens';
import type { Terms } from './terms';

export interface ReadScheduleOptions {
  readonly way: Way;
  readonly terms: Terms;
}

export type ScheduleRead =
  | { readonly ok: true; readonly steps: readonly ScheduleStep[] }
  | {
      readonly ok: false;
      /** Place of the words that can't be understood, in characters from 0. */
      readonly at: { readonly start: number; readonly end: number };
      /** One sentence: what, and how to write it. */
      readonly why: string;
    };

/** Every token's part, in order; `then` and breaks end a list, commas and `and` carry it on. */
function gather(tokens: readonly Token[], way: Way): Draft[] {
  const run = new TokenRun(tokens);
  const gathering = new Gathering(way);
  while (run.peek()) {
    if (run.isKind('break') || run.is(/^then$/)) gathering.endList();
    else if (run.isKind('close')) run.refuse('bracket');
    else if (!run.isKind('comma') && !run.is(/^and$/)) {
      const part = readPart(run);
      if (part) gathering.add(part);
      continue;
    }
    run.next();
  }
  return gathering.drafts;
}

/**
 * A step on the next row takes that row alone. The rows behind it come out of those that are worked even; where what
 * follows is counted on from it, it stands as far before; else the row back is worked, as always.
 */
function settleNext(drafts: readonly Draft[]): void {
  for (const [i, draft] of drafts.entries()) {
    if (draft.kind !== 'shaping' || draft.rows?.kind !== 'next') continue;
    const after = drafts[i + 1];
    if (after?.kind === 'even') after.rows -= 1;
    else if (after?.goesOn) draft.every = after.every;
  }
}

function stepsOf(drafts: readonly Draft[]): ScheduleStep[] {
  let rows = 0;
  const steps = drafts.map((draft): ScheduleStep => {
    if (draft.kind === 'even') {
      rows += draft.rows;
      if (rows > MOST_ROWS) throw new ScheduleFault('too-many-rows', draft.start, draft.end);
      return { stitches: 0, every: draft.rows, times: 1 };
    }
    if (draft.needsTimes && draft.times === null) throw new ScheduleFault('no-times', draft.start, draft.end);
    const { stitches, every, times } = { ...draft, times: draft.times ?? 1 };
    if (every < 1) throw new ScheduleFault('rows', draft.start, draft.end);
    if (times < 1) throw new ScheduleFault('no-times', draft.start, draft.end);
    rows += every * times;
    if (rows > MOST_ROWS) throw new ScheduleFault('too-many-rows', draft.start, draft.end);
    return { stitches, every, times };
  });
  return normalisedSteps(steps);
}

/**
 * The steps of a shaping schedule typed in the usual wording of knitting patterns, bottom up: `bo 3, 2, 2; dec 1 every
 * 2 rows 4 times; work 6 rows even`, `cast off 3, 2 at neck edge every 2nd row, then dec 1 st on foll 4 alt rows`, or
 * a table `3 every 2 rows once, then 2 twice, 1 every 4 rows 3 times`. What is said for both edges (`at each end of
 * every 6th row`, `at the beginning of the next 4 rows`) is read for one. Nothing is guessed: what could be meant in
 * two ways is refused.
 */
export function readSchedule(text: string, { way, terms }: ReadScheduleOptions): ScheduleRead {
  try {
    const tokens = tokensOf(text);
    if (tokens.length === 0) throw new ScheduleFault('empty', 0, text.length);
    const co = terms.name === 'UK' ? tokens.find((token) => token.kind === 'word' && token.word === 'co') : undefined;
    if (co) throw new ScheduleFault('co', co.start, co.end);
    const drafts = gather(tokens, way);
    if (drafts.length === 0) throw new ScheduleFault('nothing-before', tokens[0]!.start, tokens.at(-1)!.end);
    settleNext(drafts);
    return { ok: true, steps: stepsOf(drafts) };
  } catch (error) {
    if (!(error instanceof ScheduleFault)) throw error;
    const { reason, start, end } = error;
    return { ok: false, at: { start, end }, why: scheduleFaultText(reason, text.slice(start, end), terms) };
  }
}

import type { Run } from '../pickup';

/** One part of a rhythm: a run, or a group of runs that is worked `times` times. */
export type RhythmPart =
  | { readonly kind: 'run'; readonly run: Run }
  | { readonly kind: 'group'; readonly runs: readonly Run[]; readonly times: number };

/** A group longer than this, in runs, is no easier to remember than what it stands for. */
const LONGEST_GROUP = 5;
/** Longest group in picks and skips. */
const LONGEST_PERIOD = 64;
/** How much harder to remember a repeat is than the numbers inside it. */
const REPEAT_COST = 5;

/** What is said from one pick and skip on: a run of `length` of them, or a group of `length` said `times` times. */
interface Step {
  readonly length: number;
  readonly times: number;
}

/**
 * The shortest way to say a rhythm with one level of repeats: the parts, written out one after the other, are the
 * runs given. Shortest by numbers to remember: two for a run, one more for its times, five for a repeat. By dynamic
 * programming from the end over single picks and skips.
 *
 * @param runs in working order, equal neighbours already joined
 */
export function repeatedParts(runs: readonly Run[]): RhythmPart[] {
  const units = runs.flatMap((run) => Array.from({ length: run.times }, () => ({ ...run, times: 1 })));
  const same = sameNumbers(units);
  const ahead = runLengths(same);
  const matches = matchLengths(same);
  const cost = new Float64Array(units.length + 1);
  const steps: Step[] = [];
  for (let i = units.length - 1; i >= 0; i--) {
    let best = Infinity;
    let chosen: Step = { length: 1, times: 1 };
    const consider = (length: number, times: number, own: number) => {
      const whole = own + cost[i + length * times]!;
      if (whole < best) {
        best = whole;
        chosen = { length, times };
      }
    };
    for (const length of lengthsToTry(ahead[i]!)) consider(length, 1, runCost(units[i]!, length));
    for (let period = 2; period < matches.length; period++) {
      const most = Math.floor(matches[period]![i]! / period) + 1;
      const own = most < 2 ? null : groupCost(units, ahead, i, period);
      if (own === null) continue;
      consider(period, most, own);
      if (most > 2) consider(period, most - 1, own);
    }
    cost[i] = best;
    steps[i] = chosen;
  }
  const parts: RhythmPart[] = [];
  for (let i = 0; i < units.length;) {
    const { length, times } = steps[i]!;
    if (times === 1) parts.push({ kind: 'run', run: { ...units[i]!, times: length } });
    else parts.push({ kind: 'group', runs: joinedRuns(units.slice(i, i + length)), times });
    i += length * times;
  }
  return parts;
}

/** The numbers to remember in a repeat of the `period` units from `from` on; null where it is no sensible group. */
function groupCost(units: readonly Run[], ahead: readonly number[], from: number, period: number): number | null {
  let own = REPEAT_COST;
  let runs = 0;
  for (let i = from; i < from + period; runs++) {
    if (runs === LONGEST_GROUP) return null;
    const length = Math.min(ahead[i]!, from + period - i);
    own += runCost(units[i]!, length);
    i += length;
  }
  return runs < 2 ? null : own;
}

function runCost({ pick, skip }: Run, times: number): number {
  return (pick > 0 ? 1 : 0) + (skip > 0 ? 1 : 0) + (times > 1 ? 1 : 0);
}

/** A number for each unit, equal where units are equal. */
function sameNumbers(units: readonly Run[]): number[] {
  const numbers = new Map<string, number>();
  return units.map(({ pick, skip }) => {
    const key = `${pick} ${skip}`;
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  });
}

/** At each unit, how many equal ones follow each other from there. */
function runLengths(same: readonly number[]): number[] {
  const lengths = same.map(() => 1);
  for (let i = same.length - 2; i >= 0; i--) if (same[i] === same[i + 1]) lengths[i] = lengths[i + 1]! + 1;
  return lengths;
}

/** For each period, at each unit: how many units from there on equal the one a period later. */
function matchLengths(same: readonly number[]): Int32Array[] {
  const longest = Math.min(LONGEST_PERIOD, Math.floor(same.length / 2));
  return Array.from({ length: longest + 1 }, (_, period) => {
    const lengths = new Int32Array(same.length + 1);
    for (let i = same.length - period - 1; period > 1 && i >= 0; i--) {
      lengths[i] = same[i] === same[i + period] ? lengths[i + 1]! + 1 : 0;
    }
    return lengths;
  });
}

/** A run is taken whole, or cut near one of its ends where a group begins or stops inside it. */
function lengthsToTry(length: number): number[] {
  const lengths = new Set<number>();
  for (let i = 0; i <= 4; i++) {
    if (length - i > 0) lengths.add(length - i);
    if (i > 0 && i < length) lengths.add(i);
  }
  return [...lengths];
}

function joinedRuns(units: readonly Run[]): Run[] {
  const runs: Run[] = [];
  for (const unit of units) {
    const last = runs.at(-1);
    if (last?.pick === unit.pick && last.skip === unit.skip) runs[runs.length - 1] = { ...last, times: last.times + 1 };
    else runs.push(unit);
  }
  return runs;
}

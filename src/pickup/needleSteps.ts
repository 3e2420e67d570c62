import type { PickupPlan, Run } from './plan';
import { rhythmOf } from './spread';

/** One thing to do at the needles: a stretch of rhythm within one section and on one edge, short enough for one line. */
export interface NeedleStep {
  /** Section it lies in, counted from 1. */
  readonly section: number;
  /** Index into the plan's edges. */
  readonly edge: number;
  /** The openings it covers: indices into the plan's points, `to` not included. */
  readonly from: number;
  readonly to: number;
  /** As worked; pick may be 0 where openings are passed over first. */
  readonly runs: readonly Run[];
  /** Stitches it makes, and how many are on the needle after it. */
  readonly count: number;
  readonly running: number;
  /** Numbers of the markers that stand after it, counted from 1; mostly none or one. */
  readonly markers: readonly number[];
}

/** So many numbers can be held in the head while the hands work: `4, skip 1, twice; then 3, skip 1` has five. */
const NUMBERS_IN_A_LINE = 5;

/**
 * A pick-up cut into steps in working order. Every opening lies in exactly one of them.
 *
 * @param breaks indices of points before which a new step begins in any case
 */
export function needleSteps(plan: PickupPlan, breaks: readonly number[] = []): NeedleStep[] {
  const { points } = plan;
  const steps: NeedleStep[] = [];
  let running = 0;
  for (let start = 0; start < points.length;) {
    const end = endOfStretch(plan, start, breaks);
    const inside = points.slice(start, end);
    let from = start;
    for (const runs of linesOf(rhythmOf(inside.map(({ n }) => n !== null)))) {
      const to = from + sum(runs, ({ pick, skip }) => pick + skip);
      const count = sum(runs, ({ pick }) => pick);
      // What is on the needle is read off the points: after a miscount the plan goes on from what is there.
      const last = points.slice(from, to).findLast(({ n }) => n !== null);
      running = last?.n ?? running;
      const { section, edge } = points[from]!;
      steps.push({ section, edge, from, to, runs, count, running, markers: markersBetween(plan, to) });
      from = to;
    }
    start = end;
  }
  return steps;
}

/** Where the section, the edge, or what may be one step ends. */
function endOfStretch({ points }: PickupPlan, start: number, breaks: readonly number[]): number {
  const { section, edge } = points[start]!;
  let end = start + 1;
  while (end < points.length && points[end]!.section === section && points[end]!.edge === edge && !breaks.includes(end))
    end += 1;
  return end;
}

/** Runs gathered into lines of so many numbers at most. */
function linesOf(runs: readonly Run[]): Run[][] {
  const lines: Run[][] = [];
  let room = 0;
  for (const run of runs) {
    const numbers = (run.pick > 0 ? 1 : 0) + (run.skip > 0 ? 1 : 0) + (run.times > 1 ? 1 : 0);
    if (numbers > room) {
      lines.push([]);
      room = NUMBERS_IN_A_LINE;
    }
    lines.at(-1)!.push(run);
    room -= numbers;
  }
  return lines;
}

function markersBetween({ points }: PickupPlan, to: number): number[] {
  const [before, after] = [points[to - 1], points[to]];
  if (!before || !after) return [];
  return Array.from({ length: after.section - before.section }, (_, i) => before.section + i);
}

function sum(runs: readonly Run[], of: (run: Run) => number): number {
  return runs.reduce((all, run) => all + of(run) * run.times, 0);
}

import type { GridPoint, ScheduleStep, SteppedEdge, Edge } from '../../piece';
import { slopeSteps } from '../../shaping';
import { asStepped, asStraight } from './paths';

/** Where a place on the old line, counted in stitches and rows from its bottom end, comes to lie. */
export type Moved = (x: number, y: number) => readonly [x: number, y: number];

/**
 * A stepped edge between new corners: the places between its steps are moved and rounded, bottom up. Where every step
 * but the last began on an even row it still does, since one side can only be shaped on every second row. Without rows
 * it is straight.
 */
export function rescheduled(edge: SteppedEdge, from: GridPoint, to: GridPoint, moved: Moved): Edge {
  const stitches = to[0] - from[0];
  const rows = Math.abs(to[1] - from[1]);
  if (rows === 0) return { ...asStraight(edge), from };
  const singles = singlesOf(edge.steps);
  const grain = singles.slice(0, -1).every(({ every }) => every % 2 === 0) ? 2 : 1;
  const highest = (Math.ceil(rows / grain) - 1) * grain;
  const steps: ScheduleStep[] = [];
  let [x, y, doneX, doneY] = [0, 0, 0, 0];
  singles.forEach((single, i) => {
    x += single.stitches;
    y += single.every;
    const last = i === singles.length - 1;
    const [newX, newY] = last ? [stitches, rows] : moved(x, y);
    const nextX = Math.round(newX);
    const nextY = last ? rows : Math.min(highest, Math.round(newY / grain) * grain);
    // A step that would have no rows is worked together with the next one.
    if (nextY <= doneY) return;
    const step = { stitches: nextX - doneX, every: nextY - doneY, times: 1 };
    const before = steps.at(-1);
    // One that would have no stitches is so many more rows even after the one before.
    if (step.stitches === 0 && single.stitches !== 0 && before) {
      steps[steps.length - 1] = { ...before, every: before.every + step.every };
    } else steps.push(step);
    doneX = nextX;
    doneY = nextY;
  });
  return { ...edge, from, steps: joinedSteps(steps) };
}

/**
 * A stepped edge between new corners, as like itself as whole steps allow: stretched where all its steps go one way,
 * leant over where they go in and out. Of an edge that is mostly worked even, at its top or at its foot, only that
 * stretch grows or shrinks in height. Steps that were all even become those of a straight slope.
 *
 * @param oldFrom, oldTo its corners before
 */
export function reshaped(
  edge: SteppedEdge,
  oldFrom: GridPoint,
  oldTo: GridPoint,
  from: GridPoint,
  to: GridPoint,
): Edge {
  const [oldX, newX] = [oldTo[0] - oldFrom[0], to[0] - from[0]];
  const [oldRows, newRows] = [Math.abs(oldTo[1] - oldFrom[1]), Math.abs(to[1] - from[1])];
  if (oldX === newX && oldRows === newRows) return { ...edge, from };
  if (newX !== 0 && newRows > 0 && edge.steps.every(({ stitches }) => stitches === 0)) {
    return { ...asStepped(edge, slopeSchedule(newX, newRows)), from };
  }
  const height = heightMap(edge.steps, oldRows, newRows);
  const oneWay = oldX !== 0 && edge.steps.every(({ stitches }) => stitches * oldX >= 0);
  const lean = (newX - oldX) / oldRows;
  return rescheduled(edge, from, to, (x, y) => [oneWay ? (x * newX) / oldX : x + lean * y, height(y)]);
}

/** Where a height above the foot of a schedule comes to lie when it is worked over more or fewer rows. */
function heightMap(steps: readonly ScheduleStep[], oldRows: number, newRows: number): (y: number) => number {
  const longer = newRows - oldRows;
  const takesAll = (step: ScheduleStep | undefined) =>
    step?.stitches === 0 && step.times === 1 && 2 * step.every >= oldRows && step.every + longer > 0;
  if (takesAll(steps.at(-1))) return (y) => y;
  return takesAll(steps[0]) ? (y) => y + longer : (y) => (y * newRows) / oldRows;
}

/** The classic schedule of a straight slope, in the order of knitting. `stitches` is signed, neither is 0. */
export function slopeSchedule(stitches: number, rows: number): ScheduleStep[] {
  const steps = slopeSteps(Math.abs(stitches), rows);
  return joinedSteps(
    steps.map((step) => ({ stitches: step.across * Math.sign(stitches), every: step.rows, times: 1 })),
  );
}

/** Every step by itself, in the order of knitting. */
export function singlesOf(steps: readonly ScheduleStep[]): ScheduleStep[] {
  return steps.flatMap((step) =>
    step.times === 1 ? [step] : Array.from({ length: step.times }, () => ({ ...step, times: 1 })),
  );
}

/** Equal neighbours drawn together. */
export function joinedSteps(steps: readonly ScheduleStep[]): ScheduleStep[] {
  const joined: ScheduleStep[] = [];
  for (const step of steps) {
    const last = joined.at(-1);
    if (last?.stitches === step.stitches && last.every === step.every) {
      joined[joined.length - 1] = { ...last, times: last.times + step.times };
    } else joined.push(step);
  }
  return joined;
}

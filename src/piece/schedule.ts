import type { Rows, Stitches } from '../units';
import type { GridPoint, SteppedEdge } from './design';
import { DesignError, type Problem } from './problems';
import { quoted } from './place';

/** One worked step, bottom up: the edge moves `dx` stitches in x (signed) while `rows` rows are worked. */
export interface SingleStep {
  readonly dx: Stitches;
  readonly rows: Rows;
}

/**
 * What keeps a schedule from leading along its edge, or null. Whichever way the outline runs, taking the fabric in
 * moves a climbing edge (the right one) towards -x and a falling edge (the left one) towards +x when read bottom up,
 * so the sum of the stitches is `to.x - from.x` on both.
 */
export function scheduleProblem(
  edge: SteppedEdge,
  from: GridPoint,
  to: GridPoint,
  piece: string,
  at: string,
): Problem | null {
  const rows = Math.abs(to[1] - from[1]);
  if (rows === 0) return { kind: 'schedule-flat', at, piece, edge: edge.id };
  const stitches = to[0] - from[0];
  const gotStitches = edge.steps.reduce((sum, step) => sum + step.stitches * step.times, 0);
  const gotRows = edge.steps.reduce((sum, step) => sum + step.every * step.times, 0);
  if (gotStitches === stitches && gotRows === rows) return null;
  return { kind: 'schedule-off', at: `${at} > steps`, piece, edge: edge.id, stitches, rows, gotStitches, gotRows };
}

/**
 * The single steps of a stepped edge from `from` to `to` (the outline's direction), in the order of knitting: bottom up.
 * @throws DesignError when the schedule does not end on the far corner, or the edge has no rows.
 */
export function expandSteps(edge: SteppedEdge, from: GridPoint, to: GridPoint): SingleStep[] {
  const problem = scheduleProblem(edge, from, to, '', quoted(edge.id));
  if (problem) throw new DesignError(problem);
  const climbs = to[1] > from[1];
  return edge.steps.flatMap(({ stitches, every, times }) =>
    Array.from({ length: times }, () => ({ dx: climbs ? stitches : 0 - stitches, rows: every })),
  );
}

import { cornersProblem, idsProblem } from './checkCorners';
import { handoutProblem } from './checkHandout';
import { outlineProblem } from './checkOutline';
import { pickupProblem } from './checkPickup';
import type { Design } from './design';
import { DesignError, type Problem } from './problems';

/** The first problem of a list's entries, found one after another. */
function firstProblem<T>(entries: readonly T[], find: (entry: T, index: number) => Problem | null): Problem | null {
  for (const [i, entry] of entries.entries()) {
    const problem = find(entry, i);
    if (problem) return problem;
  }
  return null;
}

function refuse(problem: Problem | null): void {
  if (problem) throw new DesignError(problem);
}

/** Ids, gauges and corners: what must be right before an outline can be followed. */
export function assertCorners(design: Design): void {
  const ids = design.pieces.map(({ id }) => id);
  refuse(
    idsProblem(design, ['pieces'], 'pieces', ids) ??
      firstProblem(design.pieces, (piece, i) => cornersProblem(design, piece, i)),
  );
}

/**
 * Outlines and pick-ups, once the corners are right and every outline runs counterclockwise. Places are those in
 * `file`, where outlines may still run the other way.
 */
export function assertLinesAndPickups(design: Design, file: Design): void {
  const ids = design.pickups.map(({ id }) => id);
  refuse(
    firstProblem(design.pieces, (piece, i) => outlineProblem(file, piece, i)) ??
      idsProblem(file, ['pickups'], 'pickups', ids) ??
      firstProblem(design.pickups, (pickup, i) => pickupProblem(file, design.pieces, pickup, i)) ??
      handoutProblem(file, design.handout),
  );
}

/**
 * Takes a changed design whose fields are all of their kind for one that could be knitted: ids, corners, outlines, what
 * pick-ups point at. Nothing is repaired: an outline that has come to run clockwise is refused.
 * @throws DesignError for the first thing that is wrong.
 */
export function checkSense(design: Design): void {
  assertCorners(design);
  assertLinesAndPickups(design, design);
}

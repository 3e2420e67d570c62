import { BOUNDS } from './bounds';
import { checkSense } from './check';
import type { Design } from './design';
import { assertShape, hasShape } from './issue';

/** Pieces and pick-ups that were found to be of the right shape; they never change in place. */
const shaped = new WeakSet();

/**
 * Takes a design that was changed for one that could be read from a file: every field of its kind and within its
 * bounds, and the whole as `checkSense` has it. Pieces and pick-ups that were judged before are not judged again.
 * @throws DesignError for the first thing that is wrong.
 */
export function checkDesign(design: Design): void {
  if (!isShaped(design)) assertShape(design);
  for (const part of [...design.pieces, ...design.pickups]) shaped.add(part);
  checkSense(design);
}

/** Whether what was not judged before is of the right shape too. What is wrong is named by judging all of it. */
function isShaped(design: Design): boolean {
  const { pieces, pickups } = design;
  const [least, most] = BOUNDS.pieces;
  if (pieces.length < least || pieces.length > most || pickups.length > BOUNDS.pickups) return false;
  const fresh = pieces.filter((piece) => !shaped.has(piece));
  const part = {
    ...design,
    pieces: fresh.length > 0 ? fresh : pieces.slice(0, 1),
    pickups: pickups.filter((pickup) => !shaped.has(pickup)),
  };
  return hasShape(part);
}

import { signedArea } from '../../geometry';
import { resolveOutline, type Edge, type Pickup, type Piece, type Stretch } from '../../piece';
import { asStraight, endCorner, type GridPlace } from './paths';
import { middleSum } from './symmetry';

/** The outline travelled the other way: the same first edge, each edge beginning where it ended. Schedules stay. */
export function turnedOutline(outline: readonly Edge[]): Edge[] {
  const turned = outline.map((edge, i): Edge => {
    const from = endCorner(outline, i);
    return edge.path === 'curve' ? { ...edge, from, handles: [edge.handles[1], edge.handles[0]] } : { ...edge, from };
  });
  return [...turned.slice(0, 1), ...turned.slice(1).reverse()];
}

/**
 * The piece as its own mirror image, in the place where it was. The outline still runs counterclockwise, so its edges
 * follow each other the other way round; they keep their ids and names.
 */
export function mirroredPiece(piece: Piece): Piece {
  const sum = middleSum(piece.outline);
  const flip = ([x, y]: GridPlace): GridPlace => [sum - x, y];
  const flipped = piece.outline.map((edge): Edge => {
    const from = flip(edge.from);
    return edge.path === 'curve'
      ? { ...edge, from, handles: [flip(edge.handles[0]), flip(edge.handles[1])] }
      : { ...edge, from };
  });
  return { ...piece, outline: turnedOutline(flipped) };
}

/**
 * A pick-up along a piece that was mirrored: runs of it go the other way round, so that edges which followed each other
 * on the outline still do, and parts are counted from the other end, so that the same fabric is meant.
 */
export function mirroredPickup(pickup: Pickup, piece: string): Pickup {
  if (!pickup.along.some((stretch) => stretch.piece === piece)) return pickup;
  const along: Stretch[] = [];
  let run: Stretch[] = [];
  for (const stretch of pickup.along) {
    if (stretch.piece === piece) {
      const [from, to] = stretch.part;
      run.unshift({ ...stretch, part: [1 - to, 1 - from] });
    } else {
      along.push(...run, stretch);
      run = [];
    }
  }
  return { ...pickup, along: [...along, ...run] };
}

/**
 * An outline that runs counterclockwise: the very same, or, where it was clicked the other way round, turned. One whose
 * line crosses itself or leads nowhere is left for the check to refuse.
 */
export function counterclockwise(outline: readonly Edge[]): readonly Edge[] {
  const drawn = outline.map((edge) => (edge.path === 'stepped' ? asStraight(edge) : edge));
  const shape: Piece = { id: '', name: '', fabric: 'stockinette', symmetric: false, outline: drawn };
  return signedArea(resolveOutline(shape).flatMap(({ path }) => path)) < 0 ? turnedOutline(outline) : outline;
}

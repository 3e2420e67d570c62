import type { Edge, Piece } from '../../piece';
import { endCorner, type GridPlace } from './paths';
import { reshaped } from './reschedule';
import { mirrorOf } from './symmetry';

/** How far a corner moves, in stitches and rows. */
export type Offset = readonly [dx: number, dy: number];

const STAYS: Offset = [0, 0];

function shifted(place: GridPlace, [dx, dy]: Offset): GridPlace {
  return [place[0] + dx, place[1] + dy];
}

/**
 * The outline with corners moved, by the index of the edge that begins at each. A handle goes along with the corner
 * beside it, a schedule is made anew to end on its corners; edges of which neither corner moves stay the same objects.
 */
export function withCornersMoved(outline: readonly Edge[], offsets: ReadonlyMap<number, Offset>): Edge[] {
  return outline.map((edge, i): Edge => {
    const start = offsets.get(i) ?? STAYS;
    const end = offsets.get((i + 1) % outline.length) ?? STAYS;
    if (start[0] === 0 && start[1] === 0 && end[0] === 0 && end[1] === 0) return edge;
    const from = shifted(edge.from, start);
    switch (edge.path) {
      case 'straight':
        return { ...edge, from };
      case 'curve':
        return { ...edge, from, handles: [shifted(edge.handles[0], start), shifted(edge.handles[1], end)] };
      case 'stepped': {
        const to = endCorner(outline, i);
        return reshaped(edge, edge.from, to, from, shifted(to, end));
      }
    }
  });
}

/**
 * The piece with corners moved, given by the ids of the edges that begin at them. On a symmetric piece the other half
 * moves too and the middle stays: a corner on the middle goes up and down only; of twins that are both chosen, those on
 * the side of the corner named first move as told. With every corner chosen the whole piece moves.
 */
export function movedCorners(piece: Piece, corners: readonly string[], dx: number, dy: number): Piece {
  const { outline } = piece;
  const chosen = corners.map((id) => outline.findIndex((edge) => edge.id === id)).filter((i) => i >= 0);
  return { ...piece, outline: withCornersMoved(outline, offsetsOf(piece, [...new Set(chosen)], [dx, dy])) };
}

/** What every corner moves by when the chosen ones do, the first of which leads. */
export function offsetsOf(piece: Piece, chosen: readonly number[], [dx, dy]: Offset): Map<number, Offset> {
  const mirror = mirrorOf(piece);
  if (!mirror || chosen.length === piece.outline.length) return new Map(chosen.map((i) => [i, [dx, dy]]));
  const sideOf = (i: number) => Math.sign(2 * piece.outline[i]!.from[0] - mirror.sum);
  const lead = chosen[0] === undefined ? 0 : sideOf(chosen[0]);
  const all = new Set(chosen);
  const offsets = new Map<number, Offset>();
  for (const i of chosen) {
    const twin = mirror.corner(i);
    if (twin === i) offsets.set(i, [0, dy]);
    else if (all.has(twin)) offsets.set(i, [lead * sideOf(i) * dx + 0, dy]);
    else {
      offsets.set(i, [dx, dy]);
      offsets.set(twin, [0 - dx, dy]);
    }
  }
  return offsets;
}

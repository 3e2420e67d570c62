import type { Edge, Piece, ScheduleStep } from '../../piece';
import { withCornersMoved, type Offset } from './move';
import { asStepped, endCorner, wayOf } from './paths';
import { mirrorOf, withEdge, type Mirror } from './symmetry';

/** What an edge is set to; what is left out stays. `along` moves what lies beyond it too. */
export interface EdgeSize {
  readonly stitches?: number;
  readonly rows?: number;
  readonly along: boolean;
}

type Offsets = Map<number, Offset>;

/**
 * The piece with an edge as many stitches across and rows up as told. Its end moves, in the direction in which the edge
 * goes; where it has none, in that of the next edge, or else into the fabric.
 *
 * With `along` all that lies beyond moves too: by rows every corner as high as the edge's upper end or higher, by
 * stitches every one as far out as the edge's end or farther. On a symmetric piece both halves change alike about the
 * middle, which stays: with `along` it is the end farther from the middle that moves outwards. An edge that mirrors
 * itself grows by half at each end; an odd stitch goes into the middle of the whole piece, whose left half stays then,
 * and can't where a corner lies on the middle or nothing else may move: the piece stays as it is.
 */
export function withSize(piece: Piece, index: number, { stitches, rows, along }: EdgeSize): Piece {
  const [dx, dy] = wayOf(piece.outline, index);
  const mirror = mirrorOf(piece);
  const offsets: Offsets = new Map();
  if (rows !== undefined && rows !== Math.abs(dy)) {
    const by = rows - Math.abs(dy);
    if (mirror?.edge(index) === index) return piece;
    if (along && dy !== 0) moveAbove(piece, index, by, offsets);
    else moveEnd(piece, index, [0, by * wayOn(piece.outline, index, 1)], mirror, offsets);
  }
  if (stitches !== undefined && stitches !== Math.abs(dx)) {
    const by = stitches - Math.abs(dx);
    const done = mirror
      ? widenMirrored(piece, index, by, along, mirror, offsets)
      : widen(piece, index, by, along, offsets);
    if (!done) return piece;
  }
  return { ...piece, outline: withCornersMoved(piece.outline, offsets) };
}

/**
 * The piece with an edge worked from a schedule. With `fit` the corners follow, so that it ends on the far one: all that
 * is as high as the edge's upper end or higher moves up or down, and the upper end alone to the side (the lower one
 * where the upper lies on the middle of a symmetric piece). Without, the edge may miss its corner.
 */
export function withSteps(piece: Piece, index: number, steps: readonly ScheduleStep[], fit: boolean): Piece {
  const edge = piece.outline[index]!;
  const worked = withEdge(piece, index, asStepped(edge, steps));
  if (!fit || worked === piece) return worked;
  const [dx, dy] = wayOf(piece.outline, index);
  const stitches = steps.reduce((sum, step) => sum + step.stitches * step.times, 0) - dx;
  const rows = steps.reduce((sum, step) => sum + step.every * step.times, 0) - Math.abs(dy);
  if (stitches === 0 && rows === 0) return worked;
  const mirror = mirrorOf(piece);
  const offsets: Offsets = new Map();
  const end = (index + 1) % piece.outline.length;
  if (rows !== 0 && dy !== 0) moveAbove(piece, index, rows, offsets);
  else if (rows !== 0) moveEnd(piece, index, [0, rows * wayOn(piece.outline, index, 1)], mirror, offsets);
  if (stitches !== 0) {
    const upper = dy < 0 ? index : end;
    const moving = mirror?.corner(upper) === upper ? index + end - upper : upper;
    moveWithTwin(moving, [moving === end ? stitches : 0 - stitches, 0], mirror, offsets);
  }
  const moved = withCornersMoved(piece.outline, offsets);
  // The schedules of the edge and of its twin are those asked for, not what the moved corners would make of the old.
  const outline = moved.map((one, i): Edge => {
    const own = i === index || i === mirror?.edge(index);
    return own ? { ...worked.outline[i]!, from: one.from } : one;
  });
  return { ...piece, outline };
}

/** The way in which an edge without stitches (axis 0) or rows (axis 1) is drawn out, 1 or -1; that of any other edge. */
function wayOn(outline: readonly Edge[], index: number, axis: 0 | 1): number {
  const way = wayOf(outline, index);
  const next = wayOf(outline, (index + 1) % outline.length)[axis];
  // Into the fabric is to the left: towards -x where the edge climbs, towards y where it goes right.
  const inwards = axis === 0 ? 0 - way[1] : way[0];
  return Math.sign(way[axis]) || Math.sign(next) || Math.sign(inwards);
}

function move(offsets: Offsets, corner: number, [dx, dy]: Offset): void {
  const known = offsets.get(corner) ?? [0, 0];
  offsets.set(corner, [known[0] + dx, known[1] + dy]);
}

/** Moves a corner and its mirror image; one on the middle goes up and down only. */
function moveWithTwin(corner: number, [dx, dy]: Offset, mirror: Mirror | null, offsets: Offsets): void {
  const twin = mirror ? mirror.corner(corner) : -1;
  move(offsets, corner, [twin === corner ? 0 : dx, dy]);
  if (mirror && twin !== corner) move(offsets, twin, [0 - dx, dy]);
}

function moveEnd(piece: Piece, index: number, by: Offset, mirror: Mirror | null, offsets: Offsets): void {
  moveWithTwin((index + 1) % piece.outline.length, by, mirror, offsets);
}

/** Moves all that is as high as the upper end of an edge, or higher. */
function moveAbove({ outline }: Piece, index: number, by: number, offsets: Offsets): void {
  const height = Math.max(outline[index]!.from[1], endCorner(outline, index)[1]);
  outline.forEach(({ from }, i) => {
    if (from[1] >= height) move(offsets, i, [0, by]);
  });
}

function widen(piece: Piece, index: number, by: number, along: boolean, offsets: Offsets): boolean {
  const { outline } = piece;
  const dx = wayOf(outline, index)[0];
  const way = wayOn(outline, index, 0);
  if (!along || dx === 0) {
    moveEnd(piece, index, [by * way, 0], null, offsets);
    return true;
  }
  const end = endCorner(outline, index)[0];
  outline.forEach(({ from }, i) => {
    if ((from[0] - end) * way >= 0) move(offsets, i, [by * way, 0]);
  });
  return true;
}

/** The same on a symmetric piece; false where it can't be done. */
function widenMirrored(
  piece: Piece,
  index: number,
  by: number,
  along: boolean,
  mirror: Mirror,
  offsets: Offsets,
): boolean {
  const { outline } = piece;
  const [dx] = wayOf(outline, index);
  const end = (index + 1) % outline.length;
  const itself = mirror.edge(index) === index;
  const odd = itself && by % 2 !== 0;
  if (odd && (!along || outline.some(({ from }) => 2 * from[0] === mirror.sum))) return false;
  const half = itself ? Math.trunc(by / 2) : by;
  /** How far from the middle a corner lies, doubled to be whole. */
  const away = (i: number) => Math.abs(2 * outline[i]!.from[0] - mirror.sum);
  if (along && dx !== 0) {
    const farthest = Math.max(away(index), away(end));
    outline.forEach(({ from }, i) => {
      if (away(i) >= farthest) move(offsets, i, [half * Math.sign(2 * from[0] - mirror.sum), 0]);
    });
  } else {
    // An end on the middle stays there, and the other one moves.
    const fixed = mirror.corner(end) === end;
    const way = wayOn(outline, index, 0);
    moveWithTwin(fixed ? index : end, [(fixed ? 0 - half : half) * way, 0], mirror, offsets);
  }
  if (odd) {
    const sign = Math.sign(by);
    outline.forEach(({ from }, i) => {
      if (2 * from[0] > mirror.sum) move(offsets, i, [sign, 0]);
    });
  }
  return true;
}

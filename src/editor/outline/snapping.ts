import type { GridPoint, Piece } from '../../piece';

/** A corner, named by the edge that begins at it. */
export interface Corner {
  readonly id: string;
  readonly at: GridPoint;
}

/** Why a corner came to lie where it does: in one column (plumb) or one row (level) with another one. */
export interface SnapHint {
  readonly kind: 'level' | 'plumb';
  /** The id of the other corner, and its place. */
  readonly with: string;
  readonly at: GridPoint;
}

export interface Snapped {
  readonly at: GridPoint;
  readonly hints: readonly SnapHint[];
}

/** A place or a reach in stitches and rows, whole or not. */
export interface Reach {
  readonly x: number;
  readonly y: number;
}

/** A box on the grid, its edges included. */
export interface GridBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The corners of a piece without some of them, such as those that are held in the hand. */
export function cornersOf(piece: Piece, without: readonly string[] = []): Corner[] {
  return piece.outline.filter(({ id }) => !without.includes(id)).map(({ id, from }) => ({ id, at: from }));
}

/**
 * Where a corner that is held at a place goes: to the column and the row of the nearest other corners within reach, or
 * else to the nearest whole stitch and row. A hint also tells where it happens to be in line.
 *
 * @param at in stitches and rows, whole or not
 * @param tolerance how far it may be drawn to another corner, in stitches and in rows
 */
export function snapCorner(others: readonly Corner[], at: readonly [number, number], tolerance: Reach): Snapped {
  const plumb = inLine(others, at, 0, tolerance.x);
  const level = inLine(others, at, 1, tolerance.y);
  return {
    at: [plumb?.at[0] ?? Math.round(at[0]), level?.at[1] ?? Math.round(at[1])],
    hints: [
      ...(plumb ? [{ kind: 'plumb', with: plumb.id, at: plumb.at } as const] : []),
      ...(level ? [{ kind: 'level', with: level.id, at: level.at } as const] : []),
    ],
  };
}

/** The corner nearest on one axis, and of several in one line the nearest on the other. */
function inLine(others: readonly Corner[], at: readonly [number, number], axis: 0 | 1, reach: number): Corner | null {
  const across = axis === 0 ? 1 : 0;
  const off = (corner: Corner, along: 0 | 1) => Math.abs(corner.at[along] - at[along]);
  let best: Corner | null = null;
  for (const corner of others) {
    if (off(corner, axis) > reach && corner.at[axis] !== Math.round(at[axis])) continue;
    const by = best ? off(corner, axis) - off(best, axis) : -1;
    if (best === null || by < 0 || (by === 0 && off(corner, across) < off(best, across))) best = corner;
  }
  return best;
}

/** The corners of a piece within a box, by the ids of the edges that begin at them. */
export function cornersIn(piece: Piece, { minX, minY, maxX, maxY }: GridBox): string[] {
  return piece.outline
    .filter(({ from: [x, y] }) => x >= minX && x <= maxX && y >= minY && y <= maxY)
    .map(({ id }) => id);
}

/** The corner nearest to a place within reach (an ellipse), by the id of the edge that begins at it; null without one. */
export function cornerAt(piece: Piece, at: readonly [number, number], reach: Reach): string | null {
  let best: string | null = null;
  let nearest = 1;
  for (const { id, from } of piece.outline) {
    const off = Math.hypot((from[0] - at[0]) / reach.x, (from[1] - at[1]) / reach.y);
    if (off > nearest || (off === nearest && best !== null)) continue;
    best = id;
    nearest = off;
  }
  return best;
}

import type { GridPoint, Piece } from '../piece';
import type { Change } from './changes';
import type { Grip } from './grips';
import { mirrorOf } from './outline/symmetry';

/** What is held in the hand: a grip, an edge by its line, or several corners at once. */
export type Held =
  | { readonly kind: 'corners'; readonly piece: string; readonly corners: readonly string[]; readonly by: GridPoint }
  | { readonly kind: 'edge'; readonly piece: string; readonly edge: string }
  | { readonly kind: 'middle'; readonly piece: string; readonly edge: string; readonly at: readonly [number, number] }
  | {
      readonly kind: 'handle';
      readonly piece: string;
      readonly edge: string;
      readonly handle: 0 | 1;
      readonly at: readonly [number, number];
    };

/** A line that shows with what a held corner or handle is level or plumb: from one grid place to another. */
export interface Hint {
  readonly kind: 'level' | 'plumb';
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** What a movement makes of the design, and the lines that explain where it caught. */
export interface Pulled {
  readonly change: Change | null;
  readonly hints: readonly Hint[];
}

/** How near a held place must come to another one's row or column to catch there, in stitches and rows. */
export interface Catch {
  readonly x: number;
  readonly y: number;
}

const NOTHING: Pulled = { change: null, hints: [] };

/** What a grip and the corners chosen with it become in the hand; null where there is no such thing on the piece. */
export function heldBy(
  piece: Piece,
  grip: Grip,
  at: readonly [number, number],
  chosen: readonly string[],
): Held | null {
  switch (grip.kind) {
    case 'corner': {
      const by = piece.outline.find(({ id }) => id === grip.edge)?.from;
      const corners = chosen.includes(grip.edge) ? chosen : [grip.edge];
      return by ? { kind: 'corners', piece: piece.id, corners, by } : null;
    }
    case 'middle':
      return { kind: 'middle', piece: piece.id, edge: grip.edge, at };
    case 'handle':
      return { kind: 'handle', piece: piece.id, edge: grip.edge, handle: grip.handle, at };
  }
}

/**
 * What follows when the hand has moved by `offset` stitches and rows since it took hold. Corners and edges go by whole
 * stitches and rows and catch on the rows and columns of other corners; a level edge only goes up and down, a plumb one
 * to the sides; the handle of a curve catches where its end of the curve is level or plumb.
 *
 * @param piece as it was when it was taken hold of
 * @param loose nothing catches
 */
export function pulled(
  piece: Piece,
  held: Held,
  offset: readonly [number, number],
  near: Catch,
  loose = false,
): Pulled {
  switch (held.kind) {
    case 'corners':
      return cornersPulled(piece, held, offset, near, loose);
    case 'edge':
      return edgePulled(piece, held.edge, offset);
    case 'middle': {
      const through = [held.at[0] + offset[0], held.at[1] + offset[1]] as const;
      return { change: { kind: 'edge-bend', piece: piece.id, edge: held.edge, through }, hints: [] };
    }
    case 'handle':
      return handlePulled(piece, held, offset, near, loose);
  }
}

function cornersPulled(
  piece: Piece,
  { corners, by }: Held & { readonly kind: 'corners' },
  offset: readonly [number, number],
  near: Catch,
  loose: boolean,
): Pulled {
  const { along, sideways } = movedWith(piece, corners);
  const at = [by[0] + (sideways ? offset[0] : 0), by[1] + offset[1]] as const;
  const others = piece.outline.filter((_, i) => !along.has(i)).map(({ from }) => from);
  const caughtX = loose ? undefined : nearestTo(others, 0, at[0], near.x);
  const caughtY = loose ? undefined : nearestTo(others, 1, at[1], near.y);
  const to: GridPoint = [caughtX?.[0] ?? Math.round(at[0]), caughtY?.[1] ?? Math.round(at[1])];
  const [dx, dy] = [to[0] - by[0], to[1] - by[1]];
  if (dx === 0 && dy === 0) return NOTHING;
  const hints: Hint[] = [];
  if (caughtX) hints.push({ kind: 'plumb', from: caughtX, to });
  if (caughtY) hints.push({ kind: 'level', from: caughtY, to });
  return { change: { kind: 'move-corners', piece: piece.id, corners, dx, dy }, hints };
}

/**
 * The corners that move when some are held: on a symmetric piece their twins too, so that none catches on its own twin;
 * and whether they go to the sides at all, as those on the middle of a symmetric piece do not.
 */
function movedWith(
  piece: Piece,
  corners: readonly string[],
): { readonly along: ReadonlySet<number>; readonly sideways: boolean } {
  const held = piece.outline.flatMap(({ id }, i) => (corners.includes(id) ? [i] : []));
  const mirror = mirrorOf(piece);
  if (!mirror) return { along: new Set(held), sideways: true };
  const twins = held.map((i) => mirror.corner(i));
  const sideways = held.length === piece.outline.length || held.some((i, k) => twins[k] !== i);
  return { along: new Set([...held, ...twins]), sideways };
}

/** The place nearest to `value` on one axis, if it lies within reach. */
function nearestTo(places: readonly GridPoint[], axis: 0 | 1, value: number, reach: number): GridPoint | undefined {
  let best: GridPoint | undefined;
  for (const place of places) {
    const off = Math.abs(place[axis] - value);
    if (off <= reach && (!best || off < Math.abs(best[axis] - value))) best = place;
  }
  return best;
}

function edgePulled(piece: Piece, id: string, offset: readonly [number, number]): Pulled {
  const at = piece.outline.findIndex((edge) => edge.id === id);
  const edge = piece.outline[at];
  const next = piece.outline[(at + 1) % piece.outline.length];
  if (!edge || !next) return NOTHING;
  const level = edge.from[1] === next.from[1];
  const plumb = edge.from[0] === next.from[0];
  const dx = level ? 0 : Math.round(offset[0]);
  const dy = plumb ? 0 : Math.round(offset[1]);
  if (dx === 0 && dy === 0) return NOTHING;
  return { change: { kind: 'move-corners', piece: piece.id, corners: [edge.id, next.id], dx, dy }, hints: [] };
}

function handlePulled(
  piece: Piece,
  { edge: id, handle, at }: Held & { readonly kind: 'handle' },
  offset: readonly [number, number],
  near: Catch,
  loose: boolean,
): Pulled {
  const index = piece.outline.findIndex((edge) => edge.id === id);
  const corner = piece.outline[(index + handle) % piece.outline.length]?.from;
  if (index < 0 || !corner) return NOTHING;
  let [x, y] = [at[0] + offset[0], at[1] + offset[1]];
  const hints: Hint[] = [];
  if (!loose && Math.abs(x - corner[0]) <= near.x) {
    x = corner[0];
    hints.push({ kind: 'plumb', from: corner, to: [x, y] });
  } else if (!loose && Math.abs(y - corner[1]) <= near.y) {
    y = corner[1];
    hints.push({ kind: 'level', from: corner, to: [x, y] });
  }
  return { change: { kind: 'edge-handle', piece: piece.id, edge: id, handle, at: [x, y] }, hints };
}

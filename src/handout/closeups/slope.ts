import { CUT, turn } from './fabric';
import { KNIT, loop, moved, STITCH, type Knot } from './loop';

/** A decrease one stitch inside the edge: on this row the column is worked together with the one on its left. */
export interface Decrease {
  readonly row: number;
  readonly column: number;
}

/** Over so many rows the stitches beside a decrease close up, from so many below it. */
const CLOSING = { rows: 2.4, below: 1.8 } as const;

/** The stitch that is taken over its neighbour comes to lie this part of a stitch short of it, so that both show. */
const SHORT = 0.25;

/** The column that is taken over its neighbour lies wholly nearer to the viewer in the two rows before. */
const NEARER = 2;

/** The legs of the stitch that takes both together come before both heads. */
const TAKING = 1.8;

/** How far left a column has moved at a height, in stitches. */
export function shiftAt(column: number, v: number, decreases: readonly Decrease[]): number {
  return decreases.reduce((sum, one) => {
    if (one.column > column) return sum;
    const closed = Math.min(1, Math.max(0, (v - one.row + CLOSING.below) / CLOSING.rows));
    return sum - closed * (one.column === column ? 1 - SHORT : 1);
  }, 0);
}

/** The columns that a row still has, from left to right. */
export function columnsAt(row: number, left: number, right: number, decreases: readonly Decrease[]): number[] {
  const all = Array.from({ length: right - left + 1 }, (_, i) => left + i);
  return all.filter((column) => !decreases.some((one) => one.column === column && one.row <= row));
}

/** Loops of a row of a sloping edge, from left to right; the whole of each, or only the part between two parameters. */
function loops(row: number, columns: readonly number[], decreases: readonly Decrease[], from = 0, to = 2 * Math.PI) {
  return columns.map((column) => {
    const before = decreases.find((one) => one.column === column)?.row ?? Infinity;
    const taking = decreases.some((one) => one.column === column + 1 && one.row === row) ? TAKING : 0;
    return moved(loop(KNIT, KNIT, STITCH, from, to), column, row).map((knot): Knot => {
      const up = (knot.v - row) / STITCH.height;
      return {
        u: knot.u + shiftAt(column, knot.v, decreases),
        v: knot.v,
        z: knot.z + nearness(before - row, up) + taking * legs(up),
      };
    });
  });
}

/** How much nearer a loop lies so many rows before its column is taken: two rows before, from its legs on. */
function nearness(rows: number, up: number): number {
  if (rows > 2) return 0;
  return rows === 2 ? NEARER * Math.min(1, Math.max(0, (up - 0.3) / 0.3)) : NEARER;
}

/** 1 along the legs of a loop, 0 at its feet and its head, by the part of its height. */
function legs(up: number): number {
  const within = (t: number) => Math.min(1, Math.max(0, t));
  return Math.min(within((up - 0.06) / 0.12), within((0.85 - up) / 0.25));
}

/** A row of a sloping edge in one run of yarn, from left to right. */
export function slopedRow(row: number, columns: readonly number[], decreases: readonly Decrease[]): Knot[] {
  return join(loops(row, columns, decreases));
}

/** A row whose feet lie outside the picture. */
export function slopedFromBelow(row: number, columns: readonly number[], decreases: readonly Decrease[]): Knot[][] {
  return loops(row, columns, decreases, 0.375 * Math.PI, 1.625 * Math.PI);
}

/** A row whose heads lie outside the picture. */
export function slopedToAbove(row: number, columns: readonly number[], decreases: readonly Decrease[]): Knot[][] {
  const rising = loops(row, columns, decreases, 0, CUT);
  const falling = loops(row, columns, decreases, 2 * Math.PI - CUT, 2 * Math.PI);
  return [rising[0]!, ...rising.slice(1).map((one, i) => join([falling[i]!, one])), falling.at(-1)!];
}

/** Two rows and the turn between them at the right, which leans with the edge. */
export function slopedPair(row: number, lower: Knot[], upper: Knot[], column: number, decreases: readonly Decrease[]) {
  const outside = turn(column, row, 1).map((knot) => ({ ...knot, u: knot.u + shiftAt(column, knot.v, decreases) }));
  return [...lower.slice(0, -1), ...outside, ...[...upper].reverse().slice(1)];
}

/** Neighbouring loops share the middle of the sinker between them. */
function join(parts: readonly Knot[][]): Knot[] {
  return parts.reduce((whole, part) => {
    const [a, b] = [whole.at(-1)!, part[0]!];
    return [...whole.slice(0, -1), { u: (a.u + b.u) / 2, v: (a.v + b.v) / 2, z: (a.z + b.z) / 2 }, ...part.slice(1)];
  });
}

import { KNIT, loop, moved, STITCH, type Face, type Knot } from './loop';

/** How a row looks from the right side, and the row that is drawn through it. */
export interface RowFaces {
  readonly own: Face;
  readonly above: Face;
}

export const STOCKINETTE: RowFaces = { own: KNIT, above: KNIT };

/** Legs are cut here where the picture ends, radians from the foot. */
export const CUT = 0.625 * Math.PI;
const LOW_CUT = 0.375 * Math.PI;

/** Loops of one row from column `from` to column `to`, which may lie on either side of it, in one run of yarn. */
export function rowOf(row: number, from: number, to: number, faces: RowFaces = STOCKINETTE): Knot[] {
  const forwards = to >= from;
  const columns = forwards ? columnsOf(from, to) : columnsOf(to, from).reverse();
  const whole = loop(faces.own, faces.above);
  const one = forwards ? whole : [...whole].reverse();
  // Neighbours share the middle of the sinker between them.
  return columns.flatMap((column, i) => moved(i === 0 ? one : one.slice(1), column, row));
}

/** A row whose feet lie outside the picture: the upper part of each loop for itself. */
export function rowFromBelow(row: number, from: number, to: number, faces: RowFaces = STOCKINETTE): Knot[][] {
  const part = loop(faces.own, faces.above, STITCH, LOW_CUT, 2 * Math.PI - LOW_CUT);
  return columnsOf(from, to).map((column) => moved(part, column, row));
}

/** A row whose heads lie outside the picture: two legs and the sinker between them, `from` and `to` its columns. */
export function rowToAbove(row: number, from: number, to: number, faces: RowFaces = STOCKINETTE): Knot[][] {
  const rising = loop(faces.own, faces.above, STITCH, 0, CUT);
  const falling = loop(faces.own, faces.above, STITCH, 2 * Math.PI - CUT, 2 * Math.PI);
  const columns = columnsOf(from, to);
  return [
    moved(rising, columns[0]!, row),
    ...columns.slice(1).map((column) => [...moved(falling, column - 1, row), ...moved(rising.slice(1), column, row)]),
    moved(falling, columns.at(-1)!, row),
  ];
}

/** The turn at the end of a row: the yarn leaves the last foot of a row and rises outside to the first of the next. */
export function turn(column: number, row: number, out: 1 | -1, z: readonly [number, number] = [-1, -1]): Knot[] {
  const [a, b] = z;
  return [
    { u: column + out * 0.52, v: row + 0.06, z: a },
    { u: column + out * 0.6, v: row + 0.25, z: a * 0.75 + b * 0.25 },
    { u: column + out * 0.63, v: row + 0.5, z: (a + b) / 2 },
    { u: column + out * 0.6, v: row + 0.75, z: a * 0.25 + b * 0.75 },
    { u: column + out * 0.52, v: row + 0.94, z: b },
  ];
}

/** Two rows joined by a turn at the right: the lower one comes in from the left, the upper one goes back. */
export function pairOf(row: number, left: number, right: number, lower = STOCKINETTE, upper = STOCKINETTE): Knot[] {
  const depths: [number, number] = [-lower.own, -upper.own];
  return [
    ...rowOf(row, left, right, lower).slice(0, -1),
    ...turn(right, row, 1, depths),
    ...rowOf(row + 1, right, left, upper).slice(1),
  ];
}

function columnsOf(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

/** Yarn whose ends are drawn in by half a knot: cut sinkers then end behind the leg beside them. */
export function tucked(knots: readonly Knot[]): Knot[] {
  const between = (a: Knot, b: Knot): Knot => ({ u: (a.u + b.u) / 2, v: (a.v + b.v) / 2, z: (a.z + b.z) / 2 });
  return [between(knots[0]!, knots[1]!), ...knots.slice(1, -1), between(knots.at(-2)!, knots.at(-1)!)];
}

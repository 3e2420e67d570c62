import { KNIT, loop, moved, STITCH, type Knot } from './loop';

const k = (u: number, v: number, z: number): Knot => ({ u, v, z });

/**
 * One link of a bind-off chain, worked from right to left, about its column and the line where the bind-off begins: up
 * through the stitch below, out of the link before, over that link's head to the left and back again.
 */
const RISE: readonly Knot[] = [k(0.14, 0.45, 0.9), k(0.15, 0.7, 0.6), k(0.05, 0.98, 1.4)];
const UPPER: readonly Knot[] = [
  k(-0.2, 1.18, 2.3),
  k(-0.48, 1.31, 2.8),
  k(-0.8, 1.4, 2.8),
  k(-1.12, 1.42, 2.4),
  k(-1.42, 1.31, 1.6),
];
const HEAD: readonly Knot[] = [k(-1.56, 1.06, 0.9), k(-1.44, 0.81, 1.7)];
const LOWER: readonly Knot[] = [k(-1.15, 0.69, 2.6), k(-0.82, 0.73, 2.8), k(-0.53, 0.87, 2.8), k(-0.3, 0.9, 1.2)];
const FALL: readonly Knot[] = [k(-0.16, 0.72, 0.6), k(-0.14, 0.45, 0.9)];

const FOOT = loop(KNIT, KNIT, STITCH, 0, Math.PI / 4);

/** A bind-off from the column `from` leftwards to the column `to`, along the top of the row below `row`. */
export function bindOff(row: number, from: number, to: number): Knot[] {
  const links = Array.from({ length: from - to + 1 }, (_, i) => from - i);
  const one = link(false);
  return links.flatMap((column, i) => moved(i === 0 ? one : one.slice(1), column, row));
}

/** The last link of a bind-off that ends before the row does: it lies round the next stitch, one leg behind it. */
export function lastLink(row: number, column: number): Knot[] {
  return moved(link(true).slice(1), column, row);
}

function link(last: boolean): Knot[] {
  const right = [...FOOT].map(({ u, v, z }) => ({ u: -u, v, z }));
  const back = (knots: readonly Knot[], z: number) => (last ? knots.map((knot) => ({ ...knot, z })) : knots);
  return refined([
    ...right,
    ...RISE,
    ...UPPER.slice(0, 2),
    ...back(UPPER.slice(2), -1.6),
    ...back(HEAD, -0.9),
    ...LOWER,
    ...FALL,
    ...[...FOOT].reverse(),
  ]);
}

/** The same curve through twice as many knots (the midpoints of Catmull and Rom's uniform spline). */
function refined(knots: readonly Knot[]): Knot[] {
  const knot = (i: number) => knots[Math.min(knots.length - 1, Math.max(0, i))]!;
  return knots.flatMap((here, i) => {
    if (i === knots.length - 1) return [here];
    const [before, next, after] = [knot(i - 1), knot(i + 1), knot(i + 2)];
    const middle = (key: 'u' | 'v') => (9 * (here[key] + next[key]) - before[key] - after[key]) / 16;
    return [here, { u: middle('u'), v: middle('v'), z: (here.z + next.z) / 2 }];
  });
}

/** The stretches of a run of knots that lie between two columns' limits. */
export function within(knots: readonly Knot[], left: number, right: number): Knot[][] {
  const parts: Knot[][] = [[]];
  for (const knot of knots) {
    if (knot.u >= left && knot.u <= right) parts.at(-1)!.push(knot);
    else if (parts.at(-1)!.length > 0) parts.push([]);
  }
  return parts.filter((part) => part.length > 2);
}

/** Slipped edge stitches span two rows. */
export const TALL = { ...STITCH, height: STITCH.height + 1 };

/** A pair of rows with a slipped stitch at the right: worked at the end of the lower row, slipped in the upper one. */
export function slippedTurn(column: number, row: number): Knot[] {
  const link = loop(KNIT, KNIT, TALL).slice(1, -2);
  return [
    ...moved(link, column, row),
    k(column + 0.16, row + 0.22, -1.4),
    k(column - 0.06, row + 0.55, -1.9),
    k(column - 0.3, row + 0.84, -1.7),
  ];
}

/** One cast-on loop: the same curve as a stitch, but its legs cross, as in a loop laid on the needle with a twist. */
const TWISTED = { swing: 0.5, height: 0.95 };

/** The cast-on below the row `row`: a half hitch about the foot of every stitch. */
export function castOn(row: number, from: number, to: number): Knot[] {
  const one = loop(KNIT, KNIT, TWISTED).map((knot, i, all) => {
    // The leg that comes from the left lies over the other where they cross.
    const side = i < all.length / 2 ? 1 : -1;
    return { ...knot, z: knot.z + 0.4 * side * Math.sin((2 * Math.PI * i) / (all.length - 1)) ** 2 };
  });
  const columns = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  return columns.flatMap((column, i) => moved(i === 0 ? one : one.slice(1), column, row));
}

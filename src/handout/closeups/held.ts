import { KNIT, loop, moved, STITCH, type Knot } from './loop';

/** Held loops are drawn out a little, so that there is room for a needle in them. */
const DRAWN_OUT = 1.95;
/** How far the needle's middle lies below the top of such a loop, rows. */
export const BELOW_TOP = 0.44;

/** Depth of the two legs of a loop on a needle, which itself lies at 0. */
const LEG = 3;

/**
 * A row of stitches on the needle: the leg on the right lies before the needle, the one on the left behind it, as
 * knitters of most countries carry them.
 */
export function heldRow(row: number, from: number, to: number): Knot[] {
  const whole = loop(KNIT, KNIT, { ...STITCH, height: DRAWN_OUT });
  const half = (whole.length - 1) / 2;
  // The legs stand before the row below, then part: one before the needle, the other behind it.
  const depths = [
    [0.5, 1],
    [0.7, -LEG],
    [0.85, -LEG],
    [1, 0],
    [1.15, LEG],
    [1.3, LEG],
    [1.5, 1],
  ] as const;
  const one = whole.map((knot, i) => {
    const at = depths.findIndex(([end]) => end * half >= i);
    if (at <= 0) return knot;
    const [[from, low], [to, high]] = [depths[at - 1]!, depths[at]!];
    return { ...knot, z: low + ((high - low) * (i / half - from)) / (to - from) };
  });
  const columns = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  return columns.flatMap((column, i) => moved(i === 0 ? one : one.slice(1), column, row));
}

/** Where a held row's needle lies, rows above the row's feet. */
export const HELD_NEEDLE = DRAWN_OUT - BELOW_TOP;

/** How far the sinkers of an undone cast-on are drawn out below their row, rows. */
const SAG = 0.62;
export const SAG_NEEDLE = BELOW_TOP - SAG;

/**
 * The lowest row with its cast-on undone: what were sinkers between its stitches are loops now, on a needle. Seen with
 * this edge on top, the leg on the right (towards the first column) lies before the needle.
 */
export function undoneRow(row: number, from: number, to: number): Knot[] {
  const whole = loop(KNIT, KNIT);
  const last = whole.length - 1;
  const one = whole.map((knot, i) => {
    // From the middle of a sinker, in parts of a quarter loop.
    const near = Math.min(i, last - i) / (last / 4);
    if (near > 1.4) return knot;
    const sag = SAG * (1 + Math.cos((Math.PI * near) / 1.4)) * 0.5;
    const side = i > last / 2 ? 1 : -1;
    return { u: knot.u, v: knot.v - sag, z: side * LEG * Math.sin(Math.PI * Math.min(1, near) * 0.5) };
  });
  const columns = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  return columns.flatMap((column, i) => moved(i === 0 ? one : one.slice(1), column, row));
}

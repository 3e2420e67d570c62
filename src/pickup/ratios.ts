import { roundHalfDown } from '../units';
import type { RatioChoice } from './plan';

/** Largest number of openings in a ratio that a knitter keeps in the head. */
const LARGEST_OF = 8;
const SHOWN = 3;

/**
 * The plain ratios p of q (q up to 8) nearest to `value`, best first: the nodes met on the way down the Stern–Brocot
 * tree, which are the best approximations from both sides (R. Graham, D. Knuth, O. Patashnik, Concrete Mathematics,
 * 2nd ed., section 4.5).
 *
 * @param value stitches per opening, above 0
 */
export function plainRatios(value: number, largestOf = LARGEST_OF): { readonly pick: number; readonly of: number }[] {
  // 0.9999999999999998 is one to one.
  const whole = Math.floor(value * (1 + 1e-12));
  let [lowPick, lowOf] = [whole, 1];
  let [highPick, highOf] = [whole + 1, 1];
  const met = [
    { pick: whole, of: 1 },
    { pick: whole + 1, of: 1 },
  ].filter(({ pick }) => pick > 0);
  for (;;) {
    const pick = lowPick + highPick;
    const of = lowOf + highOf;
    if (of > largestOf) break;
    met.push({ pick, of });
    if (Math.abs(pick / of - value) <= 1e-12 * value) break;
    if (pick / of < value) [lowPick, lowOf] = [pick, of];
    else [highPick, highOf] = [pick, of];
  }
  return met.sort((a, b) => Math.abs(a.pick / a.of - value) - Math.abs(b.pick / b.of - value) || a.of - b.of);
}

/**
 * The nearest plain ratios for an edge with what each would give and how far off that is.
 *
 * @param openings of the edge
 * @param value stitches per opening that is aimed at
 * @param wanted by length, or null
 * @param most that the edge can carry
 */
export function ratioChoices(openings: number, value: number, wanted: number | null, most: number): RatioChoice[] {
  if (openings === 0 || !(value > 0)) return [];
  return plainRatios(value)
    .filter(({ pick, of }) => pick * openings <= of * most)
    .slice(0, SHOWN)
    .map(({ pick, of }) => {
      const count = ratioCount(openings, pick, of);
      return { pick, of, count, stretch: wanted !== null && wanted > 0 ? count / wanted - 1 : null };
    });
}

/** Stitches that "pick up p from every q openings" gives; a half goes down. */
export function ratioCount(openings: number, pick: number, of: number): number {
  return roundHalfDown((openings * pick) / of);
}

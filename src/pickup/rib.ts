import type { Band } from '../piece';

/** A rib as the right side shows it: so many knit columns, so many purl columns, again and again. */
export interface Rib {
  readonly knit: number;
  readonly purl: number;
}

/** The ribs that their multiples stand for: k1p1 over 2, k2p1 over 3, k2p2 over 4, k3p3 over 6 (common practice). */
const RIBS: Readonly<Record<number, Rib>> = {
  2: { knit: 1, purl: 1 },
  3: { knit: 2, purl: 1 },
  4: { knit: 2, purl: 2 },
  6: { knit: 3, purl: 3 },
};

/** The rib that a band is worked in; null in another fabric, and for a multiple that stands for no one rib. */
export function ribOf({ fabric, multiple }: Pick<Band, 'fabric' | 'multiple'>): Rib | null {
  return fabric === 'rib' ? (RIBS[multiple] ?? null) : null;
}

/**
 * The column that a stitch of the first row stands in, as the right side shows it. In the round the rib begins with its
 * knit columns. Flat it begins and ends with them; where the multiple has no stitches to spare for that, a plain
 * selvage stitch stands at each end.
 *
 * @param at place in the finished row, counted from 0 in the direction of the right side
 * @param count stitches of the finished row
 */
export function columnOf({ knit, purl }: Rib, at: number, count: number, joined: boolean): 'knit' | 'purl' {
  const plus = count % (knit + purl);
  const selvage = !joined && plus === 0;
  if (selvage && (at === 0 || at === count - 1)) return 'knit';
  const inside = selvage ? at - 1 : at;
  return inside % (knit + purl) < knit ? 'knit' : 'purl';
}

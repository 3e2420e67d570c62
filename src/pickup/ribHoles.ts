import { columnOf, type Rib } from './rib';

/** A hole is moved by no more than this many repeats of the rib. */
const MOST_REPEATS = 2;
/** Of two places as near as each other the one towards the end of the band is taken, so that both halves mirror. */
const INWARDS = 1e-6;

/** A band on the needle, right side facing. */
interface RibbedBand {
  readonly rib: Rib;
  readonly total: number;
  readonly joined: boolean;
}

/**
 * Whether a hole's middle falls in a purl column, as it lies on the right side: its middle stitch is purled; or both
 * beside its middle are, "between two purls" (http://elizabethsmithknits.com); where the purl columns are one stitch
 * wide, one of the two is, and the yarn over stands where the purl was (Knitting Magic, "Buttonholes",
 * https://www.knittingmagic.biz).
 *
 * @param first stitches before the hole
 */
export function liesInPurl(first: number, stitches: number, { rib, total, joined }: RibbedBand): boolean {
  const purled = (at: number) => columnOf(rib, at, total, joined) === 'purl';
  const half = Math.floor(stitches / 2);
  if (stitches % 2 === 1) return purled(first + half);
  const [left, right] = [purled(first + half - 1), purled(first + half)];
  return rib.purl > 1 ? left && right : left || right;
}

/**
 * Buttonholes moved so that the middle of each falls in a purl column: by the least sum of squared moves, exactly, by
 * dynamic programming. Whole stitches before each hole are given and returned.
 *
 * @returns null where there is no room: every hole keeps a stitch before and after it
 */
export function movedIntoPurl(firsts: readonly number[], stitches: number, band: RibbedBand): number[] | null {
  const { rib, total } = band;
  const reach = MOST_REPEATS * (rib.knit + rib.purl);
  interface Way {
    readonly cost: number;
    readonly places: readonly number[];
  }
  let ways: readonly (Way & { readonly end: number })[] = [{ cost: 0, places: [], end: 0 }];
  for (const first of firsts) {
    const next: (Way & { readonly end: number })[] = [];
    for (let by = -reach; by <= reach; by++) {
      const place = first + by;
      if (place < 1 || place + stitches > total - 1 || !liesInPurl(place, stitches, band)) continue;
      const before = ways.filter(({ end }) => end < place);
      const best = before.reduce<Way | null>((least, way) => (least && least.cost <= way.cost ? least : way), null);
      if (!best) continue;
      const inwards = 2 * first + stitches < total ? by > 0 : by < 0;
      const cost = best.cost + by * by + (inwards ? INWARDS : 0);
      next.push({ cost, places: [...best.places, place], end: place + stitches });
    }
    ways = next;
  }
  const best = ways.reduce<Way | null>((least, way) => (least && least.cost <= way.cost ? least : way), null);
  return best && [...best.places];
}

import type { Buttonholes } from '../piece';
import { endsFor, gapsBetween, holesFor, stitchesFor } from './buttonholes';

/** What is worked out from the other three: the gaps, both ends, the number of holes, or the band's total. */
export type HoleUnknown = 'gap' | 'ends' | 'holes' | 'total';

/** Buttonholes that go with a band of `total` stitches. */
export interface SolvedHoles {
  readonly holes: Buttonholes;
  readonly total: number;
}

/**
 * One of total, holes, gaps and ends from the others. With the number of holes unknown the gaps come out as `gap` or
 * more, as even as they can be. Null where there is no room.
 *
 * @param gap stitches between two holes; not read where the gaps are what is asked for
 */
export function solveHoles(unknown: HoleUnknown, holes: Buttonholes, gap: number, total: number): SolvedHoles | null {
  switch (unknown) {
    case 'gap':
      return gapsBetween(total, holes) && { holes, total };
    case 'ends': {
      const ends = endsFor(total, holes, gap);
      return ends && { holes: { ...holes, ...ends }, total };
    }
    case 'holes': {
      const count = holesFor(total, holes, gap);
      return count === null ? null : { holes: { ...holes, holes: count }, total };
    }
    case 'total':
      return { holes, total: stitchesFor(holes, gap) };
  }
}

import type { Mm } from '../units';
import type { Rib } from './rib';

/** A buttonhole in the band, its stitches counted from 1 in working order. */
export interface Hole {
  readonly first: number;
  readonly last: number;
  /** Stitches before its middle: whole where it lies between two stitches, else a half lies in the middle one. */
  readonly middle: number;
  /** Where its middle and its two ends lie along the join from the start of the pick-up, mm. */
  readonly alongMm: Mm;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** The buttonholes of a band: before, then a hole and a gap in turn, a hole, after. */
export interface HoleRow {
  readonly stitches: number;
  readonly before: number;
  readonly after: number;
  readonly gaps: readonly number[];
  readonly holes: readonly Hole[];
  /** The rib in whose purl columns they lie, where that was asked for and there is room; else null. */
  readonly rib: Rib | null;
}

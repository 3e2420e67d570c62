import type { Mm } from '../units';

/** A corner of the run that a band is worked from, and what is done there over the band's rows. */
export interface BandCorner {
  /** The stretches that meet here, by their places in the plan, in working order. */
  readonly between: readonly [number, number];
  /** Where two pieces, or two ends of one, are taken to be sewn together. */
  readonly seam: boolean;
  /** How far the run turns, in radians: above 0 round an outer corner, below 0 into an inner one. */
  readonly turn: number;
  /** The corner stitch, or the two stitches at the middle of a V, by their numbers among those picked up. */
  readonly stitches: readonly number[];
  /** At the point of a V: an inner corner between two edges that both slope or curve. */
  readonly point: boolean;
  /** Stitches on each side in each row that let the band lie flat, exact: `tan(turn / 2) * row height / stitch width`. */
  readonly perRow: number;
  /** Stitches made or lost on each side over all rows, whole. */
  readonly times: number;
  /** True where the sum asks for more in a row than is worked at one corner. */
  readonly capped: boolean;
  /** The row of each of them, counted from 1 after the picking up: ascending, a row twice where it takes two. */
  readonly rows: readonly number[];
}

/** Whether the stitches beside the middle of a V, round the whole band, are a whole number of its rib's repeats. */
export interface RibBeside {
  readonly count: number;
  readonly multiple: number;
  readonly whole: boolean;
  /** Totals of the band that would keep the rib whole. */
  readonly below: number;
  readonly above: number;
}

/** The free edge of a band of known depth as it lies flat. */
export interface BandEdge {
  /** Rows or rounds of the band, and how deep they are. */
  readonly rows: number;
  readonly depthMm: Mm;
  /** The length that the band is worked from, and that of its free edge. Below 0 where the band has no room. */
  readonly edgeMm: Mm;
  readonly freeMm: Mm;
  /** Stitches that the free edge takes at the band's gauge, exact. */
  readonly freeStitches: number;
  /** What curves make of that, exact: above 0 round an outer curve, below 0 round a neckline. */
  readonly curveStitches: number;
  /** The count once every corner has been worked. */
  readonly after: number;
  /** True where the corners use up an edge, or nothing would be left of the free edge. */
  readonly tooDeep: boolean;
  readonly corners: readonly BandCorner[];
  /** Null where the run has no V, or the band no rib in the round to keep. */
  readonly beside: RibBeside | null;
}

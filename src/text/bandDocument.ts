import type { PickupPlan } from '../pickup';
import type { EdgeRef } from '../piece';
import type { Mm } from '../units';

/** The free edge of a band as the plan document gives it, as it lies flat. */
export interface BandDocument {
  readonly rows: number;
  readonly freeMm: Mm;
  /** What it takes at the band's gauge, exact, and the count once every corner is worked. */
  readonly freeStitches: number;
  readonly after: number;
  /** True where the corners or curves would use up an edge. */
  readonly tooDeep: boolean;
  readonly corners: readonly CornerDocument[];
}

export interface CornerDocument {
  /** The edge that ends here and the one that begins, in working order. */
  readonly from: EdgeRef;
  readonly to: EdgeRef;
  readonly seam: boolean;
  readonly kind: 'outer' | 'inner';
  /** By how much the edge turns, above 0. */
  readonly degrees: number;
  /** The corner stitch, or the two at the middle of a V, by their numbers among the points. */
  readonly stitches: readonly number[];
  /** Stitches on each side in a row, exact; in all rows, whole; and the row of each. */
  readonly perRow: number;
  readonly times: number;
  readonly rows: readonly number[];
}

export function bandDocument({ bandEdge: free, edges }: PickupPlan): BandDocument | null {
  if (!free) return null;
  const refOf = (at: number): EdgeRef => {
    const { piece, measured } = edges[at]!;
    return { piece: piece.id, edge: measured.id };
  };
  const { rows, freeMm, freeStitches, after, tooDeep } = free;
  const corners = free.corners.map(({ between: [a, b], turn, ...corner }): CornerDocument => ({
    from: refOf(a),
    to: refOf(b),
    seam: corner.seam,
    kind: turn > 0 ? 'outer' : 'inner',
    degrees: (Math.abs(turn) * 180) / Math.PI,
    stitches: corner.stitches,
    perRow: corner.perRow,
    times: corner.times,
    rows: corner.rows,
  }));
  return { rows, freeMm, freeStitches, after, tooDeep, corners };
}

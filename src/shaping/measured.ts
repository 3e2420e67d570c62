import type { Edge, Finish, Selvage } from '../piece';
import type { Segment } from '../geometry';
import type { Mm, Rows, Stitches } from '../units';

export type EdgeShape = 'horizontal' | 'vertical' | 'sloped' | 'curved';

/** Which side of the fabric an edge bounds, seen with the right side facing. */
export type Side = 'top' | 'bottom' | 'left' | 'right';

/**
 * One worked step of an edge, in the direction of the outline. `across` stitches are bound off, cast on, decreased or
 * increased together, then (or before, on a falling edge) `rows` rows are worked. `across` is signed in x and `up` in
 * y, both in the direction of the outline.
 */
export interface WorkedStep {
  readonly across: Stitches;
  readonly up: Rows;
  /**
   * Counted bottom up, the rows come before the stitches: so a straight slope is bound off, which leaves fabric under its
   * top corner. Elsewhere the stitches come first.
   */
  readonly rowsFirst?: boolean;
  /** On a curve: which of its stretches between two turns in y the step belongs to, counted from 0. */
  readonly climb?: number;
}

/** A stretch of outline with all that can be measured on it. Lengths are drawn 3 to 4 where the piece has no gauge. */
export interface MeasuredEdge {
  readonly index: number;
  readonly edge: Edge;
  readonly id: string;
  readonly side: Side;
  readonly shape: EdgeShape;
  /** Read on horizontal edges. */
  readonly finish: Finish;
  /** Read on all others. */
  readonly selvage: Selvage;
  readonly from: readonly [Stitches, Rows];
  readonly to: readonly [Stitches, Rows];
  readonly stitches: Stitches;
  readonly rows: Rows;
  /** The smooth line in mm, in the direction of the outline. */
  readonly line: readonly Segment[];
  readonly edgeMm: Mm;
  /** False where the piece has no gauge: lengths are then drawing units, not fabric. */
  readonly hasGauge: boolean;
  /** The worked steps in the direction of the outline; empty on a horizontal or vertical edge. */
  readonly worked: readonly WorkedStep[];
}

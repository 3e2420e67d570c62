import type { Mm, Rows, Stitches } from './quantity';

/** How many stitches and rows the fabric has over a length of `over` millimetres (UK: tension). */
export interface Gauge {
  readonly stitches: Stitches;
  readonly rows: Rows;
  readonly over: Mm;
}

/** Width of one stitch in mm: `over / stitches`. */
export function stitchWidth(gauge: Gauge): Mm {
  return gauge.over / gauge.stitches;
}

/** Height of one row in mm: `over / rows`. */
export function rowHeight(gauge: Gauge): Mm {
  return gauge.over / gauge.rows;
}

/** Stitches to the millimetre: `stitches / over`. */
export function stitchesPerMm(gauge: Gauge): number {
  return gauge.stitches / gauge.over;
}

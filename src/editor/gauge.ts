import { MM_PER_INCH, type Gauge, type LengthUnit } from '../units';

/** Over what a gauge is told: 10 cm, or 4 inches. */
const USUAL: Readonly<Record<LengthUnit, number>> = { cm: 100, in: 4 * MM_PER_INCH };
/** A length of this many mm stands in the field as it is, where it is a whole number of them. */
const STEP: Readonly<Record<LengthUnit, number>> = { cm: 5, in: MM_PER_INCH / 4 };

/**
 * A gauge as it is shown in fields: over its own length where that reads well in the unit, else over 10 cm or 4 in.
 * It is the same gauge: `stitches / over` stays.
 */
export function shownGauge(gauge: Gauge, unit: LengthUnit): Gauge {
  const parts = gauge.over / STEP[unit];
  if (Math.abs(parts - Math.round(parts)) < 1e-9 * parts) return gauge;
  const over = USUAL[unit];
  return { stitches: (gauge.stitches * over) / gauge.over, rows: (gauge.rows * over) / gauge.over, over };
}

/** Over what a new gauge is counted. */
export function usualOver(unit: LengthUnit): number {
  return USUAL[unit];
}

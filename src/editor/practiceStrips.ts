import { starterDesign, type StarterWords, type Units } from '../piece';
import { planDesign, YARN_WEIGHTS, type DesignPlan } from '../pickup';
import type { Gauge } from '../units';
import { usualOver } from './gauge';

/** A strip for practice at some gauge. */
export interface Strip {
  readonly gauge: Gauge;
  readonly plan: DesignPlan;
}

/** A strip is as long as this, mm, … */
const LENGTH = 100;
/** … and never shorter than this many rows, nor wider than this many stitches. */
const LEAST_ROWS = 12;
const STITCHES = 10;

/** Fine, light and medium yarn, of which most garments are knitted. */
const USUAL_WEIGHTS: readonly number[] = [2, 3, 4];
/** Rows to a stitch of stockinette: three stitches are as wide as four rows are high (common practice, no source). */
const ROWS_TO_STITCH = 4 / 3;

/**
 * Three gauges to practise at: the middle of the range of fine, light and medium yarn over 10 cm or 4 in, by the Craft
 * Yarn Council's Standard Yarn Weight System, https://www.craftyarncouncil.com/standards/yarn-weight-system (it gives
 * stitches over 4 in; over 10 cm the same number still lies in its range).
 */
export function usualGauges(units: Units): Gauge[] {
  return YARN_WEIGHTS.filter(({ weight }) => USUAL_WEIGHTS.includes(weight)).map(({ from, to }) => {
    const stitches = Math.floor((from + to) / 2);
    return { stitches, rows: Math.round(stitches * ROWS_TO_STITCH), over: usualOver(units) };
  });
}

/**
 * For each gauge a strip of ten stitches and as many rows as 10 cm hold, at least twelve, with a plain selvage, and a
 * pick-up by length along its right side in a band of the same gauge. Without a gauge they are the usual three.
 */
export function practiceStrips(gauges: readonly Gauge[], words: StarterWords): Strip[] {
  return (gauges.length > 0 ? gauges : usualGauges(words.units)).map((gauge) => stripAt(gauge, words));
}

function stripAt(gauge: Gauge, words: StarterWords): Strip {
  const rows = Math.max(LEAST_ROWS, Math.round((gauge.rows * LENGTH) / gauge.over));
  const made = starterDesign('strip', { stitches: STITCHES, rows }, gauge, words);
  if (!made.ok) throw new RangeError(`No strip of ${rows} rows can be drawn.`);
  const { design } = made;
  const pickups = design.pickups.map((pickup) => ({
    ...pickup,
    rates: pickup.along.map(({ piece, edge }) => ({ piece, edge, rate: { kind: 'length' } as const })),
  }));
  return { gauge, plan: planDesign({ ...design, pickups }) };
}

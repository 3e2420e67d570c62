import type { Pickup, Rate } from '../piece';
import { shelf, stitchesPerMm, type Gauge, type Mm } from '../units';
import { ratioCount } from './ratios';
import type { WorkedStretch } from './stretches';

/**
 * A straight garter edge whose band has the body's gauge within this share takes one stitch to a ridge. A sloped one is
 * longer than its ridges are high and goes by length.
 */
const SAME_GAUGE = 0.02;

/** What one stretch asks for before the total is settled. */
export interface Want {
  readonly rate: Rate;
  /** The length that is counted by: the tape's, else edge or join; null without a gauge. */
  readonly lengthMm: Mm | null;
  /** By length: `length * band stitches per mm * (1 - draw-in)`; null without a length or a band gauge. */
  readonly byLength: number | null;
  /** What goes into the pick-up's sum: by length, or the count of any other rate. */
  readonly asked: number;
  /** True where only the demanded total says how many: an edge without a length and without a rate of its own. */
  readonly bare: boolean;
  /** True where the count may move to meet the total. */
  readonly flexible: boolean;
  /** First places, and all places with the second ones brought in. */
  readonly first: number;
  readonly most: number;
}

/** The band's gauge: its own, else that of the first piece of the pick-up that has one. */
export function bandGauge(pickup: Pickup, stretches: readonly WorkedStretch[]): Gauge | null {
  if (pickup.band.gauge) return pickup.band.gauge;
  // In the order of the document: which hand works the run changes nothing.
  const pieces = pickup.along.map((at) => stretches.find((one) => one.stretch === at)?.piece);
  return pieces.find((piece) => piece?.gauge)?.gauge ?? null;
}

const kept = shelf<WorkedStretch, Want>(1);

/** @param toTarget true when the pick-up has a demanded total, which a bare strip's edges then share */
export function wantOf(one: WorkedStretch, pickup: Pickup, gauge: Gauge | null, toTarget: boolean): Want {
  return kept(one, [pickup, gauge, toTarget], () => wanted(one, pickup, gauge, toTarget));
}

function wanted(one: WorkedStretch, pickup: Pickup, gauge: Gauge | null, toTarget: boolean): Want {
  const { first, most } = one.openings;
  const computed = pickup.measure === 'join' ? one.joinMm : one.edgeMm;
  const lengthMm = one.measuredMm ?? (one.measured.hasGauge ? computed : null);
  const byLength = lengthMm !== null && gauge ? lengthMm * stitchesPerMm(gauge) * (1 - pickup.band.drawIn / 100) : null;
  const rate = one.givenRate ?? defaultRate(one, gauge, byLength);
  const bare = one.givenRate === null && byLength === null && toTarget && first > 0;
  const flexible = (rate.kind === 'length' && byLength !== null && byLength > 0) || bare;
  const asked = rate.kind === 'length' ? (byLength ?? first) : fixedCount(rate, first);
  return { rate, lengthMm, byLength, asked, bare, flexible, first, most };
}

function fixedCount(rate: Rate, openings: number): number {
  switch (rate.kind) {
    case 'ratio':
      return ratioCount(openings, rate.pick, rate.of);
    case 'count':
      return rate.count;
    default:
      return openings;
  }
}

function defaultRate(one: WorkedStretch, gauge: Gauge | null, byLength: number | null): Rate {
  if (one.measured.shape === 'horizontal' || byLength === null) return { kind: 'each' };
  const body = one.piece.gauge;
  if (one.measured.selvage === 'garter' && one.measured.shape === 'vertical' && body && gauge) {
    const differs = Math.abs(stitchesPerMm(gauge) / stitchesPerMm(body) - 1);
    if (differs <= SAME_GAUGE + 1e-9) return { kind: 'each' };
  }
  return { kind: 'length' };
}

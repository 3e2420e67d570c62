import type { Handout, StarterWords } from '../piece';
import type { DesignPlan, PickupPlan } from '../pickup';
import type { Gauge } from '../units';
import { workAt, type NotAtGauge } from './atGauge';
import { practiceStrips, type Strip } from './practiceStrips';

/** What a handout's records are called, and why a gauge has no plan: words come from text. */
export interface HandoutWorkWords {
  readonly strip: StarterWords;
  readonly why: (fault: NotAtGauge) => string;
}

/** All that a handout is made from, planned: it fits `Work` of src/handout. */
export interface HandoutWork {
  readonly plan: DesignPlan;
  readonly pickup: number;
  readonly handout: Handout;
  readonly gauges: readonly { readonly gauge: Gauge; readonly plan: PickupPlan | null; readonly why?: string }[];
  readonly strips: readonly Strip[];
}

/**
 * Plans what a handout of a pick-up needs beside its plan: the same work at other gauges, and practice strips. Only
 * what its blocks print is planned.
 *
 * @throws RangeError when there is no such pick-up
 */
export function handoutWork(
  plan: DesignPlan,
  pickup: number,
  handout: Handout,
  { strip, why }: HandoutWorkWords,
): HandoutWork {
  if (!plan.pickups[pickup]) throw new RangeError(`There is no pick-up number ${pickup} in this plan.`);
  const { blocks, gauges } = handout;
  return {
    plan,
    pickup,
    handout,
    gauges: blocks.includes('gauges') ? gauges.map((gauge) => at(plan, pickup, gauge, why)) : [],
    strips: blocks.includes('strips') ? practiceStrips(gauges, strip) : [],
  };
}

function at(
  plan: DesignPlan,
  pickup: number,
  gauge: Gauge,
  why: HandoutWorkWords['why'],
): HandoutWork['gauges'][number] {
  const worked = workAt(plan, pickup, gauge);
  return worked.plan ? worked : { gauge, plan: null, why: why(worked.why) };
}

import type { PickupPlan } from '../pickup';

/** A band worked flat has rows, one in the round has rounds. */
export function rowOrRound(plan: Pick<PickupPlan, 'pickup'>): 'row' | 'round' {
  return plan.pickup.joined ? 'round' : 'row';
}

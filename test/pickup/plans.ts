import fc from 'fast-check';
import type { Design } from '../../src/piece';
import { PlanError, planPickup, type PickupPlan, type PlanPoint } from '../../src/pickup';
import { arbitraryDesign } from '../piece/arbitrary';

export interface Planned {
  readonly design: Design;
  readonly plan: PickupPlan;
}

/** The plan of a pick-up; null where the demanded total is out of the first row's reach. */
export function planned(design: Design, index = 0): PickupPlan | null {
  try {
    return planPickup(design, design.pickups[index]!);
  } catch (error) {
    if (error instanceof PlanError && error.problem.kind !== 'no-marker') return null;
    throw error;
  }
}

/** Random designs with all the pick-ups that a first row can put right. */
export const arbitraryPlans: fc.Arbitrary<readonly Planned[]> = arbitraryDesign.map((design) =>
  design.pickups.flatMap((_, i) => {
    const plan = planned(design, i);
    return plan ? [{ design, plan }] : [];
  }),
);

/** Checks every plan of many random designs. */
export function everyPlan(check: (plan: PickupPlan, design: Design) => void, numRuns = 60): void {
  fc.assert(
    fc.property(arbitraryPlans, (plans) => {
      for (const { plan, design } of plans) check(plan, design);
    }),
    { numRuns },
  );
}

/** The openings of one edge of a plan, in working order. */
export function pointsOn(plan: PickupPlan, edge: number): readonly PlanPoint[] {
  const { firstPoint, pointsEnd } = plan.edges[edge]!;
  return plan.points.slice(firstPoint, pointsEnd);
}

export const numbersOf = (points: readonly PlanPoint[]): number[] => points.flatMap(({ n }) => (n === null ? [] : [n]));

export const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);

import { PlanError, type DesignPlan } from '../../src/pickup';

/** A plan; null where more stitches are demanded than edges or a first row can give. That is tested elsewhere. */
export function planned(make: () => DesignPlan): DesignPlan | null {
  try {
    return make();
  } catch (error) {
    if (error instanceof PlanError) return null;
    throw error;
  }
}

import { checkSense } from './check';
import type { Design } from './design';
import { assertShape } from './issue';

/**
 * Takes a design that was changed for one that could be read from a file: every field of its kind and within its
 * bounds, and the whole as `checkSense` has it.
 * @throws DesignError for the first thing that is wrong.
 */
export function checkDesign(design: Design): void {
  assertShape(design);
  checkSense(design);
}

import type { PickupPlan } from '../pickup';
import { counted } from './words';

/** The words of the panel that places the first row. */
export const FIRST_ROW = {
  clear: 'Keep clear of markers and seams',
  rib: 'Keep the rib',
  by: 'Put right',
  ways: { whole: 'over all of it', sections: 'section by section' },
  right: 'The count is right as it is picked up: the first row or round changes nothing.',
} as const;

/** What the first row changes, in a word or two: `4 increases`, `no change`. */
export function firstRowGist({ firstRow: { from, to } }: Pick<PickupPlan, 'firstRow'>): string {
  if (from === to) return 'no change';
  return counted(Math.abs(to - from), to > from ? 'increase' : 'decrease');
}

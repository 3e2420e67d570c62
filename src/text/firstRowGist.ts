import type { PickupPlan } from '../pickup';
import { counted } from './words';

/** What the first row changes, in a word or two: `4 increases`, `no change`. */
export function firstRowGist({ firstRow: { from, to } }: Pick<PickupPlan, 'firstRow'>): string {
  if (from === to) return 'no change';
  return counted(Math.abs(to - from), to > from ? 'increase' : 'decrease');
}

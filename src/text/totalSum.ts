import type { PickupPlan } from '../pickup';
import { multipleText, plainNumber, stretchText } from './numbers';
import { rowOrRound } from './rowOrRound';

/**
 * The arithmetic of the total: `23 + 16 + 23 + 46 = 108 (107.7 wanted, 0.3% over): a multiple of 4`, and what the first
 * row still changes.
 */
export function totalSum(plan: PickupPlan): string {
  const counts = plan.edges.map((edge) => edge.count);
  const sum = counts.length > 1 ? `${counts.join(' + ')} = ${plan.picked}` : `${plan.picked}`;
  const { multiple, plus } = plan.pickup.band;
  const off = plan.stretch === null ? '' : stretchText(plan.stretch);
  const wanted = off === '' || off === 'exact' ? '' : ` (${plainNumber(plan.wanted)} wanted, ${plan.target} is ${off})`;
  const fits = multiple === 1 || (plan.target - plus) % multiple !== 0 ? '' : `: ${multipleText(multiple, plus)}`;
  const then = plan.picked === plan.target ? '' : `, and the first ${rowOrRound(plan)} makes ${plan.target}`;
  return `${sum}${then}${fits}${wanted}`;
}

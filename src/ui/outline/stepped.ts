import type { ScheduleStep } from '../../piece';
import type { MeasuredEdge } from '../../shaping';
import { OUTLINE_REFUSED } from '../../text';

/** Why an edge can't be worked from one schedule, in a sentence. */
export function whyNotStepped({ edge, rows }: Pick<MeasuredEdge, 'edge' | 'rows'>): string {
  return rows === 0 ? OUTLINE_REFUSED.noRows(edge) : OUTLINE_REFUSED.turns(edge);
}

/** How far a schedule leads: the stitches it takes in (below 0) or brings out, and its rows. */
export function reachOf(steps: readonly ScheduleStep[]): { readonly stitches: number; readonly rows: number } {
  const sum = (of: (step: ScheduleStep) => number) => steps.reduce((total, step) => total + of(step) * step.times, 0);
  return { stitches: sum((step) => step.stitches), rows: sum((step) => step.every) };
}

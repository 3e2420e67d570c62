import type { ScheduleStep } from '../piece';

/**
 * Steps in their shortest form: neighbours that are alike joined, rows worked even in one step, and nothing that is done
 * no times or over no rows. They lead along the same line.
 */
export function normalisedSteps(steps: readonly ScheduleStep[]): ScheduleStep[] {
  const joined: ScheduleStep[] = [];
  for (const { stitches, every, times } of steps) {
    if (every * times === 0) continue;
    const last = joined.at(-1);
    if (stitches === 0) {
      const before = last?.stitches === 0 ? joined.pop()! : { every: 0 };
      joined.push({ stitches: 0, every: before.every + every * times, times: 1 });
    } else if (last?.stitches === stitches && last.every === every) {
      joined[joined.length - 1] = { stitches, every, times: last.times + times };
    } else joined.push({ stitches, every, times });
  }
  return joined;
}

import type { ScheduleStep } from '../piece';
import { normalisedSteps } from './readScheduleSteps';
import { amountsText } from './schedule';
import type { Voice } from './voice';
import { rowsText, times } from './words';

/** Rows between two shapings of one edge, as a list of bind-offs or cast-ons is worked. */
const USUAL = 2;

/**
 * A schedule as plain text to be edited, bottom up: `bind off 3, 2, 2 every 2 rows; decrease 1 every 2 rows 4 times,
 * every 4 rows 3 times; work 6 rows even`. `readSchedule` reads back the same steps. It names neither the side of the fabric nor the
 * edge; the text for knitters is `scheduleText`.
 */
export function writtenSteps(steps: readonly ScheduleStep[], { terms }: Pick<Voice, 'terms'>): string {
  const clauses: string[] = [];
  const left = normalisedSteps(steps);
  while (left.length > 0) {
    const first = left[0]!;
    const count = first.stitches === 0 ? 1 : Math.max(1, alikeFrom(left));
    const group = left.splice(0, count);
    clauses.push(
      first.stitches === 0 ? `work ${rowsText(first.every)} ${terms.even}` : groupText(group, terms.bindOff),
    );
  }
  return clauses.join('; ');
}

/** Several at once, on every second row, so that a list of numbers says it. */
function listed({ stitches, every }: ScheduleStep): boolean {
  return Math.abs(stitches) > 1 && every === USUAL;
}

/** How many steps from the first on are said in one clause: a list of numbers, or a number at several rates. */
function alikeFrom(steps: readonly ScheduleStep[]): number {
  const first = steps[0]!;
  const end = steps.findIndex((step) =>
    listed(first)
      ? !listed(step) || Math.sign(step.stitches) !== Math.sign(first.stitches)
      : listed(step) || step.stitches !== first.stitches,
  );
  return end < 0 ? steps.length : end;
}

function groupText(group: readonly ScheduleStep[], bindOff: string): string {
  const { stitches } = group[0]!;
  const amount = Math.abs(stitches);
  const verb = amount > 1 ? (stitches < 0 ? bindOff : 'cast on') : stitches < 0 ? 'decrease' : 'increase';
  if (listed(group[0]!)) {
    const amounts = group.flatMap((step) => Array.from({ length: step.times }, () => Math.abs(step.stitches)));
    return `${verb} ${amountsText(amounts)} every ${USUAL} rows`;
  }
  const rates = group.map(({ every, times: n }) => `${every === 1 ? 'every row' : `every ${every} rows`} ${times(n)}`);
  return `${verb} ${amount} ${rates.join(', ')}`;
}

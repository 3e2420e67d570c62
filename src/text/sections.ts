import type { PickupPlan } from '../pickup';
import type { Voice } from './voice';
import { counted, listed } from './words';

/**
 * The sections of a pick-up and its markers by their running counts: `Place a marker after 14, 27 and 41 stitches: 4
 * sections of 14, 13, 14 and 13.`; empty where there is no marker.
 */
export function sectionsText(plan: PickupPlan, { form }: Pick<Voice, 'form'>): string {
  const { sections } = plan;
  if (sections.length < 2) return '';
  const running = sections.slice(0, -1).map((section) => section.running);
  const counts = sections.map((section) => section.count);
  if (form === 'short') return `Markers after ${running.join(', ')}: ${countsText(counts)}.`;
  const place = running.length === 1 ? 'Place a marker' : `Place ${running.length} markers,`;
  const said = `${place} after ${listed(running)} stitches: ${countsText(counts)}.`;
  const after = sections.map((section) => section.after);
  const changed = plan.firstRow.from !== plan.firstRow.to;
  const row = plan.pickup.joined ? 'round' : 'row';
  return changed ? `${said} The first ${row} leaves ${spread(after)} in them, ${plan.firstRow.to} in all.` : said;
}

/** `8 sections of 14`, `6 sections of 36 and 37 …`: how many stitches the sections have, in their order. */
function countsText(counts: readonly number[]): string {
  return `${counted(counts.length, 'section')} of ${spread(counts)}`;
}

/** `14 each` where all are equal, else every count in order. */
function spread(counts: readonly number[]): string {
  const [first] = counts;
  return counts.every((count) => count === first) ? `${first ?? 0} each` : listed(counts);
}

/** How often each count occurs, larger first: `4 of 36 and 2 of 37`. */
export function tallyText(counts: readonly number[]): string {
  const tally = new Map<number, number>();
  for (const count of counts) tally.set(count, (tally.get(count) ?? 0) + 1);
  const sorted = [...tally].sort((a, b) => b[1] - a[1] || b[0] - a[0]);
  return listed(sorted.map(([count, n]) => `${n} of ${count}`));
}

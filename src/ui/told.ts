import type { Change } from '../editor';
import type { Outcome, Workbench } from './workbench.svelte';

/**
 * Makes a change and has a screen reader told what it did, before the count that follows from it.
 *
 * @param said what was done, asked once it is done
 * @param idle why a change that was meant to do something did nothing, in a sentence; left out where that is no wonder
 */
export function told(bench: Workbench, change: Change, said: () => string, idle?: () => string): Outcome {
  const before = bench.design;
  const outcome = bench.change(change);
  if (!outcome.ok) return outcome;
  if (bench.design === before) return idle ? { ok: false, why: idle() } : outcome;
  bench.announcement = [said(), bench.announcement].filter((part) => part !== '').join(' ');
  return outcome;
}

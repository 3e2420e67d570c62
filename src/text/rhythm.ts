import type { OpeningKind, Run } from '../pickup';
import { openingLabel } from './labels';
import { repeatedParts, type RhythmPart } from './repeats';
import type { Voice } from './voice';
import { times, timesMore } from './words';

/**
 * A rhythm in words, in working order, exactly as the points lie. Long: `pick up 4, skip 1, 17 times; then pick up 3`,
 * with longer patterns as repeats: `*(pick up 4, skip 1) twice, pick up 3, skip 1; repeat from * 5 more times; then
 * pick up 4`; a second repeat has two stars. Short: `(4, skip 1) ×17, 3` and `[(4, skip 1) ×2, 3, skip 1] ×6, 4`.
 *
 * @param runs as the plan gives them; an empty rhythm has no words
 * @param unit what one opening is: said where every one is used, `pick up every row (24)`
 */
export function rhythmText(
  runs: readonly Run[],
  unit: OpeningKind | 'place',
  voice: Pick<Voice, 'terms' | 'form'>,
): string {
  const counts = runs.filter((run) => run.times > 0 && run.pick + run.skip > 0);
  const verb = unit === 'live' ? 'knit' : voice.terms.pickUp;
  const whole = counts.every((run) => run.skip === 0) ? counts.reduce((sum, run) => sum + run.pick * run.times, 0) : 0;
  if (whole > 0) {
    if (voice.form === 'short') return `all ${whole}`;
    return `${verb} every ${unit === 'place' ? unit : openingLabel(unit)} (${whole})`;
  }
  const parts = repeatedParts(counts);
  if (voice.form === 'short') return parts.map(shortPart).join(', ');
  let stars = 0;
  const said = parts.map((part) => longPart(part, verb, part.kind === 'group' ? (stars += 1) : 0));
  const last = said.pop() ?? '';
  return said.length === 0 ? last : `${said.join('; ')}; then ${last}`;
}

function longPart(part: RhythmPart, verb: string, stars: number): string {
  if (part.kind === 'run') {
    const { run } = part;
    return run.times === 1 ? longRun(run, verb) : `${longRun(run, verb)}, ${times(run.times)}`;
  }
  const star = '*'.repeat(stars);
  const inner = part.runs.map((run) =>
    run.times === 1 ? longRun(run, verb) : `(${longRun(run, verb)}) ${times(run.times)}`,
  );
  return `${star}${inner.join(', ')}; repeat from ${star} ${timesMore(part.times - 1)}`;
}

function longRun({ pick, skip }: Run, verb: string): string {
  return [...(pick > 0 ? [`${verb} ${pick}`] : []), ...(skip > 0 ? [`skip ${skip}`] : [])].join(', ');
}

function shortPart(part: RhythmPart): string {
  return part.kind === 'run' ? shortRun(part.run) : `[${part.runs.map(shortRun).join(', ')}] ×${part.times}`;
}

function shortRun({ pick, skip, times: n }: Run): string {
  const once = [...(pick > 0 ? [`${pick}`] : []), ...(skip > 0 ? [`skip ${skip}`] : [])].join(', ');
  return n === 1 ? once : `(${once}) ×${n}`;
}

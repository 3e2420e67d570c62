import type { PickupPlan, Replan } from '../pickup';
import { edgeTitle } from './edgeName';
import { placingText, provedRow } from './firstRow';
import { rowNoteText } from './notes';
import { rowOrRound } from './rowOrRound';
import { unitOf } from './sorts';
import { rhythmText } from './rhythm';
import type { Voice } from './voice';
import { stitchesText } from './words';

/**
 * What to do from a marker on with another count on the needle than planned, a paragraph each: how far off it is, the
 * new rhythm of every section that changes, and what the first row then puts right.
 */
export function replanText(plan: PickupPlan, again: Replan, voice: Pick<Voice, 'terms' | 'form'>): string[] {
  const off = again.onNeedle - again.planned;
  const marker = placeText(plan, again);
  const size = Math.abs(off);
  const head =
    off === 0
      ? `${marker} you have ${again.onNeedle}, as planned.`
      : `${marker} you have ${again.onNeedle} where ${again.planned} are planned: ${size} too ${off < 0 ? 'few' : 'many'}.`;
  const sections = again.sections.map(({ n, count, running, runs }) => {
    const rhythms = runs.map(({ edge, rhythm }) => {
      const planned = plan.edges[edge]!;
      const none = rhythm.every((run) => run.pick === 0);
      const said = none ? 'nothing' : rhythmText(rhythm, unitOf(plan, planned), voice);
      return `${edgeTitle(planned.piece, planned.measured.edge)}: ${said}`;
    });
    return `Section ${n}, ${stitchesText(count)} to make ${running}. ${rhythms.join('. ')}.`;
  });
  const row = rowOrRound(plan);
  const { firstRow, notes } = again;
  const end =
    firstRow.groups.length === 0
      ? `That makes ${again.picked} in all, and the first ${row} changes nothing.`
      : `That makes ${again.picked} in all. First ${row}${placed(plan, again)}: ${provedRow(firstRow)}.`;
  return [head, ...sections, end, ...notes.map((note) => rowNoteText(note, row))];
}

/** Where the pick-up asks for more than even spacing: `, in the rib`. */
function placed({ pickup }: PickupPlan, again: Replan): string {
  return pickup.firstRow ? `, ${placingText({ ...again, pickup })}` : '';
}

/** `At marker 3`, `At the start`: where the rest is planned again. */
export function placeText(plan: PickupPlan, { from, marker }: Pick<Replan, 'from' | 'marker'>): string {
  if (marker !== null) return marker === 0 ? 'At the start' : `At marker ${marker}`;
  return from >= plan.points.length ? 'At the end' : 'Here';
}

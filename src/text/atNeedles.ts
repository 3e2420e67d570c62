/** What stands in the view for a telephone beside the work. */
import type { NeedleStep, NeedleWork, PickupPlan, Replan, Resumed, Run } from '../pickup';
import { edgeTitle } from './edgeName';
import { firstRowText, provedRow } from './firstRow';
import { openingsLabel } from './labels';
import { rowNoteText } from './notes';
import { rowOrRound } from './rowOrRound';
import { everyPlace } from './places';
import { unitOf } from './sorts';
import type { Terms } from './terms';
import { capitalised, counted, listed, stitchesText, times } from './words';

export const AT_NEEDLES = {
  title: 'At the needles',
  leave: 'Leave',
  back: 'Back',
  done: 'Done',
  begin: 'Begin again',
  onNeedle: 'On the needle',
  then: 'Then',
  another: 'I have another count here',
  howMany: 'How many are on the needle?',
  fewer: 'One fewer',
  more: 'One more',
  putRight: 'How to put it right',
  cancel: 'Cancel',
  allDone: 'All picked up',
  turnsOff: 'This browser can’t keep the screen on: it may turn off while you knit.',
  notKept: 'This browser does not keep your place: it is lost when the page is closed.',
  wholeNumber: 'A whole number is needed here, of six figures at most.',
} as const;

/** What is done at a step, as a heading over its numbers: `Pick up`, on held stitches `Knit`. */
export function needleVerb(plan: PickupPlan, step: NeedleStep, { pickUp }: Terms): string {
  return isLive(plan, step) ? 'Knit' : capitalised(pickUp);
}

/** A step in one line of numbers: `3, skip 1, 5 times`, `4, skip 1, twice; then 3`, `12, skip none`. */
export function needleWords(plan: PickupPlan, step: NeedleStep): string {
  const { runs, count, from, to } = step;
  if (count === to - from && count > 1 && !isLive(plan, step)) return `${count}, skip none`;
  return runs.map(runText).join('; then ');
}

function runText({ pick, skip, times: n }: Run): string {
  const once = [...(pick > 0 ? [`${pick}`] : []), ...(skip > 0 ? [`skip ${skip}`] : [])].join(', ');
  return n === 1 ? once : `${once}, ${times(n)}`;
}

function isLive(plan: PickupPlan, { edge }: NeedleStep): boolean {
  return plan.edges[edge]!.unit === 'live';
}

/** Where a step lies: `Front, left neck curve`. */
export function needleEdge(plan: PickupPlan, { edge }: NeedleStep): string {
  const { piece, measured } = plan.edges[edge]!;
  return edgeTitle(piece, measured.edge);
}

/** How far a step reaches: `14 stitches from 18 rows`, `one from every bound-off stitch`. */
export function needleReach(plan: PickupPlan, step: NeedleStep, terms: Terms): string {
  const { edge, count, from, to } = step;
  const unit = unitOf(plan, plan.edges[edge]!);
  if (count === to - from && count > 1 && unit !== 'live')
    return capitalised(everyPlace(plan, plan.edges[edge]!, terms));
  const places = unit === 'place' ? counted(to - from, 'place') : openingsLabel(to - from, unit);
  return unit === 'live' ? places : `${stitchesText(count)} from ${places}`;
}

/** `Section 3 of 8`; empty where there are no markers. */
export function needleSection({ sections }: PickupPlan, { section }: NeedleStep): string {
  return sections.length < 2 ? '' : `Section ${section} of ${sections.length}`;
}

/** The marker that comes next: `Place marker 3 after this, at 41`, `Marker 3 comes at 41`, `The end comes at 108`. */
export function needleMarker({ plan, steps, at }: NeedleWork): string {
  const step = steps[at];
  if (!step) return '';
  const [now = 0] = step.markers;
  if (now > 0) {
    const names = step.markers.length === 1 ? `marker ${now}` : `markers ${listed(step.markers)}`;
    return `Place ${names} after this, at ${step.running}`;
  }
  const next = steps.slice(at).find(({ markers }) => markers.length > 0);
  return next ? `Marker ${next.markers[0]!} comes at ${next.running}` : `The end comes at ${plan.picked}`;
}

/** What is marked on the way for the corners of the band: `Mark stitch 112, at a corner`; mostly empty. */
export function needleCorner({ plan, steps, at }: NeedleWork): string {
  const step = steps[at];
  const { bandEdge } = plan;
  if (!step || !bandEdge || bandEdge.tooDeep) return '';
  const here = bandEdge.corners.flatMap(({ stitches, times: worked, point }) =>
    stitches.filter((n) => worked > 0 && n > step.running - step.count && n <= step.running).map((n) => ({ n, point })),
  );
  if (here.length === 0) return '';
  const marked = here.map(({ n }) => n).sort((a, b) => a - b);
  const where = here.every(({ point }) => point) ? 'the point of the V' : here.length > 1 ? 'corners' : 'a corner';
  return `Mark ${marked.length === 1 ? 'stitch' : 'stitches'} ${listed(marked)}, at ${where}`;
}

/** What comes after the present step, in a few words: `4, skip 1, twice`, `the first round`; empty at the end. */
export function needleNext({ plan, steps, at }: NeedleWork): string {
  const next = steps[at + 1];
  if (!next) return at < steps.length ? `the first ${rowOrRound(plan)}` : '';
  const words = needleWords(plan, next);
  return next.edge === steps[at]!.edge ? words : `${words}, on ${needleEdge(plan, next)}`;
}

/** `First round`, over what it does. */
export function needleRowTitle(plan: PickupPlan): string {
  return `First ${rowOrRound(plan)}`;
}

/** The first row in one line: its works, or that the count is right. */
export function needleRow({ firstRow }: PickupPlan): string {
  return firstRow.groups.length === 0 ? `${firstRow.to} is right: work them all` : provedRow(firstRow);
}

/** All is done: what is on the needle. */
export function needleEnd({ target }: PickupPlan): string {
  return `${stitchesText(target)} on the needle: go on with the band.`;
}

/** A step as a screen reader tells it. */
export function needleSaid(work: NeedleWork, terms: Terms): string {
  const { plan, steps, at } = work;
  const step = steps[at];
  if (!step)
    return at > steps.length
      ? `${AT_NEEDLES.allDone}. ${needleEnd(plan)}`
      : `${needleRowTitle(plan)}: ${needleRow(plan)}.`;
  const where = [needleEdge(plan, step), needleSection(plan, step)].filter((part) => part !== '').join(', ');
  const now = `${needleVerb(plan, step, terms)} ${needleWords(plan, step)}.`;
  const corner = needleCorner(work);
  const marked = corner === '' ? '' : ` ${corner}.`;
  return `${now} ${where}. ${step.running} on the needle then. ${needleMarker(work)}.${marked}`;
}

/** Under a number that is not as planned: `3 too few: 25 are planned`; as planned: `As planned`. */
export function needleOff(onNeedle: number, planned: number): string {
  const off = Math.abs(onNeedle - planned);
  return off === 0 ? 'As planned.' : `${off} too ${onNeedle < planned ? 'few' : 'many'}: ${planned} are planned here.`;
}

/** Where a miscount is made good: `In the next section`, `Over all that is left`. */
export function needleWay(again: Replan): string {
  if (again.way === 'rest') return 'Over all that is left';
  return again.marker === null ? 'In the rest of this section' : 'In the next section';
}

/** What a way of putting right does: the sections that change, then what the first row must do. */
export function needleWayText(plan: PickupPlan, again: Replan): string[] {
  const before = plan.points.slice(again.from);
  const changed = again.sections.flatMap(({ n, count }) => {
    const planned = before.filter((point) => point.section === n && point.n !== null).length;
    return planned === count
      ? []
      : [`${plan.sections.length < 2 ? 'The rest' : `Section ${n}`}: ${count} instead of ${planned}`];
  });
  const row = rowOrRound(plan);
  const end =
    again.firstRow.groups.length === 0
      ? `${again.picked} in all, as it should be`
      : `${again.picked} in all. First ${row}: ${firstRowText(again.firstRow)}, to ${again.firstRow.to}`;
  const said = [...(changed.length === 0 ? ['No section can change'] : changed), end].map((line) => `${line}.`);
  return [...said, ...again.notes.map((note) => rowNoteText(note, row))];
}

/** Why the view does not stand where it was left; empty where it does. */
export function resumedText(resumed: Resumed): string {
  const changed = 'The design has changed since you were here.';
  switch (resumed.kind) {
    case 'as-left':
      return '';
    case 'rest-changed':
      return `${changed} What you have picked up still fits; the rest is planned anew.`;
    case 'from-marker': {
      const { marker, onNeedle, planned } = resumed;
      const at = `You go on at marker ${marker} with ${onNeedle}`;
      return onNeedle === planned
        ? `${changed} ${at}.`
        : `${changed} ${at}, where ${planned} are planned now: the rest is planned to make up for it.`;
    }
    case 'lost': {
      const { marker, onNeedle } = resumed;
      const last = marker === 0 ? '' : `, past marker ${marker}`;
      return `${changed} You had ${onNeedle} on the needle${last}; that place is not in it any more, so this begins at the start.`;
    }
  }
}

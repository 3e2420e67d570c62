/** Sentences of the page: what happened, what is so, and what to do next. */
import type { MeasuredEdge } from '../shaping';
import type { FinishedWidth, PickupPlan, PlannedEdge, RatioChoice } from '../pickup';
import type { Units } from '../piece';
import type { LengthRead, Mm, NumberRead } from '../units';
import { edgeName, shownName } from './edgeName';
import { fabricLabel, gaugeLabel, shapeLabel } from './labels';
import { rowOrRound } from './rowOrRound';
import { byMultiple, lengthText, multipleText, plainNumber, stretchText, wantedText } from './numbers';
import { tallyText } from './sections';
import { startText } from './start';
import type { Terms } from './terms';
import type { Voice } from './voice';
import { capitalised, counted, rowsText, stitchesText } from './words';

type Fault = Extract<NumberRead | LengthRead, { ok: false }>['reason'];

/** Why what was typed is not taken, and what stays instead. */
export function refusedText(typed: string, fault: Fault, kept: string): string {
  const stays = kept === '' ? 'the field stays empty' : `${kept} stays`;
  switch (fault) {
    case 'empty':
      return `A number is needed here, so ${stays}.`;
    case 'not-a-number':
      return `“${typed}” is not a number, so ${stays}.`;
    case 'ambiguous':
      return `“${typed}” may be thousands or a decimal: write it with a point, or without a sign. Until then ${stays}.`;
    case 'unknown-unit':
      return `“${typed}” has a unit that is not known here: use cm, mm or in. Until then ${stays}.`;
  }
}

/** A number outside what the field can hold. */
export function outsideText(least: number, most: number, whole: boolean, kept: string): string {
  return neededText(whole ? 'A whole number' : 'A number', `${plainNumber(least, 2)} to ${plainNumber(most, 2)}`, kept);
}

/** A length outside what the field can hold. */
export function outsideLengthText(least: Mm, most: Mm, units: Units, kept: string): string {
  return neededText('A length', `${lengthText(least, units)} to ${lengthText(most, units)}`, kept);
}

function neededText(what: string, range: string, kept: string): string {
  return `${what} from ${range} is needed, so ${kept === '' ? 'the field stays empty' : `${kept} stays`}.`;
}

/** Under the count: `0.6% short of the 84.5 wanted; 21 × 4, a multiple of 4.` */
export function countText(plan: PickupPlan): string {
  const { band } = plan.pickup;
  const off = plan.stretch === null ? '' : stretchText(plan.stretch);
  const wanted = band.multiple === 1 ? wantedText(plan.wanted) : plainNumber(plan.wanted);
  const wantedPart =
    off === '' ? '' : off === 'exact' ? `Exactly the ${wanted} wanted` : `${wanted} wanted: ${plan.target} is ${off}`;
  const fits = plan.target >= band.plus && (plan.target - band.plus) % band.multiple === 0;
  const repeats =
    band.multiple === 1
      ? ''
      : fits
        ? `${byMultiple(plan.target, band.multiple, band.plus)}, ${multipleText(band.multiple, band.plus)}`
        : `not ${multipleText(band.multiple, band.plus)}`;
  return [wantedPart, repeats].filter((part) => part !== '').join('; ');
}

/** What to do next, in a sentence. */
export function nextText(plan: PickupPlan, { terms, hand }: Voice): string {
  const [first] = plan.edges;
  if (!first) return '';
  const way = hand === 'left' ? 'left to right' : 'right to left';
  return `Begin ${startText(first)}, right side facing, and ${terms.pickUpAndKnit} from ${way}.`;
}

/** How the first row ends a pick-up whose count is not yet right: `The first round then makes 112 of 108.` */
export function firstRowShort(plan: PickupPlan): string {
  const { from, to } = plan.firstRow;
  return from === to ? '' : `${stitchesText(from)} are picked up; the first ${rowOrRound(plan)} makes ${to} of them.`;
}

/** One of the fitting counts: `88, 4.2% over`. */
export function choiceText(count: number, stretch: number | null): string {
  return stretch === null ? `${count}` : `${count}, ${stretchText(stretch)}`;
}

/** A plain ratio as a choice: `3 of 4 gives 14, 2.8% short`. */
export function ratioText({ pick, of, count, stretch }: RatioChoice): string {
  const off = stretch === null ? '' : `, ${stretchText(stretch)}`;
  return `${pick} of ${of} gives ${count}${off}`;
}

/** The size of an edge: `curved, 9 stitches × 14 rows, 6.5 cm`. */
export function edgeFacts(edge: MeasuredEdge, joinMm: number | null, units: Units): string {
  const counts = [
    ...(edge.stitches > 0 ? [stitchesText(edge.stitches)] : []),
    ...(edge.rows > 0 ? [rowsText(edge.rows)] : []),
  ].join(' × ');
  const lengths = edge.hasGauge
    ? joinMm === null || Math.abs(joinMm - edge.edgeMm) < 0.05
      ? `, ${lengthText(edge.edgeMm, units)} long`
      : `, ${lengthText(edge.edgeMm, units)} along the edge, ${lengthText(joinMm, units)} along the join`
    : '';
  return `${capitalised(shapeLabel(edge.shape))}, ${counts}${lengths}.`;
}

/** Length to the tape: how a measured length is shown to be the knitter's own. */
export function tapeText(edge: PlannedEdge, units: Units): string {
  if (edge.measuredMm === null || edge.edgeMm === null) return '';
  return `By your tape ${lengthText(edge.measuredMm, units)}; the drawing has ${lengthText(edge.edgeMm, units)}.`;
}

/** What a piece shows once its selvages are turned in: `34.5 cm of 35.5 cm, 1 stitch turned in on each …`. */
export function finishedText({ stitches, taken, widthMm }: FinishedWidth, units: Units): string {
  const across = widthMm === null ? stitchesText(stitches - taken) : lengthText(widthMm, units);
  const turned = taken === 0 ? 'nothing is turned in' : `${counted(taken, 'stitch', 'stitches')} turned in`;
  return `Finished width ${across}, ${turned} of ${stitchesText(stitches)}.`;
}

/** The gist of the band, beside its closed panel. */
export function bandGist(plan: PickupPlan, { terms, units }: Voice): string {
  const { fabric, rows } = plan.pickup.band;
  const gauge = plan.bandGauge ? gaugeLabel(plan.bandGauge, units) : `no ${terms.gauge}`;
  const depth = rows === undefined ? '' : `${counted(rows, rowOrRound(plan))} of `;
  return `${depth}${fabricLabel(fabric, terms)}, ${gauge}`;
}

/** The gist of the sections: `6 of 14`. */
export function sectionsGist(plan: PickupPlan): string {
  return plan.sections.length < 2 ? 'none' : tallyText(plan.sections.map((section) => section.count));
}

export function gaugesGist(pieces: readonly { readonly name: string }[]): string {
  return pieces.map((piece) => shownName(piece.name)).join(', ');
}

export function gaugeHeading({ gauge }: Terms): string {
  return capitalised(gauge);
}

/** What a screen reader hears once a plan has changed. */
export function planned(plan: PickupPlan): string {
  const off = plan.stretch === null ? '' : `, ${stretchText(plan.stretch)}`;
  return `${shownName(plan.pickup.name)}: ${stitchesText(plan.target)}${off}.`;
}

export const SAID = {
  undone: 'Undone.',
  redone: 'Made again.',
  nothingToUndo: 'There is nothing to undo.',
  nothingToRedo: 'There is nothing to make again.',
  stale: 'The drawing still shows the last plan that could be made.',
  oneFile: 'Several files were dropped; only the first one was opened.',
  pasted: 'What was pasted',
  noFile: 'What was dropped is not a file: drop a design file that ends in .edgewise.json.',
  partMissing: 'This part could not be fetched: check the connection, then close it and open it again.',
  sectionCounts: 'Give the counts of the sections with commas between, such as 14, 13, 14.',
} as const;

export function notPickedText(): string {
  return 'Nothing is picked up here.';
}

/** An edge that differs from its mirror image: `right neck curve, its mirror image, has 14.` */
export function twinText(twin: PlannedEdge, units: Units): string {
  const tape = twin.measuredMm === null ? '' : ` and is ${lengthText(twin.measuredMm, units)} by your tape`;
  return `${edgeName(twin.measured.edge)}, its mirror image, has ${twin.count}${tape}.`;
}

export function sameOnText(twin: PlannedEdge): string {
  return `The same on ${edgeName(twin.measured.edge)}`;
}

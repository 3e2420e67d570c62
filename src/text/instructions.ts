import type { PickupPlan, PlannedEdge } from '../pickup';
import { abbreviationsText } from './abbreviations';
import { bandCornersText } from './bandCorners';
import { buttonholesText } from './buttonholes';
import { edgeTitle, shownName } from './edgeName';
import { placingText, provedRow } from './firstRow';
import { fabricLabel, gaugeLabel } from './labels';
import { needleText } from './needle';
import { rowOrRound } from './rowOrRound';
import { byMultiple, multipleText, percentText } from './numbers';
import { everyPlace, placesText } from './places';
import { unitOf } from './sorts';
import { rhythmText } from './rhythm';
import { sectionsText } from './sections';
import { startText } from './start';
import type { Voice } from './voice';
import { capitalised, counted, stitchesText } from './words';

/**
 * The written instructions of a pick-up, a paragraph each. Long: how to begin, where the needle goes, an edge each,
 * the total, the markers, the first row or round, what follows it, its corners and free edge. Short: the same counts and
 * rhythms, without the reasons. The abbreviations that either uses are explained at the end.
 */
export function instructions(plan: PickupPlan, voice: Voice): string[] {
  const paragraphs = workText(plan, voice);
  const explained = abbreviationsText(paragraphs, voice.terms);
  return explained === '' ? paragraphs : [...paragraphs, explained];
}

function workText(plan: PickupPlan, voice: Voice): string[] {
  const edges = plan.edges.map((edge) => edgeLine(plan, edge, voice));
  const sections = sectionsText(plan, voice);
  const holes = buttonholesText(plan, voice);
  const corners = bandCornersText(plan, voice);
  if (voice.form === 'short') {
    const { terms } = voice;
    const way = plan.pickup.joined ? 'in the round' : 'flat';
    return [
      `${shownName(plan.pickup.name)}, ${way}: ${terms.pickUpShort} ${stitchesText(plan.picked)}.`,
      ...edges,
      ...(sections === '' ? [] : [sections]),
      firstRowLine(plan, voice),
      ...(holes === '' ? [] : [holes]),
      ...corners,
    ];
  }
  return [
    beginning(plan, voice),
    needleParagraph(plan, voice.terms),
    ...edges,
    totalLine(plan),
    ...(sections === '' ? [] : [sections]),
    firstRowLine(plan, voice),
    ...(holes === '' ? [] : [holes]),
    ...bandLine(plan, voice),
    ...corners,
  ];
}

/** Where the needle goes, as one paragraph of the instructions. */
export function needleParagraph(plan: PickupPlan, terms: Voice['terms']): string {
  return `Where the needle goes. ${needleText(plan, terms).join('. ')}.`;
}

function beginning(plan: PickupPlan, voice: Voice): string {
  const { terms, units, hand } = voice;
  const needle = plan.bandGauge
    ? `a needle that gives the band's ${terms.gauge} (${gaugeLabel(plan.bandGauge, units)})`
    : 'the needle for the band';
  const way = hand === 'left' ? 'from left to right' : 'from right to left';
  const first = plan.edges[0];
  const start = first ? `, beginning ${startText(first)}` : '';
  const work = plan.pickup.joined
    ? 'Join to work in the round and mark the beginning of the round.'
    : 'Work the band flat, in rows.';
  const all = `${terms.pickUpAndKnit} ${stitchesText(plan.picked)} along ${edgesCounted(plan)}, working ${way}`;
  return `${shownName(plan.pickup.name)}. With the right side facing and ${needle}${start}, ${all}. ${work}`;
}

function edgesCounted(plan: PickupPlan): string {
  const [only] = plan.edges;
  return plan.edges.length === 1 && only ? edgeTitle(only.piece, only.measured.edge) : `${plan.edges.length} edges`;
}

/** `Front, neck left: pick up and knit 23 from 33 rows: pick up 2, skip 1, 3 times; then …`. */
export function edgeLine(plan: PickupPlan, edge: PlannedEdge, voice: Pick<Voice, 'terms' | 'form'>): string {
  const { terms, form } = voice;
  const title = `${edgeTitle(edge.piece, edge.measured.edge)}${partText(edge)}`;
  const places = placesText(plan, edge, terms);
  if (edge.count === 0) return `${title}: nothing from ${places}.`;
  const rhythm = rhythmText(edge.rhythm, unitOf(plan, edge), voice);
  const live = edge.unit === 'live';
  const whole = edge.rhythm.every((run) => run.skip === 0);
  if (form === 'short') return `${title}: ${edge.count} from ${places}: ${rhythm}.`;
  const verb = live ? 'knit' : terms.pickUpAndKnit;
  if (!whole) return `${title}: ${verb} ${edge.count} from ${places}: ${rhythm}.`;
  return live ? `${title}: knit the ${places}.` : `${title}: ${verb} ${edge.count}, ${everyPlace(plan, edge, terms)}.`;
}

/** A stretch that is a part of its edge says which. */
function partText({ stretch: { part } }: PlannedEdge): string {
  const [from, to] = part;
  return from === 0 && to === 1 ? '' : ` (from ${wholePercent(from)} to ${wholePercent(to)} of its length)`;
}

function wholePercent(share: number): string {
  return percentText(share).replace('.0%', '%');
}

function totalLine(plan: PickupPlan): string {
  const { band } = plan.pickup;
  const all = `${capitalised(stitchesText(plan.picked))} in all`;
  if (band.multiple === 1 || plan.picked !== plan.target) return `${all}.`;
  const fits = plan.picked >= band.plus && (plan.picked - band.plus) % band.multiple === 0;
  const repeats = fits ? `${byMultiple(plan.picked, band.multiple, band.plus)}, ` : 'not ';
  return `${all}: ${repeats}${multipleText(band.multiple, band.plus)}.`;
}

/** The first row or round, written out with its proof, or that nothing changes in it. */
export function firstRowLine(plan: PickupPlan, { form }: Voice): string {
  const { firstRow } = plan;
  const row = rowOrRound(plan);
  if (firstRow.groups.length === 0) {
    if (form === 'short') return `First ${row}: no change, ${firstRow.to}.`;
    return `First ${row}: the count is right, so work all ${stitchesText(firstRow.to)} in the band's pattern.`;
  }
  const said = provedRow(firstRow);
  if (form === 'short') return `First ${row}: ${said}.`;
  const side = inRib(plan) && !firstRow.joined ? ', the wrong side facing' : '';
  const plain = inRib(plan)
    ? 'Work every stitch as the rib has it.'
    : "Here k is any plain stitch, worked as the band's pattern has it.";
  return `First ${row}${side}, with ${changeText(plan)}: ${said}. ${plain}`;
}

function inRib({ firstRow: { groups } }: PickupPlan): boolean {
  return groups.some(({ works }) => works.some(({ as }) => as !== undefined));
}

function changeText(plan: PickupPlan): string {
  const { firstRow, points } = plan;
  const { from, to } = firstRow;
  const change = counted(Math.abs(to - from), to > from ? 'increase' : 'decrease');
  const holes = points.filter(({ n, second, kind }) => n !== null && second && (kind === 'row' || kind === 'stitch'));
  return holes.length > 0 && from - to === holes.length
    ? `${change} to close the holes at the steps`
    : `${change} ${placingText(plan)}`;
}

function bandLine(plan: PickupPlan, { terms }: Voice): string[] {
  const { rows, fabric } = plan.pickup.band;
  if (rows === undefined || rows < 1) return [];
  const fitting = counted(rows, rowOrRound(plan));
  const shaped = plan.bandEdge?.tooDeep === false && plan.bandEdge.corners.some(({ times }) => times > 0);
  const corners = shaped ? ', shaping its corners,' : ',';
  const on = `${fabricLabel(fabric, terms)} on ${stitchesText(plan.target)}`;
  return [`Work ${fitting} of ${on}${corners} then ${terms.bindOff}.`];
}

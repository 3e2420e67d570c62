import type { PickupPlan } from '../pickup';
import type { HandoutBlock, HandoutVersion } from '../piece';
import type { Gauge, Mm } from '../units';
import { edgeTitle, shownName } from './edgeName';
import { edgeSum } from './sum';
import { fabricLabel, gaugeLabel } from './labels';
import { lengthText, multipleText, plainNumber } from './numbers';
import { rowOrRound } from './rowOrRound';
import { totalSum } from './totalSum';
import type { Voice } from './voice';
import { capitalised, counted, listed, stitchesText } from './words';

/** Headings of a handout's blocks; none over the title, the diagram and the ruler. */
export const HANDOUT_HEADINGS: Readonly<Record<HandoutBlock, string>> = {
  title: '',
  diagram: '',
  edges: 'Edge by edge',
  sections: 'Section by section',
  sum: 'How the numbers come about',
  needle: 'Where the needle goes',
  instructions: 'In words',
  'first-row': 'The first row',
  band: 'The band',
  gauges: 'At other gauges',
  strips: 'Practice strips',
  abbreviations: 'Abbreviations',
  ruler: '',
};

/** The heading of a block in these terms, of a band worked in rows or in rounds. */
export function handoutHeading(
  block: HandoutBlock,
  { terms }: Pick<Voice, 'terms'>,
  row: 'row' | 'round' = 'row',
): string {
  if (block === 'first-row') return `The first ${row}`;
  return block === 'gauges' ? `At other ${terms.gauge === 'tension' ? 'tensions' : 'gauges'}` : HANDOUT_HEADINGS[block];
}

export const HANDOUT_COLUMNS = {
  edge: 'edge',
  stitches: 'stitches',
  rows: 'rows',
  length: 'length',
  places: 'places',
  wanted: 'wanted',
  count: 'pick up',
  from: 'from',
  section: 'section',
  here: 'here',
  running: 'in all',
  done: 'done',
  total: 'in all',
  after: 'after the first row',
} as const;

/** The last line of the table of edges. */
export function edgesTableHead(edges: number): string {
  return `In all, from ${counted(edges, 'edge')}`;
}

/** What stands over the boxes of an exercise. */
export const EXERCISE = {
  name: 'Name',
  date: 'Date',
  diagram: 'Every ring is a place where a stitch can be picked up. Fill in those that you use, and draw the markers.',
  sum: 'For every edge: length × stitches to the unit, rounded to a whole stitch.',
  instructions: 'Write the instructions in your own words:',
} as const;

const VERSION_LINES: Readonly<Record<HandoutVersion, string>> = {
  sheet: '',
  exercise: 'Exercise',
  answers: 'Answers',
};

export interface TitleWords {
  readonly title: string;
  readonly lines: readonly string[];
}

/** What stands at the head of a handout: the design, the pick-up with its count, the gauges. */
export function handoutTitle(design: string, plan: PickupPlan, version: HandoutVersion, voice: Voice): TitleWords {
  const { terms, units } = voice;
  const [first] = plan.edges;
  const gauge = first?.piece.gauge;
  const band = plan.bandGauge;
  const same = band !== null && (['stitches', 'rows', 'over'] as const).every((of) => gauge?.[of] === band[of]);
  const counts = version === 'exercise' ? '' : `: ${stitchesText(plan.target)}`;
  const way = plan.pickup.joined ? 'in the round' : 'flat';
  return {
    title: [VERSION_LINES[version], shownName(design)].filter((part) => part !== '').join(': '),
    lines: [
      `${shownName(plan.pickup.name)}${counts}, worked ${way}`,
      ...(gauge
        ? [`${capitalised(terms.gauge)} of the ${same ? 'piece and the band' : 'piece'}: ${gaugeLabel(gauge, units)}`]
        : []),
      ...(band && !same ? [`${capitalised(terms.gauge)} of the band: ${gaugeLabel(band, units)}`] : []),
    ],
  };
}

/** The sum of every edge and that of the total, a line each. */
export function handoutSums(plan: PickupPlan, voice: Pick<Voice, 'terms' | 'units'>): string[] {
  const edges = plan.edges.map((edge) => `${edgeTitle(edge.piece, edge.measured.edge)}: ${edgeSum(plan, edge, voice)}`);
  return [...edges, `In all: ${totalSum(plan)}`];
}

/** What the band is, as far as it is known before anything is counted. */
export function handoutBand(plan: PickupPlan, version: HandoutVersion, { terms }: Pick<Voice, 'terms'>): string[] {
  const { fabric, rows, multiple, plus } = plan.pickup.band;
  const depth = rows === undefined || rows < 1 ? '' : `, ${counted(rows, rowOrRound(plan))} deep`;
  const repeat = multiple === 1 ? '' : `, on ${multipleText(multiple, plus)}`;
  const on = version === 'exercise' || plan.target === 0 ? '' : ` It is worked on ${stitchesText(plan.target)}.`;
  return [`${capitalised(fabricLabel(fabric, terms))}${depth}${repeat}.${on}`];
}

/** Beside the bar of 100 mm and the one of 4 inches. */
export const RULER_WORDS = {
  check: 'Printed in true size both bars measure what they say. If not, print again at 100%, not fitted to the page.',
  mm: '100 mm',
  inch: '4 in',
} as const;

/** At the foot of a page. */
export function footText(design: string, page: number, pages: number): { left: string; right: string } {
  return { left: shownName(design), right: pages === 1 ? '' : `${page} of ${pages}` };
}

/** Over a part of the diagram in the size of the fabric: `Front in true size, part B2: goes on in B1 and C2, cross on cross.` */
export function tileText(of: string, part: string, beyond: readonly string[]): string {
  const which = part === '' ? '' : `, part ${part}`;
  return `${of} in true size${which}${beyond.length === 0 ? '.' : `: goes on in ${listed(beyond)}, cross on cross.`}`;
}

/** After the scale of the diagram, where its edges are shown once more. */
export function closerText(scale: number, parts: number): string {
  const size = scale > 0.999 && scale < 1.001 ? 'in true size' : `at ${ratioText(scale)}`;
  const cut = parts === 1 ? '' : `, a long one in ${parts} parts from the top down`;
  return `Under it are the edges ${size}${cut}.`;
}

function ratioText(scale: number): string {
  // Near true size a tenth would say that it is.
  const shown = (value: number) => plainNumber(value, value < 2 ? 2 : 1);
  return scale < 1 ? `1 to ${shown(1 / scale)}` : `${shown(scale)} to 1`;
}

export function tooManyTiles(parts: number, most: number): string {
  return `In true size the diagram would take ${parts} pages, more than the ${most} that are printed: it is fitted to the page instead.`;
}

/** How large the diagram is drawn: `The diagram is drawn at 1 to 3.2.` */
export function scaleText(scale: number): string {
  const isTrue = scale > 0.999 && scale < 1.001;
  return isTrue ? 'The diagram is drawn in true size.' : `The diagram is drawn at ${ratioText(scale)}.`;
}

/** Over a column of the table of gauges: `22 × 30`, as gauges are said for short, to 10 cm or 4 in. */
export function gaugeHead({ stitches, rows, over }: Gauge, { units }: Pick<Voice, 'units'>): string {
  const said = units === 'in' ? 101.6 : 100;
  const count = (number: number) => plainNumber((number * said) / over, 2);
  return `${count(stitches)} × ${count(rows)}`;
}

/** Over a practice strip. */
export function stripText(rows: number, mm: Mm | null, gauge: Gauge, voice: Pick<Voice, 'units'>): string {
  const length = mm === null ? '' : `, ${lengthText(mm, voice.units)}`;
  return `${counted(rows, 'row')}${length}, at ${gaugeLabel(gauge, voice.units)}.`;
}

export function stripAnswer(count: number): string {
  return `Pick up ${stitchesText(count)}.`;
}

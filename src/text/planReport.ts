import type { DesignPlan, PickupPlan, PlannedEdge } from '../pickup';
import { checkLines } from './checkReport';
import { edgeNames, edgeTitle, shownName, type EdgeNames } from './edgeName';
import { instructions } from './instructions';
import { fabricLabel, gaugeLabel, HEADINGS, rateLabel } from './labels';
import { rowOrRound } from './rowOrRound';
import { noteText } from './notes';
import { fixedNumber, lengthText, multipleText, plainNumber, stretchText } from './numbers';
import { placesText } from './places';
import { edgeSum } from './sum';
import { totalSum } from './totalSum';
import { displayWidth, tableText, type Column } from './table';
import { voiceOf, type Voice } from './voice';
import { capitalised, listed, stitchesText } from './words';
import { wrapped } from './wrap';

const EDGE_COLUMNS: readonly Column[] = [
  { head: HEADINGS.edge, align: 'left' },
  { head: HEADINGS.openings, align: 'left' },
  { head: HEADINGS.length, align: 'right' },
  { head: HEADINGS.rate, align: 'left' },
  { head: HEADINGS.wanted, align: 'right' },
  { head: HEADINGS.pickUp, align: 'right' },
  { head: HEADINGS.stretch, align: 'right' },
];

const SECTION_COLUMNS: readonly Column[] = [
  { head: HEADINGS.section, align: 'right' },
  { head: HEADINGS.stitches, align: 'right' },
  { head: HEADINGS.running, align: 'right' },
  { head: HEADINGS.length, align: 'right' },
];
const AFTER_COLUMN: Column = { head: HEADINGS.onNeedle, align: 'right' };

/**
 * The plan in plain text: for each pick-up its total and the choices beside it, a table of its edges, the sums, its
 * sections, the written instructions, stated counts and notes.
 */
export function planReport(plan: DesignPlan, changes: Partial<Voice> = {}, pickupId?: string): string {
  const voice = voiceOf(plan.design, changes);
  const names = edgeNames(plan.design);
  const chosen = plan.pickups.filter(({ pickup }) => pickupId === undefined || pickup.id === pickupId);
  const finished = finishedLines(plan, voice);
  const parts = [shownName(plan.design.name), ...chosen.map((pickup) => pickupText(pickup, voice, names))];
  return [...parts, ...(finished.length > 0 ? [block(HEADINGS.finished, finished)] : [])].join('\n\n') + '\n';
}

function pickupText(plan: PickupPlan, voice: Voice, names: EdgeNames): string {
  const stated = checkLines(plan, voice, names);
  const parts = [
    [underlined(`${shownName(plan.pickup.name)}: ${stitchesText(plan.target)}`), ...headLines(plan, voice)].join('\n'),
    tableText(EDGE_COLUMNS, [...plan.edges.map((edge) => edgeCells(plan, edge, voice)), totalCells(plan)]),
    block(HEADINGS.sums, [
      ...plan.edges.map((edge) => `${edgeTitle(edge.piece, edge.measured.edge)}: ${edgeSum(plan, edge, voice)}`),
      `${HEADINGS.inAll}: ${totalSum(plan)}`,
    ]),
    ...(plan.sections.length > 1 ? [sectionTable(plan, voice)] : []),
    `${HEADINGS.instructions}\n\n${instructions(plan, voice)
      .map((text) => wrapped(`  ${text}`, undefined, '  '))
      .join('\n\n')}`,
    ...(stated.length > 0 ? [`${HEADINGS.check}\n\n${stated.join('\n')}`] : []),
    ...(plan.notes.length > 0
      ? [
          block(
            HEADINGS.notes,
            plan.notes.map((note) => noteText(note, names, voice, rowOrRound(plan))),
          ),
        ]
      : []),
  ];
  return parts.join('\n\n');
}

function underlined(text: string): string {
  return `${text}\n${'='.repeat(displayWidth(text))}`;
}

function block(heading: string, lines: readonly string[]): string {
  return [heading, '', ...lines.map((line) => wrapped(`  ${line}`, undefined, '    '))].join('\n');
}

function headLines(plan: PickupPlan, { terms, units }: Voice): string[] {
  const { band, joined } = plan.pickup;
  const gauge = plan.bandGauge ? `, ${terms.gauge} ${gaugeLabel(plan.bandGauge, units)}` : '';
  const drawIn = band.drawIn === 0 ? '' : `, drawn in by ${plainNumber(band.drawIn)}%`;
  const fabric = `${fabricLabel(band.fabric, terms)} worked ${joined ? 'in the round' : 'flat'}${gauge}${drawIn}`;
  const repeat = band.multiple === 1 ? '' : `; ${multipleText(band.multiple, band.plus)}`;
  const choices = plan.choices.map(({ count, stretch }) =>
    stretch === null ? `${count}` : `${count} (${stretchText(stretch)})`,
  );
  const beside = band.multiple === 1 || choices.length < 2 ? [] : [`Counts that fit: ${listed(choices, 'or')}.`];
  return [...[`${capitalised(fabric)}${repeat}.`, ...beside].map((line) => wrapped(line))];
}

function edgeCells(plan: PickupPlan, edge: PlannedEdge, { terms, units }: Voice): string[] {
  return [
    edgeTitle(edge.piece, edge.measured.edge),
    placesText(plan, edge, terms),
    edge.lengthMm === null ? '' : lengthText(edge.lengthMm, units),
    rateLabel(edge.rate),
    edge.wanted === null ? '' : fixedNumber(edge.wanted),
    `${edge.count}`,
    edge.changed === null ? '' : stretchText(edge.changed),
  ];
}

function totalCells(plan: PickupPlan): string[] {
  const stretch = plan.wanted > 0 ? stretchText(plan.picked / plan.wanted - 1) : '';
  return [HEADINGS.inAll, '', '', '', fixedNumber(plan.wanted), `${plan.picked}`, stretch];
}

function sectionTable(plan: PickupPlan, { units }: Voice): string {
  const columns = plan.picked === plan.target ? SECTION_COLUMNS : [...SECTION_COLUMNS, AFTER_COLUMN];
  const rows = plan.sections.map(({ n, count, running, lengthMm, after }) => [
    `${n}`,
    `${count}`,
    `${running}`,
    lengthMm === null ? '' : lengthText(lengthMm, units),
    `${after}`,
  ]);
  return tableText(columns, rows);
}

/** The finished widths, a line each; only pieces whose side edges lose a selvage to a pick-up are worth a word. */
export function finishedLines(plan: DesignPlan, { terms, units }: Voice): string[] {
  return plan.finished
    .filter(({ taken }) => taken > 0)
    .map(({ piece, stitches, taken, widthMm }) => {
      const name = shownName(plan.design.pieces.find(({ id }) => id === piece)?.name ?? piece);
      const width = widthMm === null ? '' : `, ${lengthText(widthMm, units)} across`;
      return `${name}: ${plainNumber(stitches - taken)} of ${stitchesText(stitches)} show${width}; the ${terms.selvages} picked up along turn to the inside.`;
    });
}

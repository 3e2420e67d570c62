import type { PickupPlan, PlannedEdge, Section } from '../pickup';
import { roundHalfDown, roundHalfUp } from '../units';
import { cornerLines, freeEdgeLines } from './bandBoard';
import { edgeTitle, shownName } from './edgeName';
import { buttonholesBoard } from './buttonholesBoard';
import { firstRowProof, firstRowText } from './firstRow';
import { shownOperands } from './factors';
import { gaugeLabel, openingLabel, verdictClause } from './labels';
import { lengthLines } from './lengthBoard';
import { rowOrRound } from './rowOrRound';
import { byMultiple, fixedNumber, multipleText, plainNumber, stretchText } from './numbers';
import { placesText } from './places';
import { edgeSum } from './sum';
import { totalSum } from './totalSum';
import type { Voice } from './voice';
import { capitalised, rowsText, stitchesText } from './words';

/** A number of a plan whose arithmetic is asked for. Edges and sections by their place in the plan, from 0. */
export type Asked =
  | { readonly of: 'length' | 'places' | 'wanted' | 'count' | 'stretch'; readonly edge: number }
  | { readonly of: 'ratio'; readonly edge: number; readonly ratio: number }
  | { readonly of: 'total' | 'all-wanted' | 'first-row' | 'gaps' | 'free-edge' }
  | { readonly of: 'corner'; readonly corner: number }
  | { readonly of: 'choice'; readonly choice: number }
  | { readonly of: 'section' | 'running' | 'after'; readonly section: number };

/** One number with the arithmetic behind it, as a teacher puts it on the board: a heading, a line for each step. */
export interface Board {
  /** What is reckoned, by itself: `Left neck curve: why 14`. */
  readonly what: string;
  /** The same where its edge or pick-up is named already: `Why 14`. */
  readonly short: string;
  readonly lines: readonly string[];
}

type Saying = Pick<Voice, 'terms' | 'units'>;

/** The board for a number of a plan; null where there is none, or nothing to reckon. */
export function boardOf(plan: PickupPlan, asked: Asked, voice: Saying): Board | null {
  const found = 'edge' in asked ? edgeBoard(plan, asked, voice) : planBoard(plan, asked, voice);
  return found && found.lines.length > 0 ? found : null;
}

/**
 * All that stands behind one edge of the pick-up: its length, its places, what is wanted, what it gets. A line that
 * stood on one board is not said again on the next.
 */
export function edgeBoards(plan: PickupPlan, edge: number, voice: Saying): Board[] {
  const byLength = plan.edges[edge]?.rate.kind === 'length';
  const kinds = ['length', 'places', byLength ? 'count' : 'wanted', byLength ? 'wanted' : 'count', 'stretch'] as const;
  const said = new Set<string>();
  return kinds.flatMap((of) => {
    const board = boardOf(plan, { of, edge }, voice);
    const lines = board?.lines.filter((line) => !said.has(line)) ?? [];
    for (const line of lines) said.add(line);
    return board && lines.length > 0 ? [{ ...board, lines }] : [];
  });
}

function edgeBoard(plan: PickupPlan, asked: Extract<Asked, { readonly edge: number }>, voice: Saying): Board | null {
  const edge = plan.edges[asked.edge];
  if (!edge) return null;
  const title = edgeTitle(edge.piece, edge.measured.edge);
  const board = (short: string, lines: readonly string[]): Board => ({
    what: `${title}: ${short}`,
    short: capitalised(short),
    lines,
  });
  switch (asked.of) {
    case 'length':
      return board('length', lengthLines(plan, edge, voice));
    case 'places':
      return board('places', placeLines(plan, edge, voice));
    case 'wanted':
      return board('wanted', wantedLines(plan, edge, voice));
    case 'count':
      return board(`why ${edge.count}`, countLines(plan, edge, voice));
    case 'stretch':
      return board('off by', stretchLines(plan, edge.count, edge.wanted));
    case 'ratio': {
      const ratio = edge.ratios[asked.ratio];
      if (!ratio) return null;
      const { pick, of, count } = ratio;
      return board(`${pick} of every ${of}`, [
        shareLine(edge.openings, pick, of),
        ...stretchLines(plan, count, edge.wanted),
      ]);
    }
  }
}

function placeLines(plan: PickupPlan, edge: PlannedEdge, { terms }: Saying): string[] {
  const lines = [`${capitalised(placesText(plan, edge, terms))}.`];
  const { unit, rows, openings } = edge;
  if ((unit === 'chain' || unit === 'ridge') && rows === 2 * openings) {
    lines.push(`One ${openingLabel(unit)} to every two rows: ${rows} ÷ 2 = ${openings}`);
  } else if (unit === 'row') {
    lines.push(`One place to each of ${rowsText(rows)}${openings > rows ? ', and those of the steps' : ''}.`);
  }
  return lines;
}

function wantedLines(plan: PickupPlan, edge: PlannedEdge, voice: Saying): string[] {
  if (edge.wanted === null || plan.bandGauge === null) return [];
  return [
    ...bandLines(plan, voice),
    edgeSum(plan, { ...edge, rate: { kind: 'length' }, count: roundHalfDown(edge.wanted) }, voice),
  ];
}

function bandLines({ bandGauge, pickup }: PickupPlan, { units }: Saying): string[] {
  if (bandGauge === null) return [];
  const { drawIn } = pickup.band;
  const left = plainNumber(1 - drawIn / 100, 4);
  return [
    `The band: ${gaugeLabel(bandGauge, units)}.`,
    ...(drawIn > 0 ? [`Drawn in by ${plainNumber(drawIn)}%: ${left} of it is left.`] : []),
  ];
}

function countLines(plan: PickupPlan, edge: PlannedEdge, voice: Saying): string[] {
  const { rate, wanted, count } = edge;
  const byLength = rate.kind === 'length' && wanted !== null;
  const lines = [...(byLength ? bandLines(plan, voice) : []), edgeSum(plan, edge, voice)];
  if (!byLength && wanted !== null && fixedNumber(wanted) !== fixedNumber(count)) {
    lines.push(`By length ${plainNumber(wanted)} would be wanted.`);
  }
  if (byLength && count !== roundHalfDown(wanted)) {
    lines.push('The total is shared out so that all edges together are off by as little as can be.');
  }
  const twin = plan.edges[edge.twin];
  if (twin && twin !== edge && twin.count === count) {
    lines.push(`Its mirror image, ${edgeTitle(twin.piece, twin.measured.edge)}, gets the same.`);
  }
  return lines;
}

function shareLine(openings: number, pick: number, of: number): string {
  const exact = (openings * pick) / of;
  const so = Number.isInteger(exact) ? '' : `, so ${roundHalfDown(exact)}`;
  return `${openings} × ${pick}/${of} = ${plainNumber(exact, 2)}${so}`;
}

/** `14 ÷ 14.4 = 0.972`, what that is in percent, and how it will lie. */
function stretchLines(plan: PickupPlan, count: number, wanted: number | null): string[] {
  if (wanted === null || wanted <= 0) return [];
  const stretch = count / wanted - 1;
  const [, shown] = shownOperands([count, wanted], (a = 0, b = 1) => a / b, 3);
  const lines = [`${count} ÷ ${shown} = ${fixedNumber(count / wanted, 3)}: ${stretchText(stretch)}`];
  const { slight, strong } = plan.pickup.flat;
  const percent = Math.abs(stretch) * 100;
  const [within, clause] =
    percent <= slight + 1e-9
      ? [`within ${plainNumber(slight)}%`, verdictClause('lies flat')]
      : percent <= strong + 1e-9
        ? [`within ${plainNumber(strong)}%`, verdictClause(stretch < 0 ? 'slightly tight' : 'slightly loose')]
        : [`beyond ${plainNumber(strong)}%`, verdictClause(stretch < 0 ? 'will pucker' : 'will ruffle')];
  return [...lines, `${capitalised(within)} it ${clause}.`];
}

function planBoard(plan: PickupPlan, asked: Exclude<Asked, { readonly edge: number }>, voice: Saying): Board | null {
  const board = (short: string, lines: readonly string[]): Board => ({
    what: `${shownName(plan.pickup.name)}: ${short}`,
    short: capitalised(short),
    lines,
  });
  switch (asked.of) {
    case 'total':
      return board(`why ${plan.target}`, totalLines(plan));
    case 'all-wanted':
      return board('wanted', wantedSum(plan));
    case 'first-row': {
      const { firstRow } = plan;
      if (firstRow.groups.length === 0) return null;
      return board(`first ${rowOrRound(plan)}`, [
        `${firstRow.from} to ${firstRow.to}`,
        firstRowText(firstRow),
        firstRowProof(firstRow),
      ]);
    }
    case 'gaps':
      return board('between the buttonholes', buttonholesBoard(plan));
    case 'free-edge': {
      const { bandEdge: free } = plan;
      return free && board('free edge', freeEdgeLines(plan, free, voice));
    }
    case 'corner': {
      const { bandEdge: free } = plan;
      const corner = free?.corners[asked.corner];
      return free && corner ? board(`why ${corner.times} each side`, cornerLines(plan, free, corner, voice)) : null;
    }
    case 'choice': {
      const choice = plan.choices[asked.choice];
      return choice ? board(stitchesText(choice.count), choiceLines(plan, choice.count)) : null;
    }
    default: {
      const section = plan.sections[asked.section];
      return section ? sectionBoard(plan, asked.of, section, asked.section) : null;
    }
  }
}

function totalLines(plan: PickupPlan): string[] {
  const { target, multiple, plus } = { ...plan.pickup, ...plan.pickup.band };
  const lines = [capitalised(totalSum(plan))];
  if (target !== null) lines.push(`${target}, as the pattern demands.`);
  else if (multiple > 1) {
    for (const { count, stretch } of plan.choices) {
      const off = stretch === null ? '' : `, ${stretchText(stretch)}`;
      lines.push(`${byMultiple(count, multiple, plus)} = ${count}${off}`);
    }
  }
  if (plan.picked !== plan.target) lines.push(`${firstRowText(plan.firstRow)}: ${firstRowProof(plan.firstRow)}.`);
  return lines;
}

function wantedSum(plan: PickupPlan): string[] {
  const each = plan.edges.map(({ rate, wanted, count }) => (rate.kind === 'length' ? (wanted ?? count) : count));
  const sum = (...all: readonly number[]) => all.reduce((total, one) => total + one, 0);
  if (each.length < 2) return [];
  return [
    'By length where an edge goes by length, else what it gets.',
    `${shownOperands(each, sum).join(' + ')} = ${fixedNumber(sum(...each))}`,
  ];
}

function choiceLines(plan: PickupPlan, count: number): string[] {
  const { multiple, plus } = plan.pickup.band;
  const fits = multiple > 1 && count >= plus && (count - plus) % multiple === 0;
  return [
    ...(fits ? [`${capitalised(multipleText(multiple, plus))}: ${byMultiple(count, multiple, plus)} = ${count}`] : []),
    ...stretchLines(plan, count, plan.wanted),
  ];
}

function sectionBoard(plan: PickupPlan, of: 'section' | 'running' | 'after', section: Section, at: number): Board {
  const before = plan.sections[at - 1];
  const what = sectionHeading(plan, of, section.n);
  const board = (lines: readonly string[]): Board => ({ what, short: what, lines });
  if (of === 'running') return board(runningLines(plan, section));
  if (of === 'section') {
    return board([...runningLines(plan, section), `${section.running} − ${before?.running ?? 0} = ${section.count}`]);
  }
  const upTo = (one: Section | undefined) => (one ? roundHalfUp((plan.target * one.running) / plan.picked) : 0);
  return board([
    roundedLine(plan.target, section.running, plan.picked, upTo(section)),
    `${upTo(section)} − ${upTo(before)} = ${section.after}`,
  ]);
}

function sectionHeading(plan: PickupPlan, of: 'section' | 'running' | 'after', n: number): string {
  if (of === 'running') return `Up to the end of section ${n}`;
  return of === 'section' ? `Section ${n}` : `Section ${n}, after the first ${rowOrRound(plan)}`;
}

/** `84 × 2 ÷ 6 = 28`: a share of a total, a half going up. */
function roundedLine(total: number, times: number, parts: number, whole: number): string {
  const exact = (total * times) / parts;
  const so = Number.isInteger(exact) ? '' : `, so ${whole}`;
  return `${total} × ${times} ÷ ${parts} = ${plainNumber(exact, 2)}${so}`;
}

function runningLines(plan: PickupPlan, { running, marker }: Section): string[] {
  const { sections } = plan.pickup;
  if (marker.landmark) return [`${stitchesText(running)} lie before this corner.`];
  const parts = sections?.parts ?? 1;
  const part = Array.from({ length: parts }, (_, i) => i + 1).find(
    (i) => roundHalfUp((plan.picked * i) / parts) === running,
  );
  if (sections?.by === 'landmarks' || part === undefined) return [`All ${running} are picked up here.`];
  return [`${part} of ${parts} parts: ${roundedLine(plan.picked, part, parts, running)}`];
}

import type { PlaceAnswer, RowAnswer } from '../pickup';
import { HEADINGS } from './labels';
import { lengthText } from './numbers';
import {
  placeFirstRow,
  placeGauge,
  placeNotes,
  placeSentence,
  placeTitle,
  placeUse,
  ratioRows,
  rowLetters,
  rowProof,
  rowSentence,
  rowTitle,
} from './quick';
import { QUICK } from './quickWords';
import { displayWidth, tableText, type Column } from './table';
import { wrapped } from './wrap';

/**
 * The answer about an edge in plain text: the runs, how the places are used, sections, plain ratios, the gauge, notes.
 *
 * @param otherWay the same with the skips laid the other way, told beside it where it differs
 */
export function placeReport(answer: PlaceAnswer, otherWay: PlaceAnswer | null = null): string {
  const { design, pickup, question } = answer;
  const title = placeTitle(question, design.units);
  const said = placeSentence(answer);
  const other = otherWay && answer.hasOpenings ? placeSentence(otherWay) : said;
  const parts = [
    underlined(title),
    `${wrapped(`${said}.`)}\n${placeUse(answer)}`,
    ...(other === said ? [] : [wrapped(`${OTHER[question.spread]}: ${lowered(other)}.`)]),
    ...optional(placeFirstRow(answer)),
    ...(pickup.sections.length > 1 ? [sectionTable(answer)] : []),
    ...ratioTable(answer),
    wrapped(placeGauge(answer)),
    ...placeNotes(answer).map((note) => wrapped(note)),
  ];
  return `${parts.join('\n\n')}\n`;
}

/** The answer about a row in plain text, with its proof. */
export function rowReport(answer: RowAnswer): string {
  return `${[
    underlined(rowTitle(answer.question)),
    `${wrapped(`${rowSentence(answer)}.`)}\n${rowProof(answer)}`,
    wrapped(rowLetters(answer)),
  ].join('\n\n')}\n`;
}

const OTHER = { even: 'In groups, easy to remember', grouped: 'Spread evenly' } as const;

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function underlined(title: string): string {
  return `${title}\n${'='.repeat(displayWidth(title))}`;
}

function optional(text: string): string[] {
  return text === '' ? [] : [wrapped(text)];
}

const SECTION_COLUMNS: readonly Column[] = [
  { head: HEADINGS.section, align: 'right' },
  { head: HEADINGS.stitches, align: 'right' },
  { head: HEADINGS.running, align: 'right' },
];
const LENGTH_COLUMN: Column = { head: HEADINGS.length, align: 'right' };
const AFTER_COLUMN: Column = { head: HEADINGS.onNeedle, align: 'right' };

function sectionTable({ design, pickup }: PlaceAnswer): string {
  const hasLength = pickup.sections.every(({ lengthMm }) => lengthMm !== null);
  const changes = pickup.picked !== pickup.target;
  const rows = pickup.sections.map(({ n, count, running, lengthMm, after }) => [
    `${n}`,
    `${count}`,
    `${running}`,
    ...(hasLength ? [lengthText(lengthMm ?? 0, design.units)] : []),
    ...(changes ? [`${after}`] : []),
  ]);
  const columns = [...SECTION_COLUMNS, ...(hasLength ? [LENGTH_COLUMN] : []), ...(changes ? [AFTER_COLUMN] : [])];
  return tableText(columns, rows);
}

const RATIO_COLUMNS: readonly Column[] = [
  { head: QUICK.ratios, align: 'left' },
  { head: QUICK.ratioGives, align: 'right' },
  { head: QUICK.ratioOff, align: 'left' },
];

function ratioTable(answer: PlaceAnswer): string[] {
  const rows = ratioRows(answer);
  if (rows.length === 0) return [];
  return [
    tableText(
      RATIO_COLUMNS,
      rows.map(({ ratio, count, off }) => [ratio, count, off]),
    ),
  ];
}

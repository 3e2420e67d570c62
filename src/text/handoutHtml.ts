/** The instructions as HTML, to be pasted into a page or a word processor. */
import type { DesignPlan, PickupPlan } from '../pickup';
import { edgeTitle, shownName } from './edgeName';
import { edgesTableHead, HANDOUT_COLUMNS, HANDOUT_HEADINGS, handoutTitle } from './handout';
import { instructions } from './instructions';
import { lengthText, wantedText } from './numbers';
import { placesText } from './places';
import { finishedLines } from './planReport';
import { HEADINGS } from './labels';
import { voiceOf, type Voice } from './voice';

/**
 * The instructions of a design's pick-ups, or of one: for each a heading, what it is, its edges and sections as tables
 * and the written instructions. Plain elements (h2, h3, ul, p, table) without styles, classes, scripts or addresses, so
 * that the text takes the looks of wherever it is put.
 */
export function instructionsHtml(plan: DesignPlan, changes: Partial<Voice> = {}, pickupId?: string): string {
  const voice = voiceOf(plan.design, changes);
  const chosen = plan.pickups.filter(({ pickup }) => pickupId === undefined || pickup.id === pickupId);
  const finished = finishedLines(plan, voice);
  return [
    ...chosen.flatMap((one) => pickupHtml(plan.design.name, one, voice)),
    ...(finished.length > 0 ? [element('h3', HEADINGS.finished), list(finished)] : []),
  ]
    .map((part) => `${part}\n`)
    .join('');
}

/** The same as a whole page, to be opened and copied from. */
export function instructionsPage(plan: DesignPlan, changes: Partial<Voice> = {}, pickupId?: string): string {
  const title = element('title', shownName(plan.design.name));
  const head = `<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n${title}\n</head>\n<body>\n`;
  return `${head}${instructionsHtml(plan, changes, pickupId)}</body>\n</html>\n`;
}

function pickupHtml(design: string, plan: PickupPlan, voice: Voice): string[] {
  const { title, lines } = handoutTitle(design, plan, 'sheet', voice);
  const name = shownName(plan.pickup.name);
  return [
    element('h2', title === '' ? name : `${title}: ${name}`),
    list(lines),
    element('h3', HANDOUT_HEADINGS.edges),
    edgesTable(plan, voice),
    ...(plan.sections.length > 1 ? [element('h3', HANDOUT_HEADINGS.sections), sectionsTable(plan, voice)] : []),
    element('h3', HANDOUT_HEADINGS.instructions),
    ...instructions(plan, voice).map((text) => element('p', text)),
  ];
}

function edgesTable(plan: PickupPlan, { terms, units }: Voice): string {
  const { edge, length, from, wanted, count } = HANDOUT_COLUMNS;
  const rows = plan.edges.map((one) => [
    edgeTitle(one.piece, one.measured.edge),
    one.lengthMm === null ? '' : lengthText(one.lengthMm, units),
    placesText(plan, one, terms),
    one.wanted === null ? '' : wantedText(one.wanted),
    `${one.count}`,
  ]);
  const total = [edgesTableHead(plan.edges.length), '', '', '', `${plan.picked}`];
  return table([edge, length, from, wanted, count], rows, plan.edges.length > 1 ? total : null);
}

function sectionsTable(plan: PickupPlan, { units }: Voice): string {
  const { section, length, here, running, after } = HANDOUT_COLUMNS;
  const changes = plan.sections.some((one) => one.after !== one.count);
  const rows = plan.sections.map((one) => [
    `${one.n}`,
    one.lengthMm === null ? '' : lengthText(one.lengthMm, units),
    `${one.count}`,
    `${one.running}`,
    ...(changes ? [`${one.after}`] : []),
  ]);
  return table([section, length, here, running, ...(changes ? [after] : [])], rows, null);
}

/** The first cell of a line names it. */
function table(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  total: readonly string[] | null,
): string {
  // What nothing is known of, such as lengths without a gauge, has no column.
  const known = heads.map((_, i) => rows.some((row) => row[i] !== ''));
  const line = (cells: readonly string[], cell: (text: string, i: number) => string) =>
    `<tr>${cells
      .filter((_, i) => known[i])
      .map(cell)
      .join('')}</tr>`;
  const named = (text: string, i: number) => (i === 0 ? `<th scope="row">${escaped(text)}</th>` : element('td', text));
  return [
    '<table>',
    `<thead>${line(heads, (text) => `<th scope="col">${escaped(text)}</th>`)}</thead>`,
    '<tbody>',
    ...rows.map((row) => line(row, named)),
    '</tbody>',
    ...(total ? [`<tfoot>${line(total, named)}</tfoot>`] : []),
    '</table>',
  ].join('\n');
}

function list(lines: readonly string[]): string {
  return ['<ul>', ...lines.map((text) => element('li', text)), '</ul>'].join('\n');
}

function element(name: string, text: string): string {
  return `<${name}>${escaped(text)}</${name}>`;
}

function escaped(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cs}]+/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

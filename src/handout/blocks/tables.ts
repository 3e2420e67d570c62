import {
  edgeTitle,
  edgesTableHead,
  gaugeHead,
  HANDOUT_COLUMNS,
  handoutHeading,
  lengthText,
  placesText,
  wantedText,
} from '../../text';
import { heading, paragraph, type Strip } from '../strip';
import { BLANK, table, TICK, type Cell, type TableColumn } from '../table';
import { TYPE } from '../type';
import type { Sheet } from '../work';

/** In place of a count that there is none of. */
const NONE = '–';

const figures = (head: string): TableColumn => ({ head, align: 'right' });
const words = (head: string): TableColumn => ({ head, align: 'left' });
const answer = (head: string): TableColumn => ({ head, align: 'right', face: 'bold' });

/** Every edge in working order: what it is made of, how long it is, and what is picked up on it. */
export function edgesBlock(sheet: Sheet): Strip[] {
  const { chosen, voice, handout, width } = sheet;
  const asks = handout.version === 'exercise';
  const columns = [
    words(HANDOUT_COLUMNS.edge),
    figures(HANDOUT_COLUMNS.length),
    words(HANDOUT_COLUMNS.from),
    figures(HANDOUT_COLUMNS.wanted),
    answer(HANDOUT_COLUMNS.count),
  ];
  const rows = chosen.edges.map((edge): Cell[] => [
    edgeTitle(edge.piece, edge.measured.edge),
    edge.lengthMm === null ? '' : lengthText(edge.lengthMm, voice.units),
    placesText(chosen, edge, voice.terms),
    asks ? BLANK : edge.wanted === null ? '' : wantedText(edge.wanted),
    asks ? BLANK : String(edge.count),
  ]);
  const total: Cell[] = [edgesTableHead(chosen.edges.length), '', '', '', asks ? BLANK : String(chosen.picked)];
  return [
    ...heading(handoutHeading('edges', voice), width),
    ...table(columns, chosen.edges.length > 1 ? [...rows, total] : rows, width),
  ];
}

/** Every section with its count and the tally after it, and a box to tick off. */
export function sectionsBlock(sheet: Sheet): Strip[] {
  const { chosen, voice, handout, width } = sheet;
  if (chosen.sections.length < 2) return [];
  const asks = handout.version === 'exercise';
  const ticks = handout.version === 'sheet';
  const changes = !asks && chosen.sections.some(({ after, count }) => after !== count);
  const columns = [
    ...(ticks ? [words(HANDOUT_COLUMNS.done)] : []),
    figures(HANDOUT_COLUMNS.section),
    ...(asks ? [] : [figures(HANDOUT_COLUMNS.length)]),
    answer(HANDOUT_COLUMNS.here),
    answer(HANDOUT_COLUMNS.running),
    ...(changes ? [figures(HANDOUT_COLUMNS.after)] : []),
  ];
  const rows = chosen.sections.map(({ n, lengthMm, count, running, after }): Cell[] => [
    ...(ticks ? [TICK as Cell] : []),
    String(n),
    ...(asks ? [] : [lengthMm === null ? '' : lengthText(lengthMm, voice.units)]),
    asks ? BLANK : String(count),
    asks ? BLANK : String(running),
    ...(changes ? [String(after)] : []),
  ]);
  return [...heading(handoutHeading('sections', voice), width), ...table(columns, rows, width)];
}

/** What the same work comes to at other gauges, an edge a line, a gauge a column. */
export function gaugesBlock(sheet: Sheet): Strip[] {
  const { chosen, voice, handout, gauges, width } = sheet;
  if (gauges.length === 0) return [];
  const asks = handout.version === 'exercise';
  const columns = [words(HANDOUT_COLUMNS.edge), ...gauges.map(({ gauge }) => figures(gaugeHead(gauge, voice)))];
  const rows = chosen.edges.map((edge, i): Cell[] => [
    edgeTitle(edge.piece, edge.measured.edge),
    ...gauges.map(({ plan }): Cell => (asks ? BLANK : plan ? String(plan.edges[i]?.count ?? '') : NONE)),
  ]);
  const total: Cell[] = [
    HANDOUT_COLUMNS.total,
    ...gauges.map(({ plan }): Cell => (asks ? BLANK : plan ? String(plan.target) : NONE)),
  ];
  // Why a gauge has no count is said once, under the table.
  const why = gauges.flatMap((one) => (one.why === undefined ? [] : [`${gaugeHead(one.gauge, voice)}: ${one.why}.`]));
  return [
    ...heading(handoutHeading('gauges', voice), width),
    ...table(columns, [...rows, total], width),
    ...why.flatMap((text) => paragraph(text, width, { size: TYPE.small })),
  ];
}

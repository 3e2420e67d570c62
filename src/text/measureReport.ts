import type { Design, Piece } from '../piece';
import type { OpeningKind } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import type { Mm } from '../units';
import { edgeName, shownName } from './edgeName';
import { fabricLabel, finishLabel, gaugeLabel, HEADINGS, openingsLabel, selvageLabel, shapeLabel } from './labels';
import { lengthText } from './numbers';
import { scheduleText } from './schedule';
import { tableText, type Column } from './table';
import { voiceOf, type Voice } from './voice';
import { listed } from './words';
import { REPORT_WIDTH, wrapped } from './wrap';

/** An edge with what is measured on it. */
export interface MeasuredRow {
  readonly piece: Piece;
  readonly edge: MeasuredEdge;
  /** Of the join line a whole stitch in; null where the piece has no gauge. */
  readonly joinMm: Mm | null;
  /** First openings, and what they are. */
  readonly openings: number;
  readonly unit: OpeningKind;
  /** How many of them are stitches of steps rather than `unit`. */
  readonly stepStitches: number;
}

/** Every edge of a design as data: lengths in mm, null where a piece has no gauge. */
export interface MeasureDocument {
  readonly format: 'edgewise-measure';
  readonly version: 1;
  readonly design: string;
  readonly edges: readonly {
    readonly piece: string;
    readonly edge: string;
    readonly shape: MeasuredEdge['shape'];
    readonly side: MeasuredEdge['side'];
    readonly stitches: number;
    readonly rows: number;
    readonly edgeMm: Mm | null;
    readonly joinMm: Mm | null;
    readonly openings: number;
    readonly unit: OpeningKind;
    readonly shaping: string;
  }[];
}

/** @param rows in the order of the document */
export function measureDocument(
  design: Design,
  rows: readonly MeasuredRow[],
  changes: Partial<Voice> = {},
): MeasureDocument {
  const voice = voiceOf(design, changes);
  return {
    format: 'edgewise-measure',
    version: 1,
    design: design.name,
    edges: rows.map(({ piece, edge, joinMm, openings, unit }) => ({
      piece: piece.id,
      edge: edge.id,
      shape: edge.shape,
      side: edge.side,
      stitches: edge.stitches,
      rows: edge.rows,
      edgeMm: edge.hasGauge ? edge.edgeMm : null,
      joinMm,
      openings,
      unit,
      shaping: scheduleText(edge, voice),
    })),
  };
}

const COLUMNS: readonly Column[] = [
  { head: HEADINGS.edge, align: 'left' },
  { head: HEADINGS.shape, align: 'left' },
  { head: HEADINGS.made, align: 'left' },
  { head: HEADINGS.stitches, align: 'right' },
  { head: HEADINGS.rows, align: 'right' },
  { head: HEADINGS.edgeLength, align: 'right' },
  { head: HEADINGS.joinLength, align: 'right' },
  { head: HEADINGS.openings, align: 'right' },
];

/**
 * Every edge of a design in plain text: a table for each piece, a line an edge, with the shaping schedule under each
 * edge that slopes or curves.
 *
 * @param rows in the order of the document, those of a piece together
 */
export function measureReport(design: Design, rows: readonly MeasuredRow[], changes: Partial<Voice> = {}): string {
  const voice = voiceOf(design, changes);
  const pieces = design.pieces.map((piece) =>
    pieceText(
      piece,
      rows.filter((row) => row.piece.id === piece.id),
      voice,
    ),
  );
  return [shownName(design.name), ...pieces].join('\n\n') + '\n';
}

function pieceText(piece: Piece, rows: readonly MeasuredRow[], voice: Voice): string {
  const { terms, units } = voice;
  const gauge = piece.gauge ? `${terms.gauge} ${gaugeLabel(piece.gauge, units)}` : `no ${terms.gauge}, so no lengths`;
  const heading = `${shownName(piece.name)}: ${fabricLabel(piece.fabric, terms)}, ${gauge}`;
  const lines = tableText(
    COLUMNS,
    rows.map((row) => cells(row, voice)),
  ).split('\n');
  const body = rows.flatMap((row, i) => [lines[i + 2] ?? '', ...shapingLines(row.edge, voice)]);
  return [heading, '', ...lines.slice(0, 2), ...body].join('\n');
}

function cells({ edge, joinMm, openings, unit, stepStitches }: MeasuredRow, { terms, units }: Voice): string[] {
  return [
    edgeName(edge.edge),
    shapeLabel(edge.shape),
    edge.shape === 'horizontal' ? finishLabel(edge.finish, terms) : `${selvageLabel(edge.selvage)} ${terms.selvage}`,
    `${edge.stitches}`,
    `${edge.rows}`,
    edge.hasGauge ? lengthText(edge.edgeMm, units) : '',
    joinMm === null ? '' : lengthText(joinMm, units),
    placesOf(openings, unit, stepStitches),
  ];
}

function shapingLines(edge: MeasuredEdge, voice: Voice): string[] {
  if (edge.shape === 'horizontal' || edge.shape === 'vertical') return [];
  return [wrapped(`  ${scheduleText(edge, voice)}`, REPORT_WIDTH, '  ')];
}

/** `14 rows and 5 stitches`: an edge that climbs in steps is picked up from both. */
function placesOf(openings: number, unit: OpeningKind, stepStitches: number): string {
  if (stepStitches === 0 || unit === 'stitch') return openingsLabel(openings, unit);
  return listed([openingsLabel(openings - stepStitches, unit), openingsLabel(stepStitches, 'stitch')]);
}

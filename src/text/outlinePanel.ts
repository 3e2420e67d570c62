/** The words of the outline as a table: its heads, its buttons, and what is said of what was done there. */
import type { Deviation, MeasuredEdge } from '../shaping';
import type { Edge, Piece, Selvage, Units } from '../piece';
import type { Mm } from '../units';
import { edgeName, shownName } from './edgeName';
import { selvageLabel } from './labels';
import { fixedNumber, lengthText } from './numbers';
import { scheduleText } from './schedule';
import type { Terms } from './terms';
import type { Voice } from './voice';
import { capitalised, counted } from './words';

type EdgeLike = Pick<Edge, 'id' | 'name'>;
type PieceLike = Pick<Piece, 'id' | 'name'>;

/** What of an edge is counted in a field. */
export type SizeKind = 'stitches' | 'rows';

export const OUTLINE_TABLE = {
  table: 'The outline, edge by edge',
  edge: 'Edge',
  stitches: 'Sts',
  rows: 'Rows',
  stitchesLabel: 'Stitches across',
  rowsLabel: 'Rows up',
  path: 'Path',
  made: 'Made of',
  piece: 'Piece',
  pieceName: 'Name of the piece',
  fabric: 'Fabric',
  symmetric: 'Both halves alike',
  help: 'Type stitches and rows, or a length such as 12 cm or 5 in. A minus turns an edge the other way.',
  more: 'More',
  removeCorner: 'Remove corner',
  steps: 'Steps',
  takeSteps: 'Take these steps',
  moveCorner: 'Move the far corner to fit',
  useSchedule: 'Use this schedule',
  drawSmooth: 'Draw it smooth',
  handles: 'Handles of the curve',
  handleNames: ['Near its beginning', 'Near its end'],
} as const;

const WAYS = {
  '1 0': ['→', 'to the right'],
  '-1 0': ['←', 'to the left'],
  '0 1': ['↑', 'straight up'],
  '0 -1': ['↓', 'straight down'],
  '1 1': ['↗', 'up to the right'],
  '-1 1': ['↖', 'up to the left'],
  '1 -1': ['↘', 'down to the right'],
  '-1 -1': ['↙', 'down to the left'],
  '0 0': ['↺', 'round to where it began'],
} as const;

/** Which way an edge goes from its first corner to its second: an arrow, and the same in words. */
export function wayText(dx: number, dy: number): { readonly arrow: string; readonly words: string } {
  const [arrow, words] = WAYS[`${sign(dx)} ${sign(dy)}`];
  return { arrow, words };
}

function sign(value: number): -1 | 0 | 1 {
  return value > 0 ? 1 : value < 0 ? -1 : 0;
}

/** How a piece is called in a list: its name, or its id where it has none. */
export function pieceName(piece: PieceLike): string {
  const name = shownName(piece.name);
  return name === '' ? piece.id : name;
}

/** What a typed length came to: `12 cm comes to 26 stitches, which are 11.8 cm.` */
export function sizedText(typed: string, count: number, kind: SizeKind, mm: Mm, units: Units): string {
  const size = counted(Math.abs(count), kind === 'stitches' ? 'stitch' : 'row', kind);
  return `${typed.trim()} comes to ${size}, which is ${lengthText(mm, units)}.`;
}

/** A length typed where nothing turns it into stitches or rows. */
export function noGaugeText(typed: string, kind: SizeKind, { terms }: Pick<Voice, 'terms'>, kept: string): string {
  return `“${typed.trim()}” can't be turned into ${kind} on a piece without a ${terms.gauge}: give it one under Pieces, or type the ${kind}. Until then ${kept} stays.`;
}

/** What a side edge is made of, with its noun: `plain selvage`. */
export function selvageText(selvage: Selvage, { selvage: noun }: Pick<Terms, 'selvage'>): string {
  return `${selvageLabel(selvage)} ${noun}`;
}

/** An edge's shaping in a sentence; empty where it has none. */
export function shapingLine(edge: MeasuredEdge, voice: Pick<Voice, 'terms' | 'hand'>): string {
  if (edge.shape === 'horizontal' || edge.stitches === 0 || edge.worked.length === 0) return '';
  return `${capitalised(scheduleText(edge, voice))}.`;
}

/**
 * `As worked it strays from the line drawn by 0.6 of a stitch at most, at row 104.`
 *
 * @param foot where on the grid the piece's lowest row is
 */
export function deviationText({ stitches, row }: Deviation, foot: number): string {
  const amount = strayed(stitches);
  if (amount === null) return 'As worked it follows the line drawn.';
  return `As worked it strays from the line drawn by ${amount} at most, at row ${row - foot}.`;
}

/** The same where there is less room: `at most 0.6 of a stitch off the line`; empty where it follows the line. */
export function deviationShort({ stitches }: Deviation): string {
  const amount = strayed(stitches);
  return amount === null ? '' : `at most ${amount} off the line`;
}

/** How far from the line, in words; null where that is nothing that one could see. */
function strayed(stitches: number): string | null {
  const shown = fixedNumber(stitches);
  if (shown === '0.0') return null;
  return Number(shown) === 1 ? '1 stitch' : Number(shown) < 1 ? `${shown} of a stitch` : `${shown} stitches`;
}

/** How steps are typed, by an example. */
export function stepsHelp({ bindOff, even }: Pick<Terms, 'bindOff' | 'even'>): string {
  return `In the order of knitting, bottom up, as a pattern has them: ${bindOff} 3, 2, 2; decrease 1 every 2 rows 4 times; work 6 rows ${even}.`;
}

/** How far steps lead, as stitches taken in (below 0) or brought out, and rows. */
interface Reach {
  readonly stitches: number;
  readonly rows: number;
}

/** Steps that don't end on the far corner: what they come to, and what the edge has. */
export function stepsMissText(got: Reach, wanted: Reach): string {
  return `These steps come to ${reachText(got)} and the edge has ${reachText(wanted)}, so the old steps stay: mend them, or move the far corner.`;
}

function reachText({ stitches, rows }: Reach): string {
  const over = `over ${counted(rows, 'row')}`;
  if (stitches === 0) return `no stitches ${over}`;
  return `${counted(Math.abs(stitches), 'stitch', 'stitches')} ${stitches < 0 ? 'in' : 'out'} ${over}`;
}

/** Labels for those who don't see the row that a control stands in. */
export function ofEdge(label: string, edge: EdgeLike): string {
  return `${label}: ${edgeName(edge)}`;
}

/** `Add a corner to left neck`. */
export function addCornerLabel(edge: EdgeLike): string {
  return `Add a corner to ${edgeName(edge)}`;
}

/** `Remove corner where left neck begins`. */
export function removeCornerLabel(edge: EdgeLike): string {
  return `Remove corner where ${edgeName(edge)} begins`;
}

const begun = (edge: EdgeLike) => capitalised(edgeName(edge));

/** What a screen reader hears of what was done. */
export const OUTLINE_SAID = {
  named: (edge: EdgeLike) => `It is now called ${edgeName(edge)}.`,
  path: (edge: EdgeLike, path: string) => `${begun(edge)} is now ${path}.`,
  made: (edge: EdgeLike, made: string) => `${begun(edge)}: ${made}.`,
  cornerAdded: (edges: number) => `A corner was added: the outline has ${counted(edges, 'edge')} now.`,
  cornerRemoved: (edges: number) => `The corner was removed: the outline has ${counted(edges, 'edge')} now.`,
  steps: (edge: EdgeLike, line: string) => `${begun(edge)}: ${line}`,
  pieceNamed: (piece: PieceLike) => `The piece is now called ${pieceName(piece)}.`,
  fabric: (piece: PieceLike, fabric: string) => `${pieceName(piece)} is now in ${fabric}.`,
  symmetric: (piece: PieceLike, symmetric: boolean) =>
    symmetric ? `The halves of ${pieceName(piece)} are now alike.` : `The halves of ${pieceName(piece)} now go apart.`,
  mirrored: (piece: PieceLike) => `${pieceName(piece)} was mirrored.`,
  duplicated: (piece: PieceLike) => `${pieceName(piece)} was added.`,
  removed: (piece: PieceLike) => `${pieceName(piece)} was removed, and with it what was picked up along it.`,
} as const;

/** Why something could not be done to an outline. */
export const OUTLINE_REFUSED = {
  noRoom: (edge: EdgeLike) => `${begun(edge)} is too short to have another corner: make it longer first.`,
  fewest: 'An outline needs three corners at least, so this one stays.',
  noRows: (edge: EdgeLike) => `${begun(edge)} has no rows to work steps in: give it rows first.`,
  turns: (edge: EdgeLike) =>
    `${begun(edge)} goes up and down again, so no one schedule works it: add a corner where it turns.`,
  bothHalves: (edge: EdgeLike, kind: SizeKind) =>
    kind === 'rows'
      ? `${begun(edge)} is its own mirror image and stays level: give rows to the edges beside it, or untick “${OUTLINE_TABLE.symmetric}”.`
      : `${begun(edge)} can't take that on both halves alike: change it by an even number of stitches, or untick “${OUTLINE_TABLE.symmetric}”.`,
  notAlike: (piece: PieceLike) =>
    `The outline of ${pieceName(piece)} crosses its own middle more than twice, so it has no halves to make alike: move its corners to one side first.`,
  ownImage: (piece: PieceLike) => `${pieceName(piece)} is its own mirror image, so there is nothing to turn.`,
  noName: 'A piece needs a name, so the old one stays.',
  lastPiece: 'A design needs one piece at least, so this one stays.',
} as const;

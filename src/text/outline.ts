/** The words of the outline's editor: its grips, its bar and what follows the pointer. */
import type { Edge, Units } from '../piece';
import type { MeasuredEdge } from '../shaping';
import { edgeName } from './edgeName';
import { lengthText, plainNumber } from './numbers';
import { drawnEdgeSize } from './drawing';
import { rowsText, stitchesText, counted } from './words';

export const OUTLINE = {
  title: 'Outline',
  marks: 'Corners and edges of the outline',
  bar: 'What is chosen',
  hint: 'Drag a corner, pull an edge by its middle, or press an edge to see what it can become.',
  touchHint: 'Drag a corner or the middle of an edge. Press an edge to see what it can become.',
  paths: { straight: 'straight', curve: 'curved', stepped: 'in worked steps' },
  path: 'This edge is',
  addCorner: 'Add a corner',
  removeCorner: 'Remove',
  exact: 'Exact size',
  exactPlace: 'Exact place',
  across: 'Stitches across',
  up: 'Rows up',
  fromLeft: 'Stitches from the left',
  fromBottom: 'Rows from the bottom',
  set: 'Set',
  cancel: 'Leave it',
  done: 'Done',
  pieces: 'Piece',
  mirror: 'Mirror',
  duplicate: 'Duplicate',
  removePiece: 'Remove piece',
  addPiece: 'Add a piece',
  along: 'What lies beyond moves along',
} as const;

/** `corner 3 of 8, where neck left begins`: how a corner is named to those who don't see it. */
export function cornerLabel(index: number, count: number, edge: Pick<Edge, 'id' | 'name'>): string {
  return `Corner ${index + 1} of ${count}, where ${edgeName(edge)} begins`;
}

export function middleLabel(edge: Pick<Edge, 'id' | 'name'>): string {
  return `Middle of ${edgeName(edge)}`;
}

export function handleLabel(edge: Pick<Edge, 'id' | 'name'>, handle: 0 | 1): string {
  return `${handle === 0 ? 'First' : 'Second'} handle of ${edgeName(edge)}`;
}

/** Where a grip is: `19 stitches from the left, row 120`. */
export function gripPlace(column: number, row: number): string {
  return `${plainNumber(column)} from the left, row ${plainNumber(row)}`;
}

/** `+2 sts, −4 rows`: how far the hand has moved what it holds. */
export function movedText(dx: number, dy: number): string {
  const signed = (value: number) => `${value < 0 ? '−' : '+'}${plainNumber(Math.abs(value))}`;
  return `${signed(dx)} ${Math.abs(dx) === 1 ? 'st' : 'sts'}, ${signed(dy)} ${Math.abs(dy) === 1 ? 'row' : 'rows'}`;
}

/** An edge beside the pointer: `neck left: 12 sts × 24 rows, 10.7 cm, 1 st in 2 rows`. */
export function edgeFollows(edge: MeasuredEdge, units: Units): string {
  return `${edgeName(edge.edge)}: ${edgeMeasures(edge, units)}`;
}

/** What an edge measures: `12 sts × 24 rows, 10.7 cm, 1 st in 2 rows`. */
export function edgeMeasures(edge: MeasuredEdge, units: Units): string {
  const parts = [drawnEdgeSize(edge.stitches, edge.rows)];
  if (edge.hasGauge) parts.push(lengthText(edge.edgeMm, units));
  const slope = slopeText(edge.stitches, edge.rows);
  if (slope !== '') parts.push(slope);
  return parts.join(', ');
}

/** How steep an edge is: `1 st in 2.5 rows`, `3.2 sts in 1 row`; empty where it is level or plumb. */
export function slopeText(stitches: number, rows: number): string {
  if (stitches === 0 || rows === 0) return '';
  return rows >= stitches
    ? `1 st in ${counted(Number(plainNumber(rows / stitches)), 'row')}`
    : `${plainNumber(stitches / rows)} sts in 1 row`;
}

export function cornersChosen(count: number): string {
  return count === 1 ? '1 corner' : `${count} corners`;
}

/** What a screen reader hears once a corner or an edge was moved. */
export function nowAt(label: string, column: number, row: number): string {
  return `${label}: now ${stitchesText(column)} from the left, ${rowsText(row)} up.`;
}

/** What a screen reader hears once an edge was changed. */
export function nowIs(edge: MeasuredEdge, units: Units): string {
  return `${edgeFollows(edge, units)}.`;
}

import { lengthOf } from '../geometry';
import type { MeasuredPiece } from '../pickup';
import { isInside } from './cells';
import { boxOf, smoothOutline, traceOf } from './outline';
import { sheetToGrid } from './place';
import type { EdgeTrace, Place } from './marks';

/** A piece on the sheet with what is needed to draw it. */
export interface DrawnPiece {
  readonly measured: MeasuredPiece;
  readonly place: Place;
  readonly traces: readonly EdgeTrace[];
  /** Lengths of the segments of each edge, mm. */
  readonly lengths: readonly (readonly number[])[];
  readonly inside: (x: number, y: number) => boolean;
}

/** Traces a piece in its place. */
export function setUp(measured: MeasuredPiece, place: Place): DrawnPiece {
  const outline = smoothOutline(measured.edges, place.cell);
  const traces = measured.edges.map((edge): EdgeTrace => {
    const line = traceOf(place, edge.line);
    return { piece: measured.piece.id, edge: edge.id, line, box: boxOf(line) };
  });
  return {
    measured,
    place,
    traces,
    lengths: measured.edges.map((edge) => edge.line.map(lengthOf)),
    inside: (x, y) => isInside(outline, ...sheetToGrid(place, x, y)),
  };
}

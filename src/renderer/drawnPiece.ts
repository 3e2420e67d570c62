import { lengthOf } from '../geometry';
import type { MeasuredPiece } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import { shelf } from '../units';
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

const keptTraces = shelf<MeasuredEdge, EdgeTrace>(2);
const keptLengths = shelf<MeasuredEdge, readonly number[]>(1);

/** Traces a piece in its place; what has not changed since it was last traced there is the same object. */
export function setUp(measured: MeasuredPiece, place: Place): DrawnPiece {
  const { edges, piece } = measured;
  let outline: readonly number[] | null = null;
  return {
    measured,
    place,
    traces: edges.map((edge) =>
      keptTraces(edge, [piece.id, place.x, place.y, place.scale], () => {
        const line = traceOf(place, edge.line);
        return { piece: piece.id, edge: edge.id, line, box: boxOf(line) };
      }),
    ),
    lengths: edges.map((edge) => keptLengths(edge, [], () => edge.line.map(lengthOf))),
    inside: (x, y) => isInside((outline ??= smoothOutline(edges, place.cell)), ...sheetToGrid(place, x, y)),
  };
}

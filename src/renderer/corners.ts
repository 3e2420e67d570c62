import { cornerAngle } from '../geometry';
import type { MeasuredEdge } from '../shaping';

/** How the outline turns at the two ends of an edge, radians: above 0 where the fabric has an outer corner. */
export interface Corners {
  readonly before: number;
  readonly after: number;
}

export function cornersOf(edges: readonly MeasuredEdge[], index: number): Corners {
  const at = (i: number) => edges[(i + edges.length) % edges.length]!.line;
  const line = at(index);
  return {
    before: cornerAngle(at(index - 1).at(-1)!, line[0]!),
    after: cornerAngle(line.at(-1)!, at(index + 1)[0]!),
  };
}

/** Part of the way to the middle line of an inner corner that a stem may reach. */
const CLEAR = 0.8;

/**
 * How far a stem may stand out of an edge, `distance` from a corner where the outline turns by `angle`, so that it
 * stays on its own side of the line that halves the corner: `distance / tan(|angle| / 2)`, by the right triangle of
 * corner, stem's foot and middle line. No bound at an outer corner.
 */
export function roomAtCorner(distance: number, angle: number): number {
  return angle < 0 ? (CLEAR * distance) / Math.tan(-angle / 2) : Infinity;
}

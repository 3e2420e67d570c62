import { arcOf, cubicLength } from './arc';
import { distance } from './point';
import type { Segment } from './segment';

/**
 * The arc length of a segment, in the unit of its points, to a relative error below 1e-9: the integral of the speed by
 * Gauss–Legendre quadrature, cut beforehand where the curve nearly stops.
 */
export function lengthOf(seg: Segment): number {
  return seg.kind === 'line' ? distance(seg.from, seg.to) : cubicLength(seg);
}

/** The arc length from t = 0 to t. Outside 0 to 1, t is taken as the nearer end. */
export function lengthTo(seg: Segment, t: number): number {
  const end = Math.min(1, Math.max(0, t));
  return seg.kind === 'line' ? distance(seg.from, seg.to) * end : arcOf(seg).lengthTo(end);
}

/**
 * The parameter at a distance along the segment: the inverse of `lengthTo`, by Newton's rule inside a bracket that
 * shrinks with every step, and halved where a step does little. A distance below 0 gives 0, one beyond the length
 * gives 1; on a segment of no length it is 0.
 */
export function parameterAt(seg: Segment, distanceAlong: number): number {
  if (!(distanceAlong > 0)) return 0;
  const arc = seg.kind === 'line' ? null : arcOf(seg);
  const length = arc ? arc.length : lengthOf(seg);
  if (distanceAlong >= length) return length > 0 ? 1 : 0;
  return arc ? arc.parameterAt(distanceAlong) : distanceAlong / length;
}

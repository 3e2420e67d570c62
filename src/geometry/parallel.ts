import { lengthTo } from './length';
import { add, leftOf, scale, type Point } from './point';
import { pointAt, unitTangentAt, type Segment } from './segment';
import { turningTo } from './turning';

/**
 * The length from t = 0 to t of the line that runs beside the segment at distance `inset` on its left, where the
 * fabric lies: the integral of (1 + curvature * inset) ds, curvature counted above 0 where the line bends away from the
 * fabric (to the right). As curvature ds is the angle turned, it is length less inset times the angle turned
 * counterclockwise. Where the curve bends to the left more sharply than the inset allows, the parallel folds back, and
 * the fold counts below 0. Source: Farouki, Pythagorean-Hodograph Curves, 8.2 (arc length of an offset curve).
 */
export function joinLengthTo(seg: Segment, t: number, inset: number): number {
  return lengthTo(seg, t) - inset * turningTo(seg, t);
}

/** The whole length of the parallel on the left of a segment at distance `inset`. */
export function joinLengthOf(seg: Segment, inset: number): number {
  return joinLengthTo(seg, 1, inset);
}

/**
 * What a corner adds to the parallel on the left at distance `inset`, where the line turns by `angle` radians,
 * counterclockwise above 0: -2 inset tan(angle / 2). A turn to the right makes the parallel longer, one to the left
 * cuts the same length off. It grows without bound as the angle nears half a turn, where the two parallels never meet.
 * Source: the kite between two straight lines and their parallels, each leg inset times tan(angle / 2).
 */
export function cornerJoin(angle: number, inset: number): number {
  return -2 * inset * Math.tan(angle / 2);
}

/** The place at distance `inset` to the left of the direction of travel at t. */
export function offsetPoint(seg: Segment, t: number, inset: number): Point {
  return add(pointAt(seg, t), scale(leftOf(unitTangentAt(seg, t)), inset));
}

import { cross, dot, norm, scale, subtract, type Point } from './point';
import { END_SLACK, signChanges } from './quadratic';
import {
  derivativeAt,
  isStraight,
  secondDerivativeAt,
  sizeOf,
  unitTangentAt,
  type Cubic,
  type Segment,
} from './segment';

/** A derivative below this share of the curve's size is a cusp. */
const CUSP = 1e-9;

/** How far the direction of travel turns over a whole segment, in radians, counterclockwise above 0. */
export function turningOf(seg: Segment): number {
  return turningTo(seg, 1);
}

/**
 * How far the direction of travel turns from t = 0 to t: the integral of signed curvature ds, in radians,
 * counterclockwise above 0, never wrapped. An S gives the sum of its two bends with their signs, a loop more than pi.
 * At a cusp the curve turns round on the spot, by pi to the left as much as to the right; that jump counts as nothing,
 * and so does the turning round of a straight curve that doubles back.
 *
 * The derivative of a cubic is a parabola q(t); turning is the angle it sweeps as seen from the origin. It sweeps one
 * way between two inflections, where cross(q, q') = 0, a quadratic in t (do Carmo, Differential Geometry of Curves and
 * Surfaces, 1-5: curvature = cross(q, q') / |q|³). On such a piece it sweeps less than a full turn, and more than pi
 * exactly if it passes the direction opposite to its first: there cross(q(a), q(t)) / (t - a), linear in t, is 0.
 */
export function turningTo(seg: Segment, t: number): number {
  return turningAlong(seg)(Math.min(1, Math.max(0, t)));
}

const kept = new WeakMap<Cubic, (t: number) => number>();

/** `turningTo` for many places on one segment: from t, 0 to 1, to radians. Cut into its pieces once for each object. */
export function turningAlong(seg: Segment): (t: number) => number {
  if (seg.kind === 'line') return () => 0;
  const known = kept.get(seg);
  if (known) return known;
  const made = isStraight(seg) ? () => 0 : sweepsOf(seg);
  kept.set(seg, made);
  return made;
}

function sweepsOf(seg: Cubic): (t: number) => number {
  const cusp = cuspOf(seg);
  const stops = [0, ...(cusp === null ? bends(seg) : [cusp]), 1];
  const before = [0];
  const sweeps = stops.slice(0, -1).map((from, i) => {
    const sweep = sweepFrom(seg, from, stops[i + 1]!, cusp);
    before.push(before[i]! + sweep(stops[i + 1]!));
    return sweep;
  });
  return (t) => {
    let i = sweeps.length - 1;
    while (i > 0 && !(stops[i]! < t - END_SLACK)) i -= 1;
    return t > 0 ? before[i]! + sweeps[i]!(t) : 0;
  };
}

/** The interior parameters at which a curve changes from bending one way to bending the other, ascending. */
export function bends(seg: Cubic): number[] {
  const { a, b, c } = bendOf(seg);
  return signChanges(a, b, c);
}

/** The parameter strictly inside a curve that is not straight at which it has a cusp, or null. */
export function cuspOf(seg: Cubic): number | null {
  const { a, b } = bendOf(seg);
  const t = -b / (2 * a);
  if (!(t > END_SLACK && t < 1 - END_SLACK)) return null;
  return norm(derivativeAt(seg, t)) <= CUSP * sizeOf(seg) ? t : null;
}

/** cross(q, q') in powers of t, where q is the derivative of the curve. Its cubic term always cancels. */
function bendOf({ from, c1, c2, to }: Cubic): { a: number; b: number; c: number } {
  const p: Point = { x: to.x - 3 * c2.x + 3 * c1.x - from.x, y: to.y - 3 * c2.y + 3 * c1.y - from.y };
  const q: Point = { x: c2.x - 2 * c1.x + from.x, y: c2.y - 2 * c1.y + from.y };
  const r: Point = { x: c1.x - from.x, y: c1.y - from.y };
  return { a: 18 * cross(q, p), b: 18 * cross(r, p), c: 18 * cross(r, q) };
}

/** The angle swept from a to any t up to b, between which the curve bends one way and its derivative vanishes nowhere. */
function sweepFrom(seg: Cubic, a: number, b: number, cusp: number | null): (t: number) => number {
  const first = a === cusp ? secondDerivativeAt(seg, a) : unitTangentAt(seg, a);
  const bend = bendOf(seg);
  const middle = (a + b) / 2;
  const way = Math.sign((bend.a * middle + bend.b) * middle + bend.c);
  const opposite = oppositeAfter(seg, a, b, first);
  const slow = CUSP * sizeOf(seg);
  return (t) => {
    let last = derivativeAt(seg, t);
    if (cusp !== null && Math.abs(t - cusp) <= END_SLACK) last = scale(secondDerivativeAt(seg, cusp), -1);
    else if (norm(last) <= slow) last = unitTangentAt(seg, t);
    const apart = Math.atan2(Math.abs(cross(first, last)), dot(first, last));
    return way * (opposite < t ? 2 * Math.PI - apart : apart);
  };
}

/** Where after a the derivative points against `first`, its direction at a; infinite where it doesn't before b. */
function oppositeAfter(seg: Cubic, a: number, b: number, first: Point): number {
  const third = subtract(secondDerivativeAt(seg, 1), secondDerivativeAt(seg, 0));
  const at = a - (2 * cross(first, secondDerivativeAt(seg, a))) / cross(first, third);
  return at > a && at < b && dot(first, derivativeAt(seg, at)) < 0 ? at : Infinity;
}

import { cross, distance, dot, mix, norm, scale, subtract, type Point } from './point';

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A cubic Bézier curve with its two handles. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

/** One stretch of a line, travelled from t = 0 to t = 1. */
export type Segment = Line | Cubic;

/** A derivative below this share of the curve's size has no direction of its own. */
const VANISHING = 1e-12;

/** How far the handles of a straight curve may lie off its line, as a share of its size. */
const STRAIGHT = 1e-9;

export function line(from: Point, to: Point): Line {
  return { kind: 'line', from, to };
}

export function cubic(from: Point, c1: Point, c2: Point, to: Point): Cubic {
  return { kind: 'cubic', from, c1, c2, to };
}

/** The place at t, by its Bernstein form; exact at 0 and 1. */
export function pointAt(seg: Segment, t: number): Point {
  if (seg.kind === 'line') return mix(seg.from, seg.to, t);
  const u = 1 - t;
  const w0 = u * u * u;
  const w1 = 3 * u * u * t;
  const w2 = 3 * u * t * t;
  const w3 = t * t * t;
  return {
    x: w0 * seg.from.x + w1 * seg.c1.x + w2 * seg.c2.x + w3 * seg.to.x,
    y: w0 * seg.from.y + w1 * seg.c1.y + w2 * seg.c2.y + w3 * seg.to.y,
  };
}

/** The first derivative by t. */
export function derivativeAt(seg: Segment, t: number): Point {
  if (seg.kind === 'line') return subtract(seg.to, seg.from);
  const { from, c1, c2, to } = seg;
  const u = 1 - t;
  const w0 = 3 * u * u;
  const w1 = 6 * u * t;
  const w2 = 3 * t * t;
  return {
    x: w0 * (c1.x - from.x) + w1 * (c2.x - c1.x) + w2 * (to.x - c2.x),
    y: w0 * (c1.y - from.y) + w1 * (c2.y - c1.y) + w2 * (to.y - c2.y),
  };
}

/** The second derivative by t. */
export function secondDerivativeAt(seg: Segment, t: number): Point {
  if (seg.kind === 'line') return { x: 0, y: 0 };
  const { from, c1, c2, to } = seg;
  return {
    x: 6 * ((1 - t) * (c2.x - 2 * c1.x + from.x) + t * (to.x - 2 * c2.x + c1.x)),
    y: 6 * ((1 - t) * (c2.y - 2 * c1.y + from.y) + t * (to.y - 2 * c2.y + c1.y)),
  };
}

/** The size of a segment: the length of its control polygon, never less than the length of the segment itself. */
export function sizeOf(seg: Segment): number {
  if (seg.kind === 'line') return distance(seg.from, seg.to);
  return distance(seg.from, seg.c1) + distance(seg.c1, seg.c2) + distance(seg.c2, seg.to);
}

/**
 * The direction of travel at t, as a vector of length 1. Where the derivative vanishes (a handle lies on its corner,
 * a cusp) it is the limit: the direction in which the curve goes on from there, and at t = 1 the one in which it
 * arrives. A segment of no length has no direction: (0, 0).
 */
export function unitTangentAt(seg: Segment, t: number): Point {
  const size = sizeOf(seg);
  const first = derivativeAt(seg, t);
  if (norm(first) > VANISHING * size) return scale(first, 1 / norm(first));
  const second = secondDerivativeAt(seg, t);
  if (norm(second) > VANISHING * size) return scale(second, (t < 1 ? 1 : -1) / norm(second));
  // Both vanish only where three of the four points coincide, and then the curve runs along its chord.
  const chord = subtract(seg.to, seg.from);
  return norm(chord) > 0 ? scale(chord, 1 / norm(chord)) : { x: 0, y: 0 };
}

/** The same stretch travelled the other way. */
export function reversed<S extends Segment>(seg: S): S;
export function reversed(seg: Segment): Segment {
  return seg.kind === 'line' ? line(seg.to, seg.from) : cubic(seg.to, seg.c2, seg.c1, seg.from);
}

/** The segment with every x times `sx` and every y times `sy`: from the stitch grid to mm, or a mirror image. */
export function scaled<S extends Segment>(seg: S, sx: number, sy: number): S;
export function scaled(seg: Segment, sx: number, sy: number): Segment {
  const move = (p: Point): Point => ({ x: p.x * sx, y: p.y * sy });
  return seg.kind === 'line'
    ? line(move(seg.from), move(seg.to))
    : cubic(move(seg.from), move(seg.c1), move(seg.c2), move(seg.to));
}

/**
 * The stretch from t0 to t1, by blossoming (de Casteljau with one parameter for each step). With t1 below t0 it is
 * travelled the other way.
 */
export function between<S extends Segment>(seg: S, t0: number, t1: number): S;
export function between(seg: Segment, t0: number, t1: number): Segment {
  if (seg.kind === 'line') return line(pointAt(seg, t0), pointAt(seg, t1));
  const blossom = (a: number, b: number, c: number): Point => {
    const ab = mix(seg.from, seg.c1, a);
    const bc = mix(seg.c1, seg.c2, a);
    const cd = mix(seg.c2, seg.to, a);
    return mix(mix(ab, bc, b), mix(bc, cd, b), c);
  };
  return cubic(blossom(t0, t0, t0), blossom(t0, t0, t1), blossom(t0, t1, t1), blossom(t1, t1, t1));
}

/**
 * Whether the whole curve lies on one straight line, up to a thousand-millionth of its size. It may still double
 * back on itself there.
 */
export function isStraight(seg: Segment): boolean {
  if (seg.kind === 'line') return true;
  const size = sizeOf(seg);
  const farthest = [seg.c1, seg.c2, seg.to].reduce(
    (best, p) => (distance(p, seg.from) > distance(best, seg.from) ? p : best),
    seg.from,
  );
  const along = subtract(farthest, seg.from);
  const reach = norm(along);
  if (!(reach > 0)) return true;
  return [seg.c1, seg.c2, seg.to].every(
    (p) => Math.abs(cross(along, subtract(p, seg.from))) <= STRAIGHT * size * reach,
  );
}

/** Whether a straight curve turns round somewhere on its way and so lies on itself. */
export function doublesBack(seg: Segment): boolean {
  if (seg.kind === 'line' || !isStraight(seg)) return false;
  const chord = subtract(seg.to, seg.from);
  const reach = dot(chord, chord);
  if (!(reach > 0)) return sizeOf(seg) > 0;
  // Speed along the chord is a quadratic in t; it dips lowest at an end or at its vertex.
  const [d0, d1, d2] = [subtract(seg.c1, seg.from), subtract(seg.c2, seg.c1), subtract(seg.to, seg.c2)].map(
    (d) => dot(d, chord) / reach,
  ) as [number, number, number];
  const bend = d0 - 2 * d1 + d2;
  const vertex = bend > 0 ? (d0 - d1) / bend : 0;
  const lowest = vertex > 0 && vertex < 1 ? d0 + (d1 - d0) * vertex : Math.min(d0, d2);
  return lowest < -STRAIGHT;
}

import { GAUSS_NODES, GAUSS_WEIGHTS } from './gauss';
import { distance } from './point';
import type { Segment } from './segment';
import { speedOf, type Speed } from './speed';

/**
 * The long half axis, in half lengths of a stretch, of the ellipse round it that must be free of roots of the
 * derivative. The ellipse has its foci at the ends; with r = 1.4 + sqrt(1.4² - 1) the 12-point rule errs by no more
 * than a small multiple of r^-24 = 9e-10 (Trefethen, Approximation Theory and Approximation Practice, theorem 19.3).
 * The roots being no worse than square roots, what is left in fact is below 1e-10 of the length.
 */
const LONG_AXIS = 1.4;
const SHORT_AXIS_SQUARED = LONG_AXIS * LONG_AXIS - 1;
const LONG_AXIS_SQUARED = LONG_AXIS * LONG_AXIS;

/** A root this near to the real axis, as a share of the length in t wanted, is a cusp: its error is this squared. */
const CUSP = 1e-7;

/** A place is found when its distance is right to this share of the whole length. */
const FOUND = 1e-11;

/** Steps of the search for a parameter; halving alone would end within them. */
const MOST_STEPS = 100;

/**
 * The arc length of a segment, in the unit of its points, to a relative error below 1e-9: the integral of the speed by
 * Gauss–Legendre quadrature, halved beforehand where the curve nearly stops.
 */
export function lengthOf(seg: Segment): number {
  return lengthTo(seg, 1);
}

/** The arc length from t = 0 to t. Outside 0 to 1, t is taken as the nearer end. */
export function lengthTo(seg: Segment, t: number): number {
  const end = Math.min(1, Math.max(0, t));
  if (seg.kind === 'line') return distance(seg.from, seg.to) * end;
  return arc(speedOf(seg), 0, end);
}

/**
 * The parameter at a distance along the segment: the inverse of `lengthTo`, by Newton's rule inside a bracket that
 * shrinks with every step, and halved where a step does little. A distance below 0 gives 0, one beyond the length
 * gives 1; on a segment of no length it is 0.
 */
export function parameterAt(seg: Segment, distanceAlong: number): number {
  if (!(distanceAlong > 0)) return 0;
  const length = lengthOf(seg);
  if (distanceAlong >= length) return length > 0 ? 1 : 0;
  if (seg.kind === 'line') return distanceAlong / length;
  const s = speedOf(seg);
  let [low, high] = [0, 1];
  let [from, gone, missed] = [0, 0, Infinity];
  let t = distanceAlong / length;
  for (let step = 0; step < MOST_STEPS; step++) {
    gone += t > from ? arc(s, from, t) : -arc(s, t, from);
    from = t;
    const over = gone - distanceAlong;
    if (Math.abs(over) <= FOUND * length) break;
    if (over > 0) high = t;
    else low = t;
    const newton = t - over / speedAt(s, t);
    const slow = Math.abs(over) > missed / 2;
    missed = Math.abs(over);
    const next = !slow && newton > low && newton < high ? newton : (low + high) / 2;
    if (!(next > low && next < high)) break;
    t = next;
  }
  return t;
}

/** The integral of the speed from t0 to t1, t0 <= t1. */
function arc(s: Speed, t0: number, t1: number): number {
  return t1 > t0 ? stretch(s, t0, t1, CUSP * (t1 - t0)) : 0;
}

/**
 * The speed is the root of a polynomial and as smooth as can be except at the complex parameters where the derivative
 * vanishes. A stretch with such a root near it is halved until the root is far away in half lengths; on the real axis
 * (a cusp) it is cut at the root, beyond which the speed is smooth on either side. As the stretch shrinks and the root
 * stays, this ends within thirty halvings.
 */
function stretch(s: Speed, t0: number, t1: number, cusp: number): number {
  const cut = cutAt(s.root1X, s.root1Y, t0, t1, cusp) ?? cutAt(s.root2X, s.root2Y, t0, t1, cusp);
  return cut === null ? gauss(s, t0, t1) : stretch(s, t0, cut, cusp) + stretch(s, cut, t1, cusp);
}

/** Where a stretch must be cut because of a root, or null. A root at infinity, or not a number, asks for no cut. */
function cutAt(rootX: number, rootY: number, t0: number, t1: number, cusp: number): number | null {
  if (Math.abs(rootY) <= cusp) return rootX > t0 && rootX < t1 ? rootX : null;
  const half = (t1 - t0) / 2;
  const off = rootX - (t0 + t1) / 2;
  const near = (off * off) / LONG_AXIS_SQUARED + (rootY * rootY) / SHORT_AXIS_SQUARED < half * half;
  return near ? (t0 + t1) / 2 : null;
}

// Kept in one file and in local names: this is the innermost loop of all.
const NODES = GAUSS_NODES;
const WEIGHTS = GAUSS_WEIGHTS;

function gauss(s: Speed, t0: number, t1: number): number {
  const half = (t1 - t0) / 2;
  const middle = (t0 + t1) / 2;
  let sum = 0;
  for (let i = 0; i < NODES.length; i++) {
    const step = half * NODES[i]!;
    sum += WEIGHTS[i]! * (speedAt(s, middle - step) + speedAt(s, middle + step));
  }
  return sum * half;
}

/** How fast the curve runs at t: the length of its derivative. */
function speedAt(s: Speed, t: number): number {
  const dx = (s.ax * t + s.bx) * t + s.cx;
  const dy = (s.ay * t + s.by) * t + s.cy;
  return Math.sqrt(dx * dx + dy * dy);
}

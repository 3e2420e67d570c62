import { GAUSS_NODES, GAUSS_WEIGHTS } from './gauss';
import type { Cubic } from './segment';
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

/** A root this near to the real axis is a cusp: its error, as a share of the size, is this squared. */
const CUSP = 1e-7;

/** A place is found when its distance is right to this share of the whole length. */
const FOUND = 1e-11;

/** Steps of the search for a parameter; halving alone would end within them. */
const MOST_STEPS = 100;

/** A cubic laid out for measuring: many lengths to places on it cost one rule each. */
export interface Arc {
  readonly length: number;
  /** The arc length from 0 to t, 0 <= t <= 1. */
  readonly lengthTo: (t: number) => number;
  /** The parameter at a distance above 0 and below the length. */
  readonly parameterAt: (distance: number) => number;
}

const kept = new WeakMap<Cubic, Arc>();

/**
 * Lays a cubic out, once for each object: it is cut into stretches on which one Gauss–Legendre rule gives the length to
 * a relative error below 1e-9. The rule is as good on the part of a stretch from its start: with foci a, b and a root z
 * where |z - a| + |z - b| > 1.4 (b - a), the triangle's inequality gives |z - a| + |z - t| > 1.4 (t - a) for t up to b.
 */
export function arcOf(seg: Cubic): Arc {
  const known = kept.get(seg);
  if (known) return known;
  const made = layOut(speedOf(seg));
  kept.set(seg, made);
  return made;
}

/** The length of a cubic alone: the same sum, without keeping what only places on it need. */
export function cubicLength(seg: Cubic): number {
  const known = kept.get(seg);
  if (known) return known.length;
  const s = speedOf(seg);
  const starts = [0];
  cut(s, 0, 1, starts);
  let length = 0;
  for (let i = 0; i < starts.length; i++) length += gauss(s, starts[i]!, starts[i + 1] ?? 1);
  return length;
}

function layOut(s: Speed): Arc {
  const starts = [0];
  cut(s, 0, 1, starts);
  const before = [0];
  for (let i = 0; i < starts.length; i++) before.push(before[i]! + gauss(s, starts[i]!, starts[i + 1] ?? 1));
  const length = before.pop()!;

  const parameterAt = (distance: number): number => {
    const i = lastAtMost(before, distance);
    const start = starts[i]!;
    let [low, high] = [start, starts[i + 1] ?? 1];
    let missed = Infinity;
    let t = low + ((high - low) * (distance - before[i]!)) / ((before[i + 1] ?? length) - before[i]!);
    for (let step = 0; step < MOST_STEPS; step++) {
      const over = before[i]! + gauss(s, start, t) - distance;
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
  };

  return {
    length,
    lengthTo(t) {
      const i = lastAtMost(starts, t);
      return t < 1 ? before[i]! + gauss(s, starts[i]!, t) : length;
    },
    parameterAt,
  };
}

/** The last place of a growing list that is no more than `value`, or the first. */
function lastAtMost(list: readonly number[], value: number): number {
  let i = list.length - 1;
  while (i > 0 && !(list[i]! <= value)) i -= 1;
  return i;
}

/**
 * The speed is the root of a polynomial and as smooth as can be except at the complex parameters where the derivative
 * vanishes. A stretch with such a root near it is halved until the root is far away in half lengths; on the real axis
 * (a cusp) it is cut at the root, beyond which the speed is smooth on either side. As the stretch shrinks and the root
 * stays, this ends within thirty halvings. Puts the start of every stretch but the first into `starts`.
 */
function cut(s: Speed, t0: number, t1: number, starts: number[]): void {
  const at = cutAt(s.root1X, s.root1Y, t0, t1) ?? cutAt(s.root2X, s.root2Y, t0, t1);
  if (at === null) return;
  cut(s, t0, at, starts);
  starts.push(at);
  cut(s, at, t1, starts);
}

/** Where a stretch must be cut because of a root, or null. A root at infinity, or not a number, asks for no cut. */
function cutAt(rootX: number, rootY: number, t0: number, t1: number): number | null {
  if (Math.abs(rootY) <= CUSP) return rootX > t0 && rootX < t1 ? rootX : null;
  const half = (t1 - t0) / 2;
  const off = rootX - (t0 + t1) / 2;
  const near = (off * off) / LONG_AXIS_SQUARED + (rootY * rootY) / SHORT_AXIS_SQUARED < half * half;
  return near ? (t0 + t1) / 2 : null;
}

// Kept in one file and in local names: this is the innermost loop of all.
const NODES = GAUSS_NODES;
const WEIGHTS = GAUSS_WEIGHTS;

/** The integral of the speed from t0 to t1, by the 12-point rule (DLMF 3.5(v), https://dlmf.nist.gov/3.5#v). */
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

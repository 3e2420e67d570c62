import type { Cubic } from '../geometry';
import type { Rows } from '../units';

/** Newton's rule doubles the right digits; halving alone would end within these steps. */
const MOST_STEPS = 60;

/** A parameter this much nearer changes no place that can be told apart. */
const FOUND = 1e-14;

/**
 * The parameter between t0 and t1, where a curve climbs or falls all the way, at which it has the height y; the nearer
 * end where it never does. Newton's rule inside a bracket that shrinks with every step, halved where a step leaves it.
 * For the thousands of rows of one curve, which `parametersAtY` would search for turns each.
 */
export function parameterAtHeight({ from, c1, c2, to }: Cubic, y: Rows, t0: number, t1: number): number {
  const b = 3 * (c1.y - from.y);
  const c = 3 * (c2.y - c1.y) - b;
  const d = to.y - from.y - b - c;
  const start = over(from.y, b, c, d, y, t0);
  const end = over(from.y, b, c, d, y, t1);
  const rises = end >= start;
  if (rises ? start >= 0 : start <= 0) return t0;
  if (rises ? end <= 0 : end >= 0) return t1;
  let low = rises ? t0 : t1;
  let high = rises ? t1 : t0;
  let t = t0 + ((t1 - t0) * start) / (start - end);
  for (let step = 0; step < MOST_STEPS; step++) {
    const value = over(from.y, b, c, d, y, t);
    if (value === 0) return t;
    if (value < 0) low = t;
    else high = t;
    const newton = t - value / (b + t * (2 * c + 3 * d * t));
    const inside = newton > Math.min(low, high) && newton < Math.max(low, high);
    const next = inside ? newton : (low + high) / 2;
    if (Math.abs(next - t) <= FOUND) return next;
    t = next;
  }
  return t;
}

/** How far the cubic a + b t + c t² + d t³ lies over y at t. */
function over(a: number, b: number, c: number, d: number, y: number, t: number): number {
  return a + t * (b + t * (c + t * d)) - y;
}

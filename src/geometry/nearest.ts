import { bernsteinRoots } from './bernstein';
import { distance, dot, subtract, type Point } from './point';
import { pointAt, type Cubic, type Line, type Segment } from './segment';

/** The place on a segment that is nearest to some point. */
export interface Nearest {
  readonly t: number;
  readonly point: Point;
  /** How far off it is, in the unit of the points; not squared. */
  readonly distance: number;
}

/** Binomial coefficients of the product of a cubic and a quadratic in Bernstein form. */
const CUBIC = [1, 3, 3, 1] as const;
const QUADRATIC = [1, 2, 1] as const;
const QUINTIC = [1, 5, 10, 10, 5, 1] as const;

/** The place on a segment nearest to a point; of several equally near ones, the first. */
export function nearestOn(seg: Segment, point: Point): Nearest {
  const candidates = seg.kind === 'line' ? footOn(seg, point) : feetOn(seg, point);
  let best: Nearest | null = null;
  for (const t of candidates) {
    const at = pointAt(seg, t);
    const off = distance(at, point);
    if (best === null || off < best.distance) best = { t, point: at, distance: off };
  }
  return best ?? { t: 0, point: seg.from, distance: distance(seg.from, point) };
}

function footOn(seg: Line, point: Point): number[] {
  const along = subtract(seg.to, seg.from);
  const reach = dot(along, along);
  const t = reach > 0 ? dot(subtract(point, seg.from), along) / reach : 0;
  return [Math.min(1, Math.max(0, t))];
}

/**
 * Both ends, and wherever the way to the point stands square to the curve: the roots of (B(t) - point) · B'(t), of
 * degree five. Source: Schneider, "Solving the nearest-point-on-curve problem", Graphics Gems (1990).
 */
function feetOn(seg: Cubic, point: Point): number[] {
  const off = [seg.from, seg.c1, seg.c2, seg.to].map((p) => subtract(p, point));
  const along = [subtract(seg.c1, seg.from), subtract(seg.c2, seg.c1), subtract(seg.to, seg.c2)];
  const product = [0, 0, 0, 0, 0, 0];
  for (const [i, a] of off.entries()) {
    for (const [j, b] of along.entries()) {
      product[i + j]! += (CUBIC[i]! * QUADRATIC[j]! * dot(a, b)) / QUINTIC[i + j]!;
    }
  }
  return [0, ...bernsteinRoots(product), 1];
}

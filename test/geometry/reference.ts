import { cubic, type Cubic, type Segment } from '../../src/geometry';

/**
 * Slow and simple ways to the same numbers, from textbook definitions and sharing no code with what they check.
 */

/** Nodes and weights of the n-point Gauss–Legendre rule, by Newton's rule on P_n. Source: DLMF 3.5(v) and 18.9.1. */
export function gaussLegendre(n: number): { readonly x: number; readonly w: number }[] {
  return Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step++) {
      let [before, value] = [1, x];
      for (let k = 2; k <= n; k++) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
      slope = (n * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    return { x, w: 2 / ((1 - x * x) * slope * slope) };
  });
}

const SIXTEEN = gaussLegendre(16);

/** A point of a cubic, from its definition. */
export function cubicAt(c: Cubic, t: number): [x: number, y: number] {
  const w = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3] as const;
  const p = [c.from, c.c1, c.c2, c.to] as const;
  return [p.reduce((sum, q, i) => sum + w[i]! * q.x, 0), p.reduce((sum, q, i) => sum + w[i]! * q.y, 0)];
}

function speed(c: Cubic, t: number): number {
  const u = 1 - t;
  const d = (a: number, b: number, e: number, f: number): number =>
    3 * u * u * (b - a) + 6 * u * t * (e - b) + 3 * t * t * (f - e);
  return Math.hypot(d(c.from.x, c.c1.x, c.c2.x, c.to.x), d(c.from.y, c.c1.y, c.c2.y, c.to.y));
}

/** The lowest speed on a segment, of 4,001 places. */
export function slowestSpeed(seg: Segment): number {
  if (seg.kind === 'line') return Math.hypot(seg.to.x - seg.from.x, seg.to.y - seg.from.y);
  let least = Infinity;
  for (let i = 0; i <= 4000; i++) least = Math.min(least, speed(seg, i / 4000));
  return least;
}

/** The length by the 16-point rule on so many equal panels. */
function lengthOnPanels(c: Cubic, t0: number, t1: number, panels: number): number {
  const half = (t1 - t0) / panels / 2;
  let sum = 0;
  for (let i = 0; i < panels; i++) {
    const middle = t0 + (2 * i + 1) * half;
    for (const { x, w } of SIXTEEN) sum += w * speed(c, middle + half * x);
  }
  return sum * half;
}

/**
 * The length by the 16-point rule on equal panels, 32 and then always twice as many until that changes nothing any more
 * (or 32,768: at a cusp the rule is wrong by about a thousandth of a panel's share squared, 1e-12 at the end).
 */
export function panelLength(c: Cubic, t0 = 0, t1 = 1): number {
  let length = lengthOnPanels(c, t0, t1, 32);
  for (let panels = 64; panels <= 32_768; panels *= 2) {
    const finer = lengthOnPanels(c, t0, t1, panels);
    if (Math.abs(finer - length) <= 1e-13 * finer) return finer;
    length = finer;
  }
  return length;
}

/** The sum of the turns of a fine polyline: wrong only where the curve turns by pi within one step. */
export function polylineTurning(c: Cubic, end: number, steps: number): number {
  let sum = 0;
  let last: number | null = null;
  let [x, y] = cubicAt(c, 0);
  for (let i = 1; i <= steps; i++) {
    const [nx, ny] = cubicAt(c, (end * i) / steps);
    const heading = Math.atan2(ny - y, nx - x);
    if (last !== null) {
      const turn = heading - last;
      sum += turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
    }
    last = heading;
    [x, y] = [nx, ny];
  }
  return sum;
}

/**
 * An arc of an ellipse about the origin as `pieces` cubics whose handles are (4/3) tan(angle / 4) long. On the unit
 * circle such a piece is never inside and strays outwards by less than (2/27) sin⁶(angle / 4) / cos²(angle / 4).
 * Source: Goldapp, "Approximation of circular arcs by cubic polynomials", 1991,
 * https://doi.org/10.1016/0167-8396(91)90007-X.
 */
export function ellipseArc(a: number, b: number, from: number, to: number, pieces: number): Segment[] {
  const step = (to - from) / pieces;
  const handle = (4 / 3) * Math.tan(step / 4);
  const at = (angle: number, reach: number): { x: number; y: number } => ({
    x: a * (Math.cos(angle) - reach * Math.sin(angle)),
    y: b * (Math.sin(angle) + reach * Math.cos(angle)),
  });
  return Array.from({ length: pieces }, (_, i) => {
    const [start, end] = [from + i * step, from + (i + 1) * step];
    return cubic(at(start, 0), at(start, handle), at(end, -handle), at(end, 0));
  });
}

/** How far such a piece strays from the unit circle. */
export function arcError(angle: number): number {
  return ((2 / 27) * Math.sin(angle / 4) ** 6) / Math.cos(angle / 4) ** 2;
}

/**
 * The perimeter of an ellipse, 4 a E(k): DLMF 19.30.5, https://dlmf.nist.gov/19.30, with E by the arithmetic-geometric
 * mean, DLMF 19.8.6, https://dlmf.nist.gov/19.8.
 */
export function ellipsePerimeter(a: number, b: number): number {
  let [m, g] = [Math.max(a, b), Math.min(a, b)];
  const first = m;
  let [sum, weight] = [(m * m - g * g) / 2, 1];
  for (let n = 0; n < 40; n++) {
    sum += weight * ((m - g) / 2) ** 2;
    [m, g] = [(m + g) / 2, Math.sqrt(m * g)];
    weight *= 2;
  }
  return (2 * Math.PI * (first * first - sum)) / m;
}

/**
 * Ramanujan's second formula for the perimeter of an ellipse. It is short by about 3 h⁵ / 2¹⁷ of itself, where
 * h = ((a - b) / (a + b))². Source: Ramanujan, "Modular equations and approximations to pi", 1914; Almkvist and
 * Berndt, 1988, https://doi.org/10.2307/2323302.
 */
export function ramanujanPerimeter(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

import { Bezier } from 'bezier-js';
import { svgPathProperties } from 'svg-path-properties';
import { bench, describe } from 'vitest';
import {
  cubic,
  findCrossing,
  lengthOf,
  line,
  nearestOn,
  parameterAt,
  turningOf,
  type Cubic,
  type Point,
  type Segment,
} from '../../src/geometry';
import { panelLength } from '../geometry/reference';

/** The same curves every time: Park and Miller's minimal generator, 1988, https://doi.org/10.1145/63039.63042. */
function generator(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

const COUNT = 10_000;
const next = generator(20);
const place = (): Point => ({ x: 100 * next(), y: 100 * next() });
const curves = Array.from({ length: COUNT }, () => cubic(place(), place(), place(), place()));
const references = curves.map((curve) => panelLength(curve));
const options = { iterations: 5, warmupIterations: 2, time: 500, warmupTime: 100 };

const beziers = curves.map(({ from, c1, c2, to }) => new Bezier(from.x, from.y, c1.x, c1.y, c2.x, c2.y, to.x, to.y));

/** bezier-js made exact: halved until both halves agree with the whole. */
function halvedLength(curve: Bezier, whole: number, slack: number, left: number): number {
  const { left: first, right: second } = curve.split(0.5);
  const [a, b] = [first.length(), second.length()];
  if (Math.abs(a + b - whole) <= slack || left === 0) return a + b;
  return halvedLength(first, a, slack, left - 1) + halvedLength(second, b, slack, left - 1);
}

const paths = curves.map(
  ({ from, c1, c2, to }) => `M${from.x},${from.y} C${c1.x},${c1.y} ${c2.x},${c2.y} ${to.x},${to.y}`,
);

function largestError(lengths: readonly number[]): string {
  const errors = lengths.map((length, i) => Math.abs(length / references[i]! - 1));
  return Math.max(...errors).toExponential(1);
}

/** Every way to the lengths of all curves. */
const ways: readonly [name: string, work: () => number[]][] = [
  // What was measured is kept by the segment: every round measures copies that nobody has seen.
  ['lengthOf', () => curves.map((curve) => lengthOf({ ...curve }))],
  ['bezier-js length() as shipped', () => beziers.map((curve) => curve.length())],
  [
    'bezier-js length(), halved until it agrees to 1e-9',
    () =>
      beziers.map((curve) => {
        const whole = curve.length();
        return halvedLength(curve, whole, 1e-9 * whole, 30);
      }),
  ],
  ['svg-path-properties', () => paths.map((path) => new svgPathProperties(path).getTotalLength())],
];

describe(`lengths of ${COUNT} random cubics, with the largest error (relative; the reference is good to 1e-12)`, () => {
  for (const [name, work] of ways) bench(`${name}, ${largestError(work())}`, () => void work(), options);
});

describe(`places on ${COUNT} random cubics`, () => {
  bench('turningOf', () => void curves.map(turningOf), options);
  bench('parameterAt', () => void curves.map((curve, i) => parameterAt({ ...curve }, 0.37 * references[i]!)), options);
  bench('nearestOn', () => void curves.map((curve) => nearestOn(curve, { x: 50, y: 50 })), options);
});

/** A ring of edges that bulge by turns to the left and to the right. */
function ring(edges: number, curved: boolean): Segment[][] {
  const corner = (i: number): Point => {
    const angle = (2 * Math.PI * i) / edges;
    const reach = 500 + 50 * Math.cos(7 * angle);
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
  };
  return Array.from({ length: edges }, (_, i) => {
    const [from, to] = [corner(i), corner((i + 1) % edges)];
    if (!curved) return [line(from, to)];
    const bulge = (i % 2 === 0 ? 0.3 : -0.3) / 3;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const handle = (share: number): Point => ({
      x: from.x + share * dx - bulge * dy,
      y: from.y + share * dy + bulge * dx,
    });
    return [cubic(from, handle(1 / 3), handle(2 / 3), to)];
  });
}

/** Two curves side by side, a share of their size apart. */
function strip(gap: number): Segment[][] {
  const arch = (y: number): Cubic => cubic({ x: 0, y }, { x: 300, y: y + 400 }, { x: 700, y: y + 400 }, { x: 1000, y });
  const [low, high] = [arch(0), arch(1000 * gap)];
  return [[low], [line(low.to, high.to)], [cubic(high.to, high.c2, high.c1, high.from)], [line(high.from, low.from)]];
}

describe('findCrossing', () => {
  for (const [name, outline, sound] of [
    ['400 straight edges', ring(400, false), true],
    ['400 curved edges', ring(400, true), true],
    ['20 straight edges', ring(20, false), true],
    ['two curves a thousandth apart', strip(1e-3), true],
    ['two curves a millionth apart', strip(1e-6), true],
    ['two curves so close that they count as touching', strip(2e-9), false],
  ] as const) {
    if ((findCrossing(outline) === null) !== sound) throw new Error(`${name}: the answer is wrong.`);
    bench(name, () => void findCrossing(outline), options);
  }
});

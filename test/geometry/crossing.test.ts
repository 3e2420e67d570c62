import { describe, expect, it } from 'vitest';
import { between, cubic, findCrossing, line, reversed, scaled, type Point, type Segment } from '../../src/geometry';
import { rotated, shifted } from './arbitrary';
import { ellipseArc } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

/** A closed polygon, an edge for each side. */
function polygon(...corners: [x: number, y: number][]): Segment[][] {
  return corners.map(([x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length]!;
    return [line(at(x, y), at(nx, ny))];
  });
}

/** The same answer is wanted however the outline lies, runs and is scaled. */
function crossingOf(edges: Segment[][]): ReturnType<typeof findCrossing> {
  const found = findCrossing(edges);
  const moved = (move: (seg: Segment) => Segment): boolean =>
    findCrossing(edges.map((chain) => chain.map(move))) !== null;
  const backwards = edges.map((chain) => chain.map((seg) => reversed(seg)).reverse()).reverse();
  const others = [
    moved((seg) => scaled(seg, -1, 1)),
    moved((seg) => rotated(seg, 0.7)),
    moved((seg) => scaled(seg, 1e-6, 1e-6)),
    moved((seg) => scaled(seg, 4.5, 10 / 3)),
    moved((seg) => shifted(seg, at(300, -200))),
    findCrossing(backwards) !== null,
    ...edges.map((_, i) => findCrossing([...edges.slice(i), ...edges.slice(0, i)]) !== null),
  ];
  expect(others).toEqual(others.map(() => found !== null));
  return found;
}

describe('an outline of straight edges', () => {
  it('that is sound', () => {
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [0, 10]))).toBeNull();
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [5, 1], [0, 10]))).toBeNull();
    expect(crossingOf(polygon([0, 0], [10, 0], [5, 9]))).toBeNull();
  });

  it('that crosses itself', () => {
    expect(crossingOf(polygon([0, 0], [10, 10], [10, 0], [0, 10]))).toEqual({ first: 0, second: 2, at: at(5, 5) });
  });

  it('whose corner touches a far edge', () => {
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]))).toMatchObject({ first: 0, at: at(5, 0) });
    expect(crossingOf(polygon([0, 0], [10, 0], [10, 10], [5, 1e-3], [0, 10]))).toBeNull();
  });

  it('whose corner touches a far corner', () => {
    expect(crossingOf(polygon([0, 0], [5, 5], [10, 0], [10, 10], [5, 5], [0, 10]))).toMatchObject({ at: at(5, 5) });
  });

  it('that runs on round its corners in one line', () => {
    expect(crossingOf(polygon([0, 0], [5, 0], [10, 0], [10, 5], [10, 10], [0, 10], [0, 4]))).toBeNull();
  });

  it('that doubles back over its neighbour', () => {
    expect(crossingOf(polygon([0, 0], [10, 0], [6, 0], [6, 10], [0, 10]))).toMatchObject({
      first: 0,
      second: 1,
      at: at(6, 0),
    });
    expect(crossingOf(polygon([0, 0], [10, 0], [-3, 0], [0, 10]))).toMatchObject({ first: 0, second: 1, at: at(0, 0) });
    expect(crossingOf(polygon([0, 0], [3, 4], [0, 0]))).not.toBeNull();
  });

  it('that leaves its neighbour at a very small angle', () => {
    expect(crossingOf(polygon([0, 0], [1000, 0], [0, 1e-3]))).toBeNull();
  });

  it('that lies on a far edge of its own', () => {
    const edges = polygon([0, 0], [10, 0], [10, 5], [12, 5], [12, 0], [6, 0], [6, -5], [0, -5]);
    expect(crossingOf(edges)).toMatchObject({ first: 0, second: 4 });
  });

  it('that touches itself across edges of several segments', () => {
    const stairs = [line(at(0, 0), at(4, 0)), line(at(4, 0), at(4, 2)), line(at(4, 2), at(8, 2))];
    expect(crossingOf([stairs, [line(at(8, 2), at(8, 9))], [line(at(8, 9), at(0, 0))]])).toBeNull();
    const [down, back] = [line(at(8, 2), at(2, 0.5)), line(at(2, 0.5), at(0, 0))];
    expect(crossingOf([stairs, [down], [back]])).toMatchObject({ first: 0, second: 1 });
    // One edge that crosses itself.
    expect(crossingOf([[...stairs, down], [back]])).toMatchObject({ first: 0, second: 0 });
  });

  it('passes over edges of no length, and an outline of nothing', () => {
    const edges = polygon([0, 0], [10, 0], [10, 0], [10, 10], [0, 10]);
    expect(crossingOf(edges)).toBeNull();
    expect(findCrossing([])).toBeNull();
    expect(findCrossing([[line(at(1, 1), at(1, 1))]])).toBeNull();
    // The indices still count the edge that was passed over.
    expect(findCrossing(polygon([0, 0], [0, 0], [10, 10], [10, 0], [0, 10]))).toMatchObject({ first: 1, second: 3 });
  });
});

describe('an outline with curves', () => {
  /** A front: bottom, right side, neckline as a curve, top, left side. */
  const front = (c1: Point, c2: Point): Segment[][] => [
    [line(at(-50, 0), at(50, 0))],
    [line(at(50, 0), at(50, 120))],
    [line(at(50, 120), at(20, 120))],
    [cubic(at(20, 120), c1, c2, at(-20, 120))],
    [line(at(-20, 120), at(-50, 120))],
    [line(at(-50, 120), at(-50, 0))],
  ];

  it('that is sound', () => {
    expect(crossingOf(front(at(20, 80), at(-20, 80)))).toBeNull();
    expect(crossingOf(front(at(15, 119), at(-15, 119)))).toBeNull();
  });

  it('whose curve runs into the bottom or just not', () => {
    // The lowest place of the curve is three quarters of the way to its handles.
    expect(crossingOf(front(at(20, -40.1), at(-20, -40.1)))).toMatchObject({ first: 0, second: 3 });
    expect(crossingOf(front(at(20, -40), at(-20, -40)))).toMatchObject({
      first: 0,
      second: 3,
      at: at(expect.closeTo(0, 2) as number, expect.closeTo(0, 6) as number),
    });
    expect(crossingOf(front(at(20, -39.99), at(-20, -39.99)))).toBeNull();
  });

  it('whose curve has a loop of its own', () => {
    expect(crossingOf(front(at(-120, 60), at(120, 60)))).toMatchObject({ first: 3, second: 3 });
  });

  it('with smooth joins', () => {
    expect(crossingOf(front(at(10, 120), at(-10, 120)))).toBeNull();
    // The side runs on into the armhole without a corner, and so on round.
    const smooth: Segment[][] = [
      [line(at(0, 0), at(100, 0))],
      [line(at(100, 0), at(100, 60))],
      [cubic(at(100, 60), at(100, 80), at(80, 80), at(80, 120))],
      [cubic(at(80, 120), at(80, 140), at(60, 150), at(50, 150))],
      [cubic(at(50, 150), at(30, 150), at(0, 140), at(0, 90))],
      [line(at(0, 90), at(0, 0))],
    ];
    expect(crossingOf(smooth)).toBeNull();
  });

  it('with a curve that leaves back along its neighbour and bends away, or bends through it', () => {
    const hook = (c1: Point, c2: Point): Segment[][] => [
      [line(at(0, 0), at(100, 0))],
      [cubic(at(100, 0), c1, c2, at(20, 60))],
      [line(at(20, 60), at(0, 0))],
    ];
    expect(crossingOf(hook(at(60, 0), at(20, 20)))).toBeNull();
    expect(crossingOf(hook(at(60, -5), at(20, 30)))).toMatchObject({ first: 0, second: 1 });
    expect(crossingOf(hook(at(60, 5), at(40, -30)))).toMatchObject({ first: 0, second: 1 });
  });

  it('with a straight curve on its neighbour', () => {
    const edges: Segment[][] = [
      [line(at(0, 0), at(100, 0))],
      [cubic(at(100, 0), at(90, 0), at(70, 0), at(60, 0))],
      [line(at(60, 0), at(0, 60))],
      [line(at(0, 60), at(0, 0))],
    ];
    expect(crossingOf(edges)).toMatchObject({ first: 0, second: 1 });
  });

  it('that goes back along the same curve', () => {
    const curve = cubic(at(0, 0), at(0, 30), at(50, 60), at(80, 0));
    expect(crossingOf([[curve], [reversed(curve)]])).not.toBeNull();
    const part = between(curve, 0.4, 1);
    expect(
      crossingOf([[curve], [reversed(part)], [line(part.from, at(-40, 0))], [line(at(-40, 0), at(0, 0))]]),
    ).not.toBeNull();
  });

  it('of two curves, a lens, sound or crossed', () => {
    expect(
      crossingOf([
        [cubic(at(0, 0), at(3, -4), at(7, -4), at(10, 0))],
        [cubic(at(10, 0), at(7, 4), at(3, 4), at(0, 0))],
      ]),
    ).toBeNull();
    expect(
      crossingOf([
        [cubic(at(0, 0), at(3, -9), at(7, 9), at(10, 0))],
        [cubic(at(10, 0), at(7, 4), at(3, -4), at(0, 0))],
      ]),
    ).not.toBeNull();
  });

  it('of one curve, a teardrop, and of one with a knot', () => {
    expect(findCrossing([[cubic(at(0, 0), at(9, 9), at(-9, 9), at(0, 0))]])).toBeNull();
    expect(
      findCrossing([[cubic(at(0, 0), at(90, 90), at(-90, 90), at(1, 0)), line(at(1, 0), at(0, 0))]]),
    ).not.toBeNull();
  });

  it('that is a circle of many arcs', () => {
    for (const pieces of [2, 3, 4, 64]) {
      const ring = ellipseArc(50, 30, 0, 2 * Math.PI, pieces);
      // The last arc ends a hair beside the first one's start.
      const closed = ring.map((seg, i) =>
        seg.kind === 'cubic' && i === pieces - 1 ? { ...seg, to: ring[0]!.from } : seg,
      );
      expect(crossingOf(closed.map((seg) => [seg]))).toBeNull();
      expect(crossingOf([closed])).toBeNull();
    }
  });

  it('with handles of no length', () => {
    const edges: Segment[][] = [
      [cubic(at(0, 0), at(0, 0), at(9, 0), at(9, 0))],
      [cubic(at(9, 0), at(9, 0), at(12, 5), at(9, 9))],
      [cubic(at(9, 9), at(4, 12), at(0, 0), at(0, 0))],
    ];
    expect(crossingOf(edges)).toBeNull();
  });
});

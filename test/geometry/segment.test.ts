import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  cubic,
  derivativeAt,
  doublesBack,
  isStraight,
  leftOf,
  line,
  offsetPoint,
  pointAt,
  reversed,
  scaled,
  unitTangentAt,
  type Point,
} from '../../src/geometry';
import { anyCubics, anySegments, parameters } from './arbitrary';
import { cubicAt } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

function expectPoint(actual: Point, wanted: Point, slack = 1e-12): void {
  expect(Math.hypot(actual.x - wanted.x, actual.y - wanted.y)).toBeLessThanOrEqual(slack);
}

describe('places on a segment', () => {
  it('follow the definition of a cubic', () => {
    fc.assert(
      fc.property(anyCubics, parameters, (curve, t) => {
        const [x, y] = cubicAt(curve, t);
        expectPoint(pointAt(curve, t), at(x, y), 1e-12);
      }),
    );
  });

  it('are exact at the ends', () => {
    fc.assert(
      fc.property(anySegments, (seg) => {
        expectPoint(pointAt(seg, 0), seg.from, 0);
        expectPoint(pointAt(seg, 1), seg.to, 0);
      }),
    );
  });
});

describe('derivative and tangent', () => {
  it('match differences', () => {
    fc.assert(
      fc.property(anyCubics, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (curve, t) => {
        const [h, before, after] = [1e-5, pointAt(curve, t - 1e-5), pointAt(curve, t + 1e-5)];
        expectPoint(derivativeAt(curve, t), at((after.x - before.x) / 2 / h, (after.y - before.y) / 2 / h), 1e-5);
      }),
    );
  });

  it('of a line run along it', () => {
    expectPoint(unitTangentAt(line(at(1, 1), at(4, 5)), 0.3), at(0.6, 0.8));
  });

  it('go to the limit where a handle lies on its corner', () => {
    expectPoint(unitTangentAt(cubic(at(0, 0), at(0, 0), at(3, 4), at(9, 0)), 0), at(0.6, 0.8));
    expectPoint(
      unitTangentAt(cubic(at(0, 0), at(0, 9), at(6, 2), at(6, 2)), 1),
      at(6 / Math.hypot(6, 7), -7 / Math.hypot(6, 7)),
    );
    expectPoint(unitTangentAt(cubic(at(1, 1), at(1, 1), at(1, 1), at(4, 5)), 0), at(0.6, 0.8));
    expectPoint(unitTangentAt(cubic(at(1, 1), at(4, 5), at(4, 5), at(4, 5)), 1), at(0.6, 0.8));
    expectPoint(unitTangentAt(cubic(at(1, 1), at(1, 1), at(4, 5), at(4, 5)), 0), at(0.6, 0.8));
  });

  it('go on from a cusp', () => {
    // (0,0) (1,1) (0,1) (1,0) stops at its middle and comes back down.
    const cusp = cubic(at(0, 0), at(1, 1), at(0, 1), at(1, 0));
    expectPoint(unitTangentAt(cusp, 0.5), at(0, -1));
    expect(unitTangentAt(cusp, 0.499).y).toBeGreaterThan(0.9);
  });

  it('are nothing on a segment of no length', () => {
    expectPoint(unitTangentAt(line(at(2, 2), at(2, 2)), 0.5), at(0, 0), 0);
    expectPoint(unitTangentAt(cubic(at(2, 2), at(2, 2), at(2, 2), at(2, 2)), 1), at(0, 0), 0);
  });

  it('are of length 1 and approach the tangent at the ends', () => {
    fc.assert(
      fc.property(anyCubics, parameters, (curve, t) => {
        const tangent = unitTangentAt(curve, t);
        const length = Math.hypot(tangent.x, tangent.y);
        expect(length === 0 || Math.abs(length - 1) < 1e-12).toBe(true);
      }),
    );
  });
});

describe('the same segment otherwise', () => {
  it('runs backwards', () => {
    fc.assert(
      fc.property(anySegments, parameters, (seg, t) => {
        expectPoint(pointAt(reversed(seg), t), pointAt(seg, 1 - t), 1e-11);
        expect(reversed(reversed(seg))).toEqual(seg);
      }),
    );
  });

  it('is stretched', () => {
    fc.assert(
      fc.property(anySegments, parameters, (seg, t) => {
        const p = pointAt(seg, t);
        expectPoint(pointAt(scaled(seg, 4.5, -3), t), at(4.5 * p.x, -3 * p.y), 1e-10);
      }),
    );
  });

  it('is cut out', () => {
    fc.assert(
      fc.property(anySegments, parameters, parameters, parameters, (seg, t0, t1, t) => {
        const part = between(seg, t0, t1);
        expect(part.kind).toBe(seg.kind);
        expectPoint(pointAt(part, t), pointAt(seg, t0 + (t1 - t0) * t), 1e-11);
      }),
    );
  });

  it('is cut out whole without any change', () => {
    fc.assert(
      fc.property(anySegments, (seg) => {
        expect(between(seg, 0, 1)).toEqual(seg);
      }),
    );
  });
});

describe('isStraight and doublesBack', () => {
  const straight = cubic(at(0, 0), at(1, 2), at(2, 4), at(3, 6));

  it('tell lines from curves', () => {
    expect(isStraight(straight)).toBe(true);
    expect(isStraight(cubic(at(0, 0), at(1, 2), at(2, 4.001), at(3, 6)))).toBe(false);
    expect(isStraight(cubic(at(0, 0), at(1, 2.001), at(2, 4), at(3, 6)))).toBe(false);
    expect(isStraight(cubic(at(7, 7), at(7, 7), at(7, 7), at(7, 7)))).toBe(true);
    expect(isStraight(cubic(at(0, 0), at(1, 0), at(2, 1), at(0, 0)))).toBe(false);
    expect(isStraight(line(at(0, 0), at(1, 7)))).toBe(true);
  });

  it('tell going on from turning round', () => {
    expect(doublesBack(straight)).toBe(false);
    expect(doublesBack(cubic(at(0, 0), at(0, 0), at(3, 6), at(3, 6)))).toBe(false);
    expect(doublesBack(cubic(at(0, 0), at(0, 0), at(0, 0), at(3, 6)))).toBe(false);
    // Handles may lie in the wrong order and the curve still go one way: x' = 3 (1 - 2 t)² at the least.
    expect(doublesBack(cubic(at(0, 0), at(1, 0), at(0, 0), at(1, 0)))).toBe(false);
    expect(doublesBack(cubic(at(0, 0), at(1, 0), at(-0.1, 0), at(1, 0)))).toBe(true);
    expect(doublesBack(cubic(at(0, 0), at(5, 0), at(1.5, 0), at(3, 0)))).toBe(true);
    expect(doublesBack(cubic(at(0, 0), at(-1, 0), at(2, 0), at(3, 0)))).toBe(true);
    expect(doublesBack(cubic(at(0, 0), at(1, 1), at(1, 1), at(0, 0)))).toBe(true);
    expect(doublesBack(cubic(at(7, 7), at(7, 7), at(7, 7), at(7, 7)))).toBe(false);
    expect(doublesBack(cubic(at(0, 0), at(1, 5), at(2, 0), at(0, 3)))).toBe(false);
  });
});

describe('offsetPoint', () => {
  it('lies on the left of the way', () => {
    expectPoint(offsetPoint(line(at(0, 0), at(10, 0)), 0.5, 2), at(5, 2));
    expectPoint(offsetPoint(line(at(0, 0), at(0, 10)), 0.5, 2), at(-2, 5));
    expectPoint(offsetPoint(line(at(0, 10), at(0, 0)), 0.5, -2), at(-2, 5));
    expectPoint(leftOf(at(1, 0)), at(0, 1));
  });
});

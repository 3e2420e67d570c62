import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, parametersAtY, pointAt, turnsInY } from '../../src/geometry';
import { parameterAtHeight } from '../../src/shaping';

const whole = fc.integer({ min: -400, max: 400 });
const curves = fc
  .tuple(whole, whole, whole, whole, whole, whole, whole, whole)
  .map(([a, b, c, d, e, f, g, h]) => cubic({ x: a, y: b }, { x: c, y: d }, { x: e, y: f }, { x: g, y: h }));

describe('parameterAtHeight', () => {
  it('finds the place that the general search finds, between every two turns', () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (curve, share) => {
        const cuts = [0, ...turnsInY(curve), 1];
        for (const [i, t1] of cuts.entries()) {
          const t0 = cuts[i - 1];
          if (t0 === undefined) continue;
          const [low, high] = [pointAt(curve, t0).y, pointAt(curve, t1).y];
          const y = low + share * (high - low);
          const t = parameterAtHeight(curve, y, t0, t1);
          expect(t >= t0 && t <= t1).toBe(true);
          expect(Math.abs(pointAt(curve, t).y - y)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(y)));
          if (high === low) continue;
          const general = parametersAtY(curve, y).filter((one) => one >= t0 - 1e-9 && one <= t1 + 1e-9);
          expect(Math.min(...general.map((one) => Math.abs(pointAt(curve, one).x - pointAt(curve, t).x)))).toBeLessThan(
            1e-3,
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is the nearer end for a height that is never reached', () => {
    const rising = cubic({ x: 0, y: 0 }, { x: 1, y: 4 }, { x: 2, y: 6 }, { x: 3, y: 10 });
    expect([parameterAtHeight(rising, -1, 0, 1), parameterAtHeight(rising, 11, 0, 1)]).toEqual([0, 1]);
    const falling = cubic({ x: 0, y: 10 }, { x: 1, y: 6 }, { x: 2, y: 4 }, { x: 3, y: 0 });
    expect([parameterAtHeight(falling, -1, 0, 1), parameterAtHeight(falling, 11, 0, 1)]).toEqual([1, 0]);
  });

  it('is found on a flat start, where the curve has no slope', () => {
    const flat = cubic({ x: 0, y: 0 }, { x: 8, y: 0 }, { x: 12, y: 0 }, { x: 12, y: 8 });
    expect(parameterAtHeight(flat, 1, 0, 1)).toBeCloseTo(0.5, 12);
  });
});

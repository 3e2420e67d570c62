import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, line, nearestOn, pointAt, type Point } from '../../src/geometry';
import { anySegments, points } from './arbitrary';
import { ellipseArc } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

describe('nearestOn', () => {
  it('drops a foot on a line, or takes its end', () => {
    const seg = line(at(0, 0), at(10, 0));
    expect(nearestOn(seg, at(4, 3))).toEqual({ t: 0.4, point: at(4, 0), distance: 3 });
    expect(nearestOn(seg, at(-3, 4))).toEqual({ t: 0, point: at(0, 0), distance: 5 });
    expect(nearestOn(seg, at(13, 4))).toEqual({ t: 1, point: at(10, 0), distance: 5 });
    expect(nearestOn(line(at(1, 1), at(1, 1)), at(4, 5))).toEqual({ t: 0, point: at(1, 1), distance: 5 });
  });

  it('finds the side of a circle that looks at the point', () => {
    const [quarter] = ellipseArc(10, 10, 0, Math.PI / 2, 1);
    const { t, distance } = nearestOn(quarter!, at(20, 20));
    expect(t).toBeCloseTo(0.5, 9);
    expect(distance).toBeCloseTo(Math.hypot(20, 20) - 10, 9);
    // Every place is nearly as near to the centre as any other.
    expect(nearestOn(quarter!, at(0, 0)).distance).toBeCloseTo(10, 9);
  });

  it('takes a cusp, and a point as a curve', () => {
    const cusp = cubic(at(0, 0), at(1, 1), at(0, 1), at(1, 0));
    expect(nearestOn(cusp, at(0.5, 2))).toMatchObject({ t: expect.closeTo(0.5, 4), distance: expect.closeTo(1.25, 9) });
    expect(nearestOn(cubic(at(1, 1), at(1, 1), at(1, 1), at(1, 1)), at(4, 5)).distance).toBe(5);
  });

  it('is never beaten by any of many places, and is on the segment', () => {
    fc.assert(
      fc.property(anySegments, points, (seg, point) => {
        const found = nearestOn(seg, point);
        expect(pointAt(seg, found.t)).toEqual(found.point);
        expect(Math.hypot(found.point.x - point.x, found.point.y - point.y)).toBeCloseTo(found.distance, 12);
        let least = Infinity;
        for (let i = 0; i <= 2000; i++) {
          const p = pointAt(seg, i / 2000);
          least = Math.min(least, Math.hypot(p.x - point.x, p.y - point.y));
        }
        // Where a curve all but stops, many places lie within a few billionths.
        expect(found.distance).toBeLessThanOrEqual(least + 4e-9);
        expect(found.distance).toBeGreaterThanOrEqual(least - 0.5);
      }),
      { numRuns: 300 },
    );
  });

  it('finds a place of the segment itself', () => {
    fc.assert(
      fc.property(anySegments, fc.double({ min: 0, max: 1, noNaN: true }), (seg, t) => {
        expect(nearestOn(seg, pointAt(seg, t)).distance).toBeLessThan(1e-7);
      }),
      { numRuns: 300 },
    );
  });
});

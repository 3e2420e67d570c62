import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cubic,
  line,
  reversed,
  scaled,
  sizeOf,
  turningOf,
  turningTo,
  unitTangentAt,
  type Point,
  type Segment,
} from '../../src/geometry';
import { cuspOf } from '../../src/geometry/turning';
import { anyCubics, anySegments, parameters, rotated } from './arbitrary';
import { ellipseArc, polylineTurning, slowestSpeed } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

/** Whether a curve nearly comes to a stop somewhere. One that does not turns little in one step of 4,000. */
function nearlyStops(seg: Segment): boolean {
  return slowestSpeed(seg) <= 0.03 * sizeOf(seg);
}

describe('turning in closed form', () => {
  it('is nothing on a straight line', () => {
    expect(turningOf(line(at(0, 0), at(3, 9)))).toBe(0);
    expect(turningOf(cubic(at(0, 0), at(1, 3), at(2, 6), at(3, 9)))).toBe(0);
    expect(turningOf(cubic(at(0, 0), at(9, 9), at(-5, -5), at(3, 3)))).toBe(0);
    expect(turningOf(cubic(at(1, 1), at(1, 1), at(1, 1), at(1, 1)))).toBe(0);
  });

  it('is a quarter turn on a quarter circle, either way', () => {
    const [quarter] = ellipseArc(5, 3, 0, Math.PI / 2, 1);
    expect(turningOf(quarter!)).toBeCloseTo(Math.PI / 2, 12);
    expect(turningTo(quarter!, 0.5)).toBeCloseTo(Math.atan2(5, 3), 12);
    expect(turningOf(reversed(quarter!))).toBeCloseTo(-Math.PI / 2, 12);
  });

  it('gives an S the sum of its two bends', () => {
    expect(turningOf(cubic(at(0, 0), at(1, 0), at(0, 1), at(1, 1)))).toBeCloseTo(0, 12);
    const s = cubic(at(0, 0), at(4, 0), at(0, 1), at(4, 4));
    expect(turningOf(s)).toBeCloseTo(Math.atan2(3, 4), 12);
    expect(turningTo(s, 0.4)).toBeGreaterThan(1);
  });

  it('is not wrapped on a loop', () => {
    // Leaves to the upper right, comes back to the lower right.
    const loop = cubic(at(0, 0), at(10, 10), at(-9, 10), at(1, 0));
    expect(turningOf(loop)).toBeCloseTo(1.5 * Math.PI, 12);
    expect(turningOf(reversed(loop))).toBeCloseTo(-1.5 * Math.PI, 12);
  });

  it('starts from the limit where a handle lies on its corner', () => {
    const curve = cubic(at(0, 0), at(0, 0), at(5, 0), at(5, 5));
    expect(turningOf(curve)).toBeCloseTo(Math.PI / 2, 12);
    const both = cubic(at(0, 0), at(2, 0), at(5, 5), at(5, 5));
    expect(turningOf(both)).toBeCloseTo(Math.atan2(5, 3), 12);
  });

  it('counts nothing for turning round at a cusp', () => {
    const cusp = cubic(at(0, 0), at(1, 1), at(0, 1), at(1, 0));
    expect(cuspOf(cusp)).toBeCloseTo(0.5, 12);
    // It climbs at 45 degrees and turns upright, then falls straight down and turns to 45 degrees again.
    expect(turningTo(cusp, 0.5)).toBeCloseTo(Math.PI / 4, 9);
    expect(turningOf(cusp)).toBeCloseTo(Math.PI / 2, 9);
  });

  it('turns by half a turn more or less than a cusp beside it', () => {
    const wide = cubic(at(0, 0), at(1 + 1e-3, 1), at(-1e-3, 1), at(1, 0));
    const narrow = cubic(at(0, 0), at(1 - 1e-3, 1), at(1e-3, 1), at(1, 0));
    expect(turningOf(wide)).toBeCloseTo(Math.PI / 2 + Math.PI, 2);
    expect(turningOf(narrow)).toBeCloseTo(Math.PI / 2 - Math.PI, 2);
  });
});

describe('properties of turning', () => {
  it('agrees with the turns of a fine polyline', () => {
    fc.assert(
      fc.property(anyCubics, parameters, (curve, t) => {
        fc.pre(!nearlyStops(curve));
        // A polyline misses half a step's turn at either end.
        expect(Math.abs(turningTo(curve, t) - polylineTurning(curve, t, 4000))).toBeLessThan(0.2);
      }),
      { numRuns: 300 },
    );
  });

  it('differs from the angle between the tangents by whole turns', () => {
    fc.assert(
      fc.property(anyCubics, (curve) => {
        fc.pre(!nearlyStops(curve));
        const [first, last] = [unitTangentAt(curve, 0), unitTangentAt(curve, 1)];
        const angle = Math.atan2(last.y, last.x) - Math.atan2(first.y, first.x);
        const turns = (turningOf(curve) - angle) / (2 * Math.PI);
        expect(Math.abs(turns - Math.round(turns))).toBeLessThan(1e-9);
      }),
    );
  });

  it('changes its sign backwards and in the mirror, and never when turned or stretched', () => {
    fc.assert(
      fc.property(anySegments, fc.double({ min: -4, max: 4, noNaN: true }), (seg, angle) => {
        fc.pre(!nearlyStops(seg));
        const turning = turningOf(seg);
        expect(turningOf(reversed(seg))).toBeCloseTo(-turning, 7);
        expect(turningOf(scaled(seg, -1, 1))).toBeCloseTo(-turning, 7);
        expect(turningOf(rotated(seg, angle))).toBeCloseTo(turning, 7);
        expect(turningOf(scaled(seg, 1e-6, 1e-6))).toBeCloseTo(turning, 7);
      }),
    );
  });

  it('stays below a full turn, as the derivative is a parabola', () => {
    fc.assert(
      fc.property(anyCubics, (curve) => {
        expect(Math.abs(turningOf(curve))).toBeLessThan(2 * Math.PI);
      }),
    );
  });
});

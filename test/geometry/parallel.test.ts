import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  cornerJoin,
  cubic,
  joinLengthOf,
  joinLengthTo,
  lengthOf,
  line,
  offsetPoint,
  reversed,
  scaled,
  sizeOf,
  type Point,
  type Segment,
} from '../../src/geometry';
import { anySegments, parameters } from './arbitrary';
import { ellipseArc, slowestSpeed } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

function offsetPolyline(seg: Segment, inset: number, steps: number): number {
  let sum = 0;
  let last = offsetPoint(seg, 0, inset);
  for (let i = 1; i <= steps; i++) {
    const next = offsetPoint(seg, i / steps, inset);
    sum += Math.hypot(next.x - last.x, next.y - last.y);
    last = next;
  }
  return sum;
}

describe('join length', () => {
  it('equals the edge on straight lines', () => {
    expect(joinLengthOf(line(at(0, 0), at(3, 4)), 7)).toBe(5);
    expect(joinLengthOf(cubic(at(0, 0), at(1, 0), at(2, 0), at(3, 0)), 7)).toBeCloseTo(3, 12);
  });

  it('is shorter round an outer curve and longer round a neckline', () => {
    // Counterclockwise round a disc of fabric the join is the circle one inset smaller.
    const disc = ellipseArc(100, 100, 0, Math.PI / 2, 16);
    expect(disc.reduce((sum, s) => sum + joinLengthOf(s, 5), 0)).toBeCloseTo((Math.PI / 2) * 95, 6);
    // The other way round, the fabric lies outside: a neckline.
    const neckline = disc.map(reversed).reverse();
    expect(neckline.reduce((sum, s) => sum + joinLengthOf(s, 5), 0)).toBeCloseTo((Math.PI / 2) * 105, 6);
  });

  it('equals a fine polyline along the parallel, where that does not fold', () => {
    const gentle = fc
      .tuple(...Array.from({ length: 4 }, () => fc.double({ min: -12, max: 12, noNaN: true })))
      .map(([a, b, c, d]) => cubic(at(0, 0), at(30 + a!, b!), at(60 + c!, d!), at(100, 0)));
    fc.assert(
      fc.property(gentle, fc.double({ min: -6, max: 6, noNaN: true }), (curve, inset) => {
        expect(Math.abs(joinLengthOf(curve, inset) - offsetPolyline(curve, inset, 2000))).toBeLessThan(1e-4);
      }),
      { numRuns: 60 },
    );
  });

  it('is longer than the same at a smaller inset on a curve that bends away from the fabric', () => {
    const right = cubic(at(0, 0), at(0, 10), at(10, 20), at(20, 20));
    expect(joinLengthOf(right, 2)).toBeGreaterThan(joinLengthOf(right, 1));
    expect(joinLengthOf(right, 1) - lengthOf(right)).toBeCloseTo(Math.PI / 2, 9);
    expect(joinLengthOf(scaled(right, -1, 1), 1) - lengthOf(right)).toBeCloseTo(-Math.PI / 2, 9);
  });

  it('adds up along a segment', () => {
    fc.assert(
      fc.property(anySegments, parameters, fc.double({ min: -5, max: 5, noNaN: true }), (seg, t, inset) => {
        fc.pre(slowestSpeed(seg) > 0.01 * sizeOf(seg));
        const first = joinLengthTo(seg, t, inset);
        const rest = joinLengthOf(seg, inset) - first;
        if (t > 1e-6) expect(joinLengthOf(between(seg, 0, t), inset)).toBeCloseTo(first, 6);
        if (t < 1 - 1e-6) expect(joinLengthOf(between(seg, t, 1), inset)).toBeCloseTo(rest, 6);
      }),
    );
  });
});

describe('cornerJoin', () => {
  it('adds a kite at a turn to the right and takes one at a turn to the left', () => {
    expect(cornerJoin(0, 4)).toBeCloseTo(0, 15);
    expect(cornerJoin(-Math.PI / 2, 4)).toBeCloseTo(8, 12);
    expect(cornerJoin(Math.PI / 2, 4)).toBeCloseTo(-8, 12);
    expect(cornerJoin(Math.PI / 3, 1)).toBeCloseTo(-2 / Math.sqrt(3), 12);
  });

  it('makes the inner square of a square of fabric', () => {
    expect(4 * 100 + 4 * cornerJoin(Math.PI / 2, 10)).toBeCloseTo(4 * 80, 12);
  });
});

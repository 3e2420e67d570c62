import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, loopOf, pointAt, type Point } from '../../src/geometry';
import { selfContact } from '../../src/geometry/loop';
import { anyCubics } from './arbitrary';

const at = (x: number, y: number): Point => ({ x, y });

describe('loopOf', () => {
  it('finds the knot of a loop', () => {
    const loop = loopOf(cubic(at(0, 0), at(10, 10), at(-9, 10), at(1, 0)));
    expect(loop).not.toBeNull();
    expect(loop![0] + loop![1]).toBeCloseTo(1, 12);
  });

  it('finds none on an arch, an S, a cusp or a line', () => {
    expect(loopOf(cubic(at(0, 0), at(0, 1), at(1, 1), at(1, 0)))).toBeNull();
    expect(loopOf(cubic(at(0, 0), at(1, 0), at(0, 1), at(1, 1)))).toBeNull();
    expect(loopOf(cubic(at(0, 0), at(1, 1), at(0, 1), at(1, 0)))).toBeNull();
    expect(loopOf(cubic(at(0, 0), at(1, 1), at(2, 2), at(3, 3)))).toBeNull();
  });

  it('finds a teardrop, whose ends are one', () => {
    expect(loopOf(cubic(at(0, 0), at(3, 5), at(-3, 5), at(0, 0)))).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(1, 9),
    ]);
    expect(loopOf(cubic(at(0, 0), at(3, 5), at(-3, 5), at(0, 0.1)))).toBeNull();
  });

  it('passes through one point at both parameters, and a fine polyline meets itself only if there is one', () => {
    fc.assert(
      fc.property(anyCubics, (curve) => {
        const loop = loopOf(curve);
        if (loop !== null) {
          const [p, q] = loop.map((t) => pointAt(curve, t)) as [Point, Point];
          expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeLessThan(1e-6);
          expect(loop[0]).toBeLessThan(loop[1]);
          return;
        }
        const places = Array.from({ length: 51 }, (_, i) => pointAt(curve, i / 50));
        const side = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
        // Chords meet a little before their curve does: only meetings of far parts of the curve tell.
        for (let i = 0; i < 50; i++) {
          for (let j = i + 6; j < 50; j++) {
            const [a, b, c, d] = [places[i]!, places[i + 1]!, places[j]!, places[j + 1]!];
            const crossing = side(a, b, c) * side(a, b, d) < -1e-3 && side(c, d, a) * side(c, d, b) < -1e-3;
            expect(crossing).toBe(false);
          }
        }
      }),
    );
  });
});

describe('selfContact', () => {
  it('is the knot, or the turn of a straight curve', () => {
    const knot = selfContact(cubic(at(0, 0), at(10, 10), at(-9, 10), at(1, 0)), false);
    expect(knot?.x).toBeCloseTo(0.5, 12);
    expect(selfContact(cubic(at(0, 0), at(4, 0), at(0, 0), at(0, 0)), false)).toEqual(
      at(expect.closeTo(16 / 9, 12) as number, 0),
    );
    expect(selfContact(cubic(at(0, 0), at(1, 0), at(2, 0), at(3, 0)), false)).toBeNull();
  });

  it('lets the joined ends of a closed curve meet', () => {
    const teardrop = cubic(at(0, 0), at(3, 5), at(-3, 5), at(0, 0));
    expect(selfContact(teardrop, true)).toBeNull();
    expect(selfContact(teardrop, false)).not.toBeNull();
  });
});

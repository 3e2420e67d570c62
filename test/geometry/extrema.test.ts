import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundsOf,
  boundsOfAll,
  cubic,
  inflections,
  line,
  pointAt,
  turnsInX,
  turnsInY,
  type Point,
} from '../../src/geometry';
import { anyCubics, anySegments, parameters, rotated } from './arbitrary';

const at = (x: number, y: number): Point => ({ x, y });

describe('turns', () => {
  it('of an arch', () => {
    const arch = cubic(at(0, 0), at(0, 10), at(20, 10), at(20, 0));
    expect(turnsInY(arch)).toEqual([expect.closeTo(0.5, 12)]);
    expect(turnsInX(arch)).toEqual([]);
  });

  it('of a wave', () => {
    // y = 3 t (1-t)² 10 - 3 t² (1-t) 10 turns where 6 t² - 6 t + 1 = 0.
    const wave = cubic(at(0, 0), at(1, 10), at(2, -10), at(3, 0));
    const turn = 0.5 - Math.sqrt(3) / 6;
    expect(turnsInY(wave)).toEqual([expect.closeTo(turn, 12), expect.closeTo(1 - turn, 12)]);
  });

  it('leave out level ends, level lines and places where the curve only pauses', () => {
    expect(turnsInY(cubic(at(0, 0), at(5, 0), at(10, 10), at(10, 20)))).toEqual([]);
    expect(turnsInY(cubic(at(0, 3), at(5, 3), at(10, 3), at(10, 3)))).toEqual([]);
    expect(turnsInY(cubic(at(0, 0), at(1, 1), at(2, 0), at(3, 1)))).toEqual([]);
    expect(turnsInY(line(at(0, 0), at(1, 5)))).toEqual([]);
    const level = cubic(at(0, 1), at(10, 1), at(-5, 1), at(3, 1));
    expect(turnsInY(rotated(rotated(level, 1), -1))).toEqual([]);
    expect(turnsInX(level)).toHaveLength(2);
  });

  it('cut a curve into parts that climb or fall all the way', () => {
    fc.assert(
      fc.property(anyCubics, parameters, parameters, (curve, a, b) => {
        for (const [turns, of] of [
          [turnsInY(curve), (p: Point) => p.y],
          [turnsInX(curve), (p: Point) => p.x],
        ] as const) {
          const stops = [0, ...turns, 1];
          for (let i = 1; i < stops.length; i++) {
            const [low, high] = [stops[i - 1]!, stops[i]!];
            const place = (s: number): number => of(pointAt(curve, low + (high - low) * s));
            const way = Math.sign(place(1) - place(0));
            expect(way * (place(Math.max(a, b)) - place(Math.min(a, b)))).toBeGreaterThanOrEqual(-1e-10);
          }
        }
      }),
    );
  });
});

describe('inflections', () => {
  it('of an S, and none of a C, a line or a level wave', () => {
    expect(inflections(cubic(at(0, 0), at(1, 0), at(0, 1), at(1, 1)))).toEqual([expect.closeTo(0.5, 12)]);
    expect(inflections(cubic(at(0, 0), at(0, 1), at(1, 1), at(1, 0)))).toEqual([]);
    expect(inflections(line(at(0, 0), at(1, 1)))).toEqual([]);
    const straight = cubic(at(0, 0), at(1, 0), at(4, 0), at(3, 0));
    expect(inflections(straight)).toEqual([]);
    for (const angle of [0.1, 0.2, 0.3, 0.4, 0.5]) expect(inflections(rotated(straight, angle))).toEqual([]);
  });
});

describe('bounds', () => {
  it('are tight', () => {
    expect(boundsOf(line(at(3, 1), at(-2, 4)))).toEqual({ minX: -2, minY: 1, maxX: 3, maxY: 4 });
    const arch = boundsOf(cubic(at(0, 0), at(0, 10), at(20, 10), at(20, 0)));
    expect(arch).toEqual({ minX: 0, minY: 0, maxX: 20, maxY: expect.closeTo(7.5, 12) });
  });

  it('hold every place and touch one on each side', () => {
    fc.assert(
      fc.property(anySegments, (seg) => {
        const box = boundsOf(seg);
        const places = Array.from({ length: 1001 }, (_, i) => pointAt(seg, i / 1000));
        const x = places.map((p) => p.x);
        const y = places.map((p) => p.y);
        for (const [bound, sampled] of [
          [box.minX, Math.min(...x)],
          [box.minY, Math.min(...y)],
          [-box.maxX, -Math.max(...x)],
          [-box.maxY, -Math.max(...y)],
        ] as const) {
          expect(bound).toBeLessThanOrEqual(sampled + 1e-10);
          expect(bound).toBeGreaterThanOrEqual(sampled - 1e-3);
        }
      }),
    );
  });

  it('join', () => {
    expect(boundsOfAll([line(at(0, 0), at(1, 1)), line(at(5, -3), at(5, 0))])).toEqual({
      minX: 0,
      minY: -3,
      maxX: 5,
      maxY: 1,
    });
    expect(boundsOfAll([])).toEqual({ minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity });
  });
});

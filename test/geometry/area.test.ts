import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  cubic,
  line,
  pointAt,
  reversed,
  scaled,
  signedArea,
  type Point,
  type Segment,
} from '../../src/geometry';
import { anyCubics, parameters, shifted } from './arbitrary';
import { ellipseArc } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

describe('signedArea', () => {
  const square = [at(0, 0), at(4, 0), at(4, 3), at(0, 3)].map((p, i, all) => line(p, all[(i + 1) % 4]!));

  it('is above 0 counterclockwise and below 0 clockwise', () => {
    expect(signedArea(square)).toBe(12);
    expect(signedArea(square.map(reversed).reverse())).toBe(-12);
    expect(signedArea([])).toBe(0);
  });

  it('closes an open chain by a straight line', () => {
    expect(signedArea(square.slice(0, 3))).toBe(12);
    expect(signedArea(square.slice(0, 2))).toBe(6);
  });

  it('is that of an ellipse', () => {
    expect(signedArea(ellipseArc(5, 2, 0, 2 * Math.PI, 64))).toBeCloseTo(10 * Math.PI, 8);
  });

  it('is that of a parabola under its chord', () => {
    // y = x² from -1 to 1, closed along y = 1: Archimedes' 4/3.
    expect(signedArea([cubic(at(-1, 1), at(-1 / 3, -1 / 3), at(1 / 3, -1 / 3), at(1, 1))])).toBeCloseTo(4 / 3, 12);
  });

  it('is that of a fine polygon', () => {
    fc.assert(
      fc.property(anyCubics, (curve) => {
        let twice = 0;
        const places = Array.from({ length: 2001 }, (_, i) => pointAt(curve, i / 2000));
        for (const [i, p] of places.entries()) {
          const q = places[(i + 1) % places.length]!;
          twice += p.x * q.y - p.y * q.x;
        }
        expect(Math.abs(signedArea([curve]) - twice / 2)).toBeLessThan(0.1);
      }),
    );
  });

  it('does not change when a curve is cut or moved, changes its sign in the mirror', () => {
    fc.assert(
      fc.property(anyCubics, parameters, (curve, t) => {
        const area = signedArea([curve]);
        const parts: Segment[] = [between(curve, 0, t), between(curve, t, 1)];
        expect(signedArea(parts)).toBeCloseTo(area, 8);
        expect(signedArea([shifted(curve, at(50, -80))])).toBeCloseTo(area, 8);
        expect(signedArea([scaled(curve, -1, 1)])).toBeCloseTo(-area, 8);
      }),
    );
  });
});

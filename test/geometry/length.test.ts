import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import {
  between,
  chainLength,
  cubic,
  lengthOf,
  lengthTo,
  line,
  parameterAt,
  reversed,
  scaled,
  sizeOf,
  type Cubic,
  type Point,
} from '../../src/geometry';
import { anyCubics, anySegments, parameters, rotated, shifted } from './arbitrary';
import { arcError, ellipseArc, ellipsePerimeter, panelLength, ramanujanPerimeter } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

/** The parabola y = k x² from x = 0 to x = b, raised to a cubic. */
function parabola(k: number, b: number): Cubic {
  return cubic(at(0, 0), at(b / 3, 0), at((2 * b) / 3, (k * b * b) / 3), at(b, k * b * b));
}

/** Its arc length in closed form, with u = 2 k b: (u sqrt(1 + u²) + arsinh u) / (4 k). */
function parabolaLength(k: number, b: number): number {
  const u = 2 * k * b;
  return (u * Math.hypot(1, u) + Math.asinh(u)) / (4 * k);
}

function expectNear(actual: number, wanted: number, relative: number): void {
  expect(Math.abs(actual - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

describe('length against closed forms', () => {
  it('measures lines', () => {
    expect(lengthOf(line(at(1, 2), at(4, 6)))).toBe(5);
    expect(lengthOf(line(at(-3, 7), at(9, 7)))).toBe(12);
    expect(lengthTo(line(at(0, 0), at(0, 8)), 0.25)).toBe(2);
  });

  it('measures a cubic that is a line, evenly or unevenly travelled', () => {
    expectNear(lengthOf(cubic(at(0, 0), at(1, 1), at(2, 2), at(3, 3))), Math.sqrt(18), 1e-12);
    expectNear(lengthOf(cubic(at(0, 0), at(0, 0), at(3, 4), at(3, 4))), 5, 1e-12);
    expectNear(lengthOf(cubic(at(0, 0), at(3, 4), at(3, 4), at(3, 4))), 5, 1e-12);
    expectNear(lengthOf(cubic(at(0, 0), at(0, 0), at(0, 0), at(3, 4))), 5, 1e-12);
  });

  it.each([0.001, 0.1, 1, 3, 50, 1000])('measures the parabola y = %d x²', (k) => {
    expectNear(lengthOf(parabola(k, 1)), parabolaLength(k, 1), 1e-10);
    expectNear(lengthTo(parabola(k, 1), 0.3), parabolaLength(k, 0.3), 1e-10);
  });

  // The semicubical parabola (t², t³), Neile's: length ((4 + 9 t²)^1.5 - 8) / 27, with a cusp at 0.
  const neile = (t: number): number => ((4 + 9 * t * t) ** 1.5 - 8) / 27;

  it('measures a curve that ends in a cusp', () => {
    expectNear(lengthOf(cubic(at(0, 0), at(0, 0), at(1 / 3, 0), at(1, 1))), neile(1), 1e-10);
  });

  it.each([0.5, 0.3, 0.123, 0.9, 1e-3, 1e-6])('measures a curve with a cusp inside, at t = %d', (cusp) => {
    // (t - cusp)² and (t - cusp)³ in Bernstein form, by their blossoms.
    const square = (a: number, b: number, c: number): number => (a * b + b * c + c * a) / 3;
    const cube = (a: number, b: number, c: number): number => a * b * c;
    const [low, high] = [-cusp, 1 - cusp];
    const control = (a: number, b: number, c: number): Point => at(square(a, b, c), cube(a, b, c));
    const curve = cubic(
      control(low, low, low),
      control(low, low, high),
      control(low, high, high),
      control(high, high, high),
    );
    expectNear(lengthOf(curve), neile(cusp) + neile(1 - cusp), 1e-9);
    expect(Math.abs(lengthTo(curve, cusp) - neile(cusp))).toBeLessThanOrEqual(1e-9 * neile(cusp) + 1e-15);
  });

  it('measures a straight curve that doubles back', () => {
    // x = 3 t (1 - t)² goes out to 4/9 at t = 1/3 and back to 0.
    expectNear(lengthOf(cubic(at(0, 0), at(1, 0), at(0, 0), at(0, 0))), 8 / 9, 1e-10);
    // x = 6 t³ - 9 t² + 4 t turns where 18 t² - 18 t + 4 = 0; out, back and out again.
    const x = (t: number): number => 6 * t ** 3 - 9 * t ** 2 + 4 * t;
    const [first, second] = [1 / 3, 2 / 3];
    const wanted = x(first) + (x(first) - x(second)) + (x(1) - x(second));
    expectNear(lengthOf(cubic(at(0, 0), at(4 / 3, 0), at(-1 / 3, 0), at(1, 0))), wanted, 1e-10);
  });

  it('finds no length where all points are one', () => {
    const dot = cubic(at(5, 5), at(5, 5), at(5, 5), at(5, 5));
    expect(lengthOf(dot)).toBe(0);
    expect(lengthTo(dot, 0.4)).toBe(0);
    expect(parameterAt(dot, 0)).toBe(0);
    expect(parameterAt(dot, 3)).toBe(0);
  });

  it('measures a quarter circle to the known error of its cubic', () => {
    const [quarter] = ellipseArc(1, 1, 0, Math.PI / 2, 1);
    const length = lengthOf(quarter!);
    // Goldapp: with these handles the cubic lies between the circle and one 2.73e-4 larger.
    expect(length).toBeGreaterThan(Math.PI / 2);
    expect(length).toBeLessThan((Math.PI / 2) * (1 + 2.73e-4));
    expectNear(length, panelLength(quarter as Cubic), 1e-11);
  });
});

describe('length against ellipses', () => {
  it.each([
    [1, 1],
    [3, 2],
    [2, 1],
    [10, 1],
    [1, 7],
  ])('measures the ellipse of half axes %d and %d (DLMF 19.30)', (a, b) => {
    expect(arcError((2 * Math.PI) / 256)).toBeLessThan(1e-12);
    expectNear(chainLength(ellipseArc(a, b, 0, 2 * Math.PI, 256)), ellipsePerimeter(a, b), 1e-9);
  });

  it.each([
    [3, 2],
    [2, 1],
    [1, 1.1],
  ])('measures the ellipse of half axes %d and %d (Ramanujan)', (a, b) => {
    const h = ((a - b) / (a + b)) ** 2;
    const short = (3 * h ** 5) / 2 ** 17;
    expectNear(chainLength(ellipseArc(a, b, 0, 2 * Math.PI, 256)), ramanujanPerimeter(a, b), 1e-9 + 2 * short);
  });

  it('would notice an ellipse of another size', () => {
    const off = chainLength(ellipseArc(3, 2.00001, 0, 2 * Math.PI, 256));
    expect(Math.abs(off / ellipsePerimeter(3, 2) - 1)).toBeGreaterThan(1e-6);
  });
});

describe('length against other measures', () => {
  it('agrees with the rule on many panels', () => {
    fc.assert(
      fc.property(anyCubics, parameters, (curve, t) => {
        const wanted = panelLength(curve, 0, t);
        // Where a part ends just behind a cusp, the error is small beside the curve, not beside the part.
        expect(Math.abs(lengthTo(curve, t) - wanted)).toBeLessThanOrEqual(1e-9 * wanted + 1e-12 * sizeOf(curve));
      }),
      { numRuns: 300 },
    );
  });

  it('agrees with svg-path-properties where that is exact: curves that bend gently', () => {
    const gentle = fc
      .tuple(...Array.from({ length: 4 }, () => fc.double({ min: -10, max: 10, noNaN: true })))
      .map(([a, b, c, d]) => cubic(at(0, 0), at(30 + a!, b!), at(60 + c!, d!), at(100, 0)));
    fc.assert(
      fc.property(gentle, (curve) => {
        const { c1, c2 } = curve;
        const path = new svgPathProperties(`M0,0 C${c1.x},${c1.y} ${c2.x},${c2.y} 100,0`);
        expectNear(lengthOf(curve), path.getTotalLength(), 1e-7);
      }),
      { numRuns: 200 },
    );
  });
});

describe('properties of length', () => {
  it('lies between chord and control polygon', () => {
    fc.assert(
      fc.property(anySegments, (seg) => {
        const length = lengthOf(seg);
        const size = sizeOf(seg);
        expect(length).toBeLessThanOrEqual(size * (1 + 1e-9));
        expect(length).toBeGreaterThanOrEqual(Math.hypot(seg.to.x - seg.from.x, seg.to.y - seg.from.y) * (1 - 1e-9));
      }),
    );
  });

  it('is the same travelled the other way, mirrored, turned and moved', () => {
    fc.assert(
      fc.property(anySegments, fc.double({ min: -4, max: 4, noNaN: true }), (seg, angle) => {
        const length = lengthOf(seg);
        const slack = 1e-9 * length + 1e-12;
        for (const other of [
          reversed(seg),
          scaled(seg, -1, 1),
          scaled(seg, 1, -1),
          rotated(seg, angle),
          shifted(seg, at(17, -5)),
        ]) {
          expect(Math.abs(lengthOf(other) - length)).toBeLessThanOrEqual(slack);
        }
      }),
    );
  });

  it.each([1e-9, 1e-4, 1e4, 1e9])('grows with its scale, %d', (by) => {
    fc.assert(
      fc.property(anySegments, (seg) => {
        const wanted = lengthOf(seg) * by;
        expect(Math.abs(lengthOf(scaled(seg, by, by)) - wanted)).toBeLessThanOrEqual(1e-9 * wanted + 1e-13 * by);
      }),
    );
  });

  it('adds up when a segment is split', () => {
    fc.assert(
      fc.property(anySegments, parameters, (seg, t) => {
        const length = lengthOf(seg);
        const first = lengthOf(between(seg, 0, t));
        const second = lengthOf(between(seg, t, 1));
        expect(Math.abs(first + second - length)).toBeLessThanOrEqual(2e-9 * length + 1e-12);
        expect(Math.abs(first - lengthTo(seg, t))).toBeLessThanOrEqual(2e-9 * length + 1e-12);
      }),
    );
  });

  it('never shrinks along the way, and takes a parameter outside as the nearer end', () => {
    fc.assert(
      fc.property(anySegments, parameters, parameters, (seg, s, t) => {
        expect(lengthTo(seg, Math.min(s, t))).toBeLessThanOrEqual(lengthTo(seg, Math.max(s, t)) + 1e-9 * sizeOf(seg));
        expect(lengthTo(seg, -1)).toBe(0);
        expect(lengthTo(seg, 2)).toBe(lengthOf(seg));
      }),
    );
  });
});

describe('what is no number', () => {
  it('ends, and gives none', () => {
    const broken = cubic(at(0, 0), at(NaN, 1), at(2, 2), at(3, 0));
    expect(lengthOf(broken)).toBeNaN();
    expect(parameterAt(broken, 1)).not.toBeGreaterThan(1);
    expect(parameterAt(line(at(0, 0), at(1, 0)), NaN)).toBe(0);
    expect(lengthOf(cubic(at(0, 0), at(Infinity, 1), at(2, 2), at(3, 0)))).not.toBeLessThan(Infinity);
  });
});

describe('parameterAt', () => {
  it('is the inverse of lengthTo', () => {
    fc.assert(
      fc.property(anySegments, parameters, (seg, share) => {
        const length = lengthOf(seg);
        const t = parameterAt(seg, share * length);
        expect(t).toBeGreaterThanOrEqual(0);
        expect(t).toBeLessThanOrEqual(1);
        expect(Math.abs(lengthTo(seg, t) - share * length)).toBeLessThanOrEqual(2e-9 * length);
      }),
      { numRuns: 500 },
    );
  });

  it.each([1e-9, 1e9])('holds at scale %d too', (by) => {
    const curve = scaled(cubic(at(0, 0), at(0, 50), at(20, 0), at(80, 90)), by, by);
    const length = lengthOf(curve);
    for (const share of [0.001, 0.25, 0.5, 0.999]) {
      expectNear(lengthTo(curve, parameterAt(curve, share * length)), share * length, 1e-8);
    }
  });

  it('keeps to the ends', () => {
    const curve = cubic(at(0, 0), at(0, 5), at(5, 5), at(5, 0));
    expect(parameterAt(curve, -1)).toBe(0);
    expect(parameterAt(curve, 0)).toBe(0);
    expect(parameterAt(curve, 1e6)).toBe(1);
    expect(parameterAt(line(at(0, 0), at(4, 0)), 1)).toBe(0.25);
  });
});

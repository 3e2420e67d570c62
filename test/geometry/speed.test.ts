import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, sizeOf, type Point } from '../../src/geometry';
import { speedOf } from '../../src/geometry/speed';
import { anyCubics } from './arbitrary';

const at = (x: number, y: number): Point => ({ x, y });

/** The derivative at a complex parameter, read as the complex number x' + i y', by Horner's rule. */
function derivative(s: ReturnType<typeof speedOf>, re: number, im: number): number {
  let [x, y] = [s.ax, s.ay];
  for (const [cx, cy] of [
    [s.bx, s.by],
    [s.cx, s.cy],
  ] as const) {
    [x, y] = [x * re - y * im + cx, x * im + y * re + cy];
  }
  return Math.hypot(x, y);
}

describe('speedOf', () => {
  it('finds where the derivative vanishes', () => {
    const cusp = speedOf(cubic(at(0, 0), at(1, 1), at(0, 1), at(1, 0)));
    const roots = [cusp.root1X, cusp.root2X].filter((x) => Math.abs(x - 0.5) < 1e-12);
    expect(roots.length).toBeGreaterThan(0);
    const handle = speedOf(cubic(at(0, 0), at(0, 0), at(1, 0), at(1, 1)));
    expect(Math.min(Math.hypot(handle.root1X, handle.root1Y), Math.hypot(handle.root2X, handle.root2Y))).toBe(0);
  });

  it('finds it on any curve, in complex numbers', () => {
    fc.assert(
      fc.property(anyCubics, (curve) => {
        const s = speedOf(curve);
        for (const [re, im] of [
          [s.root1X, s.root1Y],
          [s.root2X, s.root2Y],
        ] as const) {
          if (!Number.isFinite(re) || !Number.isFinite(im)) continue;
          const far = Math.max(1, Math.hypot(re, im));
          expect(derivative(s, re, im)).toBeLessThanOrEqual(1e-12 * sizeOf(curve) * far * far);
        }
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bernsteinAt, bernsteinRoots } from '../../src/geometry/bernstein';

/** Bernstein coefficients of the product of (t - root), one factor after the other. */
function withRoots(roots: readonly number[]): number[] {
  let row = [1];
  for (const root of roots) {
    const n = row.length;
    row = Array.from({ length: n + 1 }, (_, i) => {
      const low = i < n ? (row[i]! * (n - i)) / n : 0;
      const high = i > 0 ? (row[i - 1]! * i) / n : 0;
      return -root * low + (1 - root) * high;
    });
  }
  return row;
}

describe('bernsteinRoots', () => {
  it('finds the roots that a polynomial was made of', () => {
    expect(bernsteinAt(withRoots([0.2, 0.7]), 0.5)).toBeCloseTo((0.5 - 0.2) * (0.5 - 0.7), 15);
    const roots = [0.1, 0.25, 0.5, 0.75, 0.9];
    const found = bernsteinRoots(withRoots(roots));
    expect(found).toHaveLength(5);
    for (const [i, root] of roots.entries()) expect(found[i]).toBeCloseTo(root, 9);
  });

  it('passes over roots outside, double roots and polynomials that are nothing', () => {
    expect(bernsteinRoots(withRoots([-0.5, 1.5, 2]))).toEqual([]);
    expect(bernsteinRoots([0, 0, 0, 0])).toEqual([]);
    expect(bernsteinRoots([1, 1, 1])).toEqual([]);
  });

  it('finds random roots that lie apart', () => {
    const roots = fc
      .array(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 5 })
      .map((list) => [...new Set(list)].sort((p, q) => p - q).map((k) => k / 100));
    fc.assert(
      fc.property(roots, (wanted) => {
        const row = withRoots(wanted);
        const found = bernsteinRoots(row);
        expect(found).toHaveLength(wanted.length);
        for (const [i, root] of wanted.entries()) expect(found[i]).toBeCloseTo(root, 5);
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { GAUSS_NODES, GAUSS_WEIGHTS } from '../../src/geometry/gauss';
import { gaussLegendre } from './reference';

describe('the 12-point Gauss–Legendre rule', () => {
  it('has the roots of the Legendre polynomial and its weights', () => {
    const anew = gaussLegendre(12)
      .filter(({ x }) => x > 0)
      .sort((p, q) => p.x - q.x);
    expect(GAUSS_NODES).toHaveLength(6);
    for (const [i, { x, w }] of anew.entries()) {
      expect(Math.abs(GAUSS_NODES[i]! - x)).toBeLessThan(2e-15);
      expect(Math.abs(GAUSS_WEIGHTS[i]! - w)).toBeLessThan(2e-15);
    }
  });

  const integral = (degree: number): number =>
    GAUSS_NODES.reduce((sum, x, i) => sum + GAUSS_WEIGHTS[i]! * (x ** degree + (-x) ** degree), 0);

  it.each([0, 2, 10, 22])('integrates x to the power %d exactly', (degree) => {
    expect(integral(degree)).toBeCloseTo(2 / (degree + 1), 14);
  });

  it('is exact no further than degree 23', () => {
    expect(Math.abs(integral(24) - 2 / 25)).toBeGreaterThan(1e-9);
  });
});

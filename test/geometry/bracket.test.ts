import { describe, expect, it } from 'vitest';
import { bracketedRoot } from '../../src/geometry/bracket';

describe('bracketedRoot', () => {
  it.each([
    ['a line', (x: number) => 3 * x - 1, 1 / 3],
    ['a falling line', (x: number) => 1 - 4 * x, 0.25],
    ['a root at the start', (x: number) => x, 0],
    ['a root at the end', (x: number) => x - 1, 1],
    ['a flat root', (x: number) => (x - 0.7) ** 3, 0.7],
    ['a very flat one', (x: number) => (x - 0.3) ** 9, 0.3],
    ['a jump', (x: number) => (x < 0.6 ? -1 : 1), 0.6],
    ['a steep one', (x: number) => Math.atan(1e9 * (x - 0.123)), 0.123],
    ['a lopsided one', (x: number) => Math.exp(40 * x) - Math.exp(8), 0.2],
  ])('finds %s', (_, f, wanted) => {
    expect(bracketedRoot(f, 0, 1)).toBeCloseTo(wanted, 9);
  });

  it('asks for few values on a plain curve, and for no endless number on the worst', () => {
    let asked = 0;
    bracketedRoot((x) => ((asked += 1), x * x * x + x - 1), 0, 1);
    expect(asked).toBeLessThan(40);
    asked = 0;
    bracketedRoot((x) => ((asked += 1), x < Math.PI / 4 ? -1e-300 : 1e300), 0, 1);
    expect(asked).toBeLessThan(200);
  });
});

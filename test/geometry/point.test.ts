import { describe, expect, it } from 'vitest';
import { add, angleBetween, cross, distance, dot, leftOf, mix, norm, scale, subtract } from '../../src/geometry';

const [a, b] = [
  { x: 3, y: 4 },
  { x: -1, y: 2 },
];

describe('points', () => {
  it('are added, taken away, stretched and mixed', () => {
    expect(add(a, b)).toEqual({ x: 2, y: 6 });
    expect(subtract(a, b)).toEqual({ x: 4, y: 2 });
    expect(scale(a, 2)).toEqual({ x: 6, y: 8 });
    expect(mix(a, b, 0)).toEqual(a);
    expect(mix(a, b, 1)).toEqual(b);
    expect(mix(a, b, 0.25)).toEqual({ x: 2, y: 3.5 });
  });

  it('have products, lengths and distances that are not squared', () => {
    expect(dot(a, b)).toBe(5);
    expect(cross(a, b)).toBe(10);
    expect(norm(a)).toBe(5);
    expect(distance(a, { x: 6, y: 8 })).toBe(5);
  });

  it('turn counterclockwise', () => {
    expect(leftOf({ x: 1, y: 0 })).toEqual({ x: -0, y: 1 });
    expect(angleBetween({ x: 1, y: 0 }, { x: 0, y: 2 })).toBeCloseTo(Math.PI / 2, 15);
    expect(angleBetween({ x: 0, y: 2 }, { x: 1, y: 0 })).toBeCloseTo(-Math.PI / 2, 15);
    expect(angleBetween({ x: 0, y: 0 }, { x: 1, y: 0 })).toBe(0);
  });
});

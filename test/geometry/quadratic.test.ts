import { describe, expect, it } from 'vitest';
import { realRoots, signChanges } from '../../src/geometry/quadratic';

describe('realRoots', () => {
  it('finds two, one or none', () => {
    expect(realRoots(1, -3, 2)).toEqual([1, 2]);
    expect(realRoots(-2, 0, 8)).toEqual([-2, 2]);
    expect(realRoots(1, 0, 1)).toEqual([]);
    expect(realRoots(0, 2, -1)).toEqual([0.5]);
    expect(realRoots(0, 0, 4)).toEqual([]);
    expect(realRoots(0, 0, 0)).toEqual([]);
    expect(realRoots(1, -2, 1)).toEqual([]);
    expect(realRoots(1, 0, 0)).toEqual([]);
    expect(realRoots(1, -1, 0)).toEqual([0, 1]);
  });

  it('keeps its digits where the schoolbook formula loses them', () => {
    const [small, large] = realRoots(1, -1e8, 1);
    expect(small).toBeCloseTo(1e-8, 22);
    expect(large).toBeCloseTo(1e8, 6);
  });

  it('does not depend on the scale', () => {
    const wanted = realRoots(3, -4, 1);
    for (const by of [1e-200, 1e-9, 1e9, 1e200]) {
      for (const [i, root] of realRoots(3 * by, -4 * by, by).entries()) expect(root).toBeCloseTo(wanted[i]!, 14);
    }
  });
});

describe('signChanges', () => {
  it('keeps to the inside of 0 to 1', () => {
    expect(signChanges(1, -1, 0.16)).toEqual([expect.closeTo(0.2, 12), expect.closeTo(0.8, 12)]);
    expect(signChanges(1, -1, 0)).toEqual([]);
    expect(signChanges(0, 1, -1.5)).toEqual([]);
    expect(signChanges(0, 1, 0.5)).toEqual([]);
  });

  it('leaves out a double root, which changes no sign', () => {
    expect(signChanges(4, -4, 1)).toEqual([]);
  });
});

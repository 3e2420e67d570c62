import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapsBetween, solveHoles } from '../../src/pickup';

const wish = { holes: 5, stitches: 2, from: 4, to: 4 };

describe('buttonholes solved for one of four', () => {
  it('keep the other three', () => {
    expect(solveHoles('gap', wish, 0, 82)).toEqual({ holes: wish, total: 82 });
    expect(solveHoles('ends', wish, 15, 82)).toEqual({ holes: { ...wish, from: 6, to: 6 }, total: 82 });
    expect(solveHoles('holes', wish, 10, 82)).toEqual({ holes: { ...wish, holes: 7 }, total: 82 });
    expect(solveHoles('total', wish, 16, 82)).toEqual({ holes: wish, total: 82 });
  });

  it('are none where there is no room', () => {
    expect(solveHoles('gap', wish, 0, 21)).toBeNull();
    expect(solveHoles('ends', wish, 20, 82)).toBeNull();
    expect(solveHoles('holes', wish, 10, 9)).toBeNull();
  });

  it('of unknown number lie at least the gap apart, and one more would not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 400 }), fc.integer({ min: 1, max: 30 }), (total, gap) => {
        const solved = solveHoles('holes', wish, gap, total)!;
        const gaps = gapsBetween(total, solved.holes)!;
        for (const one of gaps) expect(one).toBeGreaterThanOrEqual(gap);
        const more = gapsBetween(total, { ...solved.holes, holes: solved.holes.holes + 1 });
        expect(more === null || Math.min(...more) < gap).toBe(true);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoRates } from '../../src/shaping';

describe('twoRates', () => {
  it('splits 30 shaping rows over 7 decreases as 5 every 4th and 2 every 5th', () => {
    expect(twoRates(30, 7)).toEqual([
      { size: 4, times: 5 },
      { size: 5, times: 2 },
    ]);
  });

  it('has one portion where the parts divide the total', () => {
    expect(twoRates(24, 6)).toEqual([{ size: 4, times: 6 }]);
    expect(twoRates(0, 3)).toEqual([{ size: 0, times: 3 }]);
  });

  /**
   * The worked method of the trade ("magic formula"): divide, the remainder gives how many get one more. Division with
   * remainder: Euclid, Elements VII; D. Knuth, The Art of Computer Programming 1, 1.2.4 (from memory).
   */
  it('sums to the total in the number of parts, whose sizes differ by one at most', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 2000 }), (total, parts) => {
        const portions = twoRates(total, parts);
        const all = portions.flatMap(({ size, times }) => Array.from({ length: times }, () => size));
        expect(all).toHaveLength(parts);
        expect(all.reduce((sum, size) => sum + size, 0)).toBe(total);
        expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(1);
        expect(all).toEqual([...all].sort((a, b) => a - b));
        expect(portions.length).toBeLessThanOrEqual(2);
      }),
    );
  });
});

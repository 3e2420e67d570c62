import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitsMultiple, fittingCounts, nearestFitting } from '../../src/pickup';
import { choicesFor } from '../../src/pickup/total';

const patterns = fc.record({ multiple: fc.integer({ min: 1, max: 24 }), plus: fc.integer({ min: 0, max: 9 }) });
const wanted = fc.double({ min: 0, max: 900, noNaN: true });

/** Counts up to 2000 that a stitch pattern has, by counting. */
function counted({ multiple, plus }: { multiple: number; plus: number }): number[] {
  const counts: number[] = [];
  for (let count = plus; count <= 2000; count += multiple) if (count > 0) counts.push(count);
  return counts;
}

describe('fitsMultiple', () => {
  /**
   * Ribs: in the round k2p2 4n, flat with matching ends 4n + 2; k2p1 flat 3n + 2. K2P2 Ribbing by Binka Schwan,
   * https://tkga.org/article/k2p2-ribbing-by-binka-schwan
   */
  it('has k2p2 as 4n in the round and 4n + 2 flat, k2p1 flat as 3n + 2', () => {
    expect([108, 110].map((count) => fitsMultiple(count, { multiple: 4, plus: 0 }))).toEqual([true, false]);
    expect([108, 110].map((count) => fitsMultiple(count, { multiple: 4, plus: 2 }))).toEqual([false, true]);
    expect([20, 21].map((count) => fitsMultiple(count, { multiple: 3, plus: 2 }))).toEqual([true, false]);
    expect(fitsMultiple(1, { multiple: 4, plus: 5 })).toBe(false);
  });

  it('is true of the counts of a pattern and of no others', () => {
    fc.assert(
      fc.property(patterns, fc.integer({ min: 1, max: 2000 }), (pattern, count) => {
        expect(fitsMultiple(count, pattern)).toBe(counted(pattern).includes(count));
      }),
    );
  });
});

describe('nearestFitting', () => {
  it('is the nearest count of the pattern, of two equally near the lower', () => {
    fc.assert(
      fc.property(
        patterns,
        fc.oneof(
          wanted,
          fc.integer({ min: 0, max: 1800 }).map((n) => n / 2),
        ),
        (pattern, want) => {
          const counts = counted(pattern);
          const least = Math.min(...counts.map((count) => Math.abs(count - want)));
          expect(nearestFitting(want, pattern)).toBe(counts.find((count) => Math.abs(count - want) <= least + 1e-7));
        },
      ),
    );
  });
});

describe('choices', () => {
  it('are the neighbours below and above what is wanted, and bracket it', () => {
    fc.assert(
      fc.property(patterns, wanted, (pattern, want) => {
        const counts = counted(pattern);
        const below = counts.filter((count) => count <= want + 1e-9).at(-1);
        const above = counts.find((count) => count > want + 1e-9);
        expect(fittingCounts(want, pattern)).toEqual([below, above].filter((count) => count !== undefined));
      }),
    );
  });

  it('carry their stretch', () => {
    expect(choicesFor(107.7, { multiple: 4, plus: 0 })).toEqual([
      { count: 104, stretch: 104 / 107.7 - 1 },
      { count: 108, stretch: 108 / 107.7 - 1 },
    ]);
    expect(choicesFor(0, { multiple: 4, plus: 0 })).toEqual([{ count: 4, stretch: null }]);
  });
});

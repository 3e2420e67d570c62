import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apportion, type Share } from '../../src/pickup';

const share: fc.Arbitrary<Share> = fc.record({
  wanted: fc.double({ min: 0.2, max: 9, noNaN: true }),
  most: fc.integer({ min: 0, max: 7 }),
});

const cases = fc.tuple(
  fc.array(share, { maxLength: 3 }),
  fc.array(share, { maxLength: 2 }),
  fc.integer({ min: 0, max: 30 }),
);

const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);

function costOf(shares: readonly Share[], counts: readonly number[]): number {
  return sum(shares.map(({ wanted }, i) => (counts[i]! - wanted) ** 2 / wanted));
}

/** Every way of giving each share from none to its most. */
function ways(shares: readonly Share[]): number[][] {
  return shares.reduce<number[][]>(
    (all, { most }) => all.flatMap((way) => Array.from({ length: most + 1 }, (_, count) => [...way, count])),
    [[]],
  );
}

describe('apportion', () => {
  it('costs as little as the best of all ways, and reaches the nearest total that any way has', () => {
    fc.assert(
      fc.property(cases, ([singles, pairs, total]) => {
        const every = ways([...singles, ...pairs]).map((way) => {
          const [alone, paired] = [way.slice(0, singles.length), way.slice(singles.length)];
          return {
            total: sum(alone) + 2 * sum(paired),
            cost: costOf(singles, alone) + 2 * costOf(pairs, paired),
          };
        });
        const nearest = Math.max(...every.map((way) => way.total).filter((one) => one <= total));
        const made = apportion(singles, pairs, total);
        expect(made.total).toBe(nearest);
        expect(sum(made.singles) + 2 * sum(made.pairs)).toBe(nearest);
        const least = Math.min(...every.filter((way) => way.total === nearest).map((way) => way.cost));
        const cost = costOf(singles, made.singles) + 2 * costOf(pairs, made.pairs);
        expect(cost).toBeLessThanOrEqual(least + 1e-9 * (1 + least));
      }),
      { numRuns: 250 },
    );
  });

  it('gives none more than its openings, and none less than nothing', () => {
    fc.assert(
      fc.property(cases, ([singles, pairs, total]) => {
        const made = apportion(singles, pairs, total);
        made.singles.forEach((count, i) => expect(count >= 0 && count <= singles[i]!.most).toBe(true));
        made.pairs.forEach((count, i) => expect(count >= 0 && count <= pairs[i]!.most).toBe(true));
      }),
    );
  });

  it('says why it falls short: too few openings, or pairs alone against an odd total', () => {
    const five = { wanted: 5, most: 9 };
    expect(apportion([five], [], 9).short).toBe(null);
    expect(apportion([five], [], 12)).toEqual({ singles: [9], pairs: [], total: 9, short: 'openings' });
    expect(apportion([], [five], 11)).toEqual({ singles: [], pairs: [5], total: 10, short: 'parity' });
    expect(apportion([{ wanted: 1, most: 1 }], [five], 11).short).toBe(null);
  });

  it('leaves the shares as they are wanted where they already sum', () => {
    expect(apportion([{ wanted: 20, most: 99 }], [{ wanted: 12, most: 99 }], 44)).toMatchObject({
      singles: [20],
      pairs: [12],
    });
  });

  it('spreads many stitches in proportion: no edge is stretched unlike another by more than a stitch', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 5, max: 400, noNaN: true }), { minLength: 2, maxLength: 12 }),
        fc.double({ min: 0.6, max: 1.6, noNaN: true }),
        (wanted, factor) => {
          const total = Math.round(sum(wanted) * factor);
          const { singles } = apportion(
            wanted.map((one) => ({ wanted: one, most: 5000 })),
            [],
            total,
          );
          const scale = total / sum(wanted);
          singles.forEach((count, i) =>
            expect(Math.abs(count - wanted[i]! * scale)).toBeLessThanOrEqual(wanted.length),
          );
          expect(sum(singles)).toBe(total);
        },
      ),
    );
  });
});

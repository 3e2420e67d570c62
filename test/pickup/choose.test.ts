import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseOpenings, spreadEvenly } from '../../src/pickup';

/** Distances that grow by very different amounts; now and then by nothing. */
const places = fc
  .array(
    fc.oneof({ weight: 6, arbitrary: fc.double({ min: 0.01, max: 9, noNaN: true }) }, fc.constantFrom(0, 1, 1, 20)),
    {
      minLength: 2,
      maxLength: 11,
    },
  )
  .map((steps) => {
    let at = 0;
    return [0, ...steps.map((step) => (at += step))];
  });

const withPicks = places.chain((at) => fc.tuple(fc.constant(at), fc.integer({ min: 2, max: at.length })));

function costOf(at: readonly number[], chosen: readonly number[]): number {
  const [start, end] = [at[0]!, at.at(-1)!];
  return chosen.reduce((sum, i, j) => sum + (at[i]! - (start + (j * (end - start)) / (chosen.length - 1))) ** 2, 0);
}

/** Every growing choice of `picks` places of `count`, first and last among them. */
function choices(count: number, picks: number): number[][] {
  const inner = (from: number, left: number): number[][] =>
    left === 0
      ? [[]]
      : Array.from({ length: Math.max(0, count - 1 - from) }, (_, k) => from + k).flatMap((i) =>
          inner(i + 1, left - 1).map((rest) => [i, ...rest]),
        );
  return inner(1, picks - 2).map((middle) => [0, ...middle, count - 1]);
}

const indices = (used: readonly boolean[]) => used.flatMap((one, i) => (one ? [i] : []));

describe('chooseOpenings', () => {
  it('costs no more than the cheapest of all choices, ends fixed', () => {
    fc.assert(
      fc.property(withPicks, ([at, picks]) => {
        fc.pre(at.at(-1)! > 0);
        const chosen = indices(chooseOpenings(at, picks, 'even'));
        expect(chosen).toHaveLength(picks);
        expect([chosen[0], chosen.at(-1)]).toEqual([0, at.length - 1]);
        const cheapest = Math.min(...choices(at.length, picks).map((choice) => costOf(at, choice)));
        expect(costOf(at, chosen)).toBeLessThanOrEqual(cheapest + 1e-9 * (1 + cheapest));
      }),
      { numRuns: 400 },
    );
  });

  it('reads two places at the same distance', () => {
    // Both places at 2 lie as near to the second third (1.83) as can be: one of them is used, never both.
    expect(indices(chooseOpenings([0, 1, 2, 2, 3, 4, 5.5], 4, 'even'))).toSatisfy(
      (chosen: number[]) => chosen.join() === '0,2,5,6' || chosen.join() === '0,3,5,6',
    );
    expect(chooseOpenings([0, 0, 0, 0, 5, 6], 3, 'even').filter(Boolean)).toHaveLength(3);
    expect(chooseOpenings([0, 5, 6, 6, 6, 6], 5, 'even').filter(Boolean)).toHaveLength(5);
  });

  it('passes over a crowd: ten places in the first tenth give one or two of four', () => {
    const at = [...Array.from({ length: 10 }, (_, i) => i), 50, 100];
    expect(indices(chooseOpenings(at, 4, 'even'))).toEqual([0, 9, 10, 11]);
  });

  it('spreads equal openings by whole numbers, whatever their distance', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 0, max: 60 }),
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        fc.constantFrom('even' as const, 'grouped' as const),
        (openings, picks, apart, spread) => {
          fc.pre(picks <= openings);
          const at = Array.from({ length: openings }, (_, i) => 3 + i * apart);
          expect(chooseOpenings(at, picks, spread)).toEqual(spreadEvenly(openings, picks, spread));
        },
      ),
    );
  });

  it('uses every opening where as many are wanted', () => {
    expect(chooseOpenings([0, 1, 5], 3, 'even')).toEqual([true, true, true]);
    expect(chooseOpenings([0, 1, 5], 7, 'even')).toEqual([true, true, true]);
  });
});

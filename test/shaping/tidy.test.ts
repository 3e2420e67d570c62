import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tidied } from '../../src/shaping';

const amounts = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 40 });
/** Nearly in order already, so that the tidied list is taken: falling, with a stitch more or less here and there. */
const nearlyFalling = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 3 }), fc.boolean()), { minLength: 2, maxLength: 20 })
  .map((drops) => {
    let amount = drops.reduce((sum, [drop]) => sum + drop, 1);
    return drops.map(([drop, wobble]) => (amount -= drop) + (wobble ? 1 : 0));
  });

const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);

/** How far apart two edges with these amounts get, in stitches. */
function farthest(a: readonly number[], b: readonly number[]): number {
  return Math.max(...a.map((_, i) => Math.abs(sum(a.slice(0, i + 1)) - sum(b.slice(0, i + 1)))));
}

const falls = (list: readonly number[]) => list.every((one, i) => i === 0 || one <= list[i - 1]!);

describe('tidied', () => {
  it('puts 5, 4, 3, 1, 2, 1 in order', () => {
    expect(tidied([5, 4, 3, 1, 2, 1], true)).toEqual([5, 4, 3, 2, 1, 1]);
    expect(tidied([1, 2, 1, 3, 4, 5], false)).toEqual([1, 1, 2, 3, 4, 5]);
  });

  it('lengthens the intervals of single decreases towards the steep end', () => {
    expect(tidied([1, 0, 1, 1, 0, 0, 1, 0], true)).toEqual([1, 1, 0, 1, 0, 0, 1, 0]);
  });

  it('leaves alone what it could only put in order by moving the edge', () => {
    expect(tidied([1, 5, 1, 5], true)).toEqual([1, 5, 1, 5]);
  });

  it('never moves the edge by more than one stitch, and keeps the sum and the number of rows', () => {
    fc.assert(
      fc.property(amounts, fc.boolean(), (list, flattening) => {
        const made = tidied(list, flattening);
        expect(made).toHaveLength(list.length);
        expect(sum(made)).toBe(sum(list));
        expect(farthest(list, made)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('never wobbles where it changes anything: the amounts are in order', () => {
    fc.assert(
      fc.property(fc.oneof(amounts, nearlyFalling), (list) => {
        const made = tidied(list, true);
        if (made.join() === list.join()) return;
        expect(falls(made.filter((amount) => amount > 0))).toBe(true);
      }),
    );
  });

  it('puts in order whatever can be by sorting alone, a list without even rows', () => {
    fc.assert(
      fc.property(nearlyFalling, (list) => {
        fc.pre(list.every((amount) => amount > 0));
        const sorted = [...list].sort((a, b) => b - a);
        const expected = farthest(list, sorted) <= 1 ? sorted : list;
        expect(tidied(list, true)).toEqual(expected);
      }),
    );
  });

  it('is the same upside down', () => {
    fc.assert(
      fc.property(amounts, (list) => {
        expect(tidied([...list].reverse(), false)).toEqual(tidied(list, true).reverse());
      }),
    );
  });
});

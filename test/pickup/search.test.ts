import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstFrom, lastAtMost } from '../../src/pickup/search';

describe('firstFrom', () => {
  it('is the first place from which on something holds, or the length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), (length, from) => {
        expect(firstFrom(length, (i) => i >= from)).toBe(Math.min(from, length));
      }),
    );
  });
});

describe('lastAtMost', () => {
  it('is the last number that is no more than a value, as a search from the end finds it', () => {
    const growing = fc.array(fc.integer({ min: 0, max: 9 })).map((list) => list.sort((a, b) => a - b));
    fc.assert(
      fc.property(growing, fc.integer({ min: -1, max: 10 }), (list, value) => {
        expect(lastAtMost(list, value)).toBe(list.findLastIndex((one) => one <= value));
      }),
    );
  });
});

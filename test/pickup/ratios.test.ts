import Fraction from 'fraction.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainRatios, ratioChoices, ratioCount } from '../../src/pickup';

const values = fc.double({ min: 0.13, max: 2.9, noNaN: true });

/** Every ratio p of q with q up to 8, by brute force. */
const all = Array.from({ length: 8 }, (_, q) =>
  Array.from({ length: 30 }, (_, p) => ({ pick: p + 1, of: q + 1 })),
).flat();

const off = ({ pick, of }: { pick: number; of: number }, value: number) => Math.abs(pick / of - value);

describe('plainRatios', () => {
  it('begins with the nearest of all ratios up to q = 8', () => {
    fc.assert(
      fc.property(values, (value) => {
        const nearest = Math.min(...all.map((ratio) => off(ratio, value)));
        expect(off(plainRatios(value)[0]!, value)).toBeCloseTo(nearest, 12);
      }),
      { numRuns: 500 },
    );
  });

  it('has no ratio that one of a smaller q beats from the same side', () => {
    fc.assert(
      fc.property(values, (value) => {
        for (const ratio of plainRatios(value)) {
          const better = all.filter(
            (other) =>
              other.of < ratio.of &&
              other.pick / other.of > value === ratio.pick / ratio.of > value &&
              off(other, value) < off(ratio, value) - 1e-12,
          );
          expect(better).toEqual([]);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('has all convergents of the continued fraction among them, as fraction.js (5.3.4) works them out', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), (above, below) => {
        fc.pre(above / below > 0.13 && above / below < 3);
        const terms = new Fraction(above, below).toContinued().map(Number);
        const found = plainRatios(above / below).map(({ pick, of }) => `${pick}/${of}`);
        for (let n = 1; n <= terms.length; n++) {
          const convergent = terms
            .slice(0, n)
            .reverse()
            .reduce((value, term, i) => (i === 0 ? new Fraction(term) : value.inverse().add(term)), new Fraction(0));
          if (convergent.n === 0n || convergent.d > 8n) continue;
          expect(found).toContain(`${convergent.n}/${convergent.d}`);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('is in lowest terms, nearest first, each once', () => {
    fc.assert(
      fc.property(values, (value) => {
        const ratios = plainRatios(value);
        for (const { pick, of } of ratios) {
          const lowest = new Fraction(pick, of);
          expect([BigInt(pick), BigInt(of)]).toEqual([lowest.n, lowest.d]);
        }
        const errors = ratios.map((ratio) => off(ratio, value));
        expect(errors).toEqual([...errors].sort((a, b) => a - b));
        expect(new Set(ratios.map(({ pick, of }) => pick / of)).size).toBe(ratios.length);
      }),
    );
  });

  /**
   * "Stockinette 3 of 4 or 5 of 7; fine yarn 5 of 6": piiamariaknit.com and
   * https://espacetricot.com (2013/05/09), from notes; that 2 of 3 is usual is common practice.
   */
  it.each([
    [20, 28, '5/7'],
    [22, 30, '3/4'],
    [21, 28, '3/4'],
    [16, 24, '2/3'],
  ])('gives stockinette of %i stitches by %i rows the usual %s', (stitches, rows, usual) => {
    const { pick, of } = plainRatios(stitches / rows)[0]!;
    expect(`${pick}/${of}`).toBe(usual);
  });
});

describe('ratioChoices', () => {
  it('gives what is picked up and how far off it is', () => {
    expect(ratioChoices(33, 22.5 / 33, 22.5, 33)[0]).toEqual({ pick: 2, of: 3, count: 22, stretch: 22 / 22.5 - 1 });
  });

  it('offers no ratio that the edge cannot carry', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), values, (openings, value) => {
        for (const { count } of ratioChoices(openings, value, null, openings))
          expect(count).toBeLessThanOrEqual(openings);
      }),
    );
  });

  it('has none for an edge without openings or where nothing is wanted', () => {
    expect(ratioChoices(0, 0.5, 3, 0)).toEqual([]);
    expect(ratioChoices(20, 0, 0, 20)).toEqual([]);
  });
});

describe('ratioCount', () => {
  it('rounds to the nearest, a half going down', () => {
    expect(ratioCount(30, 3, 4)).toBe(22);
    expect(ratioCount(31, 3, 4)).toBe(23);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 900 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 12 }),
        (m, p, q) => {
          const exact = new Fraction(m * p, q);
          expect(ratioCount(m, p, q)).toBe(exact.sub(1, 2).ceil().valueOf() + 0);
        },
      ),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeSum, TERMS, totalSum } from '../../src/text';
import { along, plan, rate, rectangle } from '../pickup/builders';
import { planSample, SAMPLES } from '../samples/sample';

const cm = { terms: TERMS.US, units: 'cm' } as const;
const inches = { terms: TERMS.US, units: 'in' } as const;

/** Half of the last digit shown, and a little for factors that end before the product's own half does. */
const HALF_A_TENTH = 0.051;

/** `a cm × b stitches to the cm (× c) = d, …` worked out again from what is written. */
function workedOut(sum: string): { product: number; shown: number } {
  const [, a, b, c, d] = /^([\d.]+) (?:cm|in) × ([\d.]+) stitches to the (?:cm|inch)(?: × ([\d.]+))? = ([\d.]+)/.exec(
    sum,
  )!;
  return { product: Number(a) * Number(b) * Number(c ?? 1), shown: Number(d) };
}

describe('edgeSum', () => {
  test('multiplies the length by the band, with enough decimals to be checked', () => {
    const made = plan(rectangle(30, 29), along(['right'], { band: { gauge: { stitches: 22, rows: 30 } } }));
    expect(edgeSum(made, made.edges[0]!, cm)).toBe('10.36 cm × 2.2 stitches to the cm = 22.8, so 23');
  });

  test('takes the draw-in off, once', () => {
    const band = { gauge: { stitches: 22, rows: 30 }, drawIn: 5 };
    const made = plan(rectangle(30, 28), along(['right'], { band }));
    expect(edgeSum(made, made.edges[0]!, cm)).toBe('10 cm × 2.2 stitches to the cm × 0.95 = 20.9, so 21');
  });

  test('says where the total moved the count', () => {
    const band = { gauge: { stitches: 22, rows: 30 }, multiple: 4 };
    const made = plan(rectangle(30, 28), along(['right'], { band }));
    expect(made.edges[0]!.count).toBe(20);
    expect(edgeSum(made, made.edges[0]!, cm)).toBe(
      '10 cm × 2.2 stitches to the cm = 22; 20 here, to bring the total to 20',
    );
    expect(totalSum(made)).toBe('20: a multiple of 4 (22 wanted, 20 is 9.1% short)');
  });

  test('says both neighbours of a half, and which one it is here', () => {
    const made = plan(rectangle(30, 63), along(['right']));
    expect(edgeSum(made, made.edges[0]!, cm)).toBe('22.5 cm × 2 stitches to the cm = 45');
    const half = plan(rectangle(30, 42), along(['right'], { band: { gauge: { stitches: 21, rows: 28 } } }));
    expect(edgeSum(half, half.edges[0]!, cm)).toBe('15 cm × 2.1 stitches to the cm = 31.5, so 31 or 32; 31 here');
  });

  test('says the other rates', () => {
    const rates = [rate('right', { kind: 'ratio', pick: 3, of: 4 }), rate('left', { kind: 'count', count: 20 })];
    const made = plan(rectangle(30, 33), along(['right', 'top', 'left'], { rates }));
    expect(made.edges.map((edge) => edgeSum(made, edge, cm))).toEqual([
      '33 × 3/4 = 24.8, so 25',
      '30, one from every bound-off stitch',
      '20, as given',
    ]);
    expect(totalSum(made)).toBe('25 + 30 + 20 = 75');
  });

  test.each(SAMPLES)('what is written gives what is written after it: %s', (name) => {
    for (const made of planSample(name).pickups) {
      for (const edge of made.edges.filter(({ rate: { kind }, wanted }) => kind === 'length' && wanted !== null)) {
        for (const voice of [cm, inches]) {
          const { product, shown } = workedOut(edgeSum(made, edge, voice));
          expect(Math.abs(product - shown)).toBeLessThanOrEqual(HALF_A_TENTH + 1e-6 * product);
        }
      }
    }
  });

  test('what is written gives what is written after it, on any edge and gauge', () => {
    const size = { rows: fc.integer({ min: 2, max: 900 }), stitches: fc.integer({ min: 5, max: 50 }) };
    fc.assert(
      fc.property(fc.record(size), ({ rows, stitches }) => {
        const made = plan(rectangle(30, rows), along(['right'], { band: { gauge: { stitches, rows: 30 } } }));
        for (const voice of [cm, inches]) {
          const { product, shown } = workedOut(edgeSum(made, made.edges[0]!, voice));
          expect(Math.abs(product - shown)).toBeLessThanOrEqual(HALF_A_TENTH + 1e-6 * product);
        }
      }),
      { numRuns: 60 },
    );
  });
});

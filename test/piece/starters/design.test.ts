import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDesign, readDesign, writeDesign } from '../../../src/piece';
import { starterDesign, STARTER_PICKUPS } from '../../../src/piece/starters';
import { fitsMultiple, planDesign } from '../../../src/pickup';
import { designOf, KINDS, WORDS } from './drawn';

describe.each(KINDS)('%s as a design', (kind) => {
  const design = designOf(kind);

  test('is a whole document, the same again from a file', () => {
    checkDesign(design);
    const read = readDesign(writeDesign(design));
    expect(read.design).toEqual(design);
    expect(read.notices).toEqual([]);
  });

  test('is planned: every total fits its band, and every edge lies flat', () => {
    const plan = planDesign(design);
    expect(plan.pickups).toHaveLength(STARTER_PICKUPS[kind].length);
    for (const { pickup, picked, target, stretch, notes } of plan.pickups) {
      expect(fitsMultiple(picked, pickup.band)).toBe(true);
      expect(picked).toBe(target);
      expect(notes).toEqual([]);
      if (stretch !== null) expect(Math.abs(stretch)).toBeLessThanOrEqual(0.03);
    }
  });
});

describe('in any gauge that is knitted', () => {
  // From bulky to lace, with the rows that stockinette and heel stitch have to a stitch.
  const gauges = fc
    .tuple(fc.integer({ min: 6, max: 42 }), fc.double({ min: 1.1, max: 2, noNaN: true }))
    .map(([stitches, rows]) => ({ stitches, rows: Math.round(stitches * rows * 2) / 2, over: 100 }));

  test.each(KINDS)('%s gets the nearest total that fits its band', (kind) => {
    fc.assert(
      fc.property(gauges, (gauge) => {
        for (const { pickup, wanted, target } of planDesign(designOf(kind, {}, gauge)).pickups) {
          expect(fitsMultiple(target, pickup.band)).toBe(true);
          // A stitch more where the two halves can only be alike with an even total.
          expect(Math.abs(target - wanted)).toBeLessThanOrEqual(pickup.band.multiple / 2 + 1);
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe('the counts of the usual pick-ups', () => {
  const picked = (kind: Parameters<typeof designOf>[0]) =>
    planDesign(designOf(kind)).pickups.map((plan) => plan.picked);

  test('the strip: 3 of every 4 rows of 88', () => {
    expect(picked('strip')).toEqual([66]);
  });

  test('all round: a stitch each at the ends, sides by their length', () => {
    // 70 cm at 22 to 10 cm is 154.
    expect(picked('rectangle')).toEqual([2 * 110 + 2 * 154]);
    // A ridge to every stitch.
    expect(picked('garter-square')).toEqual([4 * 54]);
  });

  test('a front band: 150 rows of 30 to 10 cm are 50 cm, 110 stitches, 4 x 27 + 2', () => {
    expect(picked('cardigan-left')).toEqual([110]);
    expect(picked('cardigan-right')).toEqual([110]);
  });

  test('a chain from every two of 32 rows at each side of the heel flap', () => {
    expect(picked('heel-flap')).toEqual([16, 16]);
  });

  test('none on a sleeve', () => {
    expect(picked('sleeve')).toEqual([]);
  });
});

describe('what a design is given', () => {
  test('names of edges, units, terms and hand', () => {
    const started = starterDesign('garter-square', {}, null, {
      ...WORDS,
      edges: (id) => (id === 'side-left' ? 'left side' : undefined),
      units: 'in',
      terms: 'UK',
      hand: 'left',
    });
    if (!started.ok) throw new Error(started.reason);
    expect(started.design).toMatchObject({ name: 'A start', units: 'in', terms: 'UK', hand: 'left' });
    expect(started.design.pieces[0]?.outline.map(({ name }) => name)).toEqual([
      undefined,
      undefined,
      undefined,
      'left side',
    ]);
  });

  test('a fault, where the measures are at fault', () => {
    expect(starterDesign('sleeve', { wrist: 500 }, null, WORDS)).toMatchObject({ ok: false, measure: 'wrist' });
  });

  test('its own gauge', () => {
    const gauge = { stitches: 16, rows: 22, over: 100 };
    expect(designOf('strip', {}, gauge).pieces[0]?.gauge).toEqual(gauge);
  });
});

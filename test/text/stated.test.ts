import { describe, expect, test } from 'vitest';
import type { Cause, StatedCheck } from '../../src/pickup';
import { agreementText, causeText, checkRow, impliedLabel, TERMS, thresholdsText } from '../../src/text';

const us = { terms: TERMS.US };
const names = () => 'Front, neck left';
const check: StatedCheck = {
  what: 'edge',
  edge: { piece: 'front', edge: 'neck-left' },
  ratio: null,
  stated: 24,
  planned: 23,
  wanted: 23.46,
  stretch: 0.023,
  verdict: 'lies flat',
  impliedPer10cm: 22.5,
  causes: [],
};
const rowOf = (fields: Partial<StatedCheck>) => checkRow({ ...check, ...fields }, names, { ...us, units: 'cm' });

describe('a stated count in the words of a table', () => {
  test('of an edge', () => {
    expect(rowOf({})).toEqual({
      title: 'Front, neck left',
      stated: '24',
      wanted: '23.5',
      planned: '23',
      off: '2.3% over',
      verdict: 'lies flat',
      implies: '22.5 to 10 cm',
      causes: [],
    });
  });

  test('of the whole, of what came out, and without a gauge', () => {
    const bare = { edge: null, wanted: null, stretch: null, verdict: null, impliedPer10cm: null };
    expect(rowOf({ ...bare, what: 'total' })).toMatchObject({ title: 'In all', wanted: '', off: '', implies: '' });
    expect(rowOf({ ...bare, what: 'got' }).title).toBe('What you got');
  });

  test('of a ratio says what it is counted in and what it gives', () => {
    const ratio = { pick: 3, of: 4, per: 'row', places: 32 } as const;
    expect(rowOf({ what: 'ratio', ratio })).toMatchObject({
      title: 'Front, neck left',
      stated: '3 of every 4 rows: 24',
    });
    expect(rowOf({ what: 'ratio', ratio: { ...ratio, of: 1, per: 'chain' } }).stated).toBe('3 of every 1 chain: 24');
  });

  test('implies a gauge over 10 cm or to the inch', () => {
    expect(impliedLabel(19.8, 'cm')).toBe('19.8 to 10 cm');
    expect(impliedLabel(19.8, 'in')).toBe('5.03 to the inch');
  });
});

describe('causes', () => {
  test('56 where 80 was wanted over 112 rows is one for every two rows', () => {
    const off = { stated: 56, wanted: 80, planned: 80 };
    expect(causeText({ kind: 'openings-counted-as-rows', unit: 'row' }, off, us)).toBe(
      '56 is one for every two rows: ridges or chains were counted as rows.',
    );
  });

  test('each have a sentence of their own', () => {
    const causes: Cause[] = [
      { kind: 'openings-counted-as-rows', unit: 'chain' },
      { kind: 'rows-counted-as-openings', unit: 'ridge' },
      { kind: 'one-from-each', unit: 'chain' },
      { kind: 'ratio-misread', pick: 3, of: 4, as: 'skip-of' },
      { kind: 'ratio-misread', pick: 3, of: 4, as: 'turned-round' },
      { kind: 'ratio-misread', pick: 3, of: 4, as: 'of-then-skip' },
      { kind: 'ratio-misread', pick: 2, of: 5, as: 'one-of' },
      { kind: 'other-ratio', pick: 5, of: 7, per: 'row' },
      { kind: 'body-gauge' },
      { kind: 'reduced-twice' },
      { kind: 'not-reduced' },
      { kind: 'lengthened', rows: -17 },
      { kind: 'lengthened', rows: 1 },
      { kind: 'lengthened', rows: -8, edges: 2 },
      { kind: 'widened', stitches: 4 },
      { kind: 'other-size' },
    ];
    expect(causes.map((cause) => causeText(cause, { stated: 40, wanted: null, planned: 80 }, us))).toEqual([
      '40 is half of what is wanted: a rate for rows was worked into chains, and each of them is two rows.',
      '40 takes rows for ridges: this edge has one ridge for every two rows.',
      '40 is one from each chain, which this edge needs more than.',
      '40 is what “pick up 3, skip 4” gives. 3 of every 4 means: pick up 3, skip 1.',
      '40 is what “pick up 1, skip 3” gives. 3 of every 4 means: pick up 3, skip 1.',
      '40 is what “pick up 4, skip 1” gives. 3 of every 4 means: pick up 3, skip 1.',
      '40 is what “pick up 1, skip 4” gives. 2 of every 5 means: pick up 2, skip 3.',
      'This edge wants 5 of every 7 rows, or near it: the ratio stated suits another gauge, or an edge with another slope.',
      '40 is what the gauge of the body gives: the band has its own.',
      '40 takes the draw-in off twice: the count wanted has it already.',
      '40 leaves the draw-in out: the count wanted is smaller by that much.',
      '40 would suit an edge 17 rows shorter: the piece may have been made longer than the pattern has it.',
      '40 would suit an edge 1 row longer: the piece may have been made shorter than the pattern has it.',
      '40 would suit 2 edges 8 rows shorter in all: the piece may have been made longer than the pattern has it.',
      '40 would suit an edge 4 stitches wider: the pattern may have another size in mind.',
      'No one slip explains 40 where 80 is wanted: the pattern may have another size, edge or gauge in mind.',
    ]);
  });

  test('speak the terms of the country', () => {
    const misread = { kind: 'ratio-misread', pick: 3, of: 4, as: 'skip-of' } as const;
    expect(causeText(misread, { stated: 40, wanted: 70, planned: 70 }, { terms: TERMS.UK })).toBe(
      '40 is what “knit up 3, skip 4” gives. 3 of every 4 means: knit up 3, skip 1.',
    );
  });
});

describe('what agrees', () => {
  test('is said too', () => {
    const ref = { piece: 'front', edge: 'neck-left' };
    const said = [
      { kind: 'sections-sum', sum: 108, stated: 'total' },
      { kind: 'sections-sum', sum: 108, stated: 'plan' },
      { kind: 'edges-sum', sum: 108 },
      { kind: 'total-fits', total: 108, multiple: 4, plus: 0 },
      { kind: 'sides-alike', left: ref, right: ref, count: 24 },
    ] as const;
    expect(said.map((one) => agreementText(one, names))).toEqual([
      'The sections stated add up to the 108 stated in all.',
      'The sections stated add up to the 108 of this plan.',
      'The counts stated edge by edge add up to the 108 stated in all.',
      "The total stated, 108, is a multiple of 4, as the band's pattern needs.",
      'Front, neck left and its mirror image are stated alike, with 24 each.',
    ]);
    expect(thresholdsText({ slight: 2.5, strong: 8 })).toBe(
      'Up to 2.5% off lies flat, up to 8% is slightly tight or loose, more puckers or ruffles.',
    );
  });
});

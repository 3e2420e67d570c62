import { describe, expect, test } from 'vitest';
import type { Cause, StatedCheck } from '../../src/pickup';
import { causeText, impliedText, statedText, TERMS } from '../../src/text';

const us = { terms: TERMS.US };
const check: StatedCheck = {
  edge: { piece: 'front', edge: 'neck-left' },
  stated: 24,
  planned: 23,
  wanted: 23.46,
  stretch: 0.023,
  verdict: 'lies flat',
  impliedPer10cm: 22.5,
  causes: [],
};

describe('stated counts', () => {
  test('are said in a line, with the verdict', () => {
    expect(statedText(check, () => 'Front, neck left')).toBe(
      'Front, neck left: 24 stated, 23.5 wanted, 2.3% over: lies flat.',
    );
    const bare = { ...check, edge: null, wanted: null, stretch: null, verdict: null };
    expect(statedText(bare, () => '')).toBe('In all: 24 stated, 23 planned.');
  });

  test('imply a gauge', () => {
    expect(impliedText(19.8, { units: 'cm' })).toBe('It implies 19.8 stitches to 10 cm in the band.');
    expect(impliedText(19.8, { units: 'in' })).toBe('It implies 20.1 stitches to 4 in in the band.');
  });

  test('56 where 80 was wanted over 112 rows is one for every two rows', () => {
    const off = { stated: 56, wanted: 80, planned: 80 };
    expect(causeText({ kind: 'openings-counted-as-rows', unit: 'row' }, off, us)).toBe(
      '56 is one for every two rows: ridges or chains were counted as rows.',
    );
  });

  test('every cause has a sentence of its own', () => {
    const causes: Cause[] = [
      { kind: 'openings-counted-as-rows', unit: 'chain' },
      { kind: 'rows-counted-as-openings', unit: 'ridge' },
      { kind: 'body-gauge' },
      { kind: 'reduced-twice' },
      { kind: 'lengthened', rows: -17 },
      { kind: 'lengthened', rows: 1 },
    ];
    expect(causes.map((cause) => causeText(cause, { stated: 40, wanted: null, planned: 80 }, us))).toEqual([
      '40 is half of what is wanted: a rate for rows was worked into chains, and each of them is two rows.',
      '40 takes rows for ridges: this edge has one ridge for every two rows.',
      '40 is what the gauge of the body gives: the band has its own.',
      '40 takes the draw-in off twice: the count wanted has it already.',
      '40 would suit an edge 17 rows shorter: the piece may have been made longer than the pattern has it.',
      '40 would suit an edge 1 row longer: the piece may have been made shorter than the pattern has it.',
    ]);
  });
});

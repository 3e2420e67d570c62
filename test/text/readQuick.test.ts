import { describe, expect, it } from 'vitest';
import { quickMeasure, readPlace, readRow, type PlaceTyped, type RowTyped } from '../../src/text';

const PLACE: PlaceTyped = { place: '71', over: '88', measure: 'row', sections: '', gauge: '', spread: 'even' };
const ROW: RowTyped = { have: '131', change: 'decrease', amount: '39', amountIs: 'by', round: true };

describe('a typed question', () => {
  it('about an edge, what is left empty being none', () => {
    expect(readPlace(PLACE, 'cm')).toEqual({
      ok: true,
      question: { kind: 'place', place: 71, over: 88, unit: 'row', per10cm: null, sections: null, spread: 'even' },
    });
  });

  it.each([
    ['5,5', 'cm', 55],
    ['5.5', 'cm', 55],
    ['4½', 'in', 114.3],
    ['4 1/2', 'in', 114.3],
    ['10 cm', 'in', 100],
  ] as const)('about a length of %s %s', (over, measure, mm) => {
    const read = readPlace({ ...PLACE, over, measure }, 'cm');
    expect(read.ok && read.question.unit).toBe('length');
    expect(read.ok && read.question.over).toBeCloseTo(mm, 9);
  });

  it.each([
    ['row', 'cm', 26],
    ['row', 'in', 26 / 1.016],
    ['in', 'cm', 26 / 1.016],
    ['cm', 'in', 26],
  ] as const)('with a gauge of 26 on %s where lengths are in %s', (measure, shown, per10cm) => {
    const read = readPlace({ ...PLACE, measure, gauge: '26' }, shown);
    expect(read.ok && read.question.per10cm).toBeCloseTo(per10cm, 9);
  });

  it('about a row', () => {
    expect(readRow(ROW)).toEqual({
      ok: true,
      question: { kind: 'row', have: 131, change: 'decrease', amount: 39, amountIs: 'by', round: true },
    });
  });

  it.each([
    [{ place: '' }, 'place', 'empty'],
    [{ place: 'many' }, 'place', 'not-a-number'],
    [{ over: '1,234' }, 'over', 'ambiguous'],
    [{ over: '5 ells', measure: 'cm' }, 'over', 'unknown-unit'],
    [{ over: '5 cm' }, 'over', 'not-a-number'],
    [{ sections: 'four' }, 'sections', 'not-a-number'],
    [{ gauge: '?' }, 'per10cm', 'not-a-number'],
  ] as const)('%j is not read: %s is %s', (change, field, reason) => {
    expect(readPlace({ ...PLACE, ...change }, 'cm')).toMatchObject({ ok: false, field, reason });
  });

  it.each([
    [{ have: '' }, 'have', 'empty'],
    [{ amount: 'some' }, 'amount', 'not-a-number'],
  ] as const)('%j is not read: %s is %s', (change, field, reason) => {
    expect(readRow({ ...ROW, ...change })).toMatchObject({ ok: false, field, reason });
  });

  it('says what an edge is counted in by many words', () => {
    expect(['Rows', 'ridge', 'chains', 'sts', 'in.', '"', 'cm'].map(quickMeasure)).toEqual([
      ...['row', 'ridge', 'chain', 'stitch', 'in', 'in', 'cm'],
    ]);
    expect(quickMeasure('apples')).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import { quickFault, type PlaceQuestion, type RowQuestion } from '../../src/piece';
import { quickFaultText, readPlace } from '../../src/text';

const PLACE: PlaceQuestion = {
  ...{ kind: 'place', place: 71, over: 88, unit: 'row', per10cm: null, sections: null, spread: 'even' },
};
const ROW: RowQuestion = { kind: 'row', have: 30, change: 'decrease', amount: 4, amountIs: 'by', round: false };

describe('what is wrong with a question, in one sentence with its mend', () => {
  it.each([
    [{ ...PLACE, place: 1 }, 'Type 2 to 10000 stitches: 1 is too few.'],
    [{ ...PLACE, over: 0 }, 'Type 1 to 5000 rows: 0 is too few.'],
    [{ ...PLACE, over: 9999, unit: 'ridge' }, 'Type 1 to 2500 ridges: 9999 is too many.'],
    [{ ...PLACE, sections: 10_000 }, 'Type 2 to 64 sections: 10000 is too many.'],
    [{ ...PLACE, place: 20, sections: 64 }, "20 stitches can't fill 64 sections: ask for 20 at most."],
    [{ ...PLACE, place: 4.5 }, '4.5 is not whole: type 4 or 5.'],
    [{ ...PLACE, per10cm: 0 }, 'Type 4 to 300 rows to 10 cm: 0 is too few.'],
    [{ ...PLACE, unit: 'length', over: 1 }, 'Type a length from 0.5 cm to 1000.0 cm: 0.1 cm is too short.'],
    [
      { ...PLACE, place: 177 },
      '88 rows have room for 88, and the first row can make 176 of them at most: ask for that or fewer, or for more rows.',
    ],
    [
      { ...PLACE, unit: 'length', over: 5 },
      'That would be 1420 stitches to 10 cm, and knitting has 4 to 200: check the count and the length.',
    ],
    [
      { ...ROW, change: 'increase', amount: 31 },
      "30 stitches can't take 31 increases in one row, since that is more increases than stitches: ask for 30 at most.",
    ],
    [
      { ...ROW, amount: 16 },
      "30 stitches can't take 16 decreases in one row, since each takes two: ask for 15 at most.",
    ],
    [{ ...ROW, amount: 1, amountIs: 'to' }, '1 stitch would be left: keep 2 at least.'],
    [{ ...ROW, amount: 30, amountIs: 'to' }, 'There are 30 already, so nothing changes: type another number.'],
    [{ ...ROW, amount: 40, amountIs: 'to' }, '40 is more than 30: to decrease, type a lower number.'],
  ] as const)('%j', (question, text) => {
    const fault = quickFault(question);
    expect(fault && quickFaultText(fault, 'cm')).toBe(text);
  });

  it('gives a gauge over 4 in where lengths are in inches', () => {
    const fault = quickFault({ ...PLACE, per10cm: 1000 });
    expect(fault && quickFaultText(fault, 'in')).toBe('Type 4.1 to 304.8 rows to 4 in: 1016 is too many.');
  });

  it.each([
    ['', 'Type a number here.'],
    ['lots', '“lots” is not a number: type one, such as 71.'],
    ['1,234', '“1,234” may be thousands or a decimal: type it without a sign, or with a point.'],
  ])('%j, typed as a count', (place, text) => {
    const read = readPlace({ place, over: '88', measure: 'row', sections: '', gauge: '', spread: 'even' }, 'cm');
    expect(read.ok ? '' : quickFaultText(read, 'cm')).toBe(text);
  });
});

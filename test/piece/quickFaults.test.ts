import { describe, expect, it } from 'vitest';
import { quickFault, type PlaceQuestion, type QuickUnit, type RowQuestion } from '../../src/piece';

const place = (change: Partial<PlaceQuestion> = {}): PlaceQuestion => ({
  ...{ kind: 'place', place: 71, over: 88, unit: 'row', per10cm: null, sections: null, spread: 'even' },
  ...change,
});
const row = (change: Partial<RowQuestion> = {}): RowQuestion => ({
  ...{ kind: 'row', have: 131, change: 'decrease', amount: 39, amountIs: 'by', round: false },
  ...change,
});

describe('a question about an edge', () => {
  it.each([
    [{ place: 1 }, 'place', 'out-of-range'],
    [{ place: 0 }, 'place', 'out-of-range'],
    [{ place: -71 }, 'place', 'out-of-range'],
    [{ place: NaN }, 'place', 'out-of-range'],
    [{ place: 71.5 }, 'place', 'not-whole'],
    [{ over: 0 }, 'over', 'out-of-range'],
    [{ over: 88.5 }, 'over', 'not-whole'],
    [{ over: 5001 }, 'over', 'out-of-range'],
    [{ over: 2501, unit: 'ridge' }, 'over', 'out-of-range'],
    [{ over: 2001, unit: 'stitch' }, 'over', 'out-of-range'],
    [{ over: 0, unit: 'length' }, 'over', 'out-of-range'],
    [{ sections: 10_000 }, 'sections', 'out-of-range'],
    [{ sections: 1 }, 'sections', 'out-of-range'],
    [{ sections: 2.5 }, 'sections', 'not-whole'],
    [{ place: 20, sections: 21 }, 'sections', 'more-sections-than-stitches'],
    [{ per10cm: 0 }, 'per10cm', 'out-of-range'],
    [{ per10cm: 201, unit: 'stitch' }, 'per10cm', 'out-of-range'],
    [{ over: 10, unit: 'length' }, 'place', 'no-such-gauge'],
    [{ over: 10_000, unit: 'length', place: 900, per10cm: 300 }, 'per10cm', 'too-many-rows'],
  ] as const)('%j is at fault in %s: %s', (change, field, reason) => {
    expect(quickFault(place(change))).toMatchObject({ field, reason });
  });

  it.each([
    { place: 2, over: 1 },
    { over: 5000 },
    { over: 2500, unit: 'chain' },
    { over: 2000, unit: 'stitch' },
    { place: 20, sections: 20 },
    { sections: 64 },
    { over: 55.5, unit: 'length' },
  ] as const)('%j is answered', (change) => {
    expect(quickFault(place(change))).toBeNull();
  });

  it.each([
    ['row', 176],
    ['stitch', 176],
    ['ridge', 352],
    ['chain', 352],
  ] as const)('88 of %s hold up to %i with the first row, and no more', (unit: QuickUnit, most) => {
    expect(quickFault(place({ unit, place: most }))).toBeNull();
    expect(quickFault(place({ unit, place: most + 1 }))).toMatchObject({ reason: 'too-many-stitches', most });
  });
});

describe('a question about a row', () => {
  it.each([
    [{ have: 1 }, 'have', 'out-of-range'],
    [{ have: 30.5 }, 'have', 'not-whole'],
    [{ amount: 0 }, 'amount', 'out-of-range'],
    [{ amount: 4.5 }, 'amount', 'not-whole'],
    [{ have: 30, amount: 16 }, 'amount', 'too-many-decreases'],
    [{ have: 30, amount: 31, change: 'increase' }, 'amount', 'too-many-increases'],
    [{ have: 2, amount: 1 }, 'amount', 'leaves-too-few'],
    [{ amount: 1, amountIs: 'to' }, 'amount', 'leaves-too-few'],
    [{ amount: 131, amountIs: 'to' }, 'amount', 'wrong-way'],
    [{ amount: 140, amountIs: 'to' }, 'amount', 'wrong-way'],
    [{ amount: 120, amountIs: 'to', change: 'increase' }, 'amount', 'wrong-way'],
  ] as const)('%j is at fault in %s: %s', (change, field, reason) => {
    expect(quickFault(row(change))).toMatchObject({ field, reason });
  });

  it.each([
    { have: 30, amount: 15 },
    { have: 30, amount: 30, change: 'increase' },
    { amount: 92, amountIs: 'to' },
  ] as const)('%j is answered', (change) => {
    expect(quickFault(row(change))).toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import { knitItems, knitParts } from '../../src/text/steps';

describe('knitParts', () => {
  test('lists a falling edge from its bottom, as the left edge of its fabric', () => {
    const worked = [
      { across: -1, up: -4 },
      { across: -3, up: -2 },
    ];
    expect(knitParts({ worked, from: [20, 30] })).toEqual([
      {
        kind: 'climb',
        side: 'left',
        bottom: 24,
        steps: [
          { stitches: -3, rows: 2 },
          { stitches: -1, rows: 4 },
        ],
      },
    ]);
  });

  test('orders the parts of a curve from the bottom up, what lies flat first', () => {
    const worked = [
      { across: -2, up: -6 },
      { across: -4, up: 0 },
      { across: -3, up: 0 },
      { across: -2, up: 6 },
    ];
    expect(knitParts({ worked, from: [20, 30] }).map((part) => [part.kind, part.bottom])).toEqual([
      ['flat', 24],
      ['climb', 24],
      ['climb', 24],
    ]);
    expect(knitParts({ worked, from: [20, 30] })[0]).toEqual({ kind: 'flat', bottom: 24, stitches: -7 });
  });

  test('has no parts where nothing is worked', () => {
    expect(knitParts({ worked: [], from: [0, 0] })).toEqual([]);
  });
});

describe('knitItems', () => {
  test('gathers steps of one interval and works the rest even', () => {
    expect(
      knitItems([
        { stitches: -3, rows: 2 },
        { stitches: -2, rows: 6 },
        { stitches: 0, rows: 4 },
        { stitches: 1, rows: 4 },
        { stitches: 1, rows: 4 },
      ]),
    ).toEqual([
      { kind: 'together', amounts: [3, 2], every: 2, out: false },
      { kind: 'even', rows: 8 },
      { kind: 'single', rates: [{ every: 4, times: 2 }], out: true },
    ]);
  });

  test('keeps a bind-off on the very last row', () => {
    expect(knitItems([{ stitches: -5, rows: 0 }])).toEqual([{ kind: 'together', amounts: [5], every: 0, out: false }]);
  });
});

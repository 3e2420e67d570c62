import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstRow, placedRow, type RowGroup } from '../../src/pickup';
import { firstRowProof, firstRowText, provedRow, sectionRowsText } from '../../src/text';
import { countFirstRow } from './firstRowReader';

const plain = (count: number) => ({ work: 'plain', count }) as const;
const increase = { work: 'increase', count: 1 } as const;
const decrease = { work: 'decrease', count: 1 } as const;

describe('firstRowText', () => {
  test('brackets several repeats', () => {
    const groups: RowGroup[] = [
      { times: 25, works: [plain(1), decrease] },
      { times: 14, works: [plain(2), decrease] },
    ];
    // 131 stitches decreased by 39, where "k2, k2tog 39 times" was published and takes 156:
    // "Decrease evenly across row", http://spincraftpatterns.com/content/decrease-evenly-across-row
    expect(firstRowText({ groups })).toBe('(k1, k2tog) 25 times, (k2, k2tog) 14 times');
    expect(firstRowProof({ groups })).toBe('uses 131 stitches, leaves 92');
  });

  test('stars a row that is one repeat', () => {
    const round: RowGroup[] = [{ times: 6, works: [plain(5), increase] }];
    expect(firstRowText({ groups: round })).toBe('*k5, m1; repeat from * 5 more times');
    const flat: RowGroup[] = [
      { times: 1, works: [plain(3)] },
      { times: 14, works: [increase, plain(6)] },
      { times: 1, works: [increase, plain(3)] },
    ];
    expect(firstRowText({ groups: flat })).toBe('k3, *m1, k6; repeat from * 13 more times; m1, k3');
    expect(firstRowProof({ groups: flat })).toBe('uses 90 stitches, leaves 105');
  });

  test('says several of one work in a row', () => {
    const groups: RowGroup[] = [{ times: 1, works: [plain(4), { work: 'decrease', count: 2 }] }];
    expect(firstRowText({ groups })).toBe('k4, k2tog twice');
  });

  test('has no words where nothing changes', () => {
    expect(firstRowText(firstRow(108, 108, true))).toBe('');
  });

  test('counts out to what was asked, by its own words and by its proof', () => {
    const rows = fc
      .integer({ min: 2, max: 400 })
      .chain((from) =>
        fc.tuple(fc.constant(from), fc.integer({ min: Math.ceil(from / 2), max: 2 * from }), fc.boolean()),
      );
    fc.assert(
      fc.property(rows, ([from, to, joined]) => {
        fc.pre(from !== to);
        const row = firstRow(from, to, joined);
        expect(countFirstRow(firstRowText(row))).toEqual({ uses: from, leaves: to });
        expect(firstRowProof(row)).toBe(`uses ${from} stitches, leaves ${to}`);
      }),
      { numRuns: 500 },
    );
  });

  test('the reader does notice a row that is published wrong', () => {
    expect(countFirstRow('(k2, k2tog) 39 times')).toEqual({ uses: 156, leaves: 117 });
    expect(() => countFirstRow('k2, sl1')).toThrow(/no work/);
  });
});

describe('a row that keeps a rib', () => {
  const wish = { marks: [], clear: false, rib: { knit: 2, purl: 2 }, parts: null };

  test('is said as rib, its changes as their columns', () => {
    const { groups } = placedRow(44, 48, true, wish);
    expect(firstRowText({ groups })).toMatch(/^\*?(?:rib \d+, m1p(?:, |; |$))/);
    expect(firstRowText({ groups })).not.toMatch(/\bk\d|\bm1\b/);
    expect(countFirstRow(firstRowText({ groups }))).toEqual({ uses: 44, leaves: 48 });
    const fewer = placedRow(52, 48, true, wish);
    expect(firstRowText(fewer)).toMatch(/\b(?:k|p)2tog\b/);
  });

  test('counts out by its own words, whatever is wished', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 200 }),
        fc.integer({ min: -6, max: 12 }),
        fc.boolean(),
        fc.array(fc.integer({ min: 1, max: 199 }), { maxLength: 5 }),
        (from, more, joined, marks) => {
          fc.pre(more !== 0);
          const row = placedRow(from, from + more, joined, { ...wish, marks, clear: true });
          expect(countFirstRow(firstRowText(row))).toEqual({ uses: from, leaves: from + more });
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('a row section by section', () => {
  const sections = [
    { section: 1, from: 14, to: 15, groups: [{ times: 1, works: [plain(7), increase, plain(7)] }] },
    { section: 2, from: 14, to: 14, groups: [] },
  ];

  test('has a proof to each, and says where nothing changes', () => {
    expect(sectionRowsText({ parts: sections })).toEqual([
      'section 1: k7, m1, k7 (uses 14 stitches, leaves 15)',
      'section 2: no change, 14',
    ]);
    expect(sectionRowsText({})).toEqual([]);
  });

  test('proves the whole at its end', () => {
    const groups: RowGroup[] = [{ times: 1, works: [plain(7), increase, plain(21)] }];
    const row = { from: 28, to: 29, joined: true, groups };
    expect(provedRow(row)).toBe('k7, m1, k21 (uses 28 stitches, leaves 29)');
    expect(provedRow({ ...row, parts: sections })).toBe(
      'section 1: k7, m1, k7 (uses 14 stitches, leaves 15); section 2: no change, 14: in all it uses 28 stitches, leaves 29',
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/handout';
import { BLANK, table, TICK, type Cell, type TableColumn } from '../../src/handout/table';
import type { Strip } from '../../src/handout/strip';
import type { DrawnElement } from '../../src/renderer';
import { overlapping, textBox, type Spot } from './onPage';
import { itemsOf } from '../../src/handout/pdf/walk';

const drawn = (strips: readonly Strip[], x = 0): DrawnElement[][] => strips.map((strip) => [...strip.draw(x, 0)]);

/** All letters of a row without its spaces, in the order of the columns. */
const lettersOf = (row: readonly DrawnElement[]): string =>
  row
    .map(({ text }) => text ?? '')
    .join('')
    .replace(/\s/gu, '');

const NAMES = [
  'neck edge',
  'the left front neck edge, from the shoulder seam down to the first of the five underarm stitches',
  'Правый край горловины переда',
  '前身頃の衿ぐり左側、肩から中央まで',
  'Halsausschnittkantenaufnahmemaschen',
  'λαιμόκοψη',
  '½ · 3⅛ in',
  '',
] as const;

const cell: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom<Cell[]>(...NAMES) },
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 99_999 }).map(String) },
  { weight: 1, arbitrary: fc.constantFrom<Cell[]>(BLANK, TICK) },
);

const tables = fc.integer({ min: 1, max: 7 }).chain((count) =>
  fc.record({
    columns: fc.array(
      fc.record<TableColumn>({
        head: fc.constantFrom('edge', 'pick up', 'after the first row', 'от'),
        align: fc.constantFrom('left', 'right'),
        face: fc.constantFrom('regular', 'bold'),
      }),
      { minLength: count, maxLength: count },
    ),
    rows: fc.array(fc.array(cell, { minLength: count, maxLength: count }), { minLength: 1, maxLength: 6 }),
    width: fc.constantFrom(118.2, 127, 178, 183.9),
  }),
);

type Table = typeof tables extends fc.Arbitrary<infer One> ? One : never;

function everyTable(check: (strips: readonly Strip[], of: Table) => void): void {
  fc.assert(
    fc.property(tables, (of) => check(table(of.columns, of.rows, of.width), of)),
    { numRuns: 150 },
  );
}

/** Left and right end of whatever is drawn in a row, but for the rule under it. */
function spansOf(row: readonly DrawnElement[]): { left: number; right: number; upper: number; lower: number }[] {
  return [...itemsOf(row.slice(0, -1))].map((item) => {
    let corners: readonly Spot[];
    if (item.kind === 'text') ({ corners } = textBox(item));
    else {
      const [x = 0, y = 0, w = 0, h = 0] = (item.d.match(/-?[\d.]+/g) ?? []).map(Number);
      corners = [
        [x, y],
        [x + w, y + h],
      ];
    }
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    return { left: Math.min(...xs), right: Math.max(...xs), upper: Math.min(...ys), lower: Math.max(...ys) };
  });
}

describe('a table', () => {
  it('holds every letter of every cell', () => {
    everyTable((strips, { columns, rows }) => {
      const wanted = [columns.map(({ head }) => head), ...rows].map((row) =>
        row
          .map((one) => (typeof one === 'string' ? one : ''))
          .join('')
          .replace(/\s/gu, ''),
      );
      expect(drawn(strips).map(lettersOf)).toEqual(wanted);
    });
  });

  it('breaks words at spaces where it can', () => {
    const [, row] = table([{ head: 'edge', align: 'left' }], [[NAMES[1]]], 60);
    const lines = drawn([row!])[0]!.flatMap(({ text }) => (text === undefined ? [] : [text]));
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join(' ')).toBe(NAMES[1]);
  });

  it('draws a box for every blank and every tick', () => {
    everyTable((strips, { rows }) => {
      const boxes = drawn(strips.slice(1)).map(
        (row) => row.filter(({ attributes }) => attributes.d?.endsWith('z')).length,
      );
      expect(boxes).toEqual(rows.map((row) => row.filter((one) => typeof one === 'symbol').length));
    });
  });

  it('keeps all within its room and its rows, with nothing on anything else', () => {
    everyTable((strips, { width }) => {
      for (const [i, row] of drawn(strips, 16).entries()) {
        const spans = spansOf(row);
        const corners = spans.map(({ left, right, upper, lower }): Spot[] => [
          [left, upper],
          [right, upper],
          [right, lower],
          [left, lower],
        ]);
        expect(corners.flatMap((a, n) => corners.slice(n + 1).filter((b) => overlapping(a, b)))).toEqual([]);
        const slack = 0.01;
        const { height } = strips[i]!;
        const out = spans.filter(
          ({ left, right, upper, lower }) =>
            left < 16 - slack || right > 16 + width + slack || upper < -slack || lower > height + slack,
        );
        expect(out).toEqual([]);
        const [from = 0, length = 0] = [/^M([\d.]+)/, /h([\d.]+)$/].map((part) =>
          Number(part.exec(row.at(-1)!.attributes.d!)?.[1]),
        );
        expect(from).toBe(16);
        expect(length).toBeLessThanOrEqual(width + slack);
      }
    });
  });

  it('keeps figures one under the other: every column ends or begins at the same place in every row', () => {
    const strips = table(
      [
        { head: 'edge', align: 'left' },
        { head: 'wanted', align: 'right' },
        { head: 'pick up', align: 'right', face: 'bold' },
      ],
      [
        [NAMES[1], '9', '10'],
        [NAMES[3], '1234.5', BLANK],
        ['', '', '1'],
      ],
      178,
    );
    const ends = drawn(strips).map((row) =>
      row.filter(({ attributes }) => attributes['text-anchor'] === 'end').map(({ attributes }) => Number(attributes.x)),
    );
    const [wanted, count] = ends[0]!;
    expect(ends[1]).toEqual([wanted, count]);
    expect(ends[2]![0]).toBe(wanted);
    expect(ends[3]).toEqual([count]);
    const [last] = spansOf(drawn([strips[2]!])[0]!).slice(-1);
    expect(last!.right).toBeCloseTo(count!, 2);
  });

  it('is no wider than what is in it', () => {
    const [, row] = table([{ head: 'a', align: 'left' }], [['a few words']], 178);
    expect(drawn([row!])[0]!.at(-1)!.attributes.d).toMatch(/h([\d.]+)$/);
    const across = Number(/h([\d.]+)$/.exec(drawn([row!])[0]!.at(-1)!.attributes.d!)![1]);
    expect(across).toBeCloseTo(textWidth('a few words', 3.4, 'regular'), 2);
  });

  it('lets a head be repeated over every row, and none stand at the foot of a page', () => {
    const [head, ...rows] = table([{ head: 'edge', align: 'left' }], [['one'], ['two']], 100);
    expect(head!.withNext).toBe(true);
    for (const { again } of rows) expect(drawn([again!])).toEqual(drawn([head!]));
  });
});

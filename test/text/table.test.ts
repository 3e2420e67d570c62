import { describe, expect, test } from 'vitest';
import { displayWidth, tableText, wrapped } from '../../src/text';

const columns = [
  { head: 'Edge', align: 'left' },
  { head: 'Rows', align: 'right' },
] as const;

describe('tableText', () => {
  test('lines words up on the left and figures on the right', () => {
    expect(
      tableText(columns, [
        ['neck', '8'],
        ['side left', '110'],
      ]),
    ).toBe(['Edge       Rows', '---------  ----', 'neck          8', 'side left   110'].join('\n'));
  });

  test('leaves no space at the end of a line, and a missing cell empty', () => {
    const text = tableText(
      [...columns, { head: 'Note', align: 'left' }],
      [
        ['neck', '8'],
        ['side', '9', 'x'],
      ],
    );
    expect(text.split('\n').every((line) => line === line.trimEnd())).toBe(true);
    expect(text.split('\n')[2]).toBe('neck     8');
  });

  test('lines up what terminals draw two columns wide', () => {
    const lines = tableText(columns, [
      ['襟ぐり', '8'],
      ['e\u0301te\u0301', '110'],
    ]).split('\n');
    expect(lines[2]).toBe('襟ぐり     8');
    expect(lines.slice(2).map(displayWidth)).toEqual([12, 12]);
  });

  test('stands without rows', () => {
    expect(tableText(columns, [])).toBe('Edge  Rows\n----  ----');
  });
});

describe('displayWidth', () => {
  // Widths after Unicode Standard Annex 11, East Asian Width, https://www.unicode.org/reports/tr11/
  test.each([
    ['neck', 4],
    ['', 0],
    ['é', 1],
    ['e\u0301', 1],
    ['襟', 2],
    ['ア', 2],
    ['ｱ', 1],
    ['한', 2],
    ['🧶', 2],
    ['👩‍👧', 2],
    ['\u200b', 0],
    ['4¼', 2],
    ['×', 1],
  ])('%s takes %i', (text, width) => {
    expect(displayWidth(text)).toBe(width);
  });
});

describe('wrapped', () => {
  test('breaks at spaces and sets the next lines in', () => {
    expect(wrapped('  pick up 4, skip 1, 17 times; then pick up 3', 20, '    ')).toBe(
      '  pick up 4, skip 1,\n    17 times; then\n    pick up 3',
    );
  });

  test('keeps a count with what is done', () => {
    expect(wrapped('pick up 4, skip 1', 16)).toBe('pick up 4,\nskip 1');
  });

  test('leaves a word that is too long alone on its line', () => {
    expect(wrapped('a reverse-stockinette edge', 10)).toBe('a\nreverse-stockinette\nedge');
  });

  test('loses no word', () => {
    const text = 'With the right side facing and a needle that gives the gauge of the band, pick up and knit.';
    for (let width = 1; width < 100; width++) {
      const lines = wrapped(text, width).split('\n');
      expect(lines.join(' ')).toBe(text);
      expect(lines.every((line) => line.length <= width || !line.includes(' '))).toBe(true);
    }
  });
});

import { describe, expect, test } from 'vitest';
import {
  capitalised,
  counted,
  everyNth,
  listed,
  ordinal,
  rowsText,
  stitchesText,
  times,
  timesMore,
} from '../../src/text';

describe('words', () => {
  test('orders', () => {
    expect([1, 2, 10, 11, 12, 13, 21, 22, 23, 111, 102].map(ordinal)).toEqual([
      'first',
      'second',
      'tenth',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '23rd',
      '111th',
      '102nd',
    ]);
    expect(everyNth(1, 'row')).toBe('every row');
    expect(everyNth(2, 'round')).toBe('every second round');
  });

  test('counts', () => {
    expect([1, 2, 3].map(times)).toEqual(['once', 'twice', '3 times']);
    expect([1, 2].map(timesMore)).toEqual(['once more', '2 more times']);
    expect([0, 1, 2].map(stitchesText)).toEqual(['0 stitches', '1 stitch', '2 stitches']);
    expect([1, 2].map(rowsText)).toEqual(['1 row', '2 rows']);
    expect(counted(2, 'foot', 'feet')).toBe('2 feet');
  });

  test('lists', () => {
    expect(listed([])).toBe('');
    expect(listed([14])).toBe('14');
    expect(listed([14, 27])).toBe('14 and 27');
    expect(listed([14, 27, 41], 'or')).toBe('14, 27 or 41');
  });

  test('begins a sentence', () => {
    expect(capitalised('bound-off stitches')).toBe('Bound-off stitches');
    expect(capitalised('')).toBe('');
  });
});

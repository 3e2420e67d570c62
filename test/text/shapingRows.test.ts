import { expect, test } from 'vitest';
import { shapingRowsText } from '../../src/text';

test('rows are said as the shortest of what they are', () => {
  const said = (rows: number[], total: number) => shapingRowsText(rows, total, 'row');
  expect(said([1, 2, 3], 3)).toBe('every row');
  expect(said([4], 8)).toBe('row 4');
  expect(said([2, 4, 6], 6)).toBe('every second row, 3 times, beginning with row 2');
  expect(said([2, 6], 8)).toBe('every fourth row, 2 times, beginning with row 2');
  expect(said([1, 3, 4], 4)).toBe('rows 1, 3 and 4');
  expect(said([1, 3, 4, 5, 7, 8, 9, 11, 12], 12)).toBe('rows 1, 3 and 4 of every 4');
  expect(said([1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12, 13], 13)).toBe('every row but 6');
  expect(shapingRowsText([1, 3, 4], 5, 'round')).toBe('rounds 1, 3 and 4');
});

import { everyNth, listed, times } from './words';

/** A list of rows longer than this is said as a repeat, if it is one. */
const LONG_LIST = 8;
/** The longest repeat, in rows, that is easier than the list it stands for. */
const LONGEST_REPEAT = 24;

/**
 * In which rows something is worked: `every row`, `every second row, 5 times, beginning with row 2`, `rows 1, 3 and 4`,
 * `rows 1, 3 and 4 of every 4`, `every row but 3, 7 and 11`.
 *
 * @param rows ascending, from 1, none twice
 * @param total rows in all
 */
export function shapingRowsText(rows: readonly number[], total: number, noun: 'row' | 'round'): string {
  const [first = 0, second = 0] = rows;
  const n = rows.length;
  if (n === total) return `every ${noun}`;
  if (n < 2) return `${noun} ${first}`;
  const gap = second - first;
  if (gap > 1 && rows.every((row, i) => row === first + i * gap)) {
    return `${everyNth(gap, noun)}, ${n === 2 ? '2 times' : times(n)}, beginning with ${noun} ${first}`;
  }
  if (n > LONG_LIST) {
    const repeat = repeatOf(rows, total);
    if (repeat) return `${noun}s ${listed(rows.filter((row) => row <= repeat))} of every ${repeat}`;
    if (n > total / 2) {
      const worked = new Set(rows);
      return `every ${noun} but ${listed(Array.from({ length: total }, (_, i) => i + 1).filter((row) => !worked.has(row)))}`;
    }
  }
  return `${noun}s ${listed(rows)}`;
}

/** After how many rows the list begins anew, twice or more; null where it doesn't soon. */
function repeatOf(rows: readonly number[], total: number): number | null {
  const worked = new Set(rows);
  for (let length = 2; length <= Math.min(LONGEST_REPEAT, total / 2); length++) {
    let same = true;
    for (let row = length + 1; row <= total && same; row++) same = worked.has(row) === worked.has(row - length);
    if (same) return length;
  }
  return null;
}

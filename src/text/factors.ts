import { fixedNumber, plainNumber } from './numbers';

/** How far the operands of a sum are written out so that the result shown can be checked. */
const MOST_DECIMALS = 5;

/**
 * The operands of a piece of arithmetic, with as few decimals (from 1 to 5) as give, worked out again from what is
 * written, the result as it is shown. Whole numbers stand as they are.
 *
 * @param values the exact operands
 * @param work the arithmetic
 * @param decimals those of the result as it is shown
 */
export function shownOperands(
  values: readonly number[],
  work: (...operands: readonly number[]) => number,
  decimals = 1,
): string[] {
  const shown = fixedNumber(work(...values), decimals);
  for (let places = 1; places < MOST_DECIMALS; places++) {
    const written = values.map((value) => plainNumber(value, places));
    if (fixedNumber(work(...written.map(Number)), decimals) === shown) return written;
  }
  return values.map((value) => plainNumber(value, MOST_DECIMALS));
}

import { twoRates } from './rates';

/** One worked step counted bottom up: `across` stitches away from the bottom corner at once, then `rows` rows. */
export interface Step {
  readonly across: number;
  readonly rows: number;
}

/**
 * The classic schedule of a straight slope of `stitches` over `rows`, bottom up, in the slope's own direction (all
 * `across` are 0 or more).
 * - At most one stitch to two rows: single decreases or increases on right-side rows, some every 2k rows and some
 *   every 2k + 2.
 * - At most one stitch to a row: single ones, some on every row and some on every second one.
 * - More: stitches bound off or cast on together on every second row, the amounts a stitch apart at most.
 *
 * @param stitches whole, 1 or more
 * @param rows whole, 1 or more
 */
export function slopeSteps(stitches: number, rows: number): Step[] {
  const pairs = Math.floor(rows / 2);
  if (stitches <= pairs) {
    return lastRowAdded(
      twoRates(pairs, stitches).flatMap(({ size, times }) => repeat({ across: 1, rows: 2 * size }, times)),
      rows,
    );
  }
  if (stitches <= rows) {
    return twoRates(rows, stitches).flatMap(({ size, times }) => repeat({ across: 1, rows: size }, times));
  }
  const times = Math.ceil(rows / 2);
  const amounts = twoRates(stitches, times).flatMap(({ size, times: n }) => repeat(size, n));
  return amounts.map((across, i) => ({ across, rows: Math.min(2, rows - 2 * i) }));
}

function repeat<T>(value: T, times: number): T[] {
  return Array.from({ length: times }, () => value);
}

/** An odd number of rows leaves one row over; it is worked even at the top. */
function lastRowAdded(steps: Step[], rows: number): Step[] {
  const worked = steps.reduce((sum, step) => sum + step.rows, 0);
  const last = steps.at(-1);
  if (last && worked < rows) steps[steps.length - 1] = { across: last.across, rows: last.rows + rows - worked };
  return steps;
}

import type { ScheduleStep } from '../design';

/** `total` in `parts` whole shares that differ by one at most, the larger ones first, as sizes and how many of each. */
function shares(total: number, parts: number): { size: number; times: number }[] {
  const floor = Math.floor(total / parts);
  const larger = total - floor * parts;
  return [
    { size: floor + 1, times: larger },
    { size: floor, times: parts - larger },
  ];
}

/** Those steps that do something, and the rest of `rows` worked even behind them. */
function padded(steps: readonly ScheduleStep[], rows: number): ScheduleStep[] {
  const worked = steps.filter(({ times }) => times > 0);
  const used = worked.reduce((sum, { every, times }) => sum + every * times, 0);
  return used < rows ? [...worked, { stitches: 0, every: rows - used, times: 1 }] : worked;
}

/** `stitches` bound off in `times` goes on every second row, the larger ones first, then even up to `rows`. */
export function boundOffIn(stitches: number, times: number, rows: number): ScheduleStep[] {
  const goes = shares(stitches, times).map((share) => ({ stitches: -share.size, every: 2, times: share.times }));
  return padded(goes, rows);
}

/**
 * An armhole above its underarm: some twos bound off, then single decreases on every second row, the last ones on every
 * fourth, and even to the shoulder (common practice). Where the rows do not hold that, the stitches are bound off in as
 * many goes as the lower half of it has room for.
 * @param stitches to be taken in, 1 or more
 * @param rows of the whole armhole, 4 or more
 */
export function armholeSteps(stitches: number, rows: number): ScheduleStep[] {
  const twos = Math.floor(stitches / 5);
  const ones = stitches - 2 * twos;
  const slow = Math.floor(ones / 3);
  const steps = [
    { stitches: -2, every: 2, times: twos },
    { stitches: -1, every: 2, times: ones - slow },
    { stitches: -1, every: 4, times: slow },
  ];
  const used = steps.reduce((sum, { every, times }) => sum + every * times, 0);
  if (used <= rows / 2) return padded(steps, rows);
  return boundOffIn(stitches, Math.min(stitches, Math.floor(rows / 4)), rows);
}

/** Share of a slope's rows that is worked even at its end: our own choice. */
const EVEN = 1 / 8;

/**
 * A slope of single decreases or increases: two rates, the closer one first, on every 2k and every 2k + 2 rows, and
 * some rows even at the end where the stitches leave room for them. Null where there is nothing to shape, or more than
 * one stitch falls on two rows: such an edge is straight, and worked as a straight edge is.
 * @param way -1 takes in, 1 brings out
 */
export function slopeOf(stitches: number, rows: number, way: -1 | 1): ScheduleStep[] | null {
  if (stitches === 0 || 2 * stitches > rows) return null;
  const even = 2 * Math.round((EVEN * rows) / 2);
  const pairs = Math.max(stitches, Math.floor((rows - even) / 2));
  const close = Math.floor(pairs / stitches);
  const wide = pairs - close * stitches;
  return padded(
    [
      { stitches: way, every: 2 * close, times: stitches - wide },
      { stitches: way, every: 2 * close + 2, times: wide },
    ],
    rows,
  );
}

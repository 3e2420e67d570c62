import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ScheduleStep } from '../../../src/piece';
import { armholeSteps, boundOffIn, slopeOf } from '../../../src/piece/starters/steps';

const sum = (steps: readonly ScheduleStep[]) => ({
  stitches: steps.reduce((all, { stitches, times }) => all + stitches * times, 0),
  rows: steps.reduce((all, { every, times }) => all + every * times, 0),
});

const stitches = fc.integer({ min: 1, max: 400 });
const evenRows = fc.integer({ min: 2, max: 400 }).map((n) => 2 * n);

describe('steps', () => {
  test('a bind-off in goes that differ by one at most, the larger first', () => {
    expect(boundOffIn(7, 3, 10)).toEqual([
      { stitches: -3, every: 2, times: 1 },
      { stitches: -2, every: 2, times: 2 },
      { stitches: 0, every: 4, times: 1 },
    ]);
  });

  test('an armhole where few rows hold many stitches', () => {
    expect(armholeSteps(9, 8)).toEqual([
      { stitches: -5, every: 2, times: 1 },
      { stitches: -4, every: 2, times: 1 },
      { stitches: 0, every: 4, times: 1 },
    ]);
  });

  test('armholes and slopes lead where they should, at most half of an armhole being shaped', () => {
    fc.assert(
      fc.property(stitches, evenRows, (n, rows) => {
        const armhole = armholeSteps(n, rows);
        expect(sum(armhole)).toEqual({ stitches: -n, rows });
        expect(armhole.at(-1)).toMatchObject({ stitches: 0 });
        expect(armhole.at(-1)!.every).toBeGreaterThanOrEqual(rows / 2);
        expect([...armhole].every(({ every, times }) => every > 0 && times > 0)).toBe(true);

        const slope = slopeOf(n, rows, 1);
        if (2 * n > rows) expect(slope).toBeNull();
        else expect(sum(slope!)).toEqual({ stitches: n, rows });
        expect(slope?.every(({ every, times }) => every > 0 && times > 0)).not.toBe(false);
      }),
    );
  });

  test('no slope without a stitch', () => {
    expect(slopeOf(0, 20, -1)).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slopeSteps } from '../../src/shaping';

const sizes = fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 600 }));

describe('slopeSteps', () => {
  it('decreases on right-side rows where there are two rows or more to a stitch', () => {
    expect(slopeSteps(3, 14)).toEqual([
      { across: 1, rows: 4 },
      { across: 1, rows: 4 },
      { across: 1, rows: 6 },
    ]);
  });

  it('works the odd row over even at the top', () => {
    expect(slopeSteps(2, 9)).toEqual([
      { across: 1, rows: 4 },
      { across: 1, rows: 5 },
    ]);
  });

  it('decreases on every row and every second one where there is more than one stitch to two rows', () => {
    expect(slopeSteps(4, 6).map((step) => step.rows)).toEqual([1, 1, 2, 2]);
  });

  it('binds off together where there are more stitches than rows', () => {
    expect(slopeSteps(20, 7)).toEqual([
      { across: 5, rows: 2 },
      { across: 5, rows: 2 },
      { across: 5, rows: 2 },
      { across: 5, rows: 1 },
    ]);
  });

  it('uses up the stitches and the rows of the slope, no step without either', () => {
    fc.assert(
      fc.property(sizes, ([stitches, rows]) => {
        const steps = slopeSteps(stitches, rows);
        expect(steps.reduce((sum, step) => sum + step.across, 0)).toBe(stitches);
        expect(steps.reduce((sum, step) => sum + step.rows, 0)).toBe(rows);
        expect(steps.every((step) => step.across > 0 && step.rows > 0)).toBe(true);
      }),
    );
  });

  it('has the amounts a stitch apart at most, and the intervals a shaping row apart', () => {
    fc.assert(
      fc.property(sizes, ([stitches, rows]) => {
        const steps = slopeSteps(stitches, rows);
        const amounts = steps.map((step) => step.across);
        expect(Math.max(...amounts) - Math.min(...amounts)).toBeLessThanOrEqual(1);
        // The last step may have the odd row over, or be cut short by the top.
        const intervals = steps.slice(0, -1).map((step) => step.rows);
        if (intervals.length === 0) return;
        const apart = stitches <= Math.floor(rows / 2) ? 2 : 1;
        expect(Math.max(...intervals) - Math.min(...intervals)).toBeLessThanOrEqual(apart);
        if (apart === 2) expect(intervals.every((interval) => interval % 2 === 0)).toBe(true);
      }),
    );
  });

  it('stays within a step of the straight line', () => {
    fc.assert(
      fc.property(sizes, ([stitches, rows]) => {
        let [x, y, most] = [0, 0, 0];
        const steps = slopeSteps(stitches, rows);
        for (const { across, rows: up } of steps) {
          [x, y] = [x + across, y + up];
          most = Math.max(most, Math.abs(x - (stitches * y) / rows));
        }
        // Grouped by rate ("some every floor, then some every ceil"), a slope bows by a quarter of the spread at most.
        const bow = stitches <= rows ? 1 + steps.length / 4 : 1 + stitches / 4;
        expect(most).toBeLessThanOrEqual(bow);
        expect([x, y]).toEqual([stitches, rows]);
      }),
    );
  });
});

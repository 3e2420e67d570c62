import { describe, expect } from 'vitest';
import { countOut, firstRow, type RowGroup } from '../../src/pickup';
import { twoRates } from '../../src/shaping';
import { source } from './published';

/** The plain stitches before, between and after the increases or decreases of a row, in order. */
function gapsOf(groups: readonly RowGroup[]): number[] {
  const gaps = [0];
  for (const { times, works } of groups) {
    for (let i = 0; i < times; i++) {
      for (const { work, count } of works) {
        if (work === 'plain') gaps[gaps.length - 1] = (gaps.at(-1) ?? 0) + count;
        else for (let k = 0; k < count; k++) gaps.push(0);
      }
    }
  }
  return gaps;
}

describe('increases and decreases spaced evenly', () => {
  source(
    'E01',
    'How to increase at several points in the same row',
    'http://www.dummies.com/how-to/content/how-to-increase-at-several-points-in-the-same-row.html',
    '4 increases in 40 stitches part them in 5 sections of 8; here the ends get half a gap each, as in E02, so that two panels side by side keep the spacing',
    () => {
      const { groups } = firstRow(40, 44, false);
      expect(countOut(groups)).toEqual({ uses: 40, leaves: 44 });
      // n increases part a flat row in n + 1, in both schools.
      expect(gapsOf(groups)).toHaveLength(5);
      expect(gapsOf(groups)).toEqual([5, 10, 10, 10, 5]);
    },
  );

  source(
    'E02',
    'Techniques in depth: evenly across, part I',
    'https://moderndailyknitting.com/community/techniques-in-depth-evenly-across-part-i',
    '6 increases in 48 stitches are 6 groups of 8 with an increase in each',
    () => {
      expect(firstRow(48, 54, true).groups).toEqual([
        {
          times: 6,
          works: [
            { work: 'plain', count: 8 },
            { work: 'increase', count: 1 },
          ],
        },
      ]);
      expect(gapsOf(firstRow(48, 54, false).groups)).toEqual([4, 8, 8, 8, 8, 8, 4]);
    },
  );

  source(
    'E04',
    'Magic formula for placement of increases or decreases',
    'https://studyres.com/doc/1062783/magic-formula-for-placement-of-increases-or-decreases?page=1',
    '14 in 124 stitches: every 8th twice, every 9th 12 times',
    () => {
      expect(twoRates(124, 14)).toEqual([
        { size: 8, times: 2 },
        { size: 9, times: 12 },
      ]);
      const gaps = gapsOf(firstRow(124, 138, true).groups).slice(0, 14);
      expect(gaps.filter((gap) => gap === 8)).toHaveLength(2);
      expect(gaps.filter((gap) => gap === 9)).toHaveLength(12);
    },
  );

  source(
    'E06',
    'Decrease evenly across row',
    'http://spincraftpatterns.com/content/decrease-evenly-across-row',
    '131 less 39 are 92; "(k2, k2tog) 39 times" does not take the 117 that is printed but 156, more than there are: (k1, k2tog) 25 times and (k2, k2tog) 14 times take 131',
    () => {
      const { groups } = firstRow(131, 92, true);
      expect(countOut(groups)).toEqual({ uses: 131, leaves: 92 });
      const printed: RowGroup[] = [
        {
          times: 39,
          works: [
            { work: 'plain', count: 2 },
            { work: 'decrease', count: 1 },
          ],
        },
      ];
      expect(countOut(printed).uses).toBe(156);
      const gaps = gapsOf(groups).slice(0, 39);
      expect(gaps.filter((gap) => gap === 1)).toHaveLength(25);
      expect(gaps.filter((gap) => gap === 2)).toHaveLength(14);
    },
  );

  source(
    'E07',
    'Decreasing multiple stitches',
    'https://issuhub.com/view/index/4587?pageIndex=76',
    '30 less 10 by (k1, decrease) leave 20, a third fewer and not half as printed',
    () => {
      const { groups } = firstRow(30, 20, true);
      expect(groups).toEqual([
        {
          times: 10,
          works: [
            { work: 'plain', count: 1 },
            { work: 'decrease', count: 1 },
          ],
        },
      ]);
      expect(countOut(groups)).toEqual({ uses: 30, leaves: 20 });
    },
  );
});

import { describe, expect } from 'vitest';
import { slopeSteps, twoRates } from '../../src/shaping';
import { plan, source } from './published';

describe('shaping spread over rows', () => {
  source(
    'D02',
    'Design your own sweater: sleeve',
    'http://designyourownsweater.blogspot.com/2007/01/sleeve.html',
    '72 to 156 over 176 rows: 42 increases on each side (printed as 78 - 32, meant as 78 - 36), every 4th row 34 times and every 5th row 8 times',
    () => {
      expect(twoRates(176, (156 - 72) / 2)).toEqual([
        { size: 4, times: 34 },
        { size: 5, times: 8 },
      ]);
      const side = plan('sleeve-42-increases').measured[0]?.edges.find(({ id }) => id === 'side-right');
      expect(side).toMatchObject({ stitches: 78 - 36, rows: 176 });
      expect(side?.worked).toHaveLength(42);
    },
  );

  source(
    'D03',
    'Math Monday: increasing, part I',
    'https://papermoonknits.com/musings/math-monday-increasing-part-i-increases-along-the-length',
    '40 to 60 is 10 sets over 88 rounds, the first on the first round: 9 intervals, 2 of 9 and 7 of 10 (its cuff of 15 inches has 64 stitches at 4.25 to the inch, not 60)',
    () => {
      expect(Math.round(6.75 * 13)).toBe(88);
      expect(twoRates(88, (60 - 40) / 2 - 1)).toEqual([
        { size: 9, times: 2 },
        { size: 10, times: 7 },
      ]);
    },
  );

  source(
    'T01',
    'Sweater shoulders: transform stair steps into smooth slopes',
    'http://techknitting.blogspot.ca/2012/01/sweater-shoulders-transform-stair-steps.html',
    'a shoulder of 16 in three steps: 5, 5 and 6',
    () => {
      expect(slopeSteps(16, 6)).toEqual([
        { across: 5, rows: 2 },
        { across: 5, rows: 2 },
        { across: 6, rows: 2 },
      ]);
    },
  );

  source(
    'T03',
    'How to shape shoulders and neck with short rows',
    'https://megapteraknits.com/how-to-shape-shoulders-and-neck-with-short-rows-with-video/',
    '93 stitches, 3 left six times on each side: 12 rows, and 57 between',
    () => {
      const [back] = plan('shoulder-3-six-times').measured;
      const shoulder = back?.edges.find(({ id }) => id === 'shoulder-left');
      expect(shoulder).toMatchObject({ stitches: 18, rows: 12 });
      expect(back?.edges.find(({ id }) => id === 'neck')?.stitches).toBe(57);
      expect(back?.edges.find(({ id }) => id === 'cast-on')?.stitches).toBe(93);
      expect(slopeSteps(18, 12)).toEqual(Array.from({ length: 6 }, () => ({ across: 3, rows: 2 })));
    },
  );

  source(
    'T04',
    'A question answered',
    'https://christinacreating.blogspot.com/2013/02/a-question-answered.html',
    'shoulders of 7, 8 and 8 and a neck of 29 are 75',
    () => {
      const [back] = plan('shoulder-7-8-8').measured;
      expect(back?.edges.find(({ id }) => id === 'cast-on')?.stitches).toBe(75);
      expect(slopeSteps(23, 6).map(({ across }) => across)).toEqual([7, 8, 8]);
    },
  );
});

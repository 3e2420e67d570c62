import { describe, expect } from 'vitest';
import { onlyEdge, pickup, plan, sectionsOf, source, tally } from './published';

describe('sections and sums', () => {
  source(
    'B07',
    'Picking up stitches for button bands',
    'https://sageyarn.wordpress.com/2013/08/05/fal-technique-spotlight-picking-up-stitches-for-buttonbands/',
    '80 stitches in 4 sections are 20 in each',
    () => {
      expect(sectionsOf(pickup('80-in-4-sections'))).toEqual([20, 20, 20, 20]);
    },
  );

  source(
    'M02',
    'Picking up stitches',
    'https://juliaknitwits.blogspot.com/2010/02/tcg-picking-up-stitches.html',
    '132 in four spaces is 33 in each, not the 16.5 that is printed: that takes eight',
    () => {
      expect(sectionsOf(pickup('132-in-4-sections'))).toEqual([33, 33, 33, 33]);
      expect(tally(sectionsOf(pickup('132-in-8-sections')))).toEqual({ 16: 4, 17: 4 });
    },
  );

  source(
    'B03',
    'Knitting math for a vest band',
    'http://smariek.blogspot.com/2008/06/dh-is-good-with-knitting-math.html',
    'the parts 58, 50, 22, 50 and 58 are 238 in all (its buttonholes, where it is off by 1 and 3, are not planned yet)',
    () => {
      expect(plan('vest-band-238').pickups).toMatchObject([{ picked: 238, notes: [] }]);
    },
  );

  source(
    'B05',
    'Button band',
    'https://karenmakesstuff.blogspot.com/2010/04/button-band.html',
    '2 from 3 rows, always with the first and the last: 19 (its buttonhole row, which lacks a yarn over, is not planned yet)',
    () => {
      const band = pickup('2-of-3-first-and-last');
      expect(onlyEdge(band).count).toBe(19);
      expect(band.points[0]?.n).toBe(1);
      expect(band.points.at(-1)?.n).toBe(19);
    },
  );
});

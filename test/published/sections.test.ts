import { describe, expect } from 'vitest';
import { gapsBetween, stitchesFor } from '../../src/pickup';
import { onlyEdge, pickup, plan, sectionsOf, source, sum, tally } from './published';

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
    'the parts 58, 50, 22, 50 and 58 are 238 in all; its 5 buttonholes of 2 on 58 leave 3 and 10, 11, 11, 10 and 3, where it says that 52 is short by 7 and not by 6, and 54 by 7 and not by 4',
    () => {
      expect(plan('vest-band-238').pickups).toMatchObject([{ picked: 238, notes: [] }]);
      const ends = { from: 3, to: 3 };
      const gaps = gapsBetween(58, { holes: 5, stitches: 2, ...ends });
      expect(gaps).toEqual([10, 11, 11, 10]);
      expect(sum([3, 2, ...(gaps ?? []).flatMap((gap) => [gap, 2]), 3])).toBe(58);
      expect(58 - stitchesFor({ holes: 5, stitches: 2, ...ends }, 9)).toBe(6);
      expect(58 - stitchesFor({ holes: 5, stitches: 2, from: 2, to: 2 }, 10)).toBe(4);
    },
  );

  source(
    'B05',
    'Button band',
    'https://karenmakesstuff.blogspot.com/2010/04/button-band.html',
    '2 from 3 rows, always with the first and the last: 19 (its buttonhole row lacks a yarn over, and so leaves 18)',
    () => {
      const band = pickup('2-of-3-first-and-last');
      expect(onlyEdge(band).count).toBe(19);
      expect(band.points[0]?.n).toBe(1);
      expect(band.points.at(-1)?.n).toBe(19);
    },
  );

  source(
    'B04',
    'Tiny Tea Leaves cardi buttonbands',
    'https://forum.knittinghelp.com/t/tiny-tea-leaves-cardi-buttonbands/69384',
    'the last 20 stitches are a hole over 2, 14 between, a hole over 2 and 2 at the end',
    () => {
      // The first hole begins the 20, so nothing stands before it there: with a stitch more it has one.
      expect(gapsBetween(21, { holes: 2, stitches: 2, from: 1, to: 2 })).toEqual([14]);
    },
  );

  source(
    'B06',
    'Cowl with buttonholes',
    'https://view.joomag.com/knitmuch-issue-1/0580802001450970071?page=49',
    '3 holes of 3 on 36 with 4 at each end leave 10 and 9 between; it casts on 2 over each 3 bound off and so loses 3',
    () => {
      expect(gapsBetween(36, { holes: 3, stitches: 3, from: 4, to: 4 })).toEqual([10, 9]);
      expect(36 - 3 * (3 - 2)).toBe(33);
    },
  );
});

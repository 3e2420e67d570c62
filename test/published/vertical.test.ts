import { describe, expect } from 'vitest';
import { plainRatios } from '../../src/pickup';
import { kindsOf, onlyEdge, pickup, plan, runsOf, sectionsOf, skipsOf, source } from './published';

describe('a straight side edge', () => {
  source(
    'V01',
    'Perfectly picked up stitches',
    'https://kelbournewoolens.com/blog/2015/04/perfectly-picked-up-stitches/',
    '20 stitches by 26 rows is 10 from 13, in groups of 3 of 4 and 4 of 5 that differ by one',
    () => {
      const edge = onlyEdge(pickup('rows-10-of-13'));
      expect(plainRatios((edge.wanted ?? NaN) / edge.rows, 13)[0]).toEqual({ pick: 10, of: 13 });
      expect(edge).toMatchObject({ rows: 130, count: 100 });
      // The source ends its last group on a skipped row; here the last row is picked, so there is one run more.
      expect(runsOf(edge)).toEqual({ 3: 24, 4: 7 });
      expect(new Set(skipsOf(edge))).toEqual(new Set([1]));
    },
  );

  source(
    'V02',
    'A little pick-me-up',
    'https://espacetricot.com/2013/05/09/a-little-pick-me-up/',
    '20 stitches by 28 rows is 5 from 7',
    () => {
      const edge = onlyEdge(pickup('rows-5-of-7'));
      expect(edge.ratios[0]).toMatchObject({ pick: 5, of: 7, count: 60 });
      expect((edge.wanted ?? NaN) / edge.rows).toBeCloseTo(5 / 7, 9);
      expect(edge.count).toBe(60);
    },
  );

  source(
    'V04',
    'How to knit up',
    'https://forum.knittinghelp.com/t/how-to-knit-up/124191',
    '71 over 88 rows: pick up 4, skip 1, 17 times, then 3; sections of 18, 18, 18 and 17',
    () => {
      const band = pickup('71-over-88-grouped');
      expect(onlyEdge(band).rhythm).toEqual([
        { pick: 4, skip: 1, times: 17 },
        { pick: 3, skip: 0, times: 1 },
      ]);
      // The same four sections, the 17 being the third of ours.
      expect(sectionsOf(band).sort()).toEqual([17, 18, 18, 18]);
    },
  );

  source(
    'V05',
    'Picking up stitches',
    'http://www.menwhoknit.com/community/?q=node/5359',
    '20 inches at 16 stitches and 24 rows to 4 inches: 80 from 120 rows, 2 of 3; the 80 from 102 rows is between 3 of 4 and 4 of 5',
    () => {
      const told = pickup('rows-2-of-3', 'on-told');
      expect(onlyEdge(told)).toMatchObject({ rows: 120, count: 80 });
      expect(onlyEdge(told).edgeMm).toBeCloseTo(20 * 25.4, 9);
      expect(onlyEdge(told).ratios[0]).toMatchObject({ pick: 2, of: 3 });
      // On 102 rows of this gauge 80 is far too many.
      const pattern = pickup('rows-2-of-3', 'on-pattern');
      expect(pattern.picked).toBe(68);
      expect(pattern.stated).toMatchObject([{ stated: 80, verdict: 'will ruffle' }]);
      expect(plainRatios(80 / 102, 5)[0]).toEqual({ pick: 4, of: 5 });
      expect(plainRatios(80 / 102, 5)[1]).toEqual({ pick: 3, of: 4 });
    },
  );

  source(
    'V07',
    'Combined knitting: picking up stitches',
    'http://www.modeknit.com/pickup.html',
    '3 stitches and 6 rows to the inch: one for every 2 rows',
    () => {
      const edge = onlyEdge(pickup('rows-1-of-2'));
      expect(edge.ratios[0]).toMatchObject({ pick: 1, of: 2, count: 24 });
      expect(edge).toMatchObject({ rows: 48, count: 24 });
      // As many rows as that to a stitch are rare in stockinette, and the plan says so.
      expect(kindsOf(pickup('rows-1-of-2'))).toEqual(['gauge-unusual']);
    },
  );

  source(
    'V08',
    'How to pick up and knit',
    'https://piiamariaknit.com/en/how-to-pick-up-and-knit-stitches-in-knitting',
    'k2p2 takes 3 from 4 rows, k1p1 takes 4 from 6, garter one for 2 rows',
    () => {
      const counts = plan('ratios-by-band').pickups.map((band) => [band.pickup.id, band.picked]);
      expect(Object.fromEntries(counts)).toEqual({ k2p2: 36, k1p1: 32, garter: 24 });
    },
  );

  source(
    'V10',
    'Knit Perfect: borders',
    'https://www.knittingmagic.biz/guide-8/knit-perfect-mvd.html',
    "10 inches of edge by the border's own 4 stitches to the inch: 40, with markers every inch and 4 between",
    () => {
      const border = pickup('band-gauge-by-length');
      expect(border.wanted).toBeCloseTo(40, 9);
      expect(border.picked).toBe(40);
      expect(sectionsOf(border)).toEqual(Array.from({ length: 10 }, () => 4));
      for (const { lengthMm } of border.sections) expect(lengthMm).toBeCloseTo(25.4, 1);
    },
  );

  source(
    'V12',
    'Little Vest, Australian Knitting, April 2015',
    'https://issuhub.com/view/index/9560?pageIndex=24',
    '21 stitches to 10 cm of edge, whatever the body has',
    () => {
      const border = pickup('21-to-10-cm');
      expect(onlyEdge(border).edgeMm).toBeCloseTo(400, 9);
      expect(border.picked).toBe(84);
    },
  );
});

import { describe, expect } from 'vitest';
import { kindsOf, onlyEdge, pickup, plan, source } from './published';

describe('a slipped edge', () => {
  source(
    'S02',
    'Issue picking up stitches along garter edge',
    'https://forum.knittinghelp.com/t/issue-picking-up-stitches-along-garter-edge/158788',
    '5 of 6 to the row, read to the ridge, makes a band far too short: it is 5 for 12 rows, half of what is needed',
    () => {
      const band = pickup('rows-counted-as-ridges');
      const edge = onlyEdge(band);
      expect(edge).toMatchObject({ unit: 'ridge', openings: 60, rows: 120, count: 50 });
      expect((edge.wanted ?? NaN) / edge.rows).toBeCloseTo(5 / 6, 9);
      expect(edge.count / edge.rows).toBeCloseTo(5 / 12, 9);
      expect(kindsOf(band)).toEqual(['stretched']);
      expect(band.stated).toMatchObject([
        { stated: 50, verdict: 'will pucker', causes: [{ kind: 'openings-counted-as-rows', unit: 'ridge' }] },
      ]);
    },
  );

  source(
    'S03',
    'Chain selvedge',
    'http://techknitting.blogspot.com/2007/02/chain-selvedge-aka-slipped-selvedge.html',
    'to show 30 stitches, 32 are cast on: the selvage on each side turns in',
    () => {
      const [panel] = plan('selvage-turned-in').finished;
      expect(panel).toMatchObject({ stitches: 32, taken: 2 });
      expect(panel?.widthMm).toBeCloseTo(30 * 5, 9);
    },
  );

  source(
    'S04',
    'Guide to picking up a neckband',
    'https://www.interweave.com/article/knitting/how-to-pick-up-neckband-stitches/',
    '3 for 4 rows is 3 for 2 chains, one and a half for each: awkward on a slipped edge, plain on any other',
    () => {
      const slipped = onlyEdge(pickup('chains-3-of-2', 'band'));
      const plain = onlyEdge(pickup('chains-3-of-2', 'band-on-plain'));
      expect(slipped.ratios[0]).toMatchObject({ pick: 3, of: 2 });
      expect(plain.ratios[0]).toMatchObject({ pick: 3, of: 4 });
      expect([slipped.count, plain.count]).toEqual([60, 60]);
      // Every one of the 40 chains, and every second gap.
      const gaps = pickup('chains-3-of-2', 'band').points.filter(({ second, n }) => second && n !== null);
      expect(gaps).toHaveLength(20);
    },
  );
});

describe('a heel flap', () => {
  source(
    'H01',
    'The flap heel: gussets come and go',
    'https://osbornfiber.com/2010/06/27/the-flap-heel-gussets-come-and-go/',
    '32 rows have 16 chains; one stitch more closes the gap',
    () => {
      expect(onlyEdge(pickup('heel-flap-32-rows', 'chains'))).toMatchObject({ openings: 16, count: 16, unit: 'chain' });
      const { points, picked } = pickup('heel-flap-32-rows', 'chains-and-gap');
      expect(picked).toBe(17);
      expect(points.filter(({ second, n }) => !second && n !== null)).toHaveLength(16);
      expect(points.filter(({ second, n }) => second && n !== null)).toHaveLength(1);
    },
  );

  source(
    'H03',
    "Let's learn to make socks, lesson 2",
    'https://knittingunplugged.com/2015/04/22/lets-learn-to-make-socks-lesson-2-heel-flap/',
    'a flap of 32 stitches and 33 rows has 16 chains',
    () => {
      expect(onlyEdge(pickup('heel-flap-33-rows'))).toMatchObject({ rows: 33, openings: 16, count: 16 });
    },
  );
});

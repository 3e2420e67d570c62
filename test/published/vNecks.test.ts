import { describe, expect } from 'vitest';
import { DesignError, readDesign } from '../../src/piece';
import { edge, kindsOf, pickup, plan, source, textOf } from './published';

function shoulderOf(name: string, id = 'shoulder'): number | undefined {
  return plan(name).measured[0]?.edges.find((one) => one.id === id)?.stitches;
}

/** What reading a file refuses it for. */
function refusalOf(name: string): unknown {
  try {
    readDesign(textOf(name));
  } catch (error) {
    if (error instanceof DesignError) return error.problem;
    throw error;
  }
  return null;
}

describe('a V neck', () => {
  source(
    'L03',
    'V-neck vest',
    'http://www.ozarkhandspun.com/blog/2009/03/v-neck-vest.html',
    '38 stated for each side of a V of 28 rows is wrong for its gauge, 48% too many: 26 is right',
    () => {
      const neckband = pickup('v-neck-38-stated');
      for (const id of ['neck-left', 'neck-right']) {
        expect(edge(neckband, id)).toMatchObject({ stitches: 10, rows: 28, count: 26 });
        expect(edge(neckband, id).wanted).toBeCloseTo(25.676, 3);
      }
      expect(neckband.stated).toMatchObject([
        { stated: 38, verdict: 'will ruffle' },
        { stated: 38, verdict: 'will ruffle' },
      ]);
      expect(neckband.stated[0]?.stretch).toBeCloseTo(0.48, 2);
    },
  );

  source(
    'L04',
    "Man's sleeveless slipover #4028",
    'https://freevintageknitting.com/mens-vest-patterns/jackfrost40/sleeveless-slipover-pattern',
    '69 stated for each side of a V is 18% more than its length, 150 round an armhole 10% less: the bands are on smaller needles and the row gauge is assumed (9 to the inch)',
    () => {
      const neckband = pickup('slipover-v-69-and-armhole-150', 'neckband');
      expect(edge(neckband, 'neck-left').wanted).toBeCloseTo(58.523, 3);
      expect(neckband.stated[0]?.stretch).toBeCloseTo(0.18, 2);
      const armhole = pickup('slipover-v-69-and-armhole-150', 'half-armhole');
      expect(2 * armhole.wanted).toBeCloseTo(166.461, 3);
      expect(armhole.stated[0]?.stretch).toBeCloseTo(-0.1, 2);
      // 119 cast on, less 10 and 11 on each side, are 77 at the chest; 35 of them are the neck.
      const edges = plan('slipover-v-69-and-armhole-150').measured[0]?.edges ?? [];
      const stitches = (pattern: RegExp) =>
        edges.filter(({ id }) => pattern.test(id)).reduce((total, one) => total + one.stitches, 0);
      expect(stitches(/^cast-on/) - stitches(/^(underarm|armhole)/)).toBe(77);
      expect(stitches(/^neck/)).toBe(35);
    },
  );

  source(
    'L07',
    "Tot's knitted vest",
    'http://masterstech-home.com/The_Sewing_Room/Crafts/TotsKnittedVest.html',
    '27 less 10 at the neck and 7 at the armhole leave 10; 29 less 13 and 8 leave 8, not the 10 that is printed',
    () => {
      expect(shoulderOf('tots-vest-size-1')).toBe(10);
      expect(shoulderOf('tots-vest-size-2')).toBe(8);
      expect(refusalOf('tots-vest-size-2-as-printed')).toMatchObject({
        kind: 'schedule-off',
        edge: 'neck',
        stitches: -11,
        gotStitches: -13,
      });
    },
  );

  source(
    'L08',
    'No-sew vest knit-along, parts III and V',
    'http://blog.nobleknits.com/blog/obleknits.com/2007/11/no-sew-vest-knit-along-part-v.html',
    '42 less 3 on each side and 9 for each side of the V leave 9 for each shoulder; 60 worked flat in k2p2 does not end as it begins (58 or 62 would); 68 in the round fits',
    () => {
      expect(shoulderOf('v-neck-60-in-flat-k2p2', 'shoulder-left')).toBe(9);
      const neckband = pickup('v-neck-60-in-flat-k2p2', 'neckband');
      expect(neckband.edges.map(({ count }) => count)).toEqual([21, 21, 18]);
      expect(kindsOf(neckband)).toContain('total-off-multiple');
      expect(neckband.choices.map(({ count }) => count)).toEqual([58, 62]);
      expect(pickup('v-neck-60-in-flat-k2p2', 'armhole')).toMatchObject({ picked: 68, notes: [] });
    },
  );

  source(
    'L10',
    'Classic V-neck sweater',
    'https://agneskimphd.blogspot.com/2019/03/classic-v-neck-sweater.html',
    '60 less 2, 2 and 1 on each side are 50; shoulders of 12 leave a neck of 26; 13 decreases on each side, 6 on every 2nd and 4th row in turn and 7 on every 4th, take 46 of 48 rows',
    () => {
      const neckband = pickup('v-neck-mixed-rate');
      const left = edge(neckband, 'neck-left');
      expect(left).toMatchObject({ stitches: 13, rows: 48 });
      const [w, h] = [8, 5];
      const length = 3 * Math.hypot(w, 2 * h) + 10 * Math.hypot(w, 4 * h) + 2 * h;
      expect(left.edgeMm).toBeCloseTo(length, 9);
      expect(edge(neckband, 'neck-right').count).toBe(left.count);
      expect(shoulderOf('v-neck-mixed-rate', 'shoulder-left')).toBe(12);
    },
  );
});

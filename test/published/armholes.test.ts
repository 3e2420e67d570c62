import { describe, expect } from 'vitest';
import { edge, onlyEdge, pickup, plan, source } from './published';

describe('an armhole', () => {
  source(
    'N08',
    'Garter-trimmed baby jacket 2130',
    'http://freevintageknitting.com/print/2130',
    '8 inches at 6 stitches to the inch are 48; 49, odd for k1p1, is one of the two choices',
    () => {
      const band = pickup('armhole-48-or-49');
      expect(band.wanted).toBeCloseTo(48, 9);
      // 48 lies in the middle; of two equally near the lower is the plan's own, and 49 lies as flat.
      expect(band.choices.map(({ count }) => count)).toEqual([47, 49]);
      expect(band.stated).toMatchObject([{ stated: 49, verdict: 'lies flat' }]);
      expect(onlyEdge(band).ratios[0]).toMatchObject({ pick: 2, of: 3, count: 48 });
    },
  );

  source(
    'N09',
    'Slip-on worked over the shoulder 2099',
    'http://freevintageknitting.com/print/2099',
    '13 1/4 inches and two ledges of 9 bound off: 111 by length, and the 104 stated is 6% tighter',
    () => {
      const sleeve = pickup('armhole-square-104');
      expect(sleeve.wanted).toBeCloseTo(110.75, 9);
      expect(sleeve.edges.map(({ count }) => count)).toEqual([9, 93, 9]);
      expect(sleeve.stated).toMatchObject([{ stated: 104, verdict: 'slightly tight' }]);
      expect(sleeve.stated[0]?.stretch).toBeCloseTo(104 / 110.75 - 1, 12);
    },
  );

  source(
    'N10',
    "Girl's zip sweater",
    'http://pdfclassicbooks.com/girl-39-s-knitted-sweater-free-knitting-pattern/info_20.html',
    'twice 4 1/2 inches, 6 rows of yoke and 8 rows are 95 rows: 63 by length, and the 58 stated is 8% less',
    () => {
      const sleeve = pickup('armhole-58');
      expect(sleeve.wanted).toBeCloseTo((95 / 9) * 6, 9);
      expect(sleeve.picked).toBe(63);
      expect(sleeve.stated[0]?.stretch).toBeCloseTo(-0.084, 3);
      expect(Math.abs(sleeve.stated[0]?.stretch ?? NaN)).toBeLessThan(0.1);
    },
  );

  source(
    'N18',
    'Sloped bind-off, both sides',
    'https://www.10rowsaday.com/sloped-bindoff-both-sides',
    '25 stitches less 4, 3, 2 and 1 on each side leave 5; a place for each stitch of a step and for each row',
    () => {
      const [swatch] = plan('armhole-steps-4-3-2-1').measured;
      expect(swatch?.edges.find(({ id }) => id === 'bound-off')?.stitches).toBe(5);
      const [right, left] = ['band-right', 'band-left'].map((id) => pickup('armhole-steps-4-3-2-1', id));
      const kinds = (right?.points ?? []).map(({ kind }) => kind);
      // The last step, a single decrease, has no ledge.
      expect(kinds.filter((kind) => kind === 'stitch')).toHaveLength(4 + 3 + 2);
      expect(kinds.filter((kind) => kind === 'row')).toHaveLength(8);
      expect(left?.picked).toBe(right?.picked);
      expect(left?.points.map(({ n }) => n !== null).reverse()).toEqual(right?.points.map(({ n }) => n !== null));
    },
  );

  source(
    'A01',
    'Provence baby cardigan, part 4',
    'https://tessknits.com/3880/provence-baby-cardigan-part-4-%e2%80%93-sleeves-math-knitting-up-stitches-tracking-progress',
    '80 rows round an armhole and 56 stitches at the top of the sleeve: 7 of 10',
    () => {
      expect(edge(pickup('armhole-7-of-10'), 'right')).toMatchObject({ rows: 80, count: 56 });
    },
  );

  source(
    'A03',
    'Front cardi bands',
    'http://lifelackadaisical.blogspot.com/2010/08/front-cardi-bands.html',
    'a stitch from every row of 156 and of 157; one k2tog brings the longer front to 156',
    () => {
      expect(pickup('every-row-156-and-157', 'right-band')).toMatchObject({ picked: 156, target: 156 });
      const left = pickup('every-row-156-and-157', 'left-band');
      expect(left).toMatchObject({ picked: 157, target: 156 });
      const works = left.firstRow.groups.flatMap(({ times, works }) =>
        Array.from({ length: times }, () => works).flat(),
      );
      expect(works.filter(({ work }) => work === 'decrease')).toHaveLength(1);
      expect(works.filter(({ work }) => work === 'increase')).toEqual([]);
    },
  );
});

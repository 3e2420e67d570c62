import { describe, expect } from 'vitest';
import { DesignError, readDesign } from '../../src/piece';
import { edge, kindsOf, pickup, plan, source, sum, textOf } from './published';

/** Stitches of the edges of a piece whose ids begin like this. */
function stitchesOf(name: string, piece: string, begins: string): number {
  const edges = plan(name).measured.find((one) => one.piece.id === piece)?.edges ?? [];
  return sum(edges.filter(({ id }) => id.startsWith(begins)).map(({ stitches }) => stitches));
}

describe('a neckline', () => {
  source(
    'N01',
    'Correction to idea Compact 617',
    'https://rico-design.de/en/corrections/rico-knitting-idea-compact-617',
    'the parts printed make 98 and 108 stitches, not the 97 and 105 of the correction',
    () => {
      expect(plan('correction-97-and-105').pickups.map(({ picked }) => picked)).toEqual([98, 108]);
      expect(pickup('correction-97-and-105', 'neckband-1').notes).toEqual([
        { kind: 'stated-edges-do-not-sum', sum: 98, total: 97 },
      ]);
      expect(pickup('correction-97-and-105', 'neckband-2').notes).toEqual([
        { kind: 'stated-edges-do-not-sum', sum: 108, total: 105 },
      ]);
    },
  );

  source(
    'N02',
    'Cardigan, The Knitter, December 2018',
    'http://www.pressreader.com/australia/the-knitter/20181221/282587379105892',
    'the parts make 116, 124 and 128, each a multiple of 4, with the odd stitch taken at the centre back',
    () => {
      const bands = plan('neckband-116-to-128').pickups;
      expect(bands.map(({ picked }) => picked)).toEqual([116, 124, 128]);
      expect(bands.flatMap(kindsOf)).toEqual([]);
    },
  );

  source(
    'N06',
    "Child's garter-edge pullover",
    'https://plymouthyarn.com/node/580992881',
    'the parts make 60 (64, 68), the two sides alike',
    () => {
      const bands = plan('neckband-60-to-68').pickups;
      expect(bands.map(({ picked }) => picked)).toEqual([60, 64, 68]);
      expect(bands.flatMap(kindsOf)).toEqual([]);
      expect(bands.flatMap(({ stated }) => stated).every(({ verdict }) => verdict === 'lies flat')).toBe(true);
    },
  );

  source(
    'N07',
    'Tommy Tucker pullover #5103',
    'https://www.freevintageknitting.com/child-sweater-pattern/spool153/5103-tommy-tucker-pullover-pattern',
    '14 bound off, then 3 four times and 1 twice on each side: 42 wide, shoulders of 20; 70 are one for each bound-off stitch and 4 from 5 rows',
    () => {
      expect(stitchesOf('front-neck-70', 'front', 'neck')).toBe(42);
      expect(stitchesOf('front-neck-70', 'front', 'shoulder-left')).toBe(20);
      const neckband = pickup('front-neck-70');
      expect(neckband).toMatchObject({ picked: 70, notes: [] });
      const right = edge(neckband, 'neck-right');
      const points = neckband.points.slice(right.firstPoint, right.pointsEnd);
      const used = (opening: string) => points.filter(({ kind, n }) => kind === opening && n !== null).length;
      const all = (opening: string) => points.filter(({ kind }) => kind === opening).length;
      expect([all('stitch'), all('row')]).toEqual([12, 20]);
      expect(used('stitch') + used('row')).toBe(12 + (20 * 4) / 5);
    },
  );

  source(
    'N13',
    'Necklines: round (a scanned book)',
    'https://zanotowane.pl/713/7786',
    'a neck of 32: in front 12, then 3 once, 2 twice and 1 three times on each side; behind 20, then 4 and 2',
    () => {
      for (const piece of ['front', 'back']) expect(stitchesOf('neck-32-wide', piece, 'neck')).toBe(32);
      for (const { edges } of plan('neck-32-wide').pickups) expect(edges[0]?.count).toBe(edges[2]?.count);
    },
  );

  source(
    'N14',
    "Help with Speed Knitting men's crew sweater",
    'https://forum.knittinghelp.com/t/help-with-speed-knitting-mens-crew-sweater/42150',
    '5, then 2 once and 1 three times on each side: 9 after the twos, 15 in all',
    () => {
      const [front] = plan('crew-neck-15').measured;
      const right = front?.edges.find(({ id }) => id === 'neck-right');
      const amounts = (right?.worked ?? []).map(({ across }) => Math.abs(across));
      expect(amounts).toEqual([2, 1, 1, 1]);
      expect(5 + 2 * sum(amounts.slice(0, 1))).toBe(9);
      expect(stitchesOf('crew-neck-15', 'front', 'neck')).toBe(15);
    },
  );

  source(
    'N15',
    'Shaping the shoulders',
    'https://www.knittingmagic.biz/guide-4/shaping-the-shoulders.html',
    'a front of 27, 15 and 27 that loses 9 on each side of the neck leaves 18 for a shoulder, not 27: the first figure has to be 36',
    () => {
      expect(() => readDesign(textOf('front-27-15-27-as-printed'))).toThrow(DesignError);
      expect(stitchesOf('front-36-15-36', 'front', 'shoulder-left')).toBe(27);
      expect(stitchesOf('front-36-15-36', 'front', 'neck-center')).toBe(15);
      expect(stitchesOf('front-36-15-36', 'front', 'cast-on')).toBe(36 + 15 + 36);
    },
  );

  source(
    'N16',
    'Striped cardigan 3434',
    'http://purplekittyyarns.com/print/3434',
    '30 less 7 held and 5 decreases leave 18 for the shoulder; the back of 61 is twice 18 and a neck of 25',
    () => {
      expect(stitchesOf('cardigan-neck-7-held', 'front', 'shoulder')).toBe(18);
      expect(stitchesOf('cardigan-neck-7-held', 'back', 'shoulder-left')).toBe(18);
      expect(stitchesOf('cardigan-neck-7-held', 'back', 'cast-on')).toBe(61);
      const neckband = pickup('cardigan-neck-7-held');
      expect(edge(neckband, 'neck-flat')).toMatchObject({ unit: 'live', count: 7 });
      expect(edge(neckband, 'neck').count).toBe(25);
    },
  );

  source(
    'N17',
    'Baby cardigan, Baby Hugs, page 21',
    'https://issuu.com/redheartyarns/docs/red_heart_baby_hugs/21',
    '16 (18, 20, 22) less 4, 2 and 2 at the neck leave 8 (10, 12, 14)',
    () => {
      const shoulders = [16, 18, 20, 22].map((front) =>
        stitchesOf('cardigan-neck-4-2-2', `front-${front}`, 'shoulder'),
      );
      expect(shoulders).toEqual([8, 10, 12, 14]);
      // The neck is the same in every size, and so is what it takes.
      const taken = plan('cardigan-neck-4-2-2').pickups.map(({ points }) => points.map(({ n }) => n));
      expect(taken.map((numbers) => numbers.filter((n) => n !== null).length)).toEqual([9, 9, 9, 9]);
      for (const numbers of taken) expect(numbers).toEqual(taken[0]);
    },
  );
});

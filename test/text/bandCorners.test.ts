import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PickupPlan } from '../../src/pickup';
import { bandCornersText, instructions, TERMS, type Voice } from '../../src/text';
import { along, piece, plan, rectangle, type Corner, type Raw } from '../pickup/builders';
import { planSample } from '../samples/sample';
import { readCorners } from './cornerReader';

const long: Voice = { terms: TERMS.US, units: 'cm', hand: 'right', form: 'long' };
const short: Voice = { ...long, form: 'short' };
const ROUND = ['bottom', 'right', 'top', 'left'];
const polygon = (corners: readonly Corner[], fields: Raw = {}) =>
  piece(
    corners.map((from) => ({ from })),
    fields,
  );
/** A square neck, 20 stitches wide and 28 rows deep; its edges 3 to 5. */
const squareNeck = polygon([
  [0, 0],
  [60, 0],
  [60, 84],
  [40, 84],
  [40, 56],
  [20, 56],
  [20, 84],
  [0, 84],
]);
/** A V, `half` stitches wide on each side of its middle and `deep` rows deep; its sides are edges 3 and 4. */
const vNeck = (half: number, deep: number) =>
  polygon([
    [0, 0],
    [80, 0],
    [80, 80],
    [40 + half, 80],
    [40, 80 - deep],
    [40 - half, 80],
    [0, 80],
  ]);

const groups = (made: PickupPlan, voice: Voice) =>
  bandCornersText(made, voice).filter((text) => text.includes(' each side'));

describe('the words on corners', () => {
  it('tell a border with corners from beginning to end', () => {
    const square = rectangle(40, 80, {}, { gauge: { stitches: 20, rows: 40 }, fabric: 'garter' });
    const made = plan(square, along(ROUND, { joined: true, band: { fabric: 'garter', rows: 10 } }));
    expect(bandCornersText(made, long)).toEqual([
      'Corners: mark stitches 1, 40, 81 and 120 as you pick them up, one at each of the 4 outer corners, where the edge turns by 90 degrees. At each, increase 1 on each side of it on every second round, 5 times, beginning with round 2: m1, work the marked stitch, m1. The round begins with stitch 1: what comes before it is worked at the end of the round.',
      'With all corners worked there are 200 stitches: 160 + 4 × 10.',
      'Laid flat, the free edge of the band is 100.0 cm long, 25% longer than the edge it is worked from, and takes 200 stitches.',
    ]);
    expect(bandCornersText(made, short)).toEqual([
      '4 outer corners, stitches 1, 40, 81 and 120: 1 each side on every second round, 5 times, beginning with round 2: m1, work the marked stitch, m1.',
      'With all corners worked there are 200 stitches: 160 + 4 × 10.',
      'Free edge, laid flat: 100.0 cm, 25% longer: 200 stitches.',
    ]);
  });

  it('stand right after the sentence on the band, their abbreviations explained', () => {
    const made = planSample('vest').pickups[0]!;
    const said = instructions(made, long);
    const band = said.findIndex((text) => text.startsWith('Work 7 rounds of rib'));
    expect(said[band]).toBe('Work 7 rounds of rib on 106 stitches, shaping its corners, then bind off.');
    expect(said[band + 1]).toBe(
      'Point of the V: mark stitches 39 and 40 as you pick them up, the two at its middle. The edge turns by 110 degrees there. Decrease 1 on each side of them on every round: work to 1 stitch before the marked ones, k2tog, ssk.',
    );
    expect(said.at(-1)).toMatch(/^Abbreviations\. .*k2tog: .*; ssk: /);
    const uk = instructions(made, { ...long, terms: TERMS.UK });
    expect(uk[band + 1]).toMatch(/k2tog, skpo\.$/);
    expect(uk.at(-1)).toMatch(/skpo: /);
  });

  it('make one of three at a corner with one stitch, and say how from behind', () => {
    const made = plan(squareNeck, along(['edge-3', 'edge-4', 'edge-5'], { band: { fabric: 'garter', rows: 7 } }));
    const [corners, after] = bandCornersText(made, long);
    expect(corners).toMatch(/^Corners: mark stitches 21 and 40 .* 2 inner corners/);
    expect(corners).toMatch(/1, 3, 4, 5 and 7: work to 1 stitch before the marked one, s2kp2\. Odd rows /);
    expect(after).toBe('With all corners worked there are 40 stitches: 60 − 2 × 10.');
  });

  it('say where the sum asks for more than can be worked, and where the band has no room', () => {
    const deep = (fabric: string, rows = 6) =>
      plan(vNeck(8, 60), along(['edge-3', 'edge-4'], { band: { fabric, rows } }));
    expect(groups(deep('rib'), long)[0]).toMatch(
      /on every row: .*asks for 3.83 on each side in every row; rib gives way/,
    );
    expect(groups(deep('garter'), long)[0]).toMatch(/2 on each side of it on every row: .* will not lie quite flat/);
    expect(bandCornersText(deep('garter', 60), long)).toEqual([
      '60 rows are too deep for this band to lie flat: its corners or curves would use up an edge. Work fewer rows, or let it stand up.',
    ]);
  });

  it('say whether the rib stays whole beside the middle of a V', () => {
    const one = polygon([
      [0, 0],
      [81, 0],
      [81, 80],
      [61, 80],
      [41, 40],
      [40, 40],
      [20, 80],
      [0, 80],
    ]);
    const made = (target: number) =>
      plan(
        one,
        along(['edge-3', 'edge-4', 'edge-5'], { joined: true, target, band: { fabric: 'rib', multiple: 4, rows: 4 } }),
      );
    expect(bandCornersText(made(65), long)).toContain(
      'Beside the middle stitch there are 64, 16 × 4: the rib stays whole.',
    );
    expect(bandCornersText(made(66), long)).toContain(
      'Beside the middle stitch there are 65 stitches, not a multiple of 4: a total of 65 or 69 keeps the rib whole.',
    );
  });

  it('leave curves to the rib, and ask for decreases in another fabric', () => {
    const { edges, pickup } = planSample('pullover').pickups[0]!;
    expect(edges.length).toBeGreaterThan(1);
    const sample = planSample('pullover');
    expect(pickup.band.fabric).toBe('rib');
    expect(bandCornersText(sample.pickups[0]!, long).at(-1)).toMatch(/fewer: rib draws in by itself/);
    const garter = {
      ...sample.pickups[0]!,
      pickup: { ...pickup, band: { ...pickup.band, fabric: 'garter' as const } },
    };
    expect(bandCornersText(garter, long).at(-1)).toMatch(/fewer: decrease them spread evenly along the curves/);
  });

  it('are none for a straight band', () => {
    expect(bandCornersText(plan(rectangle(20, 112), along(['right'], { band: { rows: 8 } })), long)).toEqual([]);
    expect(bandCornersText(plan(rectangle(20, 112), along(['right', 'top'])), long)).toEqual([]);
  });
});

describe('counted out by their own words', () => {
  /** Every group read back, and what all of them make of the count. */
  function check(made: PickupPlan, voice: Voice): void {
    const free = made.bandEdge!;
    if (free.tooDeep) return;
    let count = made.target;
    const marked: number[] = [];
    for (const text of groups(made, voice)) {
      const read = readCorners(text, free.rows);
      marked.push(...read.marked);
      const corners = free.corners.filter(({ stitches }) => stitches.every((n) => read.marked.includes(n)));
      expect(corners.length).toBeGreaterThan(0);
      for (const corner of corners) {
        const rows = [...read.rows].flatMap(([row, n]) => Array.from({ length: n }, () => row));
        expect(
          rows.sort((a, b) => a - b),
          text,
        ).toEqual(corner.rows);
        for (const n of read.rows.values()) {
          const work = read.change.length === 1 ? read.change[0]! : read.change[n - 1]!;
          expect(work, text).toBe(2 * n * Math.sign(corner.turn));
          count += work;
        }
      }
    }
    const worked = free.corners.filter(({ times }) => times > 0);
    expect(marked.sort((a, b) => a - b)).toEqual(worked.flatMap(({ stitches }) => stitches).sort((a, b) => a - b));
    expect(count).toBe(free.after);
    const said = bandCornersText(made, voice).find((text) => text.includes(' worked there are '));
    const sum = /there are (\d+) stitch(?:es)?: (\d+)((?: [+−] (?:\d+ × )?\d+)*)\./.exec(said ?? '');
    if (worked.length === 0) return;
    const changes = [...sum![3]!.matchAll(/([+−]) (?:(\d+) × )?(\d+)/g)].reduce(
      (all, [, sign, n, each]) => all + (sign === '+' ? 1 : -1) * Number(n ?? 1) * Number(each),
      0,
    );
    expect(Number(sum![2]) + changes).toBe(Number(sum![1]));
    expect(Number(sum![1])).toBe(count);
  }

  const gauge = fc.record({ stitches: fc.integer({ min: 12, max: 32 }), rows: fc.integer({ min: 14, max: 48 }) });
  const depth = fc.integer({ min: 1, max: 30 });
  const voices = [long, short, { ...long, terms: TERMS.UK }];

  it('corners of random polygons come to what the plan has', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), gauge, depth, fc.boolean(), (rise, bandGauge, rows, joined) => {
        const kite = polygon([
          [0, 0],
          [60, 0],
          [60 + (rise % 30), 70],
          [30, 70 + rise],
          [0, 70],
        ]);
        const run = ['edge-0', 'edge-1', 'edge-2', 'edge-3', 'edge-4'];
        const rates = run.map((edge) => ({ piece: 'piece', edge, rate: { kind: 'each' } }));
        const made = plan(kite, along(run, { joined, rates, band: { gauge: bandGauge, rows } }));
        for (const voice of voices) check(made, voice);
      }),
    );
  });

  it('and so do the points of Vs, in every fabric', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 39 }),
        fc.integer({ min: 4, max: 60 }),
        gauge,
        depth,
        fc.constantFrom('rib', 'garter', 'stockinette'),
        (half, deep, bandGauge, rows, fabric) => {
          const run = ['edge-3', 'edge-4'];
          const rates = run.map((edge) => ({ piece: 'piece', edge, rate: { kind: 'each' } }));
          const made = plan(vNeck(half, deep), along(run, { rates, band: { gauge: bandGauge, rows, fabric } }));
          for (const voice of voices) check(made, voice);
        },
      ),
    );
  });
});

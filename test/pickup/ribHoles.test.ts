import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnOf } from '../../src/pickup';
import { movedIntoPurl } from '../../src/pickup/ribHoles';
import { along, plan, rectangle, type Raw } from './builders';

const RIBS = [
  { knit: 1, purl: 1 },
  { knit: 2, purl: 1 },
  { knit: 2, purl: 2 },
  { knit: 3, purl: 3 },
];

const anyBand = fc.record({
  rib: fc.constantFrom(...RIBS),
  total: fc.integer({ min: 12, max: 60 }),
  joined: fc.boolean(),
  stitches: fc.integer({ min: 1, max: 4 }),
  from: fc.integer({ min: 1, max: 5 }),
  gaps: fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 2 }),
});

/** The middle of a hole, by the band written out column by column. */
function inPurl(written: string, first: number, stitches: number, purl: number): boolean {
  const middle =
    stitches % 2 === 1
      ? written.charAt(first + (stitches - 1) / 2)
      : written.slice(first + stitches / 2 - 1, first + stitches / 2 + 1);
  return stitches % 2 === 1 || purl > 1 ? !middle.includes('k') : middle.includes('p');
}

/** Every way to place the holes, each a stitch or more from the last, tried out. */
function leastMoves(firsts: readonly number[], can: (first: number) => boolean, stitches: number, from = 1): number {
  const [first, ...rest] = firsts;
  if (first === undefined) return 0;
  let least = Infinity;
  for (let place = Math.max(from, first - 12); place <= first + 12; place++) {
    if (!can(place)) continue;
    least = Math.min(least, (place - first) ** 2 + leastMoves(rest, can, stitches, place + stitches + 1));
  }
  return least;
}

describe('buttonholes moved into the purl columns', () => {
  it('lie there, apart, moved as little as can be', () => {
    fc.assert(
      fc.property(anyBand, ({ rib, total, joined, stitches, from, gaps }) => {
        const firsts = gaps.reduce((all, gap) => [...all, all.at(-1)! + stitches + gap], [from]);
        fc.pre(firsts.at(-1)! + stitches < total);
        const written = Array.from({ length: total }, (_, at) => columnOf(rib, at, total, joined).charAt(0)).join('');
        const repeat = 2 * (rib.knit + rib.purl);
        const can = (place: number) =>
          place >= 1 && place + stitches < total && inPurl(written, place, stitches, rib.purl);
        const moved = movedIntoPurl(firsts, stitches, { rib, total, joined });
        if (!moved) {
          const near = (place: number) => can(place) && firsts.some((first) => Math.abs(place - first) <= repeat);
          expect(firsts.length > 1 || !Array.from({ length: total }, (_, i) => i).some(near)).toBe(true);
          return;
        }
        moved.forEach((place, i) => {
          expect(can(place)).toBe(true);
          if (i > 0) expect(place - (moved[i - 1]! + stitches)).toBeGreaterThanOrEqual(1);
        });
        const cost = moved.reduce((sum, place, i) => sum + (place - firsts[i]!) ** 2, 0);
        expect(cost).toBe(leastMoves(firsts, can, stitches));
      }),
      { numRuns: 150 },
    );
  });
});

describe('the buttonholes of a ribbed band', () => {
  const band = (buttonholes: Raw, fields: Raw = {}) =>
    plan(
      rectangle(20, 112),
      along(['right'], { target: 110, band: { fabric: 'rib', multiple: 4, plus: 2 }, buttonholes, ...fields }),
    );

  it('lie between two purls of k2, p2, both halves alike, the gaps and ends told as they then are', () => {
    const { holes, notes } = band({ holes: 5, stitches: 2, from: 3, to: 3, rib: true });
    expect(holes!.rib).toEqual({ knit: 2, purl: 2 });
    for (const { first } of holes!.holes) expect((first - 1) % 4).toBe(2);
    expect([holes!.before, ...holes!.gaps, holes!.after]).toEqual([2, 22, 26, 26, 22, 2]);
    expect(notes.filter(({ kind }) => kind.startsWith('buttonholes'))).toEqual([]);
  });

  it('stay where they are unless that is asked for', () => {
    const { holes } = band({ holes: 5, stitches: 2, from: 3, to: 3 });
    expect([holes!.rib, holes!.before, holes!.after]).toEqual([null, 3, 3]);
  });

  it('are spaced evenly where the band is in no known rib, or there is no room, and the plan says so', () => {
    const wish = { holes: 5, stitches: 2, from: 3, to: 3, rib: true };
    const plain = band(wish, { band: {} });
    expect(plain.holes).toEqual(band({ ...wish, rib: false }, { band: {} }).holes);
    expect(plain.notes).toContainEqual({ kind: 'buttonholes-not-in-rib', why: 'no-rib' });
    const crowded = band({ ...wish, holes: 28, from: 2, to: 2 });
    expect(crowded.holes!.rib).toBeNull();
    expect(crowded.holes!.holes).toHaveLength(28);
    expect(crowded.notes).toContainEqual({ kind: 'buttonholes-not-in-rib', why: 'no-room' });
  });
});

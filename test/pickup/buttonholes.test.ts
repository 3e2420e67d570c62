import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endsFor, gapsBetween, holesFor, stitchesFor } from '../../src/pickup';
import { along, plan, rectangle, type Raw } from './builders';

const anyWish = fc.record({
  holes: fc.integer({ min: 1, max: 64 }),
  stitches: fc.integer({ min: 1, max: 6 }),
  from: fc.integer({ min: 1, max: 9 }),
  to: fc.integer({ min: 1, max: 9 }),
});
const total = (numbers: readonly number[]) => numbers.reduce((sum, number) => sum + number, 0);

describe('gaps between buttonholes', () => {
  it('sum exactly, differ by one at most and mirror each other wherever they can', () => {
    fc.assert(
      fc.property(anyWish, fc.integer({ min: 2, max: 2000 }), (wish, band) => {
        const gaps = gapsBetween(band, wish);
        if (!gaps) {
          expect(stitchesFor(wish, 1)).toBeGreaterThan(band);
          return;
        }
        expect(gaps).toHaveLength(wish.holes - 1);
        if (gaps.length === 0) return;
        expect(total(gaps) + wish.from + wish.to + wish.holes * wish.stitches).toBe(band);
        expect(Math.min(...gaps)).toBeGreaterThanOrEqual(1);
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
        const odd = gaps.length % 2 === 0 && total(gaps) % 2 === 1;
        const unlike = gaps.filter((gap, i) => gap !== gaps[gaps.length - 1 - i]).length;
        expect(unlike).toBe(odd ? 2 : 0);
      }),
    );
  });

  it('of one hole are none; of too many, null', () => {
    expect(gapsBetween(20, { holes: 1, stitches: 2, from: 3, to: 3 })).toEqual([]);
    expect(gapsBetween(14, { holes: 3, stitches: 2, from: 3, to: 3 })).toEqual([1, 1]);
    expect(gapsBetween(13, { holes: 3, stitches: 2, from: 3, to: 3 })).toBeNull();
  });

  it('are solved for any one of total, holes, ends and gap from the others', () => {
    fc.assert(
      fc.property(anyWish, fc.integer({ min: 1, max: 40 }), (wish, gap) => {
        const band = stitchesFor(wish, gap);
        expect(gapsBetween(band, wish)).toEqual(Array.from({ length: wish.holes - 1 }, () => gap));
        expect(holesFor(band, wish, gap)).toBe(wish.holes);
        const ends = endsFor(band, wish, gap)!;
        expect(ends.from + ends.to).toBe(wish.from + wish.to);
        expect([0, 1]).toContain(ends.to - ends.from);
        // With a stitch less there is room for one hole less at that gap.
        expect(holesFor(band - 1, wish, gap) ?? 0).toBe(wish.holes - 1);
      }),
    );
    expect(endsFor(10, { holes: 3, stitches: 3 }, 1)).toBeNull();
  });
});

describe('the buttonholes of a pick-up', () => {
  const band = (buttonholes: Raw, fields: Raw = {}) =>
    plan(rectangle(20, 112), along(['right'], { buttonholes, ...fields }));

  it('are counted on the band and placed along the join', () => {
    const made = band({ holes: 5, stitches: 2, from: 4, to: 4 });
    const row = made.holes!;
    expect(row).toMatchObject({ stitches: 2, before: 4, after: 4, gaps: [15, 16, 16, 15] });
    expect(row.holes.map(({ first, last }) => [first, last])).toEqual([
      [5, 6],
      [22, 23],
      [40, 41],
      [58, 59],
      [75, 76],
    ]);
    const middles = row.holes.map(({ alongMm }) => alongMm);
    // The middle one lies in the middle of the edge, and the others mirror each other.
    expect(middles[2]).toBeCloseTo(200, 0);
    expect(middles[0]! + middles[4]!).toBeCloseTo(400, 0);
    row.holes.forEach(({ fromMm, alongMm, toMm }) => {
      expect(fromMm).toBeLessThan(alongMm);
      expect(alongMm).toBeLessThan(toMm);
    });
    // Point n stands in the middle of its stitch: the middle of a hole over two lies between their points.
    const at = (n: number) => made.points.find((point) => point.n === n)!.alongMm;
    expect(middles[0]).toBeCloseTo((at(5) + at(6)) / 2, 9);
  });

  it('take usual ends where a file gives none', () => {
    expect(band({ holes: 2 }).holes).toMatchObject({ stitches: 2, before: 3, after: 3, gaps: [70] });
  });

  it('stand on the stitches that the first row leaves', () => {
    const made = band({ holes: 3, stitches: 3, from: 3, to: 3 }, { target: 160 });
    expect(made.picked).toBeLessThan(160);
    expect(made.holes!.gaps).toEqual([73, 72]);
    expect(made.holes!.holes[1]!.middle).toBe(80.5);
    expect(made.holes!.holes[1]!.alongMm).toBeGreaterThan(190);
    expect(made.holes!.holes[1]!.alongMm).toBeLessThan(210);
  });

  it('that do not fit are none, with a note', () => {
    const made = band({ holes: 30, stitches: 3 });
    expect(made.holes).toBeNull();
    expect(made.notes).toContainEqual({ kind: 'buttonholes-do-not-fit', holes: 30, needed: 125, total: 80 });
    expect(band({ holes: 5 }).notes).toEqual([]);
    expect(plan(rectangle(20, 112), along(['right'])).holes).toBeNull();
  });
});

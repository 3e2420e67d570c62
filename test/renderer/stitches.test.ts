import { describe, expect, it } from 'vitest';
import { stitchesLegible } from '../../src/renderer';
import { edgeStitches } from '../../src/renderer/selvage';
import { lookOf } from '../../src/renderer/stitches';
import { around, dataOf, draw, planOf, square, startsOf, steppedFront, strokesIn } from './designs';

const stitches = { detail: 'stitches', scale: 1, rulers: false, dimensions: false } as const;

describe('how stitches look from the right side', () => {
  const rows = (fabric: Parameters<typeof lookOf>[0]) =>
    [1, 0].map((row) => [0, 1, 2].map((column) => lookOf(fabric, column, row)[0]).join(''));

  it('follows the fabric', () => {
    expect(rows('stockinette')).toEqual(['kkk', 'kkk']);
    expect(rows('reverse-stockinette')).toEqual(['ppp', 'ppp']);
    expect(rows('seed')).toEqual(['pkp', 'kpk']);
    expect(rows('rib')).toEqual(['kpk', 'kpk']);
  });

  it('shows the ridges of garter on wrong-side rows, since the first row is a right-side row', () => {
    expect(rows('garter')).toEqual(['ppp', 'kkk']);
  });

  it('goes on left of the first stitch', () => {
    expect(lookOf('rib', -1, 0)).toBe('purl');
    expect(lookOf('rib', -2, 0)).toBe('knit');
  });
});

describe('stitches of a piece', () => {
  it('are drawn each, one shape for each, in one path', () => {
    const drawing = draw(planOf(square(8, 10)), stitches);
    expect(strokesIn(dataOf(drawing, 'knit'))).toBe(80);
    expect(dataOf(drawing, 'purl')).toBe('');
  });

  it('are knit and purl in equal parts in garter', () => {
    const drawing = draw(
      planOf(square(8, 10, { right: { selvage: 'plain' }, left: { selvage: 'plain' } }, { fabric: 'garter' })),
      stitches,
    );
    expect(strokesIn(dataOf(drawing, 'knit'))).toBe(40);
    expect(strokesIn(dataOf(drawing, 'purl'))).toBe(40);
  });

  it('are built only in the window', () => {
    const windows = { square: { minX: 10, minY: 0, maxX: 20, maxY: 100 / 28 } };
    const drawing = draw(planOf(square(200, 300)), { ...stitches, windows });
    // The window is two stitches wide and one row high; a piece that is not named has none.
    expect(strokesIn(dataOf(drawing, 'knit'))).toBe(2);
    expect(strokesIn(dataOf(draw(planOf(square(20, 30)), { ...stitches, windows: {} }), 'knit'))).toBe(0);
  });

  it('lie inside the fabric', () => {
    const drawing = draw(planOf(steppedFront()), stitches);
    const { box } = drawing.places[0]!;
    for (const [x, y] of startsOf(dataOf(drawing, 'knit'))) {
      expect(x).toBeGreaterThanOrEqual(box.x - 1e-3);
      expect(x).toBeLessThan(box.x + box.width);
      expect(y).toBeLessThanOrEqual(box.y + box.height + 1e-3);
      expect(y).toBeGreaterThan(box.y);
    }
  });
});

describe('edges in stitch detail', () => {
  const edgesOf = (pieces: Parameters<typeof planOf>[0]) => planOf(pieces).measured[0]!.edges;

  it('have one chain to every two rows on a slipped selvage', () => {
    const found = edgeStitches(edgesOf(square(8, 10, { right: { selvage: 'slipped' } })), []);
    expect(found.chains).toEqual([0, 2, 4, 6, 8].map((row) => [7, row]));
    expect(found.taken.size).toBe(10);
  });

  it('have one bump to every two rows on a garter selvage', () => {
    const found = edgeStitches(edgesOf(square(8, 10, { left: { selvage: 'garter' } })), []);
    expect(found.bumps).toEqual([1, 3, 5, 7, 9].map((row) => [0, row]));
  });

  it('have a chain over every bound-off stitch and a loop under every cast-on one', () => {
    const found = edgeStitches(edgesOf(square(8, 10)), []);
    expect(found.boundOff).toHaveLength(8);
    expect(found.castOn).toHaveLength(8);
    expect(new Set(found.boundOff.map(([, row]) => row))).toEqual(new Set([9]));
    expect(new Set(found.castOn.map(([, row]) => row))).toEqual(new Set([0]));
  });

  it('have the treads of steps bound off, but not single decreases', () => {
    const found = edgeStitches(edgesOf(steppedFront()), []);
    // 6 on each shoulder, 10 at the front of the neck, 3 and 2 on each side of it.
    expect(found.boundOff).toHaveLength(2 * 6 + 10 + 2 * (3 + 2));
  });

  it('have open loops where stitches are live, unless they are picked up and so drawn as points', () => {
    const plan = planOf(square(8, 10, { top: { finish: 'live' } }), around({}, ['top']));
    const { edges } = plan.measured[0]!;
    expect(edgeStitches(edges, []).open).toHaveLength(8);
    expect(edgeStitches(edges, [edges[2]!]).open).toHaveLength(0);
    expect(strokesIn(dataOf(draw(plan, stitches), 'live'))).toBe(8);
  });
});

describe('the scale from which stitches are drawn', () => {
  it('depends on the size of a stitch on the sheet', () => {
    expect(stitchesLegible(1, { stitches: 20, rows: 28, over: 100 })).toBe(true);
    expect(stitchesLegible(0.3, { stitches: 20, rows: 28, over: 100 })).toBe(false);
    expect(stitchesLegible(0.3, { stitches: 6, rows: 8, over: 100 })).toBe(true);
  });
});

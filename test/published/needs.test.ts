import { describe, expect, it } from 'vitest';
import { countOut } from '../../src/pickup';
import { changed, edge, kindsOf, onlyEdge, pickup, plan, runsOf, sectionsOf, skipsOf, sum, tally } from './published';

/** The questions that knitters ask most, each answered from one small design file. */

describe('71 stitches over 88 rows', () => {
  // "How to knit up", https://forum.knittinghelp.com/t/how-to-knit-up/124191
  it('skips 17 rows: 17 runs of 4 and one of 3', () => {
    const edge = onlyEdge(pickup('71-over-88'));
    expect(runsOf(edge)).toEqual({ 4: 17, 3: 1 });
    expect(skipsOf(edge)).toEqual(Array.from({ length: 17 }, () => 1));
  });

  it('has 18 or 17 in each quarter', () => {
    expect(tally(sectionsOf(pickup('71-over-88')))).toEqual({ 18: 3, 17: 1 });
  });

  it('would have 70 by 4 of 5, the nearest plain ratio', () => {
    expect(onlyEdge(pickup('71-over-88')).ratios[0]).toMatchObject({ pick: 4, of: 5, count: 70 });
  });
});

describe('a blanket with ends of 193 stitches to carry 176 and sides of 294 rows to carry 218', () => {
  const border = pickup('blanket-788-all-round');

  it.each(['bound-off', 'cast-on'])('%s: 14 runs of 10 and 4 of 9', (id) => {
    expect(edge(border, id)).toMatchObject({ openings: 193, count: 176 });
    expect(runsOf(edge(border, id))).toEqual({ 10: 14, 9: 4 });
  });

  it.each(['left', 'right'])('%s: 64 runs of 3 and 13 of 2', (id) => {
    expect(edge(border, id)).toMatchObject({ openings: 294, count: 218 });
    expect(runsOf(edge(border, id))).toEqual({ 3: 64, 2: 13 });
  });

  it('has 788 in all before the corners', () => {
    expect(border).toMatchObject({ picked: 788, target: 788 });
    expect(sum(sectionsOf(border))).toBe(788);
  });
});

describe('115 wanted from 32 slipped chains', () => {
  const band = pickup('115-from-32-chains');

  it('finds 64 places at most, two to a chain, and uses them all', () => {
    expect(band.points).toHaveLength(64);
    expect(band.points.filter(({ second }) => second)).toHaveLength(32);
    expect(band.picked).toBe(64);
  });

  it('makes the other 51 on the first row, and says why', () => {
    expect(band.firstRow).toMatchObject({ from: 64, to: 115 });
    expect(countOut(band.firstRow.groups)).toEqual({ uses: 64, leaves: 115 });
    expect(band.notes).toEqual([
      {
        kind: 'too-few-openings',
        edge: { piece: 'front', edge: 'right' },
        wanted: 115,
        openings: 64,
        unit: 'chain',
        made: 'first-row',
      },
    ]);
  });
});

describe('218 in sections', () => {
  it('has 4 of 36 and 2 of 37 in six', () => {
    expect(tally(sectionsOf(pickup('218-in-6-sections')))).toEqual({ 36: 4, 37: 2 });
  });

  it('has 6 of 27 and 2 of 28 in eight', () => {
    expect(tally(sectionsOf(pickup('218-in-8-sections')))).toEqual({ 27: 6, 28: 2 });
  });

  it('flags "4 of 27 and 2 of 28", which are 164', () => {
    expect(pickup('218-in-6-sections').notes).toEqual([
      { kind: 'sections-do-not-sum', sum: 164, total: 218, stated: 'plan' },
    ]);
  });
});

describe('424 wanted, 414 on the needle', () => {
  const band = pickup('424-wanted-414-got');

  it('is 2.4% short', () => {
    expect(band.wanted).toBeCloseTo(424, 9);
    const [got] = band.notes;
    expect(got).toMatchObject({ kind: 'got', got: 414, verdict: 'lies flat' });
    expect(got?.kind === 'got' ? got.stretch : null).toBeCloseTo(-10 / 424, 12);
  });

  it('still fits a flat k2p2 (4n + 2)', () => {
    expect(band.notes[0]).toMatchObject({ fits: true });
    expect(changed('424-wanted-414-got', { got: 413 }).notes[0]).toMatchObject({ got: 413, fits: false });
  });

  it('would have been 422 or 426', () => {
    expect(band.choices.map(({ count }) => count)).toEqual([422, 426]);
  });
});

describe('a slipped edge at 6 stitches and 9 rows to the inch', () => {
  it('takes 4 from every 3 chains', () => {
    const { edges } = pickup('chains-4-from-3');
    expect(edges[0]).toMatchObject({ unit: 'chain', rows: 72, count: 48 });
    expect(edges[0]?.wanted).toBeCloseTo(48, 9);
    expect(edges[0]?.ratios[0]).toMatchObject({ pick: 4, of: 3, count: 48 });
  });

  it('uses every chain, and the gap after every third one', () => {
    const { points } = pickup('chains-4-from-3');
    expect(points.filter(({ second, n }) => !second && n === null)).toEqual([]);
    const gaps = points.filter(({ second }) => second).map(({ n }) => n !== null);
    expect(gaps).toEqual(Array.from({ length: 36 }, (_, i) => i % 3 === 2));
  });

  it('is 25% short with one to a chain, and will pucker', () => {
    const band = pickup('chains-one-each');
    expect(band.picked).toBe(36);
    expect(onlyEdge(band).changed).toBeCloseTo(-0.25, 12);
    expect(band.stated[0]).toMatchObject({ stated: 36, verdict: 'will pucker' });
    expect(kindsOf(band)).toEqual(['stretched']);
  });
});

describe('slopes at 20 stitches by 28 rows', () => {
  // sqrt(1 + (b k)^2) / k stitches to a row, for a decrease every k rows where a straight edge takes b to a row.
  it.each([
    ['on-straight', 0.714],
    ['on-every-4', 0.757],
    ['on-every-2', 0.872],
    ['on-every-1', 1.229],
  ])('%s: %f to a row', (id, perRow) => {
    const { edges, wanted } = pickup('slopes-20-by-28', id);
    expect(edges[0]?.rows).toBe(56);
    expect(wanted / 56).toBeCloseTo(perRow, 3);
  });

  it('finds a place for each of them, more than one to a row on the steepest', () => {
    for (const { picked, wanted, notes } of plan('slopes-20-by-28').pickups) {
      expect(Math.abs(picked - wanted)).toBeLessThanOrEqual(0.5);
      expect(notes).toEqual([]);
    }
    expect(pickup('slopes-20-by-28', 'on-every-1').picked).toBe(69);
  });
});

describe('a round neck at 18 stitches by 24 rows', () => {
  const band = pickup('round-neck-60');

  it('has front curves of about 69 mm', () => {
    const [w, h] = [100 / 18, 100 / 24];
    const steps = [3, 2, 1, 1].map((stitches) => Math.hypot(stitches * w, 2 * h));
    for (const id of ['neck-left', 'neck-right']) {
      const mm = edge(band, id, 'front').edgeMm;
      expect(mm).toBeCloseTo(sum(steps) + 4 * h, 9);
      expect(mm).toBeCloseTo(69, 0);
    }
  });

  it('has 60 in all by length, a multiple for k2p2', () => {
    expect(band.wanted).toBeCloseTo(60, 0);
    expect(band.target).toBe(60);
    expect(changed('round-neck-60', { band: { ...band.pickup.band, multiple: 1 } }).target).toBe(60);
  });

  it('has the same on both sides', () => {
    expect(band.edges.map(({ count }) => count)).toEqual([12, 10, 12, 3, 20, 3]);
  });

  it.each([
    [54, 'will pucker'],
    [66, 'will ruffle'],
  ])('flags %i, as fixed rules give it: %s', (statedTotal, verdict) => {
    expect(changed('round-neck-60', { statedTotal }).stated).toMatchObject([{ stated: statedTotal, verdict }]);
  });
});

describe('131 stitches decreased by 39', () => {
  // "Decrease evenly across row", http://spincraftpatterns.com/content/decrease-evenly-across-row
  const counted = (id: string) => {
    const { groups } = pickup('131-decreased-by-39', id).firstRow;
    return countOut(groups);
  };

  it('is 25 times (k1, k2tog) and 14 times (k2, k2tog) in the round', () => {
    const units: Record<string, number> = {};
    for (const { times, works } of pickup('131-decreased-by-39', 'in-the-round').firstRow.groups) {
      const key = works.map(({ work, count }) => `${work} ${count}`).join(', ');
      units[key] = (units[key] ?? 0) + times;
    }
    expect(units).toEqual({ 'plain 1, decrease 1': 25, 'plain 2, decrease 1': 14 });
  });

  it.each(['in-the-round', 'flat'])('counted out %s uses 131 and leaves 92', (id) => {
    expect(counted(id)).toEqual({ uses: 131, leaves: 92 });
  });
});

describe('56 picked up where 80 were wanted over 112 rows', () => {
  const band = pickup('56-where-80-over-112-rows');

  it('is one for every two rows: chains or ridges were counted as rows', () => {
    expect(band.stated).toMatchObject([
      { stated: 56, planned: 80, verdict: 'will pucker', causes: [{ kind: 'openings-counted-as-rows', unit: 'row' }] },
    ]);
    expect(band.notes).toMatchObject([{ kind: 'got', got: 56, target: 80 }]);
  });

  it('is right with 10 of 14, that is 5 of 7', () => {
    expect(onlyEdge(band).ratios[0]).toMatchObject({ pick: 5, of: 7, count: 80 });
    expect(band.picked).toBe(80);
  });
});

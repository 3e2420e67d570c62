import { describe, expect, it } from 'vitest';
import { comparePlans, planDesign } from '../../src/pickup';
import { along, design, rectangle, type Raw } from './builders';

const pickup = (fields: Raw = {}) =>
  along(['right', 'top', 'left'], {
    id: 'band',
    stated: [{ piece: 'piece', edge: 'right', count: 84 }],
    statedTotal: 210,
    buttonholes: { holes: 5, stitches: 2, from: 4, to: 4 },
    ...fields,
  });
const planned = (rows: number, fields: Raw = {}, more: Raw = {}) =>
  planDesign(
    design(
      [rectangle(40, rows), rectangle(20, 28, {}, { id: 'other' })],
      [pickup(fields), { ...along(['bottom'], { id: 'hem' }), ...more }],
    ),
  );

describe('a piece that was lengthened', () => {
  // 112 rows are 40 cm and 80 stitches, 126 rows 45 cm and 90.
  const changed = comparePlans(planned(112), planned(126));

  it('tells every edge that moved', () => {
    expect(changed.moved.map(({ edge }) => edge)).toEqual([
      { piece: 'piece', edge: 'right' },
      { piece: 'piece', edge: 'left' },
    ]);
    expect(changed.moved[0]).toMatchObject({ rows: { before: 112, after: 126 }, stitches: { before: 0, after: 0 } });
    expect(changed.moved[0]!.lengthMm.after).toBeCloseTo(450, 9);
  });

  it("keeps the stretch of the pattern's count on the old edge", () => {
    const [band] = changed.pickups;
    expect(changed.pickups).toHaveLength(1);
    expect(band!.edges.map(({ edge, count }) => [edge.edge, count.before, count.after])).toEqual([
      ['right', 80, 90],
      ['left', 80, 90],
    ]);
    expect(band!.edges[0]!.pattern!.becomes).toBeCloseTo(84 * (90 / 80), 9);
    expect(band!.edges[1]!.pattern).toBeNull();
    expect(band!.pattern!.becomes).toBeCloseTo(210 * (220 / 200), 9);
  });

  it('has both plans, with their totals and buttonholes', () => {
    const [band] = changed.pickups;
    expect([band!.before.target, band!.after.target]).toEqual([200, 220]);
    expect([band!.before.holes!.gaps[0], band!.after.holes!.gaps[0]]).not.toEqual([null, null]);
    expect(band!.after.holes!.gaps.reduce((sum, gap) => sum + gap, 0)).toBe(220 - 8 - 10);
  });
});

describe('what has not changed', () => {
  it('is not told', () => {
    expect(comparePlans(planned(112), planned(112))).toEqual({ moved: [], pickups: [] });
  });

  it('has no pattern where nothing is stated', () => {
    const silent = { stated: [], statedTotal: null };
    const [band] = comparePlans(planned(112, silent), planned(126, silent)).pickups;
    expect(band!.pattern).toBeNull();
    expect(band!.edges.every(({ pattern }) => pattern === null)).toBe(true);
  });

  it('takes the stretches of an edge together', () => {
    const halves = [[0, 0.5] as const, [0.5, 1] as const].map((part) => ({ piece: 'piece', edge: 'right', part }));
    const fields = { along: halves, stated: [{ piece: 'piece', edge: 'right', count: 84 }], statedTotal: null };
    const [band] = comparePlans(planned(112, fields), planned(126, fields)).pickups;
    expect(band!.edges).toMatchObject([{ rows: { before: 112, after: 126 }, count: { before: 80, after: 90 } }]);
  });
});

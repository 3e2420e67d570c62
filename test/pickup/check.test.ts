import { describe, expect, it } from 'vitest';
import { allFlat, verdictOf, type PickupPlan } from '../../src/pickup';
import { along, plan, rectangle, type Raw } from './builders';

const FLAT = { slight: 3, strong: 8 };

/** 112 rows of 28 over 10 cm are 40 cm: at 20 stitches over 10 cm 80 are wanted. */
const side = (fields: Raw, edge: Raw = {}) => plan(rectangle(20, 112, { right: edge }), along(['right'], fields));
const stated = (count: number, fields: Raw = {}, edge: Raw = {}) =>
  side({ stated: [{ piece: 'piece', edge: 'right', count }], ...fields }, edge);
const kinds = (made: PickupPlan) => made.notes.map((note) => note.kind);

describe('verdicts', () => {
  it.each([
    [0, 'lies flat'],
    [0.03, 'lies flat'],
    [-0.03, 'lies flat'],
    [0.0301, 'slightly loose'],
    [-0.08, 'slightly tight'],
    [0.0801, 'will ruffle'],
    [-0.3, 'will pucker'],
  ])('a stretch of %d %s (common practice)', (stretch, verdict) => {
    expect(verdictOf(stretch, FLAT)).toBe(verdict);
  });

  it('have thresholds that can be moved', () => {
    expect(verdictOf(0.05, { slight: 5, strong: 10 })).toBe('lies flat');
    expect(stated(75, { flat: { slight: 10, strong: 20 } }).stated[0]!.verdict).toBe('lies flat');
  });
});

describe('a stated count', () => {
  it('stands beside what is planned, with its stretch and the gauge it implies', () => {
    expect(stated(76).stated).toEqual([
      {
        what: 'edge',
        edge: { piece: 'piece', edge: 'right' },
        ratio: null,
        stated: 76,
        planned: 80,
        wanted: expect.closeTo(80, 9) as number,
        stretch: expect.closeTo(-0.05, 9) as number,
        verdict: 'slightly tight',
        impliedPer10cm: expect.closeTo(19, 9) as number,
        causes: [{ kind: 'lengthened', rows: -6 }],
      },
    ]);
  });

  it('of 56 where 80 are wanted over 112 rows is one to two rows: ridges or chains were counted as rows', () => {
    expect(stated(56).stated[0]!.causes[0]).toEqual({ kind: 'openings-counted-as-rows', unit: 'row' });
  });

  it('of one to a row on chains counted rows as chains', () => {
    expect(stated(112, {}, { selvage: 'slipped' }).stated[0]!.causes[0]).toEqual({
      kind: 'rows-counted-as-openings',
      unit: 'chain',
    });
  });

  it("at the body's gauge or with the draw-in taken twice is told from the numbers", () => {
    const band = { gauge: { stitches: 26, rows: 34 } };
    expect(stated(80, { band }).stated[0]!.causes).toContainEqual({ kind: 'body-gauge' });
    expect(stated(65, { band: { drawIn: 10 } }).stated[0]!.causes).toContainEqual({ kind: 'reduced-twice' });
  });

  it('that lies flat has no cause', () => {
    expect(stated(81).stated[0]).toMatchObject({ verdict: 'lies flat', causes: [] });
  });

  it('for the whole is held against the whole', () => {
    const made = side({ statedTotal: 90, band: { multiple: 4 } });
    expect(made.stated).toHaveLength(1);
    expect(made.stated[0]).toMatchObject({ edge: null, stated: 90, planned: 80, verdict: 'will ruffle' });
    expect(kinds(made)).toContain('total-off-multiple');
  });
});

describe('contradictions', () => {
  const total = (fields: Raw) =>
    plan(rectangle(20, 28, {}, { symmetric: true }), along(['right', 'top', 'left'], fields));
  const each = (counts: number[]) =>
    ['right', 'top', 'left'].map((edge, i) => ({ piece: 'piece', edge, count: counts[i] }));

  it('are sections that do not sum', () => {
    expect(total({ statedTotal: 60, statedSections: [20, 20, 19] }).notes).toContainEqual({
      kind: 'sections-do-not-sum',
      sum: 59,
      total: 60,
      stated: 'total',
    });
    expect(kinds(total({ statedTotal: 60, statedSections: [20, 20, 20] }))).not.toContain('sections-do-not-sum');
  });

  it('are edges that do not sum, and twins that differ', () => {
    const made = total({ statedTotal: 60, stated: each([20, 20, 21]) });
    expect(made.notes).toContainEqual({ kind: 'stated-edges-do-not-sum', sum: 61, total: 60 });
    expect(made.notes).toContainEqual(expect.objectContaining({ kind: 'sides-differ', leftCount: 20, rightCount: 21 }));
    expect(kinds(total({ statedTotal: 60, stated: each([20, 20, 20]) }))).toEqual([]);
  });

  it('flag a count that matches the pattern on a piece whose rows do not', () => {
    const made = total({ statedTotal: 70, got: 70 });
    expect(made.notes).toContainEqual(expect.objectContaining({ kind: 'matches-but-stretched', count: 70 }));
    expect(made.notes).toContainEqual(
      expect.objectContaining({ kind: 'got', got: 70, verdict: 'will ruffle', fits: true }),
    );
  });
});

describe('allFlat', () => {
  it('is true where all lies flat and agrees, else false', () => {
    const flat = (made: PickupPlan) => allFlat(made.stated, made.notes);
    expect(flat(side({}))).toBe(true);
    expect(flat(stated(81))).toBe(true);
    expect(flat(stated(75))).toBe(false);
    expect(flat(stated(80, { statedTotal: 80, statedSections: [40, 39] }))).toBe(false);
  });
});

import { describe, expect, it } from 'vitest';
import { YARN_WEIGHTS, yarnWeights, type Note } from '../../src/pickup';
import { along, plan, rectangle, type Raw } from './builders';

const notes = (gauge: Raw, fabric = 'stockinette', band: Raw = {}) =>
  plan(rectangle(20, 30, {}, { gauge, fabric }), along(['right'], { band })).notes.filter(
    (note): note is Extract<Note, { kind: 'gauge-unusual' }> => note.kind === 'gauge-unusual',
  );

/**
 * Craft Yarn Council, Standard Yarn Weight System, https://www.craftyarncouncil.com/standards/yarn-weight-system: the
 * gauge ranges in stockinette to 4 inches. Those of 0 and 7 are from memory.
 */
describe('the ranges of the Craft Yarn Council', () => {
  it.each([
    [0, 33, 40],
    [1, 27, 32],
    [2, 23, 26],
    [3, 21, 24],
    [4, 16, 20],
    [5, 12, 15],
    [6, 7, 11],
  ])('weight %i is %i to %i stitches to 4 inches', (weight, from, to) => {
    expect(YARN_WEIGHTS).toContainEqual({ weight, from, to });
    for (const stitches of [from, to]) expect(yarnWeights({ stitches, rows: 30, over: 101.6 })).toContain(weight);
    expect(yarnWeights({ stitches: from - 1, rows: 30, over: 101.6 })).not.toContain(weight);
    expect(yarnWeights({ stitches: to + 1, rows: 30, over: 101.6 })).not.toContain(weight);
  });

  it('have 6 stitches or fewer as jumbo', () => {
    expect(yarnWeights({ stitches: 6, rows: 8, over: 101.6 })).toEqual([7]);
  });

  it('overlap where the council lets them: 23 stitches are fine and light', () => {
    expect(yarnWeights({ stitches: 23, rows: 30, over: 101.6 })).toEqual([2, 3]);
  });

  it('are read over any length', () => {
    expect(yarnWeights({ stitches: 22, rows: 30, over: 100 })).toEqual([3]);
    expect(yarnWeights({ stitches: 44, rows: 60, over: 200 })).toEqual([3]);
  });
});

describe('a note on an unusual gauge', () => {
  it('is none for usual stockinette', () => {
    for (const gauge of [
      { stitches: 22, rows: 30 },
      { stitches: 18, rows: 24 },
      { stitches: 30, rows: 42 },
    ]) {
      expect(notes(gauge)).toEqual([]);
    }
  });

  it('says outside all ranges, and plans all the same', () => {
    expect(notes({ stitches: 60, rows: 80 })).toEqual([
      { kind: 'gauge-unusual', what: 'piece', name: 'Piece', per10cm: 60, rowsPer10cm: 80, reason: 'outside-ranges' },
    ]);
    expect(plan(rectangle(20, 30, {}, { gauge: { stitches: 60, rows: 80 } }), along(['right'])).picked).toBe(22);
  });

  it('says where stockinette has fewer rows than stitches, as when the two were changed over', () => {
    expect(notes({ stitches: 30, rows: 22 })[0]).toMatchObject({ reason: 'rows-to-stitches' });
    expect(notes({ stitches: 20, rows: 40 })[0]).toMatchObject({ reason: 'rows-to-stitches' });
    // Garter is twice as dense in rows as in stitches.
    expect(notes({ stitches: 20, rows: 40 }, 'garter')).toEqual([]);
  });

  it('looks at the band too, where it has a gauge of its own', () => {
    expect(notes({ stitches: 22, rows: 30 }, 'stockinette', { gauge: { stitches: 50, rows: 70 } })).toMatchObject([
      { what: 'band', name: 'Pickup 0', per10cm: 50, reason: 'outside-ranges' },
    ]);
  });
});

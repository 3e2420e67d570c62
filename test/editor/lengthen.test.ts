import { describe, expect, it } from 'vitest';
import { lengthened, type Lengthening } from '../../src/editor';
import type { Design, ScheduleStep } from '../../src/piece';
import { design, rectangle } from '../pickup/builders';
import { steppedFront } from '../renderer/designs';

const cornersOf = (made: Design) => Object.fromEntries(made.pieces[0]!.outline.map(({ id, from }) => [id, from]));
const stepsOf = (made: Design): readonly ScheduleStep[] => {
  const edge = made.pieces[0]!.outline.find(({ id }) => id === 'neck-left');
  return edge?.path === 'stepped' ? edge.steps : [];
};
const at = (piece: string, edge: string) => ({ piece, edge });

/** 28 rows to 10 cm. */
const swatch = design(rectangle(20, 56));
const front = design(steppedFront());
const done = (made: Design, edge: string, by: Lengthening) => {
  const result = lengthened(made, at(made.pieces[0]!.id, edge), by);
  if (!result.ok) throw new Error(result.why);
  return result;
};

describe('an edge made longer', () => {
  it('moves all that is higher', () => {
    const result = done(swatch, 'right', { rows: 14 });
    expect(result).toMatchObject({ rows: 14, exactRows: 14 });
    expect(cornersOf(result.design)).toEqual({ bottom: [0, 0], right: [20, 0], top: [20, 70], left: [0, 70] });
    expect(result.change).toEqual({ kind: 'move-corners', piece: 'piece', corners: ['top', 'left'], dx: 0, dy: 14 });
    expect(cornersOf(done(swatch, 'left', { rows: -6 }).design)).toMatchObject({ top: [20, 50], left: [0, 50] });
  });

  it('by a length goes to the nearest whole row, a half to the fewer', () => {
    const result = done(swatch, 'right', { mm: 52 });
    expect(result.rows).toBe(15);
    expect(result.exactRows).toBeCloseTo(14.56, 12);
    expect(done(swatch, 'right', { mm: -52 }).rows).toBe(-15);
    expect(done(swatch, 'right', { mm: (1.5 * 100) / 28 }).rows).toBe(1);
  });

  it('on a symmetric piece takes its twin along, and a neck keeps its depth', () => {
    const { design: made } = done(front, 'side-left', { rows: 10 });
    const [before, after] = [cornersOf(front), cornersOf(made)];
    for (const id of ['shoulder-left', 'neck-front', 'neck-right', 'side-right']) {
      expect(after[id]).toEqual([before[id]![0], before[id]![1] + 10]);
    }
    expect([after['cast-on'], after['side-left']]).toEqual([before['cast-on'], before['side-left']]);
    expect(stepsOf(made)).toEqual(stepsOf(front));
  });

  it('that is stepped is stretched evenly, with all that passes beside it', () => {
    const { design: made } = done(front, 'neck-left', { rows: 12 });
    const after = cornersOf(made);
    expect([after['neck-left'], after['neck-front']]).toEqual([
      [12, 42],
      [5, 18],
    ]);
    expect(after['side-right']).toEqual([-18, 42]);
    const sum = (of: (step: ScheduleStep) => number) => stepsOf(made).reduce((all, step) => all + of(step), 0);
    expect(sum(({ every, times }) => every * times)).toBe(24);
    expect(sum(({ stitches, times }) => stitches * times)).toBe(-7);
  });

  it('or shorter loses its rows where there are enough of them', () => {
    expect(cornersOf(done(front, 'side-left', { rows: -17 }).design)).toMatchObject({ 'neck-front': [5, 1] });
    expect(lengthened(front, at('front', 'side-left'), { rows: -18 })).toEqual({
      ok: false,
      why: 'too-short',
      most: 17,
    });
  });
});

describe('an edge that cannot be made longer or shorter', () => {
  it.each([
    ['top', { rows: 4 }, { why: 'no-rows' }],
    ['hem', { rows: 4 }, { why: 'no-edge' }],
    ['right', { rows: 0 }, { why: 'no-row' }],
    ['right', { mm: 1 }, { why: 'no-row' }],
    ['right', { rows: -56 }, { why: 'too-short', most: 55 }],
    ['right', { rows: 6000 }, { why: 'invalid', problem: { kind: 'piece-too-big' } }],
  ])('%s by %j is refused', (edge, by, why) => {
    expect(lengthened(swatch, at('piece', edge), by)).toMatchObject({ ok: false, ...why });
  });

  it('by a length has no gauge', () => {
    const bare = design(rectangle(6, 88, {}, { gauge: null }));
    expect(lengthened(bare, at('piece', 'right'), { mm: 50 })).toEqual({ ok: false, why: 'no-gauge' });
    expect(lengthened(bare, at('piece', 'right'), { rows: 5 })).toMatchObject({ ok: true, rows: 5 });
  });
});

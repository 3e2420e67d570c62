import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findTwins, type Piece, type ScheduleStep } from '../../src/piece';
import { cellOf, measurePiece, type WorkedStep } from '../../src/shaping';
import { arbitraryDesign } from '../piece/arbitrary';
import { design, piece, rectangle, type Raw } from '../pickup/builders';

const measured = (raw: Raw) => measurePiece(design(raw).pieces[0]!);
const sum = (steps: readonly WorkedStep[], of: 'across' | 'up') => steps.reduce((all, step) => all + step[of], 0);

/** A piece of 40 stitches by 60 rows whose right edge runs from (40, 0) in by some fields to (30, 40). */
const withSide = (side: Raw): Raw =>
  piece([
    { from: [0, 0] },
    { id: 'side', from: [40, 0], ...side },
    { from: [30, 40] },
    { from: [30, 60] },
    { from: [0, 60] },
  ]);

const edgeOf = (raw: Raw, id: string) => measured(raw).find((edge) => edge.id === id)!;

describe('the shape of an edge', () => {
  it('is read off its ends and its line', () => {
    expect(measured(rectangle(20, 30)).map((edge) => edge.shape)).toEqual([
      'horizontal',
      'vertical',
      'horizontal',
      'vertical',
    ]);
    expect(edgeOf(withSide({ path: 'straight' }), 'side').shape).toBe('sloped');
    expect(
      edgeOf(
        withSide({
          path: 'curve',
          handles: [
            [40, 20],
            [35, 30],
          ],
        }),
        'side',
      ).shape,
    ).toBe('curved');
  });

  it('is sloped for a curve whose handles lie on its chord', () => {
    expect(
      edgeOf(
        withSide({
          path: 'curve',
          handles: [
            [37.5, 10],
            [32.5, 30],
          ],
        }),
        'side',
      ).shape,
    ).toBe('sloped');
  });

  it('is sloped where all steps are alike, curved where not', () => {
    const steps = (list: Raw[]) => edgeOf(withSide({ path: 'stepped', steps: list }), 'side').shape;
    expect(steps([{ stitches: -1, every: 4, times: 10 }])).toBe('sloped');
    expect(
      steps([
        { stitches: -1, every: 4, times: 4 },
        { stitches: -1, every: 4, times: 6 },
      ]),
    ).toBe('sloped');
    expect(
      steps([
        { stitches: -1, every: 2, times: 5 },
        { stitches: -1, every: 6, times: 5 },
      ]),
    ).toBe('curved');
  });
});

describe('the length of an edge', () => {
  it("is a slope's hypotenuse, not its rows: 3 cm across and 4 cm up are 5 cm", () => {
    const raw = piece([{ from: [0, 0] }, { id: 'slope', from: [30, 0] }, { from: [24, 16] }, { from: [0, 16] }], {
      gauge: { stitches: 20, rows: 40 },
    });
    expect(edgeOf(raw, 'slope').edgeMm).toBeCloseTo(50, 9);
  });

  it('is the sum of the hypotenuses of a stepped edge', () => {
    const steps = [
      { stitches: -5, every: 2, times: 1 },
      { stitches: -1, every: 2, times: 4 },
      { stitches: -1, every: 30, times: 1 },
    ];
    const [w, h] = [100 / 20, 100 / 28];
    const expected = Math.hypot(5 * w, 2 * h) + 4 * Math.hypot(w, 2 * h) + Math.hypot(w, 30 * h);
    expect(edgeOf(withSide({ path: 'stepped', steps }), 'side').edgeMm).toBeCloseTo(expected, 9);
  });

  it('of a piece without a gauge is drawn 3 to 4', () => {
    const { gauge: _, ...bare } = rectangle(10, 20);
    expect(cellOf(design(bare).pieces[0]!)).toEqual({ width: 4, height: 3 });
    expect(measured(bare).map((edge) => [edge.edgeMm, edge.hasGauge])).toEqual([
      [40, false],
      [60, false],
      [40, false],
      [60, false],
    ]);
  });
});

describe('worked steps', () => {
  it('sum to the stitches and rows of every edge that climbs, on any design', () => {
    fc.assert(
      fc.property(arbitraryDesign, ({ pieces }) => {
        for (const edge of pieces.flatMap(measurePiece)) {
          if (edge.shape === 'horizontal') expect(edge.worked).toEqual([]);
          else {
            expect(sum(edge.worked, 'across')).toBe(edge.to[0] - edge.from[0]);
            expect(sum(edge.worked, 'up')).toBe(edge.to[1] - edge.from[1]);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('mirror one another on the twins of a symmetric piece', () => {
    fc.assert(
      fc.property(arbitraryDesign, ({ pieces }) => {
        for (const one of pieces.filter((candidate) => candidate.symmetric)) {
          const edges = measurePiece(one);
          findTwins(one).forEach((twin, i) => {
            if (twin === i) return;
            const plain = (step: WorkedStep) => [step.across + 0, step.up + 0];
            const mirrored = edges[twin]!.worked.map((step) =>
              plain({ across: step.across, up: 0 - step.up }),
            ).reverse();
            expect(edges[i]!.worked.map(plain)).toEqual(mirrored);
          });
        }
      }),
      { numRuns: 60 },
    );
  });

  it('give back a schedule that was entered: schedule to outline to schedule, rising and falling', () => {
    const steps = fc.array(
      fc.record({
        stitches: fc.integer({ min: -6, max: 3 }),
        every: fc.integer({ min: 1, max: 8 }),
        times: fc.integer({ min: 1, max: 4 }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(steps, (schedule) => {
        const singles = schedule.flatMap(({ times, ...one }) => Array.from({ length: times }, () => one));
        const across = singles.reduce((all, step) => all + step.stitches, 0);
        const rows = singles.reduce((all, step) => all + step.every, 0);
        const half = 150;
        const edges = measurePiece(steppedBothSides(schedule, half, across, rows));
        const [right, left] = [edges[1]!, edges[3]!];
        expect(right.worked).toEqual(singles.map((step) => ({ across: step.stitches, up: step.every })));
        const fallen = [...left.worked].reverse().map((step) => [step.across + 0, 0 - step.up]);
        expect(fallen).toEqual(singles.map((step) => [step.stitches + 0, step.every]));
      }),
    );
  });

  it('of a straight slope lie where the schedule is entered, step for step', () => {
    const drawn = edgeOf(withSide({ path: 'straight' }), 'side');
    const entered = edgeOf(withSide({ path: 'stepped', steps: [{ stitches: -1, every: 4, times: 10 }] }), 'side');
    expect(drawn.worked).toEqual(entered.worked);
    expect(drawn.edgeMm).toBeCloseTo(entered.edgeMm, 9);
  });
});

/** A symmetric piece whose two sides are worked from one schedule; taking in is below 0. */
function steppedBothSides(steps: readonly ScheduleStep[], half: number, across: number, rows: number): Piece {
  const top = half + across;
  return {
    id: 'piece',
    name: 'Piece',
    fabric: 'stockinette',
    symmetric: true,
    gauge: { stitches: 20, rows: 28, over: 100 },
    outline: [
      { id: 'foot', from: [0 - half, 0], path: 'straight' },
      { id: 'right', from: [half, 0], path: 'stepped', steps },
      { id: 'top', from: [top, rows], path: 'straight' },
      { id: 'left', from: [0 - top, rows], path: 'stepped', steps },
    ],
  };
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countOut, fitsMultiple, type Note, type PickupPlan } from '../../src/pickup';
import { along, piece, plan, rate, rectangle, type Raw } from './builders';
import { everyPlan, planned } from './plans';
import { arbitraryDesign } from '../piece/arbitrary';
import type { Design } from '../../src/piece';

const kinds = (made: PickupPlan) => made.notes.map((note) => note.kind);
const noteOf = <K extends Note['kind']>(made: PickupPlan, kind: K) =>
  made.notes.find((note): note is Extract<Note, { kind: K }> => note.kind === kind);

/** A symmetric piece whose two sides are twins and whose top mirrors itself. */
const twinSides = rectangle(20, 28, {}, { symmetric: true });

describe('the target', () => {
  it('is the nearest fitting count where the edges can carry it, and is picked up', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 6 }),
        fc.integer({ min: 30, max: 200 }),
        (multiple, plus, rows) => {
          const made = plan(rectangle(20, rows), along(['right'], { band: { multiple, plus } }));
          expect(fitsMultiple(made.target, { multiple, plus })).toBe(true);
          expect(made.picked).toBe(made.target);
          const nearer = [made.target - multiple, made.target + multiple].filter((count) => count > 0);
          for (const count of nearer) {
            if (count < plus) continue;
            expect(Math.abs(count - made.wanted)).toBeGreaterThanOrEqual(Math.abs(made.target - made.wanted) - 1e-9);
          }
        },
      ),
    );
  });

  it('has its neighbours shown, below and above what is wanted', () => {
    everyPlan((made) => {
      const { multiple } = made.pickup.band;
      const [low, high] = made.choices.map((choice) => choice.count);
      if (high === undefined) return;
      expect(low! <= made.wanted + 1e-6 && made.wanted <= high + 1e-6).toBe(true);
      expect(high - low!).toBe(multiple);
    });
  });

  it('without a multiple is what can be picked up: the first row changes nothing', () => {
    const made = plan(twinSides, along(['right', 'top', 'left']));
    expect([made.target, made.firstRow.groups.length]).toEqual([made.picked, 0]);
    expect(made.wanted).toBeCloseTo(20 + 20 + 20, 9);
  });

  it('off the multiple is said, with its neighbours', () => {
    const made = plan(rectangle(20, 140), along(['right'], { target: 90, band: { multiple: 4 } }));
    expect(noteOf(made, 'target-off-multiple')).toMatchObject({ target: 90, below: 88, above: 92 });
    expect(made.picked).toBe(90);
  });
});

describe('twins against an odd total', () => {
  it('pick up the even number next to it, and the first row adds the one', () => {
    const made = plan(twinSides, along(['right', 'left'], { target: 43 }));
    expect(made.edges.map((edge) => edge.count)).toEqual([21, 21]);
    expect(noteOf(made, 'twins-odd')).toEqual({ kind: 'twins-odd', target: 43, picked: 42 });
    expect(countOut(made.firstRow.groups)).toEqual({ uses: 42, leaves: 43 });
  });

  it('let an edge without a twin take the odd one', () => {
    const shared = (target: number) =>
      plan(twinSides, along(['right', 'top', 'left'], { target, rates: [rate('top', { kind: 'length' })] }));
    expect(shared(59).edges.map((edge) => edge.count)).toEqual([20, 19, 20]);
    // The top has 20 openings, and 43 cannot be shared by twins.
    expect(shared(63).edges.map((edge) => edge.count)).toEqual([22, 19, 22]);
    expect(kinds(shared(63))).not.toContain('twins-odd');
  });

  it('without a target end on an even number', () => {
    const made = plan(rectangle(20, 27, {}, { symmetric: true }), along(['right', 'left']));
    expect(made.wanted).toBeCloseTo((2 * 27 * 20) / 28, 9);
    expect([made.target, made.picked]).toEqual([38, 38]);
  });
});

describe('too few openings', () => {
  const chains = (fields: Raw) => plan(rectangle(20, 64, { right: { selvage: 'slipped' } }), along(['right'], fields));

  it('115 from 32 chains: all 64 places are used and 51 stitches increased, whoever demands them', () => {
    const bare = plan(
      { ...rectangle(20, 64, { right: { selvage: 'slipped' } }), gauge: null },
      along(['right'], { target: 115 }),
    );
    const long = chains({ measured: [{ piece: 'piece', edge: 'right', mm: 575 }] });
    for (const made of [
      chains({ target: 115 }),
      bare,
      long,
      chains({ rates: [rate('right', { kind: 'count', count: 115 })] }),
    ]) {
      expect([made.edges[0]!.openings, made.edges[0]!.count, made.picked, made.target]).toEqual([64, 64, 64, 115]);
      expect(made.points.every((point) => point.n !== null)).toBe(true);
      expect(countOut(made.firstRow.groups)).toEqual({ uses: 64, leaves: 115 });
      expect(noteOf(made, 'too-few-openings')).toMatchObject({ openings: 64, unit: 'chain' });
      expect(noteOf(made, 'too-few-openings')!.wanted).toBeCloseTo(115, 6);
      expect(kinds(made)).not.toContain('fixed-counts');
    }
  });

  it('bring in as many gaps as are needed, one of them at the end', () => {
    const made = chains({ rates: [rate('right', { kind: 'count', count: 40 })] });
    const gaps = made.points.filter((point) => point.second);
    expect(made.points.filter((point) => !point.second).every((point) => point.n !== null)).toBe(true);
    expect(gaps.filter((point) => point.n !== null)).toHaveLength(8);
    expect(gaps.map((point, i) => (point.n === null ? -1 : i)).filter((i) => i >= 0)).toEqual([
      3, 7, 11, 15, 19, 23, 27, 31,
    ]);
  });

  it('bring them in on the falling side as on the rising one', () => {
    const sides = rectangle(20, 64, { right: { selvage: 'slipped' }, left: { selvage: 'slipped' } });
    const count = { kind: 'count', count: 45 };
    const made = plan(sides, along(['right', 'left'], { rates: [rate('right', count), rate('left', count)] }));
    const used = (edge: number) =>
      made.points.filter((point) => point.edge === edge && point.n !== null).map((point) => point.y);
    expect(used(1).reverse()).toEqual(used(0));
    expect(made.points.at(64)!.n).not.toBe(null);
  });

  it('keep every edge within what it carries, on any design', () => {
    everyPlan((made) => {
      for (const edge of made.edges) {
        if (!made.pickup.stepHoles) expect(edge.count).toBeLessThanOrEqual(edge.openings);
      }
    });
  });
});

describe('fixed counts', () => {
  it('stay as they are; the rest of the total goes to the edges by length', () => {
    const made = plan(
      rectangle(20, 28),
      along(['right', 'top', 'left'], { target: 70, rates: [rate('left', { kind: 'count', count: 22 })] }),
    );
    expect(made.edges.map((edge) => edge.count)).toEqual([28, 20, 22]);
  });

  it('alone leave a demanded total to the first row', () => {
    const made = plan(rectangle(20, 28), along(['top'], { target: 24 }));
    expect(noteOf(made, 'fixed-counts')).toEqual({ kind: 'fixed-counts', target: 24, picked: 20 });
    expect(countOut(made.firstRow.groups)).toEqual({ uses: 20, leaves: 24 });
  });
});

describe('scaling', () => {
  /** The same fabric said over another length, or drawn in another unit of length. */
  const scaled = (made: Design, count: number, over: number): Design => {
    const gauge = <T extends { gauge?: { stitches: number; rows: number; over: number } }>(one: T): T =>
      one.gauge
        ? {
            ...one,
            gauge: { stitches: one.gauge.stitches * count, rows: one.gauge.rows * count, over: one.gauge.over * over },
          }
        : one;
    const taped = over / count;
    return {
      ...made,
      pieces: made.pieces.map((one) => gauge(one)),
      pickups: made.pickups.map((pickup) => ({
        ...pickup,
        band: gauge(pickup.band),
        measured: pickup.measured.map((one) => ({ ...one, mm: one.mm * taped })),
      })),
    };
  };
  const summary = (made: PickupPlan | null) =>
    made && [
      made.target,
      made.picked,
      made.edges.map((edge) => [edge.count, edge.rhythm]),
      made.sections.map((section) => section.count),
    ];

  it.each([
    [4, 4],
    [1, 8],
    [0.5, 1],
  ])('gauge by %d over %d times the length changes no count and no rhythm', (count, over) => {
    fc.assert(
      fc.property(arbitraryDesign, (made) => {
        const other = scaled(made, count, over);
        made.pickups.forEach((_, i) => expect(summary(planned(other, i))).toEqual(summary(planned(made, i))));
      }),
      { numRuns: 25 },
    );
  });
});

describe('a steep slope', () => {
  it('finds room on the treads and at the decreases: nothing is left to the first row', () => {
    const made = plan(
      piece([{ from: [0, 0] }, { id: 'slope', from: [60, 0] }, { from: [20, 16] }, { from: [0, 16] }]),
      along(['slope']),
    );
    expect(made.edges[0]!.openings).toBeGreaterThanOrEqual(made.edges[0]!.count);
    expect(made.picked).toBe(made.target);
    expect(made.wanted).toBeCloseTo(Math.hypot(40 * 5, (16 * 100) / 28) / 5, 9);
  });
});

import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/piece';
import { planDesign, type PickupPlan } from '../../src/pickup';
import { selectionsOf } from '../../src/pickup/select';
import { stretchesOf, twinsOf } from '../../src/pickup/stretches';
import { measurePiece } from '../../src/shaping';
import { along, design, piece, withPickup } from './builders';

/**
 * A piece with a waist, an armhole and a straight left side, picked up along its sides. Every
 * test has objects of its own: what is measured and chosen is kept by them.
 */
const fresh = (): Design =>
  design(
    piece([
      { id: 'foot', from: [0, 0] },
      { id: 'waist', from: [80, 0] },
      { id: 'side', from: [70, 50] },
      {
        id: 'armhole',
        from: [80, 100],
        path: 'curve',
        handles: [
          [66, 100],
          [64, 120],
        ],
      },
      { id: 'top', from: [64, 150] },
      { id: 'left', from: [0, 150] },
    ]),
    along(['waist', 'side', 'armhole', 'left'], { sections: { by: 'length', parts: 4 }, band: { multiple: 2 } }),
  );

/** The corner where an edge begins, moved sideways; all else stays what it was. */
function dragged(made: Design, id: string, by: number): Design {
  const [first, ...others] = made.pieces;
  const outline = first!.outline.map((edge) =>
    edge.id === id ? { ...edge, from: [edge.from[0] + by, edge.from[1]] as const } : edge,
  );
  return { ...made, pieces: [{ ...first!, outline }, ...others] };
}

/** The ids of the edges that are not the same objects in both. */
function renewed<T>(before: readonly T[], after: readonly T[], id: (one: T) => string): string[] {
  return after.filter((one, i) => one !== before[i]).map(id);
}

const planOf = (made: Design): PickupPlan => planDesign(made).pickups[0]!;

/** The choice on every stretch of the first pick-up, for counts of our own. */
function choices(made: Design, counts: readonly number[]) {
  const stretches = stretchesOf(made, made.pickups[0]!);
  return selectionsOf(stretches, counts, twinsOf(stretches), 'even');
}

describe('a corner dragged', () => {
  it('has only the two edges that meet in it measured anew', () => {
    const body = fresh();
    const before = measurePiece(body.pieces[0]!);
    for (const by of [1, 2, -3]) {
      const after = measurePiece(dragged(body, 'side', by).pieces[0]!);
      expect(renewed(before, after, (edge) => edge.id)).toEqual(['waist', 'side']);
      expect(after[2]!.from).toEqual([70 + by, 50]);
      expect(after[1]!.to).toEqual([70 + by, 50]);
    }
  });

  it('gives the plan that the changed design has by itself', () => {
    const body = fresh();
    planOf(body);
    for (const by of [1, -4, 0]) {
      const moved = dragged(body, 'side', by);
      expect(planDesign(moved)).toEqual(planDesign(structuredClone(moved)));
    }
  });

  it('leaves the choice on every other edge that has the same count', () => {
    const body = fresh();
    const counts = [40, 41, 44, 90];
    const before = choices(body, counts);
    const after = choices(dragged(body, 'side', 2), counts);
    expect(after.map((choice, i) => choice === before[i])).toEqual([false, false, true, true]);
    const again = choices(dragged(body, 'side', 3), [40, 41, 45, 90]);
    expect(again.map((choice, i) => choice === before[i])).toEqual([false, false, false, true]);
    expect(again[2]!.usedAt).toHaveLength(45);
  });

  it('leaves all that the plan tells of an edge whose count stays', () => {
    const body = fresh();
    const before = planOf(body);
    const after = planOf(dragged(body, 'armhole', 2));
    const id = ({ measured }: (typeof after.edges)[number]) => measured.id;
    expect(
      renewed(
        before.edges.map(({ measured }) => measured),
        after.edges.map(({ measured }) => measured),
        ({ id }) => id,
      ),
    ).toEqual(['side', 'armhole']);
    for (const [i, edge] of after.edges.entries()) {
      const was = before.edges[i]!;
      if (edge.measured === was.measured && edge.count === was.count) {
        expect([id(edge), edge.rhythm === was.rhythm]).toEqual([id(edge), true]);
      }
    }
    expect(after.edges.some((edge, i) => edge.rhythm === before.edges[i]!.rhythm)).toBe(true);
  });
});

describe('an edge is measured anew', () => {
  const first = fresh().pieces[0]!;
  const before = measurePiece(first);

  it('where the gauge of its piece is another', () => {
    const after = measurePiece({ ...first, gauge: { stitches: 22, rows: 28, over: 100 } });
    expect(renewed(before, after, (edge) => edge.id)).toHaveLength(before.length);
    const { gauge: _, ...bare } = first;
    expect(measurePiece(bare).every((edge) => !edge.hasGauge)).toBe(true);
    expect(measurePiece({ ...first }).every((edge, i) => edge.edgeMm === before[i]!.edgeMm)).toBe(true);
  });

  it('where a default of its selvage is another', () => {
    const garter = measurePiece({ ...first, fabric: 'garter' });
    expect(garter.every((edge) => edge.selvage === 'garter')).toBe(true);
    expect(measurePiece({ ...first }).every((edge) => edge.selvage === 'plain')).toBe(true);
  });

  it('where edges are put in before it', () => {
    const [foot, ...others] = first.outline;
    const corner = { id: 'middle', from: [40, 0] as const, path: 'straight' as const };
    const after = measurePiece({ ...first, outline: [foot!, corner, ...others] });
    expect(after.map((edge) => edge.index)).toEqual(after.map((_, i) => i));
    expect(after[0]!.to).toEqual([40, 0]);
  });
});

describe('a change of the pick-up', () => {
  it('measures nothing anew, and chooses anew only where the count changes', () => {
    const body = fresh();
    const before = planOf(body);
    const after = planOf(withPickup(body, { target: before.target + 2 }));
    expect(after.edges.map(({ measured }) => measured)).toEqual(before.edges.map(({ measured }) => measured));
    after.edges.forEach((edge, i) => {
      expect(edge.measured).toBe(before.edges[i]!.measured);
      expect(edge.rhythm === before.edges[i]!.rhythm).toBe(edge.count === before.edges[i]!.count);
    });
    expect(after.picked).toBe(before.picked + 2);
  });

  it('of where the needle goes in finds other openings', () => {
    const body = fresh();
    const half = planOf(withPickup(body, { inset: 0.5 }));
    expect(half.points[0]!.x).toBe(planOf(body).points[0]!.x + 0.5);
  });
});

describe('the points of a plan', () => {
  it('are made once, and copied and written like any other field', () => {
    const body = fresh();
    const made = planOf(body);
    expect(made.points).toBe(made.points);
    expect(structuredClone(made).points).toEqual(made.points);
    expect({ ...made }.points).toBe(made.points);
    expect(JSON.stringify(made)).toContain('"alongMm"');
  });
});

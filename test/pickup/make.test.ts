import { describe, expect, it } from 'vitest';
import { countOut, planDesign } from '../../src/pickup';
import { along, design, plan, rectangle, usedOn } from './builders';
import { everyPlan, numbersOf, pointsOn, sum } from './plans';
import { equallySpaced } from '../../src/pickup/choose';
import { inFabric } from './fabric';

/** Holes are picked up on top of the planned count, and are not chosen. */
const withoutHoles = (plan: Parameters<typeof pointsOn>[0], edge: number) =>
  pointsOn(plan, edge).filter((point) => point.kind !== 'stitch' || !point.second);

describe('the plan of any design', () => {
  it('has counts that sum: edges, sections, points 1 to the last, the first row', () => {
    everyPlan((made) => {
      const used = numbersOf(made.points);
      expect(used).toEqual(used.map((_, i) => i + 1));
      expect(used).toHaveLength(made.picked);
      expect(sum(made.edges.map((edge) => edge.count))).toBe(made.picked);
      made.edges.forEach((edge, i) => expect(numbersOf(pointsOn(made, i))).toHaveLength(edge.count));
      if (made.sections.length > 0) expect(sum(made.sections.map((section) => section.count))).toBe(made.picked);
      expect([made.firstRow.from, made.firstRow.to]).toEqual([made.picked, made.target]);
      if (made.firstRow.groups.length > 0) {
        expect(countOut(made.firstRow.groups)).toEqual({ uses: made.picked, leaves: made.target });
      } else expect(made.picked).toBe(made.target);
    });
  });

  it('uses the first and the last opening of every edge with two stitches or more', () => {
    everyPlan((made) => {
      made.edges.forEach((edge, i) => {
        const points = withoutHoles(made, i);
        if (numbersOf(points).length < 2) return;
        const ends = [points[0]!, points.at(-1)!];
        // A curve may begin and end in a gap beside a chain; with one gap brought in only one of the two can be used.
        const gaps = points.filter((point) => point.second && point.n !== null).length;
        if (ends.every((point) => point.second) && gaps === 1) return;
        expect([edge.stretch.edge, ...ends.map((point) => point.n !== null)]).toEqual([edge.stretch.edge, true, true]);
      });
    });
  });

  it("has each edge's rhythm spell out its points exactly", () => {
    everyPlan((made) => {
      made.edges.forEach((edge, i) => {
        const spelled = edge.rhythm.flatMap(({ pick, skip, times }) =>
          Array.from({ length: times }, () => 'x'.repeat(pick) + '.'.repeat(skip)),
        );
        expect(spelled.join('')).toBe(
          usedOn(made, i)
            .map((one) => (one ? 'x' : '.'))
            .join(''),
        );
      });
    });
  });

  it('never passes over two equal openings side by side where more than half are used', () => {
    everyPlan((made) => {
      made.edges.forEach((edge, i) => {
        const points = pointsOn(made, i);
        if (2 * edge.count <= points.length || !equallySpaced(points.map((point) => point.alongMm))) return;
        expect(points.some((point, k) => k > 0 && point.n === null && points[k - 1]!.n === null)).toBe(false);
      });
    });
  });

  it('mirrors twins point for point', () => {
    everyPlan((made) => {
      made.edges.forEach((edge, i) => {
        if (edge.twin < 0 || edge.twin === i) return;
        const other = made.edges[edge.twin]!;
        expect([other.twin, other.count]).toEqual([i, edge.count]);
        const xs = edge.piece.outline.map((one) => one.from[0]);
        const middle = Math.min(...xs) + Math.max(...xs);
        const place = (x: number, y: number, used: boolean) => `${x.toFixed(6)} ${y.toFixed(6)} ${used}`;
        const here = pointsOn(made, i).map(({ x, y, n }) => place(x, y, n !== null));
        const there = pointsOn(made, edge.twin).map(({ x, y, n }) => place(middle - x, y, n !== null));
        if (here.length === there.length) expect(here.sort()).toEqual(there.sort());
      });
    });
  });

  it('has distances that grow along the join', () => {
    everyPlan((made) => {
      made.points.forEach((point, i) => {
        if (i > 0 && point.alongMm < made.points[i - 1]!.alongMm) expect.fail(`${i} of ${made.pickup.id}`);
      });
      expect(made.points.at(-1)!.alongMm).toBeLessThanOrEqual(made.joinMm + 1e-6);
    });
  });

  it('has every place in the fabric, or half a stitch off where a step leaves no row for it', () => {
    everyPlan((made) => {
      for (const [i, edge] of made.edges.entries()) {
        for (const { x, y } of pointsOn(made, i)) {
          // A step at the very foot of a piece takes stitches away that no row was worked on.
          if (!inFabric(edge.piece, x, y, 0.5 + 1e-6)) expect.fail(`${x}, ${y} on ${edge.stretch.edge}`);
        }
      }
    }, 40);
  });
});

describe('planDesign', () => {
  it('keeps the plan of a pick-up while neither it nor its pieces change', () => {
    const made = design([rectangle(30, 40), rectangle(10, 10, {}, { id: 'other' })], along(['right']));
    const first = planDesign(made).pickups[0];
    const moved = { ...made, pieces: [made.pieces[0]!, { ...made.pieces[1]! }] };
    expect(planDesign(moved).pickups[0]).toBe(first);
    const changed = { ...made, pieces: [{ ...made.pieces[0]! }, made.pieces[1]!] };
    expect(planDesign(changed).pickups[0]).not.toBe(first);
    expect(planDesign({ ...made, hand: 'left' }).pickups[0]).not.toBe(first);
  });

  it('says that there is nothing to pick up', () => {
    expect(() => plan(rectangle(1, 20, { bottom: { finish: 'provisional' } }), along(['bottom']))).toThrow(
      expect.objectContaining({ problem: expect.objectContaining({ kind: 'nothing-to-pick-up' }) }),
    );
  });

  it('closes the holes of steps on the first row', () => {
    const steps = [
      { stitches: -4, every: 2, times: 2 },
      { stitches: 0, every: 8, times: 1 },
    ];
    const raw = rectangle(30, 12, { right: { path: 'stepped', steps }, top: { from: [22, 12] } });
    const made = plan(raw, along(['right'], { stepHoles: true }));
    const holes = made.points.filter((point) => point.second);
    expect(holes.map((point) => point.n !== null)).toEqual([true, true]);
    expect(made.picked).toBe(made.target + 2);
    expect(countOut(made.firstRow.groups)).toEqual({ uses: made.picked, leaves: made.target });
  });
});

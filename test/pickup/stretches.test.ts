import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design, Pickup } from '../../src/piece';
import { stretchesOf, twinsOf, type WorkedStretch } from '../../src/pickup/stretches';
import { arbitraryDesign } from '../piece/arbitrary';
import { along, design, piece, plan, rectangle, usedOn, withPickup } from './builders';
import { numbersOf, planned, pointsOn } from './plans';

const stretches = (made: Design) => stretchesOf(made, made.pickups[0]!);

/** A random design with one pick-up along its first piece's edges from 0 on, in whole edges. */
const simple = arbitraryDesign
  .filter((made) => made.pickups.length > 0)
  .map((made): Design => ({ ...made, pickups: [{ ...made.pickups[0]!, spread: 'even', stepHoles: false }] }));

describe('parts of an edge', () => {
  it('[0, a] and [a, 1] have the openings of the whole, in places and in distances', () => {
    fc.assert(
      fc.property(
        arbitraryDesign,
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.boolean(),
        (made, a, backwards) => {
          const first = made.pieces[0]!;
          const pickup = made.pickups[0];
          if (!pickup) return;
          for (const edge of first.outline) {
            const at = (part: [number, number]) => ({ piece: first.id, edge: edge.id, backwards, part });
            const of = (runs: Pickup['along']) => stretchesOf(made, { ...pickup, along: runs, measured: [] });
            const [whole] = of([at([0, 1])]);
            const halves = of(
              backwards !== (made.hand === 'left') ? [at([a, 1]), at([0, a])] : [at([0, a]), at([a, 1])],
            );
            const worked =
              made.hand === 'left' && backwards ? halves.reverse() : made.hand === 'left' ? halves.reverse() : halves;
            const places = (run: WorkedStretch) => run.openings.x.map((x, i) => `${x} ${run.openings.y[i]!}`);
            expect(worked.flatMap(places).sort()).toEqual(places(whole!).sort());
            expect(worked[0]!.edgeMm + worked[1]!.edgeMm).toBeCloseTo(whole!.edgeMm, 6);
            expect(worked[0]!.joinMm + worked[1]!.joinMm).toBeCloseTo(whole!.joinMm, 6);
            expect(worked[0]!.rows + worked[1]!.rows).toBe(whole!.rows);
            expect(worked[0]!.stitches + worked[1]!.stitches).toBe(whole!.stitches);
            for (const half of worked) {
              for (const at of half.openings.edgeAt) expect(at >= -1e-6 && at <= half.edgeMm + 1e-6).toBe(true);
            }
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('share a length by tape in proportion', () => {
    const made = design(
      rectangle(30, 40),
      along(
        [
          { edge: 'right', part: [0, 0.25] },
          { edge: 'right', part: [0.25, 1] },
        ],
        { measured: [{ piece: 'piece', edge: 'right', mm: 200 }] },
      ),
    );
    expect(stretches(made).map((one) => one.measuredMm)).toEqual([50, 150]);
  });
});

describe('working order', () => {
  it('against the outline turns an edge round', () => {
    const made = design(rectangle(30, 10), along([{ edge: 'right', backwards: true }]));
    const [turned] = stretches(made);
    expect(turned!.openings.y).toEqual([9.5, 8.5, 7.5, 6.5, 5.5, 4.5, 3.5, 2.5, 1.5, 0.5]);
    expect(turned!.openings.edgeAt[0]).toBeCloseTo(0.5 * (100 / 28), 9);
  });

  it('of a left-handed knitter is the whole run reversed, as much wanted and as many picked up', () => {
    fc.assert(
      fc.property(simple, (made) => {
        const right = planned({ ...made, hand: 'right' });
        const left = planned(withPickup({ ...made, hand: 'left' }, {}));
        expect(left === null).toBe(right === null);
        if (!right || !left) return;
        expect(left.edges.map((edge) => edge.stretch)).toEqual(right.edges.map((edge) => edge.stretch).reverse());
        expect(left.wanted).toBeCloseTo(right.wanted, 6);
        expect([left.target, left.picked]).toEqual([right.target, right.picked]);
        const counts = right.edges.map((edge) => edge.count).reverse();
        // Of two edges that are equally short the first one worked gets the stitch.
        left.edges.forEach((edge, i) => expect(Math.abs(edge.count - counts[i]!)).toBeLessThanOrEqual(1));
        const place = ({ x, y }: { x: number; y: number }) => `${x.toFixed(6)} ${y.toFixed(6)}`;
        if (left.edges.some((edge, i) => edge.count !== counts[i])) return;
        expect(left.points.map(place)).toEqual(right.points.map(place).reverse());
      }),
      { numRuns: 60 },
    );
  });

  it('of a left-handed knitter has the same rhythm in his own direction', () => {
    const run = along(['bottom', 'right'], {
      rates: [{ piece: 'piece', edge: 'right', rate: { kind: 'ratio', pick: 3, of: 4 } }],
    });
    const right = plan(rectangle(10, 41), run);
    const left = plan(rectangle(10, 41), run, { hand: 'left' });
    expect(usedOn(left, 0)).toEqual(usedOn(right, 1));
    expect(left.points[0]).toMatchObject({ n: 1, y: 40.5 });
  });
});

describe('twins', () => {
  const neck = piece(
    [
      { from: [-20, 0] },
      { from: [20, 0] },
      { from: [20, 61] },
      {
        id: 'right',
        from: [11, 61],
        path: 'curve',
        handles: [
          [11, 50],
          [7, 41],
        ],
      },
      { id: 'foot', from: [3, 41] },
      {
        id: 'left',
        from: [-3, 41],
        path: 'curve',
        handles: [
          [-7, 41],
          [-11, 50],
        ],
      },
      { from: [-11, 61] },
      { from: [-20, 61] },
    ],
    { symmetric: true },
  );
  const mirroredPlaces = (made: ReturnType<typeof plan>, i: number, j: number) => {
    const write = (k: number, sign: number) =>
      pointsOn(made, k)
        .map(({ x, y, n }) => `${(sign * x).toFixed(6)} ${y.toFixed(6)} ${n !== null}`)
        .sort();
    expect(write(i, 1)).toEqual(write(j, -1));
  };

  it.each([
    ['even', {}],
    ['grouped', { spread: 'grouped' }],
    ['with an odd target', { target: 47 }],
    ['left-handed', {}, { hand: 'left' }],
    ['grouped and left-handed', { spread: 'grouped' }, { hand: 'left' }],
    ['of half a stitch', { inset: 0.5 }],
  ])('mirror one another point for point, %s', (_, fields: object, whole: object = {}) => {
    const made = plan(neck, along(['right', 'foot', 'left'], { ...fields }), { ...whole });
    expect(made.edges.map((edge) => edge.twin)).toEqual([2, 1, 0]);
    mirroredPlaces(made, 0, 2);
  });

  it('mirror one another where one is worked backwards', () => {
    for (const spread of ['even', 'grouped']) {
      const made = plan(neck, along(['right', { edge: 'left', backwards: true }], { spread }));
      mirroredPlaces(made, 0, 1);
      expect(usedOn(made, 0)).toEqual(usedOn(made, 1));
    }
  });

  it('are the two halves of an edge that mirrors itself, an odd one in the middle going to one of them', () => {
    const made = plan(
      rectangle(25, 40, {}, { symmetric: true, gauge: { stitches: 20, rows: 28 } }),
      along(
        [
          { edge: 'top', part: [0, 0.5] },
          { edge: 'top', part: [0.5, 1] },
        ],
        {
          rates: [{ piece: 'piece', edge: 'top', rate: { kind: 'length' } }],
          band: { gauge: { stitches: 16, rows: 24 } },
        },
      ),
    );
    expect(made.edges.map((edge) => [edge.twin, edge.openings])).toEqual([
      [1, 12],
      [0, 13],
    ]);
    expect(made.edges[0]!.count).toBe(made.edges[1]!.count);
    expect(usedOn(made, 1).at(-1)).toBe(true);
    expect(numbersOf(made.points)).toHaveLength(made.picked);
  });

  it('are none on a piece that is not symmetric, on other parts, or by other rates', () => {
    const twins = (fields: object, edges: object[] = [{ edge: 'right' }, { edge: 'left' }], symmetric = true) => {
      const made = design(
        { ...neck, symmetric },
        { along: edges.map((edge) => ({ piece: 'piece', ...edge })), ...fields },
      );
      return twinsOf(stretchesOf(made, made.pickups[0]!));
    };
    expect(twins({})).toEqual([1, 0]);
    expect(twins({}, undefined, false)).toEqual([-1, -1]);
    expect(
      twins({}, [
        { edge: 'right', part: [0, 0.4] },
        { edge: 'left', part: [0.6, 1] },
      ]),
    ).toEqual([1, 0]);
    expect(twins({}, [{ edge: 'right', part: [0, 0.4] }, { edge: 'left' }])).toEqual([-1, -1]);
    expect(twins({ rates: [{ piece: 'piece', edge: 'right', rate: { kind: 'each' } }] })).toEqual([-1, -1]);
    expect(twins({ measured: [{ piece: 'piece', edge: 'left', mm: 70 }] })).toEqual([-1, -1]);
  });
});

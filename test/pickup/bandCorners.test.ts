import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BandCorner, BandEdge } from '../../src/pickup';
import { shapingRows } from '../../src/pickup/bandCorners';
import { along, GAUGE, piece, plan, rate, rectangle, type Corner, type Raw } from './builders';
import { everyPlan } from './plans';

const GARTER = { stitches: 20, rows: 40 };
const ROUND = ['bottom', 'right', 'top', 'left'];
const degrees = ({ turn }: BandCorner) => (turn * 180) / Math.PI;

function edgeOf(made: { readonly bandEdge: BandEdge | null }): BandEdge {
  if (!made.bandEdge) throw new Error('no band of known depth');
  return made.bandEdge;
}

/** A triangle that opens at its top by `half` stitches on each side of the middle, over `rows` rows, as a V is cut. */
function vNeck(half: number, rows: number, between = 0): Raw {
  const [left, right] = [40 - half, 40 + between + half];
  const corners: Corner[] = [
    [0, 0],
    [80 + between, 0],
    [80 + between, 100],
    [right, 100],
    [40 + between, 100 - rows],
    ...(between > 0 ? [[40, 100 - rows] as Corner] : []),
    [left, 100],
    [0, 100],
  ];
  return piece(corners.map((from) => ({ from })));
}

/** A circle of this radius in mm, as near as four cubics come to it, on square stitches of 5 mm. */
function disc(radius: number): Raw {
  const r = radius / 5;
  const k = (4 / 3) * (Math.SQRT2 - 1) * r;
  const quarter = ([x, y]: Corner, [a, b]: Corner): Raw => ({
    from: [x, y],
    path: 'curve',
    handles: [
      [x + (k * -y) / r, y + (k * x) / r],
      [a - (k * -b) / r, b - (k * a) / r],
    ],
  });
  const ends: Corner[] = [
    [r, 0],
    [0, r],
    [-r, 0],
    [0, -r],
  ];
  return piece(
    ends.map((from, i) => quarter(from, ends[(i + 1) % 4]!)),
    { gauge: { stitches: 20, rows: 20 } },
  );
}

describe('a corner', () => {
  it('of a right angle in garter takes one on each side every second row, eight to a square', () => {
    const square = rectangle(40, 80, {}, { gauge: GARTER, fabric: 'garter' });
    const made = plan(square, along(ROUND, { joined: true, band: { fabric: 'garter', rows: 10 } }));
    const { corners, after, freeMm, freeStitches } = edgeOf(made);
    expect(corners).toHaveLength(4);
    for (const corner of corners) {
      expect(degrees(corner)).toBeCloseTo(90, 9);
      expect(corner.perRow).toBeCloseTo(0.5, 12);
      expect(corner).toMatchObject({ times: 5, rows: [2, 4, 6, 8, 10], seam: false, point: false, capped: false });
    }
    expect(after).toBe(made.target + 5 * 8);
    // A square of 20 cm with 2.5 cm all round.
    expect(freeMm).toBeCloseTo(4 * 250, 9);
    expect(freeStitches).toBeCloseTo(after, 9);
  });

  it('in stockinette of 20 by 28 takes 2.86 in two rounds', () => {
    const made = plan(rectangle(40, 56), along(ROUND, { joined: true, band: { rows: 14 } }));
    const { corners, after } = edgeOf(made);
    for (const corner of corners) {
      expect(4 * corner.perRow).toBeCloseTo(2.857, 3);
      expect(corner.times).toBe(10);
      expect(new Set(corner.rows).size).toBe(10);
    }
    expect(after).toBe(made.target + 80);
  });

  it('belongs to the level edge of the two, and never to two corners', () => {
    const made = plan(rectangle(40, 80, {}, { gauge: GARTER }), along(ROUND, { joined: true, band: { rows: 4 } }));
    expect(made.edges.map(({ count }) => count)).toEqual([40, 40, 40, 40]);
    expect(edgeOf(made).corners.map(({ stitches }) => stitches)).toEqual([[40], [81], [120], [1]]);
  });

  it('is where a run that is joined ends on its beginning, and not where one is worked flat', () => {
    const band = { rows: 4 };
    const closed = plan(rectangle(30, 42), along(ROUND, { joined: true, band }));
    const open = plan(rectangle(30, 42), along(ROUND, { band }));
    expect(edgeOf(closed).corners.map(({ between }) => between)).toContainEqual([3, 0]);
    expect(edgeOf(open).corners).toHaveLength(3);
  });

  it('is an inner one where the fabric lies outside it', () => {
    const square: Corner[] = [
      [0, 0],
      [60, 0],
      [60, 84],
      [40, 84],
      [40, 56],
      [20, 56],
      [20, 84],
      [0, 84],
    ];
    const neck = piece(square.map((from) => ({ from })));
    const made = plan(neck, along(['edge-3', 'edge-4', 'edge-5'], { band: { rows: 7 } }));
    const { corners, after, freeMm, edgeMm } = edgeOf(made);
    expect(corners.map(degrees).map(Math.round)).toEqual([-90, -90]);
    // Each takes 5 on each side of 25 mm; the level bottom holds both corner stitches.
    expect(corners.map(({ times, stitches }) => [times, stitches])).toEqual([
      [5, [made.edges[0]!.count + 1]],
      [5, [made.edges[0]!.count + made.edges[1]!.count]],
    ]);
    expect(after).toBe(made.target - 20);
    expect(freeMm).toBeCloseTo(edgeMm - 4 * 25, 9);
    expect(edgeOf(plan(neck, along(['edge-3', 'edge-4', 'edge-5'], { band: { rows: 14 } }))).tooDeep).toBe(true);
  });

  it('is none where a schedule or a curve bends within an edge, nor where its parts follow each other', () => {
    const steps = [
      { stitches: -4, every: 2, times: 2 },
      { stitches: 0, every: 16, times: 1 },
    ];
    const stepped = piece([
      { from: [0, 0] },
      { from: [40, 0], path: 'stepped', steps },
      { from: [32, 20] },
      { from: [0, 20] },
    ]);
    const parts = [
      { edge: 'edge-1', part: [0, 0.4] },
      { edge: 'edge-1', part: [0.4, 1] },
    ];
    for (const run of [['edge-1'], parts]) {
      const { corners, freeMm, edgeMm } = edgeOf(plan(stepped, along(run, { band: { rows: 14 } })));
      expect(corners).toEqual([]);
      // A kink to the right, into the fabric's side: the band is shorter there.
      const turn = Math.atan2(4 * 5, (2 * 100) / 28);
      expect(freeMm - edgeMm).toBeCloseTo(-50 * turn, 6);
    }
  });

  it('lies at a seam where two pieces meet, by the angles of both', () => {
    // A square neck: the back's neck goes on from its shoulder, the front's stands on it.
    const front = rectangle(30, 42, {}, { id: 'front' });
    const back = piece(
      [{ from: [0, 0] }, { from: [60, 0] }, { from: [60, 40] }, { from: [40, 40] }, { from: [0, 40] }],
      {
        id: 'back',
      },
    );
    const run = {
      along: [
        { piece: 'front', edge: 'right' },
        { piece: 'back', edge: 'edge-3' },
      ],
      band: { rows: 7 },
    };
    const [corner] = edgeOf(plan([front, back], run)).corners;
    expect(corner).toMatchObject({ seam: true, times: 5 });
    expect(degrees(corner!)).toBeCloseTo(-90, 9);
  });

  it('turns the same way for a left-handed knitter', () => {
    const whole = { joined: true, band: { rows: 8 } };
    const right = edgeOf(plan(rectangle(30, 42), along(ROUND, whole)));
    const left = edgeOf(plan(rectangle(30, 42), along(ROUND, whole), { hand: 'left' }));
    expect(left).toMatchObject({ after: right.after, freeMm: right.freeMm });
    expect(left.corners.map(({ times }) => times)).toEqual(right.corners.map(({ times }) => times));
  });
});

describe('the point of a V', () => {
  const sides = (edges: readonly string[], fields: Raw = {}) => along(edges, { band: { rows: 6, ...fields } });

  it('has two middle stitches where both sides have an even number together', () => {
    const made = plan(vNeck(20, 40), sides(['edge-3', 'edge-4']));
    const [corner] = edgeOf(made).corners;
    const each = made.edges[0]!.count;
    expect(made.edges[1]!.count).toBe(each);
    expect(corner).toMatchObject({ point: true, stitches: [each, each + 1] });
  });

  it('has one where a stitch lies between them, and turns by both angles there', () => {
    const made = plan(vNeck(20, 40, 1), sides(['edge-3', 'edge-4', 'edge-5']));
    const { corners } = edgeOf(made);
    const each = made.edges[0]!.count;
    const turn = 180 - (2 * Math.atan2(100, (40 * 100) / 28) * 180) / Math.PI;
    expect(corners).toHaveLength(1);
    expect(corners[0]).toMatchObject({ point: true, stitches: [each + 1], between: [0, 2] });
    expect(degrees(corners[0]!)).toBeCloseTo(-turn, 9);
  });

  it('in rib takes one on each side of a round at most, and says that more is asked for', () => {
    const rib = { fabric: 'rib', rows: 6 };
    const [deep] = edgeOf(plan(vNeck(8, 70), sides(['edge-3', 'edge-4'], rib))).corners;
    expect(deep!.perRow).toBeGreaterThan(2);
    expect(deep).toMatchObject({ times: 6, capped: true, rows: [1, 2, 3, 4, 5, 6] });
    const [wide] = edgeOf(plan(vNeck(36, 36), sides(['edge-3', 'edge-4'], rib))).corners;
    expect(wide).toMatchObject({ capped: false, rows: [2, 4, 6] });
  });

  it('tells whether the stitches beside it keep the rib whole', () => {
    const joined = { joined: true };
    const rib = { fabric: 'rib', multiple: 4, plus: 0, rows: 4 };
    const run = ['edge-3', 'edge-4', 'edge-5'];
    const odd = plan(vNeck(20, 40, 1), along(run, { ...joined, band: rib, target: 64 }));
    expect(edgeOf(odd).beside).toEqual({ count: 63, multiple: 4, whole: false, below: 61, above: 65 });
    const whole = plan(vNeck(20, 40, 1), along(run, { ...joined, band: rib, target: 65 }));
    expect(edgeOf(whole).beside).toMatchObject({ count: 64, whole: true });
    const even = plan(vNeck(20, 40), along(['edge-3', 'edge-4'], { ...joined, band: rib, target: 64 }));
    expect(edgeOf(even).beside).toMatchObject({ count: 64, whole: true });
  });
});

describe('the free edge', () => {
  it('gains 2 pi d round a full circle, and loses it round a neck', () => {
    const run = along(['edge-0', 'edge-1', 'edge-2', 'edge-3'], { joined: true, band: { rows: 8 } });
    const outer = edgeOf(plan(disc(200), run));
    expect(outer.corners).toEqual([]);
    expect(outer.freeMm - outer.edgeMm).toBeCloseTo(2 * Math.PI * 40, 6);
    expect(outer.curveStitches).toBeCloseTo((2 * Math.PI * 40) / 5, 6);
    // Half a circle out of the front and half out of the back, sewn together at the shoulders.
    const half = (id: string): Raw => {
      const k = (4 / 3) * (Math.SQRT2 - 1) * 20;
      return piece(
        [
          { from: [0, 0] },
          { from: [100, 0] },
          { from: [100, 60] },
          {
            from: [70, 60],
            path: 'curve',
            handles: [
              [70, 60 - k],
              [50 + k, 40],
            ],
          },
          {
            from: [50, 40],
            path: 'curve',
            handles: [
              [50 - k, 40],
              [30, 60 - k],
            ],
          },
          { from: [30, 60] },
          { from: [0, 60] },
        ],
        { id, gauge: { stitches: 20, rows: 20 } },
      );
    };
    const neck = {
      along: ['front', 'back'].flatMap((id) => ['edge-3', 'edge-4'].map((edge) => ({ piece: id, edge }))),
      joined: true,
      band: { rows: 8 },
    };
    const inner = edgeOf(plan([half('front'), half('back')], neck));
    expect(inner.corners).toEqual([]);
    expect(inner.freeMm - inner.edgeMm).toBeCloseTo(-2 * Math.PI * 40, 6);
  });

  it('goes by draw-in as the edge does', () => {
    const drawn = plan(rectangle(40, 56), along(ROUND, { joined: true, band: { rows: 14, drawIn: 10 } }));
    const { corners, freeStitches } = edgeOf(drawn);
    expect(corners[0]!.perRow).toBeCloseTo((0.9 * 20) / 28, 12);
    expect(freeStitches).toBeCloseTo(0.9 * (4 * 300 * 0.2), 9);
  });

  it('is not reckoned without a depth, nor on a bare strip', () => {
    expect(plan(rectangle(40, 56), along(['right'])).bandEdge).toBeNull();
    const bare = rectangle(40, 56, {}, { gauge: undefined });
    expect(plan(bare, along(['right'], { band: { rows: 8, gauge: GAUGE } })).bandEdge).toBeNull();
  });

  it('is left alone by a gap in the run', () => {
    const run = along(
      [
        { edge: 'right', part: [0, 0.3] },
        { edge: 'right', part: [0.6, 1] },
      ],
      { band: { rows: 8 } },
    );
    const { freeMm, edgeMm } = edgeOf(plan(rectangle(40, 56), run));
    expect(freeMm).toBeCloseTo(edgeMm, 9);
  });
});

describe('shaping rows', () => {
  it('are every second row, then all, then two to a row', () => {
    expect(shapingRows(0, 10)).toEqual([]);
    expect(shapingRows(5, 10)).toEqual([2, 4, 6, 8, 10]);
    expect(shapingRows(5, 11)).toEqual([2, 4, 6, 8, 10]);
    expect(shapingRows(10, 10)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(shapingRows(3, 2)).toEqual([1, 1, 2]);
    expect(shapingRows(1, 1)).toEqual([1]);
  });

  it('are as many as asked, within the band, and never far from the even line', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 240 }), (rows, wish) => {
        const times = Math.min(wish, 2 * rows);
        const made = shapingRows(times, rows);
        expect(made).toHaveLength(times);
        expect(made.every((row, i) => row >= 1 && row <= rows && row >= (made[i - 1] ?? 1))).toBe(true);
        for (let row = 1; row <= rows; row++) {
          const done = made.filter((one) => one <= row).length;
          expect(Math.abs(done - (times * row) / rows)).toBeLessThanOrEqual(times <= rows / 2 ? 1.01 : 0.51);
        }
      }),
    );
  });
});

describe('for random angles, gauges and depths', () => {
  it('a corner takes tan(a / 2) rows by stitches on each side, to the nearest whole number', () => {
    const stitch = fc.integer({ min: 8, max: 60 });
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 39 }),
        fc.integer({ min: 4, max: 60 }),
        stitch,
        stitch,
        fc.integer({ min: 1, max: 40 }),
        (half, rows, stitches, high, depth) => {
          const gauge = { stitches, rows: high };
          const band = { rows: depth, gauge };
          const rates = ['edge-3', 'edge-4'].map((edge) => rate(edge, { kind: 'each' }));
          const made = plan(vNeck(half, rows), along(['edge-3', 'edge-4'], { band, rates }));
          const [across, up] = [half * 5, (rows * 100) / 28];
          const turn = Math.PI - 2 * Math.atan2(across, up);
          const { corners, after, freeMm, edgeMm } = edgeOf(made);
          if (turn < (40 * Math.PI) / 180 || turn > (170 * Math.PI) / 180) {
            expect(corners).toEqual([]);
            return;
          }
          const [corner] = corners;
          const perRow = (Math.tan(turn / 2) * stitches) / high;
          expect(corner!.perRow).toBeCloseTo(perRow, 9);
          expect(Math.abs(corner!.times - Math.min(perRow * depth, 2 * depth))).toBeLessThanOrEqual(0.5 + 1e-9);
          expect(after).toBe(made.target - 2 * corner!.times);
          expect(freeMm).toBeCloseTo(edgeMm - ((2 * depth * 100) / high) * Math.tan(turn / 2), 6);
        },
      ),
    );
  });

  it('every plan keeps its sums', () => {
    everyPlan((made) => {
      const free = made.bandEdge;
      if (!free) return;
      const change = free.corners.reduce((all, { turn, rows }) => all + 2 * Math.sign(turn) * rows.length, 0);
      expect(free.after).toBe(made.target + change);
      for (const { stitches } of free.corners) {
        for (const n of stitches) expect(n >= 1 && n <= made.picked).toBe(true);
      }
    });
  });
});

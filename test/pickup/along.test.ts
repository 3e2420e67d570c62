import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointAt, type Segment } from '../../src/geometry';
import type { Piece } from '../../src/piece';
import { alongLine } from '../../src/pickup/along';
import { cellOf, measurePiece, type MeasuredEdge } from '../../src/shaping';
import { arbitraryDesign } from '../piece/arbitrary';
import { design, piece, recorded, type Raw } from './builders';

const first = (raw: Raw, id: string): [MeasuredEdge, Piece] => {
  const one = design(raw).pieces[0]!;
  return [measurePiece(one).find((edge) => edge.id === id)!, one];
};

/** The join by its definition, `integral of (1 + curvature * inset) ds`, as the length of the parallel polygon. */
function parallelLength(segment: Segment, inset: number): number {
  const n = 20_000;
  const at = (i: number) => pointAt(segment, i / n);
  const side = (i: number) => {
    const [a, b] = [at(Math.max(0, i - 1)), at(Math.min(n, i + 1))];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const p = at(i);
    return { x: p.x - (inset * (b.y - a.y)) / length, y: p.y + (inset * (b.x - a.x)) / length };
  };
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const [p, q] = [side(i), side(i + 1)];
    sum += Math.hypot(q.x - p.x, q.y - p.y);
  }
  return sum;
}

const neck = piece([
  { from: [-40, 0] },
  { from: [40, 0] },
  { from: [40, 80] },
  {
    id: 'neck',
    from: [15, 80],
    path: 'curve',
    handles: [
      [15, 56],
      [-15, 56],
    ],
  },
  { from: [-15, 80] },
  { from: [-40, 80] },
]);

describe('the join', () => {
  it('of a straight edge is as long as the edge, wherever the needle goes in', () => {
    const raw = piece([{ from: [0, 0] }, { id: 'slope', from: [30, 0] }, { from: [20, 40] }, { from: [0, 40] }]);
    const [edge, one] = first(raw, 'slope');
    for (const inset of [0, 2.5, 5]) expect(alongLine(edge, cellOf(one), inset).joinMm).toBeCloseTo(edge.edgeMm, 9);
  });

  it('is longer round a neckline: the length of its parallel one stitch in', () => {
    const [edge, one] = first(neck, 'neck');
    const { joinMm } = alongLine(edge, cellOf(one), 5);
    expect(joinMm).toBeGreaterThan(edge.edgeMm);
    expect(joinMm / parallelLength(edge.line[0]!, 5)).toBeCloseTo(1, 5);
    // A U turns by half a circle in all: its join is longer by pi times the inset.
    expect(joinMm - edge.edgeMm).toBeCloseTo(Math.PI * 5, 6);
  });

  it('is shorter round an outer curve', () => {
    const raw = piece([
      { from: [0, 0] },
      {
        id: 'bow',
        from: [40, 0],
        path: 'curve',
        handles: [
          [52, 14],
          [52, 28],
        ],
      },
      { from: [40, 42] },
      { from: [0, 42] },
    ]);
    const [edge, one] = first(raw, 'bow');
    const { joinMm } = alongLine(edge, cellOf(one), 5);
    expect(joinMm).toBeLessThan(edge.edgeMm);
    expect(joinMm / parallelLength(edge.line[0]!, 5)).toBeCloseTo(1, 5);
  });

  it('of steps adds or takes 2 * inset * tan(a / 2) at each turn', () => {
    const steps = [
      { stitches: -6, every: 2, times: 1 },
      { stitches: -2, every: 4, times: 1 },
      { stitches: -1, every: 8, times: 1 },
    ];
    const raw = piece([
      { from: [0, 0] },
      { id: 'steps', from: [30, 0], path: 'stepped', steps },
      { from: [21, 14] },
      { from: [0, 14] },
    ]);
    const [edge, one] = first(raw, 'steps');
    const legs = steps.map(({ stitches, every }) => [stitches * 5, (every * 100) / 28] as const);
    const length = legs.reduce((sum, [x, y]) => sum + Math.hypot(x, y), 0);
    const turns = legs.slice(1).map(([x, y], i) => Math.atan2(y, x) - Math.atan2(legs[i]![1], legs[i]![0]));
    // The edge grows steeper upwards: it turns clockwise, away from the fabric, and the join is longer.
    const corners = turns.reduce((sum, turn) => sum + 2 * 5 * Math.tan(-turn / 2), 0);
    expect(corners).toBeGreaterThan(0);
    expect(alongLine(edge, cellOf(one), 5).joinMm).toBeCloseTo(length + corners, 9);
  });
});

describe('distances', () => {
  it('along the join gain on those along the edge with every turn of a neckline, half of it at its foot', () => {
    const [edge, one] = first(neck, 'neck');
    const choice = { inset: 1, garterAt: 'bump', stepHoles: false, halfLoop: false } as const;
    const { all } = recorded(edge, cellOf(one), choice);
    const gained = all.map((opening) => opening.joinAt - opening.edgeAt);
    expect(gained.every((mm, i) => mm >= (gained[i - 1] ?? 0) - 1e-9)).toBe(true);
    gained.forEach((mm, i) => expect(mm + gained.at(-1 - i)!).toBeCloseTo(Math.PI * 5, 6));
    expect(gained.at(-1)).toBeGreaterThan(0.95 * Math.PI * 5);
  });

  it('grow from opening to opening and lie on the edge and on the join, on any design', () => {
    fc.assert(
      fc.property(arbitraryDesign, fc.constantFrom(0, 0.5, 1), fc.boolean(), ({ pieces }, inset, stepHoles) => {
        for (const one of pieces) {
          for (const edge of measurePiece(one)) {
            const { all, edgeMm, joinMm } = recorded(edge, cellOf(one), {
              inset,
              garterAt: 'bump',
              stepHoles,
              halfLoop: true,
            } as const);
            let [edgeAt, joinAt] = [0, 0];
            for (const opening of all) {
              if (opening.edgeAt < edgeAt || opening.joinAt < joinAt)
                expect.fail(`${edge.id} of ${JSON.stringify(one)}`);
              ({ edgeAt, joinAt } = opening);
            }
            expect(edgeAt).toBeLessThanOrEqual(edgeMm * (1 + 1e-9));
            expect(joinAt).toBeLessThanOrEqual(joinMm + 1e-6);
          }
        }
      }),
      { numRuns: 80 },
    );
  });

  it('grow on a curve with ends and turns between whole rows', () => {
    const heights = fc.double({ min: 0.2, max: 24, noNaN: true });
    fc.assert(
      fc.property(heights, heights, fc.integer({ min: 1, max: 40 }), (a, b, width) => {
        const raw = piece([
          { from: [0, 0] },
          { from: [width, 0] },
          {
            id: 'hill',
            from: [width, 30],
            path: 'curve',
            handles: [
              [width, 30 + a],
              [0, 30 + b],
            ],
          },
          { from: [0, 30] },
        ]);
        const [edge, one] = first(raw, 'hill');
        const { all } = recorded(edge, cellOf(one), {
          inset: 0,
          garterAt: 'bump',
          stepHoles: false,
          halfLoop: false,
        });
        expect(all.every((opening, i) => i === 0 || opening.edgeAt >= all[i - 1]!.edgeAt)).toBe(true);
        expect(all.filter((opening) => opening.kind === 'stitch').length).toBeLessThanOrEqual(width);
      }),
    );
  });

  it('are spread over a whole wavy edge that stays within half a row', () => {
    const wave = piece([
      { from: [0, 0] },
      { from: [80, 0] },
      {
        id: 'wave',
        from: [80, 40],
        path: 'curve',
        handles: [
          [60, 41],
          [20, 39],
        ],
      },
      { from: [0, 40] },
    ]);
    const [edge, one] = first(wave, 'wave');
    const { all } = recorded(edge, cellOf(one), { inset: 1, garterAt: 'bump', stepHoles: false, halfLoop: false });
    expect(all).toHaveLength(80);
    all.forEach((opening, i) => expect(Math.abs(opening.edgeAt - 5 * (i + 0.5))).toBeLessThan(5));
  });

  it('share a join that folds back in proportion to the edge', () => {
    // A bow with a radius far below a stitch.
    const raw = piece([
      { from: [0, 0] },
      {
        id: 'knob',
        from: [40, 0],
        path: 'curve',
        handles: [
          [42, 1],
          [42, 2],
        ],
      },
      { from: [40, 3] },
      { from: [0, 40] },
    ]);
    const [edge, one] = first(raw, 'knob');
    const { all, edgeMm, joinMm } = recorded(edge, cellOf(one), {
      inset: 1,
      garterAt: 'bump',
      stepHoles: false,
      halfLoop: false,
    });
    expect(joinMm).toBeCloseTo(alongLine(edge, cellOf(one), 5).joinMm, 9);
    all.forEach((opening) => expect(opening.joinAt / joinMm).toBeCloseTo(opening.edgeAt / edgeMm, 9));
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, workedSchedule } from '../../../src/editor';
import { measurePiece } from '../../../src/shaping';
import { nearestOn, pointAt } from '../../../src/geometry';
import type { Design } from '../../../src/piece';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './sample';

const pullover = sample('pullover');
const cardigan = sample('cardigan-front');

function path(design: Design, piece: string, edge: string, to: 'straight' | 'curve' | 'stepped') {
  return pieceOf(done(design, { kind: 'edge-path', piece, edge, path: to }), piece);
}

const lengthOf = (piece: Parameters<typeof measurePiece>[0], id: string) =>
  measurePiece(piece).find((edge) => edge.id === id)!.edgeMm;

describe('an edge that becomes a schedule', () => {
  it('is worked by the steps that were shown for its curve, on both halves', () => {
    const next = path(pullover, 'front', 'neck-curve-left', 'stepped');
    const steps = [
      { stitches: -3, every: 2, times: 1 },
      { stitches: -2, every: 2, times: 1 },
      { stitches: -1, every: 2, times: 3 },
      { stitches: -1, every: 4, times: 1 },
    ];
    expect(edgeOf(next, 'neck-curve-left')).toMatchObject({ path: 'stepped', steps });
    expect(edgeOf(next, 'neck-curve-right')).toMatchObject({ path: 'stepped', steps });
    expect(edgeOf(next, 'neck-curve-left')).not.toHaveProperty('handles');
  });

  it('keeps the length of a curve to within two stitches', () => {
    const next = path(pullover, 'front', 'neck-curve-left', 'stepped');
    const old = lengthOf(pieceOf(pullover, 'front'), 'neck-curve-left');
    expect(Math.abs(lengthOf(next, 'neck-curve-left') - old)).toBeLessThan((2 * 100) / 22);
  });

  it('has the classic steps of a slope', () => {
    const design = designOf(
      straightPiece([
        [0, 0],
        [20, 0],
        [15, 20],
        [0, 20],
      ]),
    );
    expect(edgeOf(path(design, 'piece', 'e1', 'stepped'), 'e1')).toMatchObject({
      steps: [{ stitches: -1, every: 4, times: 5 }],
    });
    expect(edgeOf(path(design, 'piece', 'e3', 'stepped'), 'e3')).toMatchObject({
      steps: [{ stitches: 0, every: 20, times: 1 }],
    });
  });

  it('stays as it is where it has no rows, or turns in y', () => {
    const level = { kind: 'edge-path', piece: 'front', edge: 'cast-on', path: 'stepped' } as const;
    expect(changed(pullover, level)).toBe(pullover);
    expect(workedSchedule(pieceOf(pullover, 'front'), 0)).toBeNull();
    const design = designOf(
      straightPiece([
        [0, 0],
        [20, 0],
        [20, 20],
        [0, 30],
      ]),
    );
    const wavy = done(design, { kind: 'edge-bend', piece: 'piece', edge: 'e2', through: [10, 40] });
    expect(changed(wavy, { kind: 'edge-path', piece: 'piece', edge: 'e2', path: 'stepped' })).toBe(wavy);
  });
});

describe('a schedule that becomes a curve', () => {
  it.each([
    ['front', 'armhole-left'],
    ['front', 'shoulder-left'],
    ['back', 'neck-slope-right'],
    ['back', 'armhole-left'],
  ])('keeps the length of %s %s to within a stitch', (piece, edge) => {
    const next = path(pullover, piece, edge, 'curve');
    const old = lengthOf(pieceOf(pullover, piece), edge);
    expect(Math.abs(lengthOf(next, edge) - old)).toBeLessThan(100 / 22);
  });

  it('is the curve that it was made from, to within a stitch', () => {
    const worked = done(cardigan, { kind: 'edge-path', piece: 'right-front', edge: 'neck-curve', path: 'stepped' });
    const again = path(worked, 'right-front', 'neck-curve', 'curve');
    const [before, after] = [pieceOf(cardigan, 'right-front'), again].map(
      (piece) => measurePiece(piece).find(({ id }) => id === 'neck-curve')!.line[0]!,
    );
    for (let t = 0; t <= 1; t += 1 / 16) {
      expect(nearestOn(before!, pointAt(after!, t)).distance).toBeLessThan(100 / 24);
    }
  });

  it('becomes straight as well', () => {
    expect(edgeOf(path(pullover, 'front', 'shoulder-left', 'straight'), 'shoulder-left')).toEqual({
      id: 'shoulder-left',
      name: 'left shoulder',
      from: [30, 120],
      path: 'straight',
    });
  });
});

describe('a straight edge that becomes a curve', () => {
  it('is a quarter ellipse between a level and a plumb neighbour', () => {
    const straight = path(cardigan, 'right-front', 'neck-curve', 'straight');
    const next = path({ ...cardigan, pieces: [straight] }, 'right-front', 'neck-curve', 'curve');
    const edge = edgeOf(next, 'neck-curve');
    if (edge.path !== 'curve') throw new Error('it is a curve');
    const [a, b] = edge.handles;
    expect(a[1]).toBe(162);
    expect(b[0]).toBe(40);
    // The middle of the curve lies on the ellipse about (50, 180) with half axes 10 and 18.
    const [x, y] = [(50 + 3 * a[0] + 3 * b[0] + 40) / 8, (162 + 3 * a[1] + 3 * b[1] + 180) / 8];
    expect(((x - 50) / 10) ** 2 + ((y - 180) / 18) ** 2).toBeCloseTo(1, 12);
  });

  it('is level on the middle of a symmetric piece, and plumb at its other end', () => {
    const vest = sample('vest');
    const straight = done(vest, { kind: 'edge-path', piece: 'front', edge: 'neck-left', path: 'straight' });
    const edge = edgeOf(path(straight, 'front', 'neck-right', 'curve'), 'neck-left');
    if (edge.path !== 'curve') throw new Error('it is a curve');
    expect(edge.handles[0][0]).toBe(13);
    expect(edge.handles[1][1]).toBe(84);
  });

  it('is an S between two plumb neighbours', () => {
    const design = designOf(
      straightPiece([
        [0, 0],
        [20, 0],
        [20, 10],
        [24, 30],
        [24, 40],
        [0, 40],
      ]),
    );
    const edge = edgeOf(path(design, 'piece', 'e2', 'curve'), 'e2');
    expect(edge).toMatchObject({
      handles: [
        [20, 20],
        [24, 20],
      ],
    });
  });

  it('bows into the fabric where it is plumb or level', () => {
    const design = designOf(
      straightPiece([
        [0, 0],
        [40, 0],
        [40, 40],
        [0, 40],
      ]),
    );
    const bowOf = (id: string) => {
      const edge = edgeOf(path(design, 'piece', id, 'curve'), id);
      if (edge.path !== 'curve') throw new Error('it is a curve');
      return edge.handles;
    };
    expect(bowOf('e0').every(([, y]) => y > 0)).toBe(true);
    expect(bowOf('e1').every(([x]) => x < 40)).toBe(true);
    expect(bowOf('e2').every(([, y]) => y < 40)).toBe(true);
    expect(bowOf('e3').every(([x]) => x > 0)).toBe(true);
  });
});

describe('a handle', () => {
  const curve = 'neck-curve-left';

  it('goes where it is put, and its mirror image with it', () => {
    const at = [14, 109.5] as const;
    const next = pieceOf(done(pullover, { kind: 'edge-handle', piece: 'front', edge: curve, handle: 0, at }), 'front');
    expect(edgeOf(next, curve)).toMatchObject({
      handles: [
        [14, 109.5],
        [8.5, 104],
      ],
    });
    expect(edgeOf(next, 'neck-curve-right')).toMatchObject({
      handles: [
        [-8.5, 104],
        [-14, 109.5],
      ],
    });
  });

  it('of an edge that mirrors itself takes its other one along', () => {
    const bent = done(pullover, { kind: 'edge-path', piece: 'front', edge: 'neck-center', path: 'curve' });
    const change = { kind: 'edge-handle', piece: 'front', edge: 'neck-center', handle: 1, at: [-4, 100] } as const;
    const next = pieceOf(done(bent, change), 'front');
    expect(edgeOf(next, 'neck-center')).toMatchObject({
      handles: [
        [4, 100],
        [-4, 100],
      ],
    });
  });

  it('that is there already, or that no edge has, changes nothing', () => {
    const change = { kind: 'edge-handle', piece: 'front', edge: curve, handle: 0, at: [15, 112] } as const;
    expect(changed(pullover, change)).toBe(pullover);
    expect(changed(pullover, { ...change, edge: 'side-left' })).toBe(pullover);
  });
});

describe('a bend', () => {
  const piece = straightPiece([
    [0, 0],
    [40, 0],
    [40, 60],
    [0, 60],
  ]);
  const place = fc.double({ min: -9, max: 9, noNaN: true });

  it('passes through the place by its middle, from a straight edge and from a curve', () => {
    fc.assert(
      fc.property(place, place, place, place, (x, y, x2, y2) => {
        let design = designOf(piece);
        for (const through of [
          [40 + x, 30 + y],
          [40 + x2, 30 + y2],
        ] as const) {
          design = changed(design, { kind: 'edge-bend', piece: 'piece', edge: 'e1', through });
          const edge = design.pieces[0]!.outline[1]!;
          if (edge.path !== 'curve') continue;
          const middle = [0, 1].map(
            (k) => ([40, 0][k]! + 3 * edge.handles[0][k]! + 3 * edge.handles[1][k]! + [40, 60][k]!) / 8,
          );
          expect(middle[0]).toBeCloseTo(through[0], 9);
          expect(middle[1]).toBeCloseTo(through[1], 9);
        }
      }),
    );
  });

  it('of an edge that mirrors itself stays on the middle', () => {
    const next = done(pullover, { kind: 'edge-bend', piece: 'front', edge: 'neck-center', through: [3, 100] });
    const edge = edgeOf(pieceOf(next, 'front'), 'neck-center');
    if (edge.path !== 'curve') throw new Error('it is a curve');
    expect(edge.handles[0][0]).toBe(-edge.handles[1][0]);
    expect(edge.handles[0][1]).toBeCloseTo(104 - (4 * 4) / 3, 9);
  });

  it('through where the middle is changes nothing', () => {
    expect(
      changed(designOf(piece), { kind: 'edge-bend', piece: 'piece', edge: 'e1', through: [40, 30] }).pieces[0],
    ).toBe(piece);
  });
});

import { describe, expect, it } from 'vitest';
import { changed, type Change } from '../../../src/editor';
import type { Design, Piece } from '../../../src/piece';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './sample';

const pullover = sample('pullover');
const vest = sample('vest');
const square = designOf(
  straightPiece([
    [0, 0],
    [20, 0],
    [20, 30],
    [0, 30],
  ]),
);

type Size = Omit<Change & { kind: 'edge-size' }, 'kind' | 'piece' | 'edge'>;

const sized = (design: Design, piece: string, edge: string, size: Size): Piece =>
  pieceOf(done(design, { kind: 'edge-size', piece, edge, ...size }), piece);
const places = (piece: Piece) => piece.outline.map(({ from }) => from);

describe('an edge set to so many stitches or rows', () => {
  it('moves its end alone', () => {
    expect(places(sized(square, 'piece', 'e0', { stitches: 25, along: false }))).toEqual([
      [0, 0],
      [25, 0],
      [20, 30],
      [0, 30],
    ]);
    expect(places(sized(square, 'piece', 'e3', { rows: 25, along: false }))).toEqual([
      [0, 5],
      [20, 0],
      [20, 30],
      [0, 30],
    ]);
  });

  it('moves what lies beyond along', () => {
    expect(places(sized(square, 'piece', 'e0', { stitches: 25, along: true }))).toEqual([
      [0, 0],
      [25, 0],
      [25, 30],
      [0, 30],
    ]);
    // The top goes left, so its end and what lies beyond is on the left.
    expect(places(sized(square, 'piece', 'e2', { stitches: 25, along: true }))).toEqual([
      [-5, 0],
      [20, 0],
      [20, 30],
      [-5, 30],
    ]);
    // Rows are added at the top, whichever way the edge goes.
    for (const edge of ['e1', 'e3']) {
      expect(places(sized(square, 'piece', edge, { rows: 44, along: true }))).toEqual([
        [0, 0],
        [20, 0],
        [20, 44],
        [0, 44],
      ]);
    }
  });

  it('may be set to both at once', () => {
    const leant = designOf(
      straightPiece([
        [0, 0],
        [20, 0],
        [24, 30],
        [0, 30],
      ]),
    );
    const next = sized(leant, 'piece', 'e1', { stitches: 6, rows: 40, along: true });
    expect(places(next)).toEqual([
      [0, 0],
      [20, 0],
      [26, 40],
      [0, 40],
    ]);
  });

  it('leans the way the next edge goes where it was plumb or level', () => {
    expect(places(sized(square, 'piece', 'e1', { stitches: 3, along: false }))[2]).toEqual([17, 30]);
    expect(places(sized(square, 'piece', 'e3', { stitches: 3, along: false }))[0]).toEqual([3, 0]);
    expect(places(sized(square, 'piece', 'e0', { rows: 3, along: false }))[1]).toEqual([20, 3]);
  });

  it('stays the same design where it is so already, or is not there', () => {
    const change = { kind: 'edge-size', piece: 'piece', edge: 'e0', stitches: 20, rows: 0, along: true } as const;
    expect(changed(square, change)).toBe(square);
    expect(changed(square, { ...change, stitches: 3, edge: 'none' })).toBe(square);
  });
});

describe('on a symmetric piece', () => {
  it('both halves grow outwards about the middle', () => {
    const next = sized(pullover, 'front', 'underarm-left', { stitches: 5, along: true });
    const front = pieceOf(pullover, 'front');
    next.outline.forEach(({ from: [x, y] }, i) => {
      const [oldX, oldY] = front.outline[i]!.from;
      expect([x, y]).toEqual([Math.abs(oldX) >= 39 ? oldX + 2 * Math.sign(oldX) : oldX, oldY]);
    });
  });

  it('an edge that mirrors itself grows by half at each end', () => {
    const alone = sized(pullover, 'front', 'neck-center', { stitches: 16, along: false });
    expect(edgeOf(alone, 'neck-center').from).toEqual([8, 104]);
    expect(edgeOf(alone, 'neck-curve-right').from).toEqual([-8, 104]);
    const along = sized(pullover, 'front', 'cast-on', { stitches: 82, along: true });
    expect(edgeOf(along, 'side-left').from).toEqual([41, 0]);
    expect(edgeOf(along, 'underarm-left').from).toEqual([41, 74]);
    expect(edgeOf(along, 'armhole-left').from).toEqual([36, 74]);
  });

  it('an odd stitch goes into the middle of the whole piece', () => {
    const next = sized(pullover, 'front', 'cast-on', { stitches: 81, along: true });
    expect(edgeOf(next, 'cast-on').from).toEqual([-40, 0]);
    expect(edgeOf(next, 'side-left').from).toEqual([41, 0]);
    expect(edgeOf(next, 'neck-center').from).toEqual([7, 104]);
    expect(edgeOf(next, 'neck-curve-right').from).toEqual([-6, 104]);
  });

  it('an odd stitch has no place where a corner lies on the middle, or only the ends may move', () => {
    const change = { kind: 'edge-size', piece: 'front', edge: 'cast-on', stitches: 81, along: true } as const;
    expect(changed(vest, change)).toBe(vest);
    expect(changed(pullover, { ...change, along: false })).toBe(pullover);
  });

  it('an edge that ends on the middle moves its other end', () => {
    const next = sized(vest, 'front', 'neck-left', { stitches: 15, along: false });
    expect(edgeOf(next, 'neck-left').from).toEqual([15, 134]);
    expect(edgeOf(next, 'neck-right').from).toEqual([0, 84]);
  });

  it('an edge that mirrors itself can have no rows', () => {
    const change = { kind: 'edge-size', piece: 'front', edge: 'cast-on', rows: 2, along: true } as const;
    expect(changed(pullover, change)).toBe(pullover);
  });
});

describe('a schedule that is set', () => {
  const steps = [
    { stitches: -5, every: 2, times: 2 },
    { stitches: -6, every: 2, times: 2 },
  ];
  const change = { kind: 'edge-steps', piece: 'front', edge: 'shoulder-left', steps } as const;

  it('moves the far corner to where it ends, on both halves', () => {
    const next = pieceOf(done(pullover, { ...change, fit: true }), 'front');
    expect(edgeOf(next, 'shoulder-left')).toMatchObject({ from: [30, 120], steps });
    expect(edgeOf(next, 'neck-straight-left').from).toEqual([8, 128]);
    expect(edgeOf(next, 'shoulder-right')).toMatchObject({ from: [-8, 128], steps });
  });

  it('moves all above along', () => {
    const longer = [
      { stitches: -1, every: 4, times: 6 },
      { stitches: 0, every: 30, times: 1 },
    ];
    const armhole = { kind: 'edge-steps', piece: 'front', edge: 'armhole-left', steps: longer, fit: true } as const;
    const next = pieceOf(done(pullover, armhole), 'front');
    expect(edgeOf(next, 'shoulder-left')).toMatchObject({
      from: [30, 128],
      steps: [{ stitches: -5, every: 2, times: 3 }],
    });
    expect(edgeOf(next, 'neck-straight-left').from).toEqual([15, 134]);
    expect(edgeOf(next, 'neck-center').from).toEqual([6, 104]);
  });

  it('that falls moves its upper corner, and its lower one where the upper is on the middle', () => {
    const wide = [
      { stitches: -1, every: 2, times: 10 },
      { stitches: -1, every: 5, times: 6 },
    ];
    const neck = { kind: 'edge-steps', piece: 'front', edge: 'neck-left', steps: wide, fit: true } as const;
    const next = pieceOf(done(vest, neck), 'front');
    expect(edgeOf(next, 'neck-left')).toMatchObject({ from: [16, 134], steps: wide });
    expect(edgeOf(next, 'neck-right')).toMatchObject({ from: [0, 84], steps: wide });

    const shawl = designOf(
      straightPiece(
        [
          [-20, 0],
          [20, 0],
          [0, 40],
        ],
        { symmetric: true },
      ),
    );
    const narrow = [{ stitches: -1, every: 2, times: 18 }];
    const side = { kind: 'edge-steps', piece: 'piece', edge: 'e1', steps: narrow, fit: true } as const;
    expect(places(done(shawl, side).pieces[0]!)).toEqual([
      [-18, 0],
      [18, 0],
      [0, 36],
    ]);
  });

  it('stands as it is without fitting, for the check to name what is missing', () => {
    const next = pieceOf(changed(pullover, { ...change, fit: false }), 'front');
    expect(edgeOf(next, 'shoulder-left')).toMatchObject({ steps });
    expect(edgeOf(next, 'neck-straight-left').from).toEqual([15, 126]);
  });

  it('is no more than it was where it is the same', () => {
    const same = [{ stitches: -5, every: 2, times: 3 }];
    for (const fit of [true, false]) expect(changed(pullover, { ...change, steps: same, fit })).toBe(pullover);
  });

  it('is not for an edge that mirrors itself', () => {
    expect(changed(pullover, { ...change, edge: 'cast-on', fit: true })).toBe(pullover);
  });
});

import { describe, expect, it } from 'vitest';
import { changed, heldBy, pulled, type Change, type Held } from '../../src/editor';
import type { Edge, Piece } from '../../src/piece';
import { done, pieceOf, sample, straightPiece } from './outline/sample';

/** 20 stitches, 30 rows, its upper left corner cut off. */
const PIECE = straightPiece([
  [0, 0],
  [20, 0],
  [20, 30],
  [8, 30],
  [0, 22],
]);
const NEAR = { x: 2, y: 3 };
const FRONT = pieceOf(sample('pullover'), 'front');

function corner(piece: Piece, edge: string, chosen: readonly string[] = []): Held {
  const from = piece.outline.find(({ id }) => id === edge)!.from;
  return heldBy(piece, { kind: 'corner', piece: piece.id, edge }, from, chosen)!;
}

function curved(edge: string, handles: Extract<Edge, { path: 'curve' }>['handles']): Piece {
  const outline = PIECE.outline.map((one): Edge => (one.id === edge ? { ...one, path: 'curve', handles } : one));
  return { ...PIECE, outline };
}

const move = (corners: readonly string[], dx: number, dy: number, piece = 'piece'): Change => ({
  kind: 'move-corners',
  piece,
  corners,
  dx,
  dy,
});

describe('a corner in the hand', () => {
  it('takes those chosen with it along, and no others', () => {
    expect(corner(PIECE, 'e2', ['e2', 'e3'])).toMatchObject({ corners: ['e2', 'e3'], by: [20, 30] });
    expect(corner(PIECE, 'e2', ['e3', 'e4'])).toMatchObject({ corners: ['e2'] });
    expect(heldBy(PIECE, { kind: 'corner', piece: 'piece', edge: 'gone' }, [0, 0], [])).toBeNull();
  });

  it('goes by whole stitches and rows where nothing is near', () => {
    expect(pulled(PIECE, corner(PIECE, 'e2'), [5.4, 7.6], NEAR)).toEqual({ change: move(['e2'], 5, 8), hints: [] });
    expect(pulled(PIECE, corner(PIECE, 'e3'), [3.5, 4.4], NEAR)).toEqual({ change: move(['e3'], 4, 4), hints: [] });
  });

  it('catches on the row of another corner and says with which one it is level', () => {
    const { change, hints } = pulled(PIECE, corner(PIECE, 'e2'), [5.4, -2.9], NEAR);
    expect(change).toEqual(move(['e2'], 5, 0));
    expect(hints).toEqual([{ kind: 'level', from: [8, 30], to: [25, 30] }]);
  });

  it('catches on the column of another corner, or on both', () => {
    // e4 (0, 22) comes to (19, 8): within 2 stitches of the column of 20, and of no row.
    expect(pulled(PIECE, corner(PIECE, 'e4'), [19, -14], NEAR)).toEqual({
      change: move(['e4'], 20, -14),
      hints: [{ kind: 'plumb', from: [20, 0], to: [20, 8] }],
    });
    expect(pulled(PIECE, corner(PIECE, 'e3'), [-7, -7], NEAR)).toEqual({
      change: move(['e3'], -8, -8),
      hints: [
        { kind: 'plumb', from: [0, 0], to: [0, 22] },
        { kind: 'level', from: [0, 22], to: [0, 22] },
      ],
    });
  });

  it('catches on the nearer of two, and on the very edge of reach', () => {
    // The columns of 8 and 20: from 12.9 the left one is nearer, from 15.1 the right one.
    const wide = { x: 8, y: 0 };
    expect(pulled(PIECE, corner(PIECE, 'e4'), [12.9, -10], wide).change).toEqual(move(['e4'], 8, -10));
    expect(pulled(PIECE, corner(PIECE, 'e4'), [15.1, -10], wide).change).toEqual(move(['e4'], 20, -10));
    expect(pulled(PIECE, corner(PIECE, 'e2'), [10, -3], NEAR).change).toEqual(move(['e2'], 10, 0));
    expect(pulled(PIECE, corner(PIECE, 'e2'), [10, -3.01], NEAR).change).toEqual(move(['e2'], 10, -3));
  });

  it('does not catch on what moves along', () => {
    const { change, hints } = pulled(PIECE, corner(PIECE, 'e2', ['e2', 'e3']), [6, -2], NEAR);
    expect(change).toEqual(move(['e2', 'e3'], 6, -2));
    expect(hints).toEqual([]);
  });

  it('of a symmetric piece does not catch on its own twin, which moves along', () => {
    const { change, hints } = pulled(FRONT, corner(FRONT, 'neck-curve-left'), [0, 1], NEAR);
    expect(change).toMatchObject({ dx: 0, dy: 2 });
    expect(hints.map(({ kind }) => kind)).toEqual(['plumb', 'level']);
    expect(hints[1]!.from).toEqual([30, 120]);
    const far = pulled(FRONT, corner(FRONT, 'neck-curve-left'), [0, -1], { x: 0.5, y: 1 });
    expect(far.change).toMatchObject({ dx: 0, dy: -1 });
  });

  it('on the middle of a symmetric piece goes up and down alone', () => {
    const tip = straightPiece(
      [
        [0, 0],
        [10, 12],
        [-10, 12],
      ],
      { symmetric: true },
    );
    expect(pulled(tip, corner(tip, 'e0'), [4, -3], { x: 0, y: 0 }).change).toEqual(move(['e0'], 0, -3));
    expect(pulled(tip, corner(tip, 'e0'), [4, 0.2], { x: 0, y: 0 })).toMatchObject({ change: null });
  });

  it('that has not left its place makes nothing of the design', () => {
    expect(pulled(PIECE, corner(PIECE, 'e3'), [0.4, -0.4], { x: 0, y: 0 })).toEqual({ change: null, hints: [] });
    // It is drawn back to the row that it shares with another one.
    expect(pulled(PIECE, corner(PIECE, 'e2'), [0.4, -2], NEAR).change).toBeNull();
  });

  it('held loosely catches nowhere', () => {
    expect(pulled(PIECE, corner(PIECE, 'e2'), [5.4, -2], NEAR, true)).toEqual({
      change: move(['e2'], 5, -2),
      hints: [],
    });
  });
});

describe('an edge in the hand', () => {
  const edge = (id: string): Held => ({ kind: 'edge', piece: 'piece', edge: id });

  it('that is level goes up and down, one that is plumb to the sides', () => {
    expect(pulled(PIECE, edge('e2'), [9, -4.4], NEAR).change).toMatchObject({ corners: ['e2', 'e3'], dx: 0, dy: -4 });
    expect(pulled(PIECE, edge('e1'), [2.6, 9], NEAR).change).toMatchObject({ corners: ['e1', 'e2'], dx: 3, dy: 0 });
    expect(pulled(PIECE, edge('e2'), [9, 0.4], NEAR)).toEqual({ change: null, hints: [] });
  });

  it('that slopes goes both ways, and the last one has the first corner at its end', () => {
    expect(pulled(PIECE, edge('e3'), [1.2, -2.3], NEAR).change).toEqual(move(['e3', 'e4'], 1, -2));
    expect(pulled(PIECE, edge('e4'), [-3, 5], NEAR).change).toMatchObject({ corners: ['e4', 'e0'], dx: -3, dy: 0 });
  });

  it('that is not there gives nothing', () => {
    expect(pulled(PIECE, edge('gone'), [5, 5], NEAR).change).toBeNull();
  });
});

it('the middle of an edge bends it through the place where the hand is', () => {
  const held = heldBy(PIECE, { kind: 'middle', piece: 'piece', edge: 'e1' }, [20, 15], [])!;
  const { change, hints } = pulled(PIECE, held, [4.25, -2.5], NEAR);
  expect(change).toEqual({ kind: 'edge-bend', piece: 'piece', edge: 'e1', through: [24.25, 12.5] });
  expect(hints).toEqual([]);
});

describe('the handle of a curve', () => {
  const piece = curved('e1', [
    [26, 10],
    [25, 20],
  ]);
  const handle = (which: 0 | 1, at: readonly [number, number]): Held =>
    heldBy(piece, { kind: 'handle', piece: 'piece', edge: 'e1', handle: which }, at, [])!;
  const put = (which: 0 | 1, x: number, y: number) => ({
    kind: 'edge-handle',
    piece: 'piece',
    edge: 'e1',
    handle: which,
    at: [x, y],
  });

  it('goes where the hand goes, between the stitches too', () => {
    expect(pulled(piece, handle(0, [26, 10]), [0.25, 1.5], NEAR)).toEqual({ change: put(0, 26.25, 11.5), hints: [] });
  });

  it('catches where its own end of the curve is plumb or level', () => {
    expect(pulled(piece, handle(0, [26, 10]), [-4.5, 1.5], NEAR)).toEqual({
      change: put(0, 20, 11.5),
      hints: [{ kind: 'plumb', from: [20, 0], to: [20, 11.5] }],
    });
    // The second one belongs to the corner at the end, (20, 30).
    expect(pulled(piece, handle(1, [25, 20]), [0, 7.5], NEAR)).toEqual({
      change: put(1, 25, 30),
      hints: [{ kind: 'level', from: [20, 30], to: [25, 30] }],
    });
  });

  it('near both is plumb, so that it never falls onto its corner', () => {
    expect(pulled(piece, handle(0, [26, 10]), [-5, -9], NEAR).change).toEqual(put(0, 20, 1));
  });

  it('held loosely catches nowhere', () => {
    expect(pulled(piece, handle(0, [26, 10]), [-4.5, 1.5], NEAR, true).change).toEqual(put(0, 21.5, 11.5));
  });
});

it('what a hand makes of a design is sound: each grip of each piece, pulled a little', () => {
  const design = sample('pullover');
  for (const { id } of FRONT.outline) {
    const { change } = pulled(FRONT, corner(FRONT, id), [1, 1], { x: 0.4, y: 0.4 });
    if (change) expect(changed(design, change)).not.toBe(design);
  }
  const { change } = pulled(FRONT, corner(FRONT, 'neck-center'), [1, -2], { x: 0.4, y: 0.4 });
  const moved = pieceOf(done(design, change!), 'front').outline;
  expect(moved.find(({ id }) => id === 'neck-center')!.from).toEqual([7, 102]);
  expect(moved.find(({ id }) => id === 'neck-curve-right')!.from).toEqual([-7, 102]);
});

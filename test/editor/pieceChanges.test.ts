import { describe, expect, it } from 'vitest';
import { changed, type Change } from '../../src/editor';
import { checkDesign, type Edge } from '../../src/piece';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './outline/sample';

const pullover = sample('pullover');
const front = pieceOf(pullover, 'front');

describe('fields of an edge', () => {
  const set = (edge: string, fields: (Change & { kind: 'edge-fields' })['fields']) =>
    done(pullover, { kind: 'edge-fields', piece: 'front', edge, fields });

  it('are its own name, and the make of its twin too', () => {
    const next = pieceOf(set('side-left', { name: 'seam', selvage: 'slipped' }), 'front');
    expect(edgeOf(next, 'side-left')).toEqual({ ...edgeOf(front, 'side-left'), name: 'seam', selvage: 'slipped' });
    expect(edgeOf(next, 'side-right')).toEqual({ ...edgeOf(front, 'side-right'), selvage: 'slipped' });
  });

  it('are gone when they are set to nothing', () => {
    const next = pieceOf(set('underarm-left', { name: undefined, finish: undefined }), 'front');
    expect(edgeOf(next, 'underarm-left')).toEqual({ id: 'underarm-left', from: [39, 74], path: 'straight' });
    expect(edgeOf(next, 'underarm-right')).not.toHaveProperty('finish');
    expect(edgeOf(next, 'underarm-right').name).toBe('right underarm');
  });

  it('that are so already change nothing', () => {
    const fields = { name: 'left side', selvage: 'plain', finish: undefined } as const;
    expect(changed(pullover, { kind: 'edge-fields', piece: 'front', edge: 'side-left', fields })).toBe(pullover);
  });

  it('leave fields of other hands', () => {
    const piece = straightPiece([
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ]);
    const outline = piece.outline.map((edge) => ({ ...edge, colour: 'red' }));
    const design = designOf({ ...piece, outline });
    const named = changed(design, { kind: 'edge-fields', piece: 'piece', edge: 'e1', fields: { name: 'side' } });
    const curved = changed(named, { kind: 'edge-path', piece: 'piece', edge: 'e1', path: 'curve' });
    expect(curved.pieces[0]!.outline[1]).toMatchObject({ colour: 'red', name: 'side', path: 'curve' });
  });
});

describe('fields of a piece', () => {
  it('are set, the outline left alone', () => {
    const fields = { name: 'Front of it', fabric: 'seed' } as const;
    const next = done(pullover, { kind: 'piece-fields', piece: 'front', fields });
    expect(pieceOf(next, 'front')).toEqual({ ...front, ...fields });
    expect(pieceOf(next, 'front').outline).toBe(front.outline);
    expect(changed(next, { kind: 'piece-fields', piece: 'front', fields })).toBe(next);
  });
});

describe('a whole outline', () => {
  const clicked = (corners: readonly (readonly [number, number])[]): Edge[] =>
    corners.map((from, i) => ({ id: `c${i}`, from, path: 'straight' }));

  it('takes the place of the old one', () => {
    const outline = clicked([
      [0, 0],
      [30, 0],
      [30, 40],
      [0, 40],
    ]);
    const next = done(pullover, { kind: 'outline', piece: 'front', outline });
    expect(pieceOf(next, 'front').outline).toEqual(outline);
    // The neckband goes along the back alone now.
    expect(next.pickups[0]!.along.map(({ piece }) => piece)).toEqual(['back', 'back', 'back']);
  });

  it('is turned round where it was clicked clockwise', () => {
    const outline = clicked([
      [0, 0],
      [0, 40],
      [30, 40],
      [30, 0],
    ]);
    const next = done(pullover, { kind: 'outline', piece: 'front', outline });
    expect(pieceOf(next, 'front').outline.map(({ id, from }) => [id, from])).toEqual([
      ['c0', [0, 40]],
      ['c3', [0, 0]],
      ['c2', [30, 0]],
      ['c1', [30, 40]],
    ]);
  });

  it('that is the same changes nothing', () => {
    expect(changed(pullover, { kind: 'outline', piece: 'front', outline: structuredClone(front.outline) })).toBe(
      pullover,
    );
  });
});

describe('pieces', () => {
  it('that are added are the last, with an id of their own', () => {
    const next = done(pullover, { kind: 'add-piece', piece: front });
    expect(next.pieces.map(({ id }) => id)).toEqual(['front', 'back', 'front-2']);
    expect(next.pieces.slice(0, 2).every((piece, i) => piece === pullover.pieces[i])).toBe(true);
    expect(next.pickups).toBe(pullover.pickups);
  });

  it('that are duplicated stand behind what they come from', () => {
    const next = done(pullover, { kind: 'duplicate-piece', piece: 'front', name: 'Another front' });
    expect(next.pieces.map(({ id, name }) => [id, name])).toEqual([
      ['front', 'Front'],
      ['front-2', 'Another front'],
      ['back', 'Back'],
    ]);
    expect(next.pieces[1]!.outline).toBe(front.outline);
  });

  it('that are removed are gone from every pick-up', () => {
    const next = done(pullover, { kind: 'remove-piece', piece: 'front' });
    expect(next.pieces).toEqual([pullover.pieces[1]]);
    expect(next.pickups[0]!.along.every(({ piece }) => piece === 'back')).toBe(true);
  });

  it('of which there is only one is not left without: the check refuses', () => {
    const strip = sample('strip');
    const next = changed(strip, { kind: 'remove-piece', piece: 'strip' });
    expect(next.pickups).toEqual([]);
    expect(() => checkDesign(next)).toThrow();
  });

  it('that are pasted bring their pick-ups, called by new ids', () => {
    const next = done(pullover, { kind: 'paste', pieces: pullover.pieces, pickups: pullover.pickups });
    expect(next.pieces.map(({ id }) => id)).toEqual(['front', 'back', 'front-2', 'back-2']);
    expect(next.pickups.map(({ id }) => id)).toEqual(['neckband', 'neckband-2']);
    expect(new Set(next.pickups[1]!.along.map(({ piece }) => piece))).toEqual(new Set(['front-2', 'back-2']));
    expect(changed(pullover, { kind: 'paste', pieces: [], pickups: [] })).toBe(pullover);
  });
});

/** Changes that lead to the same when they are made again. */
const ONCE: readonly Change[] = [
  { kind: 'edge-path', piece: 'front', edge: 'neck-curve-left', path: 'stepped' },
  { kind: 'edge-path', piece: 'front', edge: 'armhole-right', path: 'curve' },
  { kind: 'edge-handle', piece: 'front', edge: 'neck-curve-right', handle: 1, at: [-16, 111] },
  { kind: 'edge-size', piece: 'front', edge: 'side-right', rows: 80, stitches: 2, along: true },
  {
    kind: 'edge-steps',
    piece: 'front',
    edge: 'shoulder-right',
    steps: [{ stitches: -4, every: 2, times: 4 }],
    fit: true,
  },
  { kind: 'edge-fields', piece: 'front', edge: 'cast-on', fields: { finish: 'provisional', name: 'foot' } },
  { kind: 'piece-fields', piece: 'front', fields: { symmetric: false, name: 'Half' } },
];

it.each(ONCE)('$kind of a piece or an edge that is not there changes nothing', (change) => {
  expect(changed(pullover, { ...change, piece: 'none' } as Change)).toBe(pullover);
  if ('edge' in change) expect(changed(pullover, { ...change, edge: 'none' } as Change)).toBe(pullover);
});

it.each(ONCE)('$kind made twice is made once', (change) => {
  const next = done(pullover, change);
  expect(next).not.toBe(pullover);
  expect(changed(next, change)).toBe(next);
  expect(next.pieces[1]).toBe(pullover.pieces[1]);
});

import { describe, expect, it } from 'vitest';
import { changed, isSymmetric } from '../../../src/editor';
import { findTwins, type Edge } from '../../../src/piece';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './sample';

const symmetric = { kind: 'piece-fields', piece: 'piece', fields: { symmetric: true } } as const;
const made = (corners: Parameters<typeof straightPiece>[0], outline?: (edge: Edge, index: number) => Edge) => {
  const piece = straightPiece(corners);
  return done(designOf(outline ? { ...piece, outline: piece.outline.map(outline) } : piece), symmetric).pieces[0]!;
};

describe('a piece that is called symmetric', () => {
  it('keeps its outline where it is so already', () => {
    const pullover = sample('pullover');
    const off = done(pullover, { kind: 'piece-fields', piece: 'front', fields: { symmetric: false } });
    expect(isSymmetric(pieceOf(off, 'front'))).toBe(true);
    const on = done(off, { kind: 'piece-fields', piece: 'front', fields: { symmetric: true } });
    expect(on).toEqual(pullover);
    expect(pieceOf(on, 'front').outline).toBe(pieceOf(pullover, 'front').outline);
  });

  it('is mirrored from the half with more corners', () => {
    const next = made([
      [0, 0],
      [40, 0],
      [40, 40],
      [30, 40],
      [28, 30],
      [0, 42],
    ]);
    expect(next.outline.map(({ id, from }) => [id, from])).toEqual([
      ['e0', [0, 0]],
      ['e1', [40, 0]],
      ['e2', [40, 40]],
      ['e3', [30, 40]],
      ['e4', [28, 30]],
      ['e3-2', [12, 30]],
      ['e2-2', [10, 40]],
      ['e5', [0, 40]],
    ]);
  });

  it('is mirrored from the left half where that has more', () => {
    const next = made([
      [0, 0],
      [40, 0],
      [40, 50],
      [10, 40],
      [0, 40],
    ]);
    const places = next.outline.map(({ from }) => from);
    for (const place of [
      [0, 0],
      [40, 0],
      [40, 40],
      [30, 40],
      [10, 40],
      [0, 40],
    ])
      expect(places).toContainEqual(place);
    expect(places).toHaveLength(6);
  });

  it('keeps corners on the middle', () => {
    const next = made([
      [0, 0],
      [40, 0],
      [40, 40],
      [20, 20],
      [0, 44],
    ]);
    expect(next.outline.map(({ from }) => from)).toEqual([
      [0, 0],
      [40, 0],
      [40, 40],
      [20, 20],
      [0, 40],
    ]);
  });

  it('mirrors curves, schedules and selvages', () => {
    const next = made(
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [36, 40],
        [0, 40],
      ],
      (edge, i) => {
        if (i === 0)
          return {
            ...edge,
            path: 'curve',
            handles: [
              [10, -2],
              [30, -6],
            ],
          };
        if (i === 1)
          return {
            ...edge,
            path: 'curve',
            handles: [
              [44, 5],
              [44, 15],
            ],
            selvage: 'garter',
          };
        return i === 2 ? { ...edge, path: 'stepped', steps: [{ stitches: -1, every: 5, times: 4 }] } : edge;
      },
    );
    expect(findTwins(next)).not.toContain(-1);
    expect(next.outline[0]).toMatchObject({
      handles: [
        [10, -6],
        [30, -6],
      ],
    });
    expect(next.outline.at(-1)).toMatchObject({
      path: 'curve',
      handles: [
        [-4, 15],
        [-4, 5],
      ],
      selvage: 'garter',
    });
  });

  it('stays as it is where it has no halves', () => {
    // A fork, of which both tines lie across the middle.
    const fork = [
      [0, 0],
      [40, 0],
      [40, 10],
      [15, 10],
      [15, 20],
      [40, 20],
      [40, 31],
      [0, 30],
    ] as const;
    const design = designOf(straightPiece(fork));
    expect(changed(design, symmetric)).toBe(design);
  });

  it('keeps pick-ups on the edges that are left', () => {
    const cardigan = sample('cardigan-front');
    const along = pieceOf(cardigan, 'right-front').outline.map(({ id }) => ({
      piece: 'right-front',
      edge: id,
      backwards: false,
      part: [0, 1] as const,
    }));
    const all = done(cardigan, { kind: 'along', pickup: 'front-band', along });
    const next = done(all, { kind: 'piece-fields', piece: 'right-front', fields: { symmetric: true } });
    const ids = pieceOf(next, 'right-front').outline.map(({ id }) => id);
    expect(next.pickups[0]!.along.length).toBeGreaterThan(3);
    for (const { edge } of next.pickups[0]!.along) expect(ids).toContain(edge);
  });
});

it('another fabric leaves twins alike of which one says its selvage', () => {
  const piece = straightPiece(
    [
      [0, 0],
      [40, 0],
      [40, 40],
      [0, 40],
    ],
    { symmetric: true },
  );
  const outline = piece.outline.map((edge, i): Edge => (i === 1 ? { ...edge, selvage: 'plain' } : edge));
  const next = done(designOf({ ...piece, outline }), {
    kind: 'piece-fields',
    piece: 'piece',
    fields: { fabric: 'garter' },
  });
  expect(edgeOf(next.pieces[0]!, 'e3').selvage).toBe('plain');
});

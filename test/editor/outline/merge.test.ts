import { describe, expect, it } from 'vitest';
import { changed } from '../../../src/editor';
import type { Edge } from '../../../src/piece';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './sample';

const pullover = sample('pullover');

function without(corners: string[], piece = 'front') {
  return pieceOf(done(pullover, { kind: 'remove-corners', piece, corners }), piece);
}

describe('the edges at a corner that is removed', () => {
  it('become one straight edge with the id and make of the first, on both halves', () => {
    const next = without(['neck-curve-left']);
    expect(next.outline).toHaveLength(12);
    expect(edgeOf(next, 'neck-straight-left')).toMatchObject({ path: 'straight', from: [15, 126], selvage: 'plain' });
    expect(edgeOf(next, 'neck-curve-right')).toMatchObject({ path: 'straight', from: [-6, 104] });
  });

  it('become one schedule where both are worked in one direction', () => {
    const next = pieceOf(
      changed(pullover, { kind: 'remove-corners', piece: 'back', corners: ['neck-slope-right'] }),
      'back',
    );
    // The shoulder climbs and the neck falls, so it is no schedule.
    expect(edgeOf(next, 'shoulder-right').path).toBe('straight');
  });

  it('become one across the end of the list', () => {
    const design = designOf(
      straightPiece([
        [5, 0],
        [20, 0],
        [20, 20],
        [0, 20],
        [0, 4],
      ]),
    );
    const next = done(design, { kind: 'remove-corners', piece: 'piece', corners: ['e0'] });
    expect(next.pieces[0]!.outline.map(({ id, from }) => [id, from])).toEqual([
      ['e1', [20, 0]],
      ['e2', [20, 20]],
      ['e3', [0, 20]],
      ['e4', [0, 4]],
    ]);
  });

  it('keep the outer handles where two curves meet in a point', () => {
    const piece = straightPiece([
      [0, 0],
      [20, 0],
      [20, 20],
      [10, 30],
      [0, 20],
    ]);
    const outline = piece.outline.map((edge, i): Edge => {
      if (i === 2)
        return {
          ...edge,
          path: 'curve',
          handles: [
            [20, 24],
            [14, 27],
          ],
        };
      return i === 3
        ? {
            ...edge,
            path: 'curve',
            handles: [
              [8, 25],
              [0, 24],
            ],
          }
        : edge;
    });
    const next = done(designOf({ ...piece, outline }), { kind: 'remove-corners', piece: 'piece', corners: ['e3'] });
    expect(next.pieces[0]!.outline[2]).toEqual({
      ...outline[2],
      handles: [
        [20, 24],
        [0, 24],
      ],
    });
  });

  it('have one make on both halves, that of the half whose edge comes first', () => {
    const piece = straightPiece(
      [
        [0, 0],
        [20, 0],
        [20, 10],
        [18, 20],
        [2, 20],
        [0, 10],
      ],
      { symmetric: true },
    );
    const selvages = [undefined, 'slipped', 'garter', undefined, 'garter', 'slipped'] as const;
    const outline = piece.outline.map((edge, i): Edge => {
      const selvage = selvages[i];
      return selvage ? { ...edge, selvage } : edge;
    });
    const next = done(designOf({ ...piece, outline }), { kind: 'remove-corners', piece: 'piece', corners: ['e5'] });
    expect(next.pieces[0]!.outline.map(({ id, selvage }) => [id, selvage])).toEqual([
      ['e0', undefined],
      ['e1', 'slipped'],
      ['e3', undefined],
      ['e4', 'slipped'],
    ]);
  });
});

it('several neighbours leave one edge', () => {
  const next = without(['neck-curve-left', 'neck-center', 'neck-curve-right', 'neck-straight-right']);
  expect(edgeOf(next, 'neck-straight-left')).toMatchObject({ path: 'straight', from: [15, 126] });
  expect(next.outline.map(({ id }) => id)).toEqual([
    'cast-on',
    'side-left',
    'underarm-left',
    'armhole-left',
    'shoulder-left',
    'neck-straight-left',
    'shoulder-right',
    'armhole-right',
    'underarm-right',
    'side-right',
  ]);
});

it('a piece keeps three corners', () => {
  const design = designOf(
    straightPiece([
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ]),
  );
  const remove = (corners: string[]) => changed(design, { kind: 'remove-corners', piece: 'piece', corners });
  expect(remove(['e2']).pieces[0]!.outline).toHaveLength(3);
  expect(remove(['e2', 'e3'])).toBe(design);
  expect(remove([])).toBe(design);
  const symmetric = designOf(
    straightPiece(
      [
        [0, 0],
        [9, 0],
        [9, 9],
        [0, 9],
      ],
      { symmetric: true },
    ),
  );
  // Its twin would go too.
  expect(changed(symmetric, { kind: 'remove-corners', piece: 'piece', corners: ['e2'] })).toBe(symmetric);
});

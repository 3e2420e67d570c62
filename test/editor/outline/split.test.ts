import { describe, expect, it } from 'vitest';
import { changed } from '../../../src/editor';
import { cubic, nearestOn, pointAt, unitTangentAt, type Cubic } from '../../../src/geometry';
import type { Edge, GridPoint, Piece } from '../../../src/piece';
import { readSample, SAMPLES } from '../../samples/sample';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './sample';

const pullover = sample('pullover');

function split(edge: string, at: GridPoint, piece = 'front') {
  return done(pullover, { kind: 'insert-corner', piece, edge, at });
}

function curveOf(piece: Piece, id: string): Cubic {
  const index = piece.outline.findIndex((edge) => edge.id === id);
  const edge = piece.outline[index]!;
  const to = piece.outline[(index + 1) % piece.outline.length]!.from;
  if (edge.path !== 'curve') throw new Error(`${id} is no curve`);
  const point = ([x, y]: readonly [number, number]) => ({ x, y });
  return cubic(point(edge.from), point(edge.handles[0]), point(edge.handles[1]), point(to));
}

describe('a straight edge', () => {
  it('is split at the nearest whole place on it, and so is its twin', () => {
    const next = pieceOf(split('side-left', [60, 30]), 'front');
    expect(edgeOf(next, 'side-left-2')).toEqual({ ...edgeOf(next, 'side-left'), id: 'side-left-2', from: [39, 30] });
    expect(edgeOf(next, 'side-right-2').from).toEqual([-39, 30]);
    const ids = next.outline.map(({ id }) => id);
    expect(ids.indexOf('side-left-2')).toBe(ids.indexOf('side-left') + 1);
    expect(ids.indexOf('side-right-2')).toBe(ids.indexOf('side-right') + 1);
  });

  it('is split beside its corner when the place is the corner, and not at all when it has no room', () => {
    const piece = straightPiece([
      [0, 0],
      [9, 0],
      [9, 1],
      [0, 1],
    ]);
    const design = designOf(piece);
    const at = (edge: string, place: GridPoint) =>
      changed(design, { kind: 'insert-corner', piece: 'piece', edge, at: place });
    expect(at('e0', [9, 0]).pieces[0]!.outline[1]).toEqual({ id: 'e0-2', from: [8, 0], path: 'straight' });
    expect(at('e1', [9, 0])).toBe(design);
    expect(at('none', [9, 0])).toBe(design);
  });
});

describe('an edge that mirrors itself', () => {
  it('gets one corner on the middle', () => {
    const next = pieceOf(split('neck-center', [0, 110]), 'front');
    expect(edgeOf(next, 'neck-center-2').from).toEqual([0, 104]);
    expect(next.outline).toHaveLength(15);
  });

  it('gets two that mirror each other beside it', () => {
    const next = pieceOf(split('neck-center', [-2, 104]), 'front');
    expect(edgeOf(next, 'neck-center-2').from).toEqual([2, 104]);
    expect(edgeOf(next, 'neck-center-3').from).toEqual([-2, 104]);
  });

  it('does so as a curve too', () => {
    const bent = done(pullover, { kind: 'edge-bend', piece: 'front', edge: 'neck-center', through: [0, 99] });
    const one = done(bent, { kind: 'insert-corner', piece: 'front', edge: 'neck-center', at: [0, 90] });
    expect(edgeOf(pieceOf(one, 'front'), 'neck-center-2').from).toEqual([0, 99]);
    const two = done(bent, { kind: 'insert-corner', piece: 'front', edge: 'neck-center', at: [4, 99] });
    expect(pieceOf(two, 'front').outline).toHaveLength(16);
  });
});

describe('a curve', () => {
  const old = curveOf(pieceOf(pullover, 'front'), 'neck-curve-left');
  const next = pieceOf(split('neck-curve-left', [10, 106]), 'front');
  const parts = ['neck-curve-left', 'neck-curve-left-2'].map((id) => curveOf(next, id));

  it('keeps its line to within a stitch and a row', () => {
    for (const part of parts) {
      for (let t = 0; t <= 1; t += 1 / 16) expect(nearestOn(old, pointAt(part, t)).distance).toBeLessThan(1);
    }
  });

  it('runs smoothly through its new corner', () => {
    const [before, after] = [unitTangentAt(parts[0]!, 1), unitTangentAt(parts[1]!, 0)];
    expect(before.x).toBeCloseTo(after.x, 12);
    expect(before.y).toBeCloseTo(after.y, 12);
  });

  it('comes back when the corner is removed', () => {
    const design = { ...pullover, pieces: [next, pullover.pieces[1]!] };
    const whole = changed(design, { kind: 'remove-corners', piece: 'front', corners: ['neck-curve-left-2'] });
    const again = curveOf(pieceOf(whole, 'front'), 'neck-curve-left');
    for (const at of ['from', 'c1', 'c2', 'to'] as const) {
      expect(again[at].x).toBeCloseTo(old[at].x, 9);
      expect(again[at].y).toBeCloseTo(old[at].y, 9);
    }
  });
});

describe('a schedule', () => {
  it('is split where a step ends', () => {
    const next = pieceOf(split('armhole-left', [33, 79]), 'front');
    expect(edgeOf(next, 'armhole-left')).toMatchObject({
      from: [36, 74],
      steps: [
        { stitches: -2, every: 2, times: 1 },
        { stitches: -1, every: 2, times: 1 },
      ],
    });
    expect(edgeOf(next, 'armhole-left-2')).toMatchObject({
      from: [33, 78],
      steps: [
        { stitches: -1, every: 2, times: 2 },
        { stitches: -1, every: 4, times: 1 },
        { stitches: 0, every: 34, times: 1 },
      ],
    });
  });

  it('that falls is split from the bottom up as well', () => {
    const next = pieceOf(split('armhole-right', [-34, 76]), 'front');
    expect(edgeOf(next, 'armhole-right-2')).toMatchObject({
      from: [-34, 76],
      steps: [{ stitches: -2, every: 2, times: 1 }],
    });
  });

  it('is split at any row of an even stretch', () => {
    const next = pieceOf(split('armhole-left', [33, 101]), 'front');
    expect(edgeOf(next, 'armhole-left-2')).toMatchObject({
      from: [30, 101],
      steps: [{ stitches: 0, every: 19, times: 1 }],
    });
  });

  it('of one step has no place to be split', () => {
    const steps = [{ stitches: -2, every: 4, times: 1 }];
    const piece = straightPiece([
      [0, 0],
      [10, 0],
      [8, 4],
      [0, 4],
    ]);
    const outline = piece.outline.map((edge, i): Edge => (i === 1 ? { ...edge, path: 'stepped', steps } : edge));
    const design = designOf({ ...piece, outline });
    expect(changed(design, { kind: 'insert-corner', piece: 'piece', edge: 'e1', at: [9, 2] })).toBe(design);
  });
});

describe.each(SAMPLES)('any edge of %s', (name) => {
  const { design } = readSample(name);
  const edges = design.pieces.flatMap((piece) =>
    piece.outline.flatMap((edge, i) => {
      const to = piece.outline[(i + 1) % piece.outline.length]!.from;
      const at: GridPoint = [Math.round((edge.from[0] + to[0]) / 2), Math.round((edge.from[1] + to[1]) / 2)];
      return edge.path === 'curve' ? [] : [{ piece: piece.id, edge: edge.id, at }];
    }),
  );

  it.each(edges)('$piece $edge that is split is whole again without its corners', ({ piece, edge, at }) => {
    const next = done(design, { kind: 'insert-corner', piece, edge, at });
    const known = new Set(pieceOf(design, piece).outline.map(({ id }) => id));
    const corners = pieceOf(next, piece)
      .outline.map(({ id }) => id)
      .filter((id) => !known.has(id));
    expect(corners.length).toBeGreaterThan(0);
    expect(done(next, { kind: 'remove-corners', piece, corners })).toEqual(design);
  });
});

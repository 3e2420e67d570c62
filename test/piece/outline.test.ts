import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DesignError, readDesign, resolveOutline, type Edge, type Piece } from '../../src/piece';
import { arbitraryDesign } from './arbitrary';
import { GOOD } from './good';

const [front, sleeve] = readDesign(JSON.stringify(GOOD)).design.pieces as [Piece, Piece];

function pieceOf(outline: Edge[], fabric: Piece['fabric'] = 'stockinette'): Piece {
  return { id: 'p', name: 'P', fabric, symmetric: false, outline };
}

const SQUARE: Edge[] = [
  { id: 'foot', from: [0, 0], path: 'straight' },
  { id: 'right', from: [9, 0], path: 'straight' },
  { id: 'head', from: [9, 9], path: 'straight' },
  { id: 'left', from: [0, 9], path: 'straight' },
];

describe('resolveOutline', () => {
  it('says which side of the fabric each edge bounds', () => {
    expect(resolveOutline(front).map(({ edge, side }) => `${edge.id} ${side}`)).toEqual([
      'cast-on bottom',
      'side-right right',
      'shoulder-right top',
      'neck-right left',
      'neck-foot top',
      'neck-left right',
      'shoulder-left top',
      'side-left left',
    ]);
  });

  it('casts on at the bottom and binds off at the top, unless told otherwise', () => {
    const finishes = resolveOutline(pieceOf(SQUARE)).map(({ finish }) => finish);
    expect(finishes).toEqual(['cast-on', 'bound-off', 'bound-off', 'bound-off']);
    const told = SQUARE.map((edge): Edge => ({ ...edge, finish: 'live' }));
    expect(resolveOutline(pieceOf(told)).map(({ finish }) => finish)).toMatchObject({ 0: 'live', 2: 'live' });
  });

  it('takes a plain selvage, garter in garter fabric, unless told otherwise', () => {
    const selvages = (piece: Piece) => resolveOutline(piece).map(({ selvage }) => selvage);
    expect(selvages(pieceOf(SQUARE))).toMatchObject({ 1: 'plain', 3: 'plain' });
    expect(selvages(pieceOf(SQUARE, 'garter'))).toMatchObject({ 1: 'garter', 3: 'garter' });
    const told = SQUARE.map((edge): Edge => ({ ...edge, selvage: 'slipped' }));
    expect(selvages(pieceOf(told, 'garter'))).toMatchObject({ 1: 'slipped', 3: 'slipped' });
  });

  it('follows a schedule up the right side step by step', () => {
    expect(resolveOutline(sleeve)[1]!.path).toEqual([
      { kind: 'line', from: { x: 30, y: 0 }, to: { x: 29, y: 4 } },
      { kind: 'line', from: { x: 29, y: 4 }, to: { x: 28, y: 8 } },
      { kind: 'line', from: { x: 28, y: 8 }, to: { x: 27, y: 12 } },
      { kind: 'line', from: { x: 27, y: 12 }, to: { x: 26, y: 16 } },
      { kind: 'line', from: { x: 26, y: 16 }, to: { x: 26, y: 20 } },
    ]);
  });

  it('follows the same schedule on the left side in its mirror image, from the top down', () => {
    const { steps } = sleeve.outline[1] as Extract<Edge, { path: 'stepped' }>;
    const left: Edge[] = [
      { id: 'foot', from: [0, 0], path: 'straight' },
      { id: 'right', from: [30, 0], path: 'straight' },
      { id: 'head', from: [30, 20], path: 'straight' },
      { id: 'slope', from: [4, 20], path: 'stepped', steps },
    ];
    expect(resolveOutline(pieceOf(left))[3]!.path).toEqual([
      { kind: 'line', from: { x: 4, y: 20 }, to: { x: 4, y: 16 } },
      { kind: 'line', from: { x: 4, y: 16 }, to: { x: 3, y: 12 } },
      { kind: 'line', from: { x: 3, y: 12 }, to: { x: 2, y: 8 } },
      { kind: 'line', from: { x: 2, y: 8 }, to: { x: 1, y: 4 } },
      { kind: 'line', from: { x: 1, y: 4 }, to: { x: 0, y: 0 } },
    ]);
  });

  it('refuses a schedule that misses its corner, by how much', () => {
    const off = SQUARE.map((edge): Edge =>
      edge.id === 'left' ? { ...edge, path: 'stepped', steps: [{ stitches: -2, every: 2, times: 4 }] } : edge,
    );
    try {
      resolveOutline(pieceOf(off));
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DesignError);
      expect((error as DesignError).problem).toEqual({
        kind: 'schedule-off',
        at: '"p" > outline[3] "left" > steps',
        piece: 'p',
        edge: 'left',
        stitches: 0,
        rows: 9,
        gotStitches: -8,
        gotRows: 8,
      });
    }
  });

  it('is worked out once for each piece', () => {
    expect(resolveOutline(front)).toBe(resolveOutline(front));
    expect(resolveOutline({ ...front })).not.toBe(resolveOutline(front));
  });

  it('gives a closed line for every outline, each edge from corner to corner', () => {
    fc.assert(
      fc.property(arbitraryDesign, ({ pieces }) => {
        for (const piece of pieces) {
          const edges = resolveOutline(piece);
          for (const [i, { from, to, path, index }] of edges.entries()) {
            expect(index).toBe(i);
            expect(path[0]!.from).toEqual({ x: from[0], y: from[1] });
            expect(path.at(-1)!.to).toEqual({ x: to[0], y: to[1] });
            expect(edges[(i + 1) % edges.length]!.from).toEqual(to);
            path.slice(1).forEach((segment, j) => expect(segment.from).toEqual(path[j]!.to));
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

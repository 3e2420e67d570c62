import { describe, expect, it } from 'vitest';
import { gripsOf, sameGrip, type Grip } from '../../src/editor';
import { checkDesign, type Edge, type Piece } from '../../src/piece';
import { designOf, straightPiece } from './outline/sample';

/** A square of 20 stitches and 30 rows in which some edges are made otherwise. */
function square(...made: readonly Partial<Edge>[]): Piece {
  const piece = straightPiece([
    [0, 0],
    [20, 0],
    [20, 30],
    [0, 30],
  ]);
  const outline = piece.outline.map((edge, i) => ({ ...edge, ...made[i] }) as Edge);
  return { ...piece, outline };
}

const placeOf = (piece: Piece, grip: Grip) => gripsOf(piece, grip.edge).find((one) => sameGrip(one.grip, grip))?.at;

describe('the grips of a piece', () => {
  it('are each corner and then the middle of the edge that begins there, in the order of the outline', () => {
    expect(gripsOf(square(), null).map(({ grip, at }) => [grip.kind, grip.edge, ...at])).toEqual([
      ['corner', 'e0', 0, 0],
      ['middle', 'e0', 10, 0],
      ['corner', 'e1', 20, 0],
      ['middle', 'e1', 20, 15],
      ['corner', 'e2', 20, 30],
      ['middle', 'e2', 10, 30],
      ['corner', 'e3', 0, 30],
      ['middle', 'e3', 0, 15],
    ]);
  });

  it('have the middle of a curve where the cubic is at t = 1/2: (P0 + 3 P1 + 3 P2 + P3) / 8', () => {
    const piece = square(
      {},
      {
        path: 'curve',
        handles: [
          [24, 6],
          [30, 20],
        ],
      },
    );
    checkDesign(designOf(piece));
    const at = placeOf(piece, { kind: 'middle', piece: 'piece', edge: 'e1' })!;
    expect(at[0]).toBeCloseTo((20 + 3 * 24 + 3 * 30 + 20) / 8, 12);
    expect(at[1]).toBeCloseTo((0 + 3 * 6 + 3 * 20 + 30) / 8, 12);
  });

  it('have the middle of a stepped edge half way along it', () => {
    // 3-4-5 all the way: 10 pieces of (-3, 4) lead from (30, 0) to (0, 40), and half of them to (15, 20).
    const piece = straightPiece([
      [0, 0],
      [30, 0],
      [0, 40],
    ]);
    const outline = piece.outline.map((edge): Edge => {
      return edge.id === 'e1' ? { ...edge, path: 'stepped', steps: [{ stitches: -3, every: 4, times: 10 }] } : edge;
    });
    const stepped = { ...piece, outline };
    checkDesign(designOf(stepped));
    const [x, y] = placeOf(stepped, { kind: 'middle', piece: 'piece', edge: 'e1' })!;
    expect(x).toBeCloseTo(15, 9);
    expect(y).toBeCloseTo(20, 9);
  });

  it('have handles on the chosen edge alone, and only where it is a curve', () => {
    const handles = [
      [24, 6],
      [30, 20],
    ] as const;
    const piece = square(
      {},
      { path: 'curve', handles },
      {},
      {
        path: 'curve',
        handles: [
          [1, 20],
          [1, 10],
        ],
      },
    );
    const found = (chosen: string | null) =>
      gripsOf(piece, chosen).flatMap(({ grip, at }) => (grip.kind === 'handle' ? [[grip.edge, grip.handle, at]] : []));
    expect(found(null)).toEqual([]);
    expect(found('e0')).toEqual([]);
    expect(found('e1')).toEqual([
      ['e1', 0, handles[0]],
      ['e1', 1, handles[1]],
    ]);
    expect(found('e3').map(([edge]) => edge)).toEqual(['e3', 'e3']);
  });

  it('are none on a piece with a schedule that leads nowhere', () => {
    const piece = square({}, { path: 'stepped', steps: [{ stitches: 5, every: 1, times: 99 }] });
    expect(gripsOf(piece, null)).toEqual([]);
  });
});

it('grips are the same by what they are of, not by being one object', () => {
  const handle = (which: 0 | 1): Grip => ({ kind: 'handle', piece: 'a', edge: 'e', handle: which });
  expect(sameGrip(handle(0), handle(0))).toBe(true);
  expect(sameGrip(handle(0), handle(1))).toBe(false);
  expect(sameGrip({ kind: 'corner', piece: 'a', edge: 'e' }, { kind: 'middle', piece: 'a', edge: 'e' })).toBe(false);
  expect(sameGrip({ kind: 'corner', piece: 'a', edge: 'e' }, { kind: 'corner', piece: 'b', edge: 'e' })).toBe(false);
  expect(sameGrip(null, handle(0))).toBe(false);
  expect(sameGrip(null, null)).toBe(true);
});

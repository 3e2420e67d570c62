import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerAt, cornersIn, cornersOf, snapCorner, type Corner } from '../../../src/editor';
import { straightPiece } from './sample';

const piece = straightPiece([
  [0, 0],
  [20, 0],
  [20, 40],
  [0, 43],
]);
const corners = cornersOf(piece);
const reach = { x: 2, y: 3 };

describe('a corner in the hand', () => {
  it('goes to the nearest whole stitch and row', () => {
    expect(snapCorner(corners, [10.4, 20.6], reach)).toEqual({ at: [10, 21], hints: [] });
  });

  it('is drawn to the column and the row of others', () => {
    expect(snapCorner(corners, [18.2, 2.9], reach)).toEqual({
      at: [20, 0],
      hints: [
        { kind: 'plumb', with: 'e1', at: [20, 0] },
        { kind: 'level', with: 'e1', at: [20, 0] },
      ],
    });
  });

  it('is drawn to the nearest of two rows', () => {
    expect(snapCorner(corners, [10, 41.4], reach)).toMatchObject({ at: [10, 40], hints: [{ with: 'e2' }] });
    expect(snapCorner(corners, [10, 41.6], reach)).toMatchObject({ at: [10, 43], hints: [{ with: 'e3' }] });
  });

  it('of several in one column names the nearest', () => {
    expect(snapCorner(corners, [20, 30], reach).hints).toEqual([{ kind: 'plumb', with: 'e2', at: [20, 40] }]);
  });

  it('without reach still says where it is in line', () => {
    expect(snapCorner(corners, [19.7, 18.2], { x: 0, y: 0 })).toEqual({
      at: [20, 18],
      hints: [{ kind: 'plumb', with: 'e1', at: [20, 0] }],
    });
  });

  it('always lies on the grid, and in line with what its hints name', () => {
    const whole = fc.integer({ min: -50, max: 50 });
    const other: fc.Arbitrary<Corner> = fc.record({ id: fc.string(), at: fc.tuple(whole, whole) });
    const place = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(fc.array(other), place, place, fc.nat(5), (others, x, y, by) => {
        const { at, hints } = snapCorner(others, [x, y], { x: by, y: by });
        expect(at.every(Number.isInteger)).toBe(true);
        expect(Math.abs(at[0] - x)).toBeLessThanOrEqual(Math.max(by, 0.5));
        for (const hint of hints) {
          const axis = hint.kind === 'plumb' ? 0 : 1;
          expect(hint.at[axis]).toBe(at[axis]);
        }
      }),
    );
  });
});

it('the corners of a piece can be had without those in the hand', () => {
  expect(cornersOf(piece, ['e1', 'e2'])).toEqual([
    { id: 'e0', at: [0, 0] },
    { id: 'e3', at: [0, 43] },
  ]);
});

it('corners in a box are those on its edges too', () => {
  expect(cornersIn(piece, { minX: 0, minY: 0, maxX: 20, maxY: 40 })).toEqual(['e0', 'e1', 'e2']);
  expect(cornersIn(piece, { minX: 1, minY: 1, maxX: 19, maxY: 99 })).toEqual([]);
});

it('the corner at a place is the nearest within reach', () => {
  expect(cornerAt(piece, [1, 41], reach)).toBe('e3');
  expect(cornerAt(piece, [22, 40], reach)).toBe('e2');
  expect(cornerAt(piece, [22.1, 40], reach)).toBeNull();
  expect(cornerAt(piece, [10, 20], reach)).toBeNull();
});

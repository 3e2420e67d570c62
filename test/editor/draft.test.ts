import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drafted, pieceFrom, type Draft } from '../../src/editor';
import { checkDesign, type GridPoint } from '../../src/piece';
import { designOf } from './outline/sample';

const WORDS = { id: 'piece', name: 'Piece' };
const GAUGE = { stitches: 20, rows: 28, over: 100 };

const L: Draft = [
  [2, 5],
  [12, 5],
  [12, 9],
  [7, 9],
  [7, 15],
  [2, 15],
];

/** Twice the area by the shoelace sum: above 0 for corners that go round counterclockwise. */
const shoelace = (corners: Draft): number =>
  corners.reduce((sum, [x, y], i) => {
    const [x1, y1] = corners[(i + 1) % corners.length]!;
    return sum + x * y1 - x1 * y;
  }, 0);

describe('a place that is pressed', () => {
  const three: Draft = L.slice(0, 3);

  it('comes last', () => {
    expect(drafted(three, [1, 1])).toEqual({ kind: 'corner', corners: [...three, [1, 1]] });
    expect(drafted([], [0, 0])).toEqual({ kind: 'corner', corners: [[0, 0]] });
  });

  it('closes the outline on the first corner, or again on the last one', () => {
    expect(drafted(three, [2, 5])).toEqual({ kind: 'close' });
    expect(drafted(three, [12, 9])).toEqual({ kind: 'close' });
  });

  it('closes nothing while there are fewer than three corners, and makes no second one in the same place', () => {
    for (const few of [L.slice(0, 1), L.slice(0, 2)]) {
      for (const again of few) expect(drafted(few, again)).toEqual({ kind: 'corner', corners: few });
    }
  });

  it('changes nothing on any other corner', () => {
    expect(drafted(three, [12, 5])).toEqual({ kind: 'corner', corners: three });
  });
});

describe('a piece made of pressed corners', () => {
  it('names its edges after their sides, alike ones by number, whichever way round it was pressed', () => {
    const names = ['lower-edge', 'right-edge', 'upper-edge', 'right-edge-2', 'upper-edge-2', 'left-edge'];
    expect(pieceFrom(L, WORDS, GAUGE).outline.map(({ id }) => id)).toEqual(names);
    expect(pieceFrom([...L].reverse(), WORDS, GAUGE).outline.map(({ id }) => id)).toEqual(names);
    const kite: Draft = [
      [0, 0],
      [4, 6],
      [0, 9],
      [-4, 6],
    ];
    const slopes = ['right-slope', 'right-slope-2', 'left-slope', 'left-slope-2'];
    expect(pieceFrom(kite, WORDS, GAUGE).outline.map(({ id }) => id)).toEqual(slopes);
  });

  it('begins with its lowest corner, of two level ones the left, which is the origin', () => {
    const piece = pieceFrom(L, WORDS, GAUGE);
    expect(piece.outline.map(({ from }) => from)).toEqual([
      [0, 0],
      [10, 0],
      [10, 4],
      [5, 4],
      [5, 10],
      [0, 10],
    ]);
    expect(piece.outline.every(({ path }) => path === 'straight')).toBe(true);
    expect(piece.gauge).toEqual(GAUGE);
    expect('gauge' in pieceFrom(L, WORDS, null)).toBe(false);
  });

  it('is the same piece wherever one began, whichever way one went round, and wherever on the grid it lay', () => {
    const piece = pieceFrom(L, WORDS, GAUGE);
    for (let i = 0; i < L.length; i++) {
      const turned = [...L.slice(i), ...L.slice(0, i)];
      expect(pieceFrom(turned, WORDS, GAUGE)).toEqual(piece);
      expect(pieceFrom([...turned].reverse(), WORDS, GAUGE)).toEqual(piece);
      const away = turned.map(([x, y]): GridPoint => [x - 31, y + 4]);
      expect(pieceFrom(away, WORDS, GAUGE)).toEqual(piece);
    }
  });

  it('is a sound design, counterclockwise, for any corners that wind once round a middle', () => {
    const starShaped = fc.array(fc.integer({ min: 8, max: 40 }), { minLength: 3, maxLength: 12 }).map((radii) =>
      radii.map((radius, i): GridPoint => {
        const angle = (-2 * Math.PI * i) / radii.length;
        return [Math.round(radius * Math.cos(angle)), Math.round(radius * Math.sin(angle))];
      }),
    );
    fc.assert(
      fc.property(starShaped, (corners) => {
        expect(shoelace(corners)).toBeLessThan(0);
        const piece = pieceFrom(corners, WORDS, GAUGE);
        const made = piece.outline.map(({ from }) => from);
        expect(shoelace(made)).toBe(-shoelace(corners));
        expect(made[0]![1]).toBe(0);
        expect(Math.min(...made.map(([x]) => x))).toBe(0);
        checkDesign(designOf(piece));
      }),
    );
  });
});

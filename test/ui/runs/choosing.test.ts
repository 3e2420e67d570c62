import { describe, expect, it } from 'vitest';
import type { Design, Hand, Piece, Stretch } from '../../../src/piece';
import {
  freePart,
  inWorkingOrder,
  turnedRound,
  withMoved,
  withStretch,
  withTurned,
} from '../../../src/ui/runs/choosing';

function square(id: string): Piece {
  const corners = [
    ['foot', 0, 0],
    ['right', 20, 0],
    ['top', 20, 30],
    ['left', 0, 30],
  ] as const;
  return {
    id,
    name: id,
    fabric: 'stockinette',
    symmetric: false,
    outline: corners.map(([edge, x, y]) => ({ id: edge, from: [x, y], path: 'straight' })),
  };
}

const design = (hand: Hand = 'right'): Pick<Design, 'pieces' | 'hand'> => ({
  pieces: [square('front'), square('back')],
  hand,
});
const ref = (edge: string, piece = 'front') => ({ piece, edge });
const chosen = (edges: readonly (readonly [edge: string, piece?: string])[], hand: Hand = 'right') =>
  edges.reduce<readonly Stretch[]>((along, [edge, piece]) => withStretch(design(hand), along, ref(edge, piece)), []);
const brief = (along: readonly Stretch[]) => along.map(({ edge, backwards }) => (backwards ? `-${edge}` : edge));

describe('a run of edges chosen one by one', () => {
  it('begins in the direction of the outline and goes on so', () => {
    expect(brief(chosen([['right'], ['top'], ['left']]))).toEqual(['right', 'top', 'left']);
    expect(chosen([['right']])[0]).toEqual({ ...ref('right'), backwards: false, part: [0, 1] });
  });

  it('turns its first edge round when the second lies before it, and goes on that way', () => {
    expect(brief(chosen([['top'], ['right'], ['foot']]))).toEqual(['-top', '-right', '-foot']);
    // The outline is closed: the last edge lies before the first.
    expect(brief(chosen([['foot'], ['left']]))).toEqual(['-foot', '-left']);
  });

  it('goes on in the same direction where the edges do not touch, and on another piece', () => {
    expect(brief(chosen([['foot'], ['top']]))).toEqual(['foot', 'top']);
    expect(brief(chosen([['top'], ['right'], ['left', 'back']]))).toEqual(['-top', '-right', '-left']);
    // A neighbour of the same name on another piece touches nothing.
    expect(brief(chosen([['top'], ['right', 'back']]))).toEqual(['top', 'right']);
  });

  it('takes out an edge that is pointed at again, wherever it stands, and every part of it', () => {
    expect(brief(chosen([['right'], ['top'], ['left'], ['top']]))).toEqual(['right', 'left']);
    expect(chosen([['right'], ['right']])).toEqual([]);
    const parts: Stretch[] = [
      { ...ref('top'), backwards: false, part: [0.5, 1] },
      { ...ref('left'), backwards: false, part: [0, 1] },
      { ...ref('top'), backwards: false, part: [0, 0.5] },
    ];
    expect(brief(withStretch(design(), parts, ref('top')))).toEqual(['left']);
  });

  it('is worked in the order chosen by a left-handed knitter too: the document has it reversed', () => {
    const along = chosen([['left'], ['top'], ['right']], 'left');
    expect(brief(along)).toEqual(['right', 'top', 'left']);
    expect(brief(inWorkingOrder({ hand: 'left' }, along))).toEqual(['-left', '-top', '-right']);
    expect(brief(chosen([['top'], ['left']], 'left'))).toEqual(['-left', '-top']);
  });
});

describe('changing a run', () => {
  const along = chosen([['foot'], ['right'], ['top']]);

  it('moves one stretch earlier or later, and none out of the run', () => {
    expect(brief(withMoved(along, 2, 0))).toEqual(['top', 'foot', 'right']);
    expect(brief(withMoved(along, 0, 1))).toEqual(['right', 'foot', 'top']);
    expect(withMoved(along, 0, -1)).toBe(along);
    expect(withMoved(along, 2, 3)).toBe(along);
  });

  it('turns one stretch, or the whole run, and back', () => {
    expect(brief(withTurned(along, 1))).toEqual(['foot', '-right', 'top']);
    expect(brief(turnedRound(along))).toEqual(['-top', '-right', '-foot']);
    expect(turnedRound(turnedRound(along))).toEqual(along);
  });

  it('finds the longest part of an edge that is still free', () => {
    const on = (...parts: [number, number][]): Stretch[] =>
      parts.map((part) => ({ ...ref('top'), backwards: false, part }));
    expect(freePart([], ref('top'))).toEqual([0, 1]);
    expect(freePart(on([0, 1]), ref('top'))).toBeNull();
    expect(freePart(on([0.5, 1]), ref('top'))).toEqual([0, 0.5]);
    expect(freePart(on([0.6, 0.7], [0.1, 0.2]), ref('top'))).toEqual([0.2, 0.6]);
    expect(freePart(on([0, 0.2], [0.3, 0.5]), ref('top'))).toEqual([0.5, 1]);
    expect(freePart(on([0, 1]), ref('left'))).toEqual([0, 1]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed } from '../../../src/editor';
import { checkDesign, findTwins, type ScheduleStep } from '../../../src/piece';
import { designOf, done, edgeOf, pieceOf, sample, straightPiece } from './sample';

const pullover = sample('pullover');
const front = pieceOf(pullover, 'front');

function moved(corners: string[], dx: number, dy: number) {
  return pieceOf(done(pullover, { kind: 'move-corners', piece: 'front', corners, dx, dy }), 'front');
}

describe('a corner that moves', () => {
  it('takes its mirror image along, the other way', () => {
    const next = moved(['side-left'], 2, 1);
    expect(edgeOf(next, 'side-left').from).toEqual([41, 1]);
    expect(edgeOf(next, 'cast-on').from).toEqual([-41, 1]);
  });

  it('takes the handle beside it along, and leaves the far one', () => {
    const next = moved(['neck-curve-left'], 1, -2);
    expect(edgeOf(next, 'neck-curve-left')).toMatchObject({
      from: [16, 116],
      handles: [
        [16, 110],
        [8.5, 104],
      ],
    });
    expect(edgeOf(next, 'neck-curve-right')).toMatchObject({
      handles: [
        [-8.5, 104],
        [-16, 110],
      ],
    });
  });

  it('leaves every edge that it does not touch the same object, and all other pieces and pick-ups', () => {
    const next = done(pullover, { kind: 'move-corners', piece: 'front', corners: ['side-left'], dx: 1, dy: 0 });
    const touched = ['cast-on', 'side-left', 'side-right'];
    for (const edge of front.outline) {
      if (!touched.includes(edge.id)) expect(edgeOf(pieceOf(next, 'front'), edge.id)).toBe(edge);
    }
    expect(next.pieces[1]).toBe(pullover.pieces[1]);
    expect(next.pickups).toBe(pullover.pickups);
  });

  it('on the middle goes up and down only', () => {
    const vest = sample('vest');
    const next = done(vest, { kind: 'move-corners', piece: 'front', corners: ['neck-right'], dx: 5, dy: -4 });
    expect(edgeOf(pieceOf(next, 'front'), 'neck-right').from).toEqual([0, 80]);
  });

  it('by nothing, or not there, changes nothing', () => {
    const still = { kind: 'move-corners', piece: 'front', corners: ['side-left'], dx: 0, dy: 0 } as const;
    expect(changed(pullover, still)).toBe(pullover);
    expect(changed(pullover, { ...still, corners: ['none'], dx: 1 })).toBe(pullover);
    expect(changed(pullover, { ...still, piece: 'none', dx: 1 })).toBe(pullover);
  });

  it('to the side on the middle alone changes nothing', () => {
    const vest = sample('vest');
    expect(changed(vest, { kind: 'move-corners', piece: 'front', corners: ['neck-right'], dx: 5, dy: 0 })).toBe(vest);
  });
});

describe('several corners', () => {
  it('of one half move alike', () => {
    const next = moved(['shoulder-left', 'neck-straight-left'], 1, 2);
    expect(edgeOf(next, 'shoulder-left').from).toEqual([31, 122]);
    expect(edgeOf(next, 'neck-straight-left').from).toEqual([16, 128]);
    expect(edgeOf(next, 'shoulder-right').from).toEqual([-16, 128]);
    // Both ends moved alike, so the schedule stays.
    expect(edgeOf(next, 'shoulder-left')).toMatchObject({ steps: [{ stitches: -5, every: 2, times: 3 }] });
  });

  it('that mirror each other follow the one named first', () => {
    const outwards = moved(['side-left', 'cast-on'], 3, 0);
    expect(edgeOf(outwards, 'side-left').from).toEqual([42, 0]);
    expect(edgeOf(outwards, 'cast-on').from).toEqual([-42, 0]);
    const inwards = moved(['cast-on', 'side-left'], 3, 0);
    expect(edgeOf(inwards, 'side-left').from).toEqual([36, 0]);
    expect(edgeOf(inwards, 'cast-on').from).toEqual([-36, 0]);
  });

  it('that are all of them move the whole piece', () => {
    const ids = front.outline.map(({ id }) => id);
    const next = moved(ids, 7, -3);
    next.outline.forEach(({ from }, i) => {
      const [x, y] = front.outline[i]!.from;
      expect(from).toEqual([x + 7, y - 3]);
    });
  });
});

describe('a schedule whose corner moves', () => {
  it('keeps its shaping and is worked even for longer', () => {
    expect(edgeOf(moved(['shoulder-left', 'neck-straight-left'], 0, 4), 'armhole-left')).toMatchObject({
      steps: [
        { stitches: -2, every: 2, times: 1 },
        { stitches: -1, every: 2, times: 3 },
        { stitches: -1, every: 4, times: 1 },
        { stitches: 0, every: 38, times: 1 },
      ],
    });
  });

  it('ends on the corner wherever that goes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -8, max: 8 }), fc.integer({ min: -40, max: 30 }), (dx, dy) => {
        const corners = ['shoulder-left'];
        const next = changed(pullover, { kind: 'move-corners', piece: 'front', corners, dx, dy });
        const { outline } = pieceOf(next, 'front');
        const at = outline.findIndex(({ id }) => id === 'armhole-left');
        const [edge, to] = [outline[at]!, outline[at + 1]!.from];
        if (edge.path !== 'stepped') throw new Error('it has rows, so it is worked');
        const { steps } = edge;
        const sum = (of: (step: ScheduleStep) => number) =>
          steps.reduce((total, step) => total + of(step) * step.times, 0);
        expect(sum(({ stitches }) => stitches)).toBe(to[0] - edge.from[0]);
        expect(sum(({ every }) => every)).toBe(to[1] - edge.from[1]);
        // Shaped on every second row, as before.
        for (const { every } of steps.slice(0, -1)) expect(every % 2).toBe(0);
      }),
    );
  });

  it('is straight where no rows are left, and a slope where it was plumb', () => {
    const steps = [{ stitches: 0, every: 10, times: 1 }];
    const piece = straightPiece([
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ]);
    const outline = piece.outline.map((edge, i) => (i === 1 ? { ...edge, path: 'stepped' as const, steps } : edge));
    const design = designOf({ ...piece, outline });
    const flat = changed(design, { kind: 'move-corners', piece: 'piece', corners: ['e2'], dx: 4, dy: -10 });
    expect(flat.pieces[0]!.outline[1]).toEqual({ id: 'e1', from: [10, 0], path: 'straight' });
    const leant = done(design, { kind: 'move-corners', piece: 'piece', corners: ['e2'], dx: 5, dy: 0 });
    expect(leant.pieces[0]!.outline[1]).toMatchObject({ steps: [{ stitches: 1, every: 2, times: 5 }] });
  });
});

it('a symmetric piece stays symmetric whatever is moved', () => {
  const ids = fc.subarray(
    front.outline.map(({ id }) => id),
    { minLength: 1 },
  );
  const offset = fc.integer({ min: -3, max: 3 });
  fc.assert(
    fc.property(ids, offset, offset, (corners, dx, dy) => {
      const next = changed(pullover, { kind: 'move-corners', piece: 'front', corners, dx, dy });
      expect(findTwins(pieceOf(next, 'front'))).toEqual(findTwins(front));
      expect(() => checkDesign({ ...next, pieces: [next.pieces[1]!], pickups: [] })).not.toThrow();
    }),
  );
});

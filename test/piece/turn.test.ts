import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkDesign, DesignError, readDesign, resolveOutline, type Piece } from '../../src/piece';
import { turnedRound } from '../../src/piece/turn';
import { arbitraryDesign, arbitraryDocument } from './arbitrary';
import { GOOD } from './good';

interface RawEdge {
  id: string;
  from: number[];
  handles?: number[][];
}

/** The same drawing with its outline listed the other way round, as a hand that draws clockwise would. */
function clockwise<E extends RawEdge>(outline: readonly E[]): E[] {
  const ends = outline.map((_, i) => outline[(i + 1) % outline.length]!.from);
  const turned = outline.map((edge, i) => {
    const { handles } = edge;
    return { ...edge, from: ends[i]!, ...(handles ? { handles: [handles[1]!, handles[0]!] } : {}) };
  });
  return [turned[0]!, ...turned.slice(1).reverse()];
}

function read(document: unknown) {
  return readDesign(JSON.stringify(document));
}

describe('an outline that runs clockwise', () => {
  it('is turned round, with a notice', () => {
    const [front, ...others] = GOOD.pieces;
    const { design, notices } = read({
      ...GOOD,
      pieces: [{ ...front, outline: clockwise(front!.outline) }, ...others],
    });
    expect(notices).toEqual([{ kind: 'turned-round', at: 'pieces[0] "front"', piece: 'front' }]);
    expect(design.pieces).toEqual(read(GOOD).design.pieces);
  });

  it('comes to the same piece as the one drawn counterclockwise, schedules and curves and all', () => {
    fc.assert(
      fc.property(arbitraryDocument, (document) => {
        const pieces = document.pieces.map((piece) => ({ ...piece, outline: clockwise(piece.outline) }));
        const { design, notices } = read({ ...document, pieces });
        expect(design.pieces).toEqual(read(document).design.pieces);
        expect(notices.filter(({ kind }) => kind === 'turned-round')).toHaveLength(pieces.length);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the same fabric in every part that is picked up', () => {
    const along = [
      { piece: 'strip', edge: 'side', part: [0, 0.25] },
      { piece: 'strip', edge: 'side', part: [0.5, 1], backwards: true },
    ];
    const strip = GOOD.pieces[2]!;
    const pickups = [{ id: 'border', along }];
    const { design } = read({ ...GOOD, pieces: [{ ...strip, outline: clockwise(strip.outline) }], pickups });
    // The side ran from row 88 down, so its first quarter was the topmost: now the last, and worked last.
    expect(design.pickups[0]!.along).toMatchObject([
      { part: [0, 0.5], backwards: true },
      { part: [0.75, 1], backwards: false },
    ]);
    expect(resolveOutline(design.pieces[0]!).find(({ edge }) => edge.id === 'side')).toMatchObject({ from: [6, 0] });
  });

  it('keeps a run of neighbouring edges a run', () => {
    const strip = GOOD.pieces[2]!;
    const outline = clockwise(strip.outline);
    const along = outline.map(({ id }) => ({ piece: 'strip', edge: id }));
    const { design } = read({ ...GOOD, pieces: [{ ...strip, outline }], pickups: [{ id: 'border', along }] });
    const ids = design.pieces[0]!.outline.map(({ id }) => id);
    const worked = design.pickups[0]!.along.map(({ edge }) => ids.indexOf(edge));
    expect(worked.slice(1).map((at, i) => (at - worked[i]! + ids.length) % ids.length)).toEqual(
      worked.slice(1).map(() => 1),
    );
  });

  it('is blamed for its faults at their place in the file', () => {
    const [front, ...others] = GOOD.pieces;
    const outline = clockwise(front!.outline).map((edge) =>
      edge.id === 'side-right' ? { ...edge, selvage: 'garter' } : edge,
    );
    expect(outline[7]!.id).toBe('side-right');
    expect(() => read({ ...GOOD, pieces: [{ ...front, outline }, ...others] })).toThrow(
      'not-symmetric: pieces[0] "front" > outline[7] "side-right"',
    );
  });

  it('is turned round by its corners where its schedule leads nowhere, so that the fault is told from the right side', () => {
    const sleeve = GOOD.pieces[1]!;
    const outline = clockwise(sleeve.outline).map((edge) =>
      edge.id === 'slope' ? { ...edge, steps: [{ stitches: -1, every: 4, times: 3 }] } : edge,
    );
    try {
      read({ ...GOOD, pieces: [{ ...sleeve, outline }], pickups: [] });
      expect.unreachable();
    } catch (error) {
      const { problem } = error as DesignError;
      expect(problem).toMatchObject({ kind: 'schedule-off', stitches: -4, rows: 20, gotStitches: -3, gotRows: 12 });
      expect(problem.at).toBe('pieces[0] "sleeve" > outline[3] "slope" > steps');
    }
  });

  it('is known by its schedules where the corners alone would mislead', () => {
    // From corner to corner it runs clockwise: the top edge lies left of the foot. The bold schedules of its sides
    // cast on far out before they come back, so the fabric worked lies to their left all the same.
    const outline = [
      { id: 'foot', from: [0, 0], path: 'straight' },
      { id: 'right', from: [1, 0], path: 'stepped', steps: [{ stitches: 20, every: 10 }, { stitches: -20, every: 10 }] },
      { id: 'head', from: [1, 20], path: 'straight' },
      { id: 'left', from: [0, 20], path: 'stepped', steps: [{ stitches: 20, every: 10 }, { stitches: -20, every: 10 }] },
    ]; // prettier-ignore
    const { design, notices } = read({ format: 'edgewise', version: 1, pieces: [{ id: 'diamond', outline }] });
    expect(notices).toEqual([]);
    expect(resolveOutline(design.pieces[0]!)[1]!.path[0]).toMatchObject({ to: { x: 21, y: 10 } });
  });
});

describe('turnedRound', () => {
  it('turns back into the piece it was', () => {
    fc.assert(
      fc.property(arbitraryDesign, ({ pieces }) => {
        for (const piece of pieces) expect(turnedRound(turnedRound(piece))).toEqual(piece);
      }),
      { numRuns: 60 },
    );
  });
});

describe('checkDesign', () => {
  const { design } = read(GOOD);
  const withFront = (change: (piece: Piece) => Piece) => ({
    ...design,
    pieces: design.pieces.map((piece, i) => (i === 0 ? change(piece) : piece)),
  });

  it('takes every design that was read', () => {
    fc.assert(
      fc.property(arbitraryDesign, (one) => {
        checkDesign(one);
      }),
      { numRuns: 40 },
    );
  });

  it('refuses one that was changed to run clockwise, and repairs nothing', () => {
    expect(() => checkDesign(withFront(turnedRound))).toThrow('clockwise: pieces[0] "front"');
  });

  it('refuses what no file could hold either', () => {
    expect(() => checkDesign({ ...design, hand: 'both' as 'left' })).toThrow(DesignError);
    expect(() => checkDesign(withFront((piece) => ({ ...piece, id: 'strip' })))).toThrow('same-id: pieces[2] "strip"');
    expect(() => checkDesign(withFront((piece) => ({ ...piece, outline: piece.outline.slice(1) })))).toThrow(
      DesignError,
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { Design, Piece } from '../../src/piece';
import { checkDesign } from '../../src/piece/checkDesign';
import { DesignError } from '../../src/piece';
import { sides } from '../bench/designs';

/** The problem that a design is refused for; null where it is taken. */
function problemOf(design: Design) {
  try {
    checkDesign(design);
    return null;
  } catch (error) {
    if (error instanceof DesignError) return error.problem;
    throw error;
  }
}

/** Another piece in the place of one. */
const withPiece = (design: Design, index: number, fields: Partial<Record<keyof Piece, unknown>>): Design => ({
  ...design,
  pieces: design.pieces.map((piece, i) => (i === index ? ({ ...piece, ...fields } as Piece) : piece)),
});

describe('a design that was judged before', () => {
  const design = sides(12);
  checkDesign(design);

  it('is taken again, whole or with a piece that is as good', () => {
    expect(problemOf(design)).toBeNull();
    expect(problemOf({ ...design, name: 'Another', pieces: [...design.pieces].reverse() })).toBeNull();
    expect(problemOf(withPiece(design, 1, { name: 'Back' }))).toBeNull();
  });

  it('is refused for a changed piece, which is named by its place among all of them', () => {
    expect(problemOf(withPiece(design, 2, { fabric: 'felt' }))).toMatchObject({
      kind: 'not-one-of',
      at: 'pieces[2] "p2" > fabric',
    });
    const [first, ...others] = design.pieces[2]!.outline;
    const off = { outline: [{ ...first!, from: [0.5, 0] }, ...others] };
    expect(problemOf(withPiece(design, 2, off))).toMatchObject({ kind: 'off-grid', piece: 'p2' });
    expect(problemOf(withPiece(design, 2, off))).toMatchObject({ kind: 'off-grid', piece: 'p2' });
  });

  it('is refused for a pick-up, a field of its own or a number of pieces that is wrong', () => {
    const [pickup] = design.pickups;
    expect(problemOf({ ...design, pickups: [{ ...pickup!, target: 0.5 }] })).toMatchObject({ kind: 'not-whole' });
    expect(problemOf({ ...design, hand: 'both' as 'left' })).toMatchObject({ kind: 'not-one-of', at: 'hand' });
    expect(problemOf({ ...design, pieces: [] })).toMatchObject({ kind: 'too-few', list: 'pieces' });
    const many = Array.from({ length: 25 }, (_, i) => ({ ...design.pieces[0]!, id: `q${i}` }));
    expect(problemOf({ ...design, pieces: [...design.pieces, ...many] })).toMatchObject({ kind: 'too-many' });
  });
});

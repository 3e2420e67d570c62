import { DesignError, readDesign, writeDesign, type Design, type Pickup, type Piece } from '../piece';

/** Pieces with the pick-ups that run along them alone. */
export interface Pasted {
  readonly pieces: readonly Piece[];
  readonly pickups: readonly Pickup[];
}

/**
 * Some pieces of a design as a text for the clipboard: a design file of its own, with the pick-ups that run along these
 * pieces alone. Null where there are no such pieces.
 */
export function copiedPieces(design: Design, ids: readonly string[]): string | null {
  const pieces = design.pieces.filter(({ id }) => ids.includes(id));
  if (pieces.length === 0) return null;
  const pickups = design.pickups.filter(({ along }) => along.every(({ piece }) => ids.includes(piece)));
  return writeDesign({ ...design, pieces, pickups });
}

/** What a text from the clipboard holds; null where it is no design that can be read. */
export function pasted(text: string): Pasted | null {
  try {
    const { pieces, pickups } = readDesign(text).design;
    return { pieces, pickups };
  } catch (error) {
    if (error instanceof DesignError) return null;
    throw error;
  }
}

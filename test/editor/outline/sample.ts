import { changed, type Change } from '../../../src/editor';
import { checkDesign, type Design, type Edge, type Piece } from '../../../src/piece';
import { readSample, type SampleName } from '../../samples/sample';

export function sample(name: SampleName): Design {
  return readSample(name).design;
}

export function pieceOf(design: Design, id: string): Piece {
  const found = design.pieces.find((piece) => piece.id === id);
  if (!found) throw new Error(`no piece ${id}`);
  return found;
}

export function edgeOf(piece: Piece, id: string): Edge {
  const found = piece.outline.find((edge) => edge.id === id);
  if (!found) throw new Error(`no edge ${id} on ${piece.id}`);
  return found;
}

/** The design after a change, which must be a valid one and must leave the old one alone. */
export function done(design: Design, change: Change): Design {
  const before = structuredClone(design);
  const next = changed(design, change);
  checkDesign(next);
  if (JSON.stringify(before) !== JSON.stringify(design)) throw new Error('the old design was changed');
  return next;
}

/** A piece of straight edges through corners, each named by its number. */
export function straightPiece(corners: readonly (readonly [number, number])[], fields: Partial<Piece> = {}): Piece {
  return {
    id: 'piece',
    name: 'Piece',
    gauge: { stitches: 20, rows: 28, over: 100 },
    fabric: 'stockinette',
    symmetric: false,
    outline: corners.map((from, i): Edge => ({ id: `e${i}`, from, path: 'straight' })),
    ...fields,
  };
}

export function designOf(piece: Piece, pickups: Design['pickups'] = []): Design {
  return { ...sample('strip'), pieces: [piece], pickups };
}

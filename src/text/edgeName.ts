import type { Design, EdgeRef, Piece } from '../piece';

/** Names an edge from the ids in a plan's records. */
export type EdgeNames = (ref: EdgeRef) => string;

/** A name out of a file on one line: breaks, tabs and controls become single spaces. */
export function shownName(name: string): string {
  return name.replace(/[\p{Cc}\s]+/gu, ' ').trim();
}

/** The name of an edge: its own, or its id with spaces for hyphens (`neck-left` is `neck left`). */
export function edgeName(edge: { readonly id: string; readonly name?: string }): string {
  const name = shownName(edge.name ?? '');
  if (name !== '') return name;
  const words = shownName(edge.id.replace(/[-_]+/g, ' '));
  return words === '' ? edge.id : words;
}

/** `Front, neck left`. */
export function edgeTitle(piece: Pick<Piece, 'name'>, edge: { readonly id: string; readonly name?: string }): string {
  return `${shownName(piece.name)}, ${edgeName(edge)}`;
}

/** Names every edge of a design; a reference that leads nowhere is named by its ids. */
export function edgeNames(design: Pick<Design, 'pieces'>): EdgeNames {
  const names = new Map<string, string>();
  for (const piece of design.pieces) {
    for (const edge of piece.outline) names.set(key(piece.id, edge.id), edgeTitle(piece, edge));
  }
  return ({ piece, edge }) => names.get(key(piece, edge)) ?? `${piece}, ${edge}`;
}

function key(piece: string, edge: string): string {
  return JSON.stringify([piece, edge]);
}

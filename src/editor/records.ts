import type { Design, EdgeRef, Pickup, Piece } from '../piece';

/** A copy with these fields, or the very same object where they already are what they become. */
export function withFields<T extends object>(value: T, fields: NoInfer<Partial<T>>): T {
  const entries = Object.entries(fields) as [keyof T, T[keyof T]][];
  return entries.every(([key, field]) => sameValue(value[key], field)) ? value : { ...value, ...fields };
}

function sameValue(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** A list about edges with the entry of one edge put in its place, or taken out. */
export function placed<T extends object>(
  list: readonly (EdgeRef & T)[],
  { piece, edge }: EdgeRef,
  entry: T | null,
): readonly (EdgeRef & T)[] {
  const at = list.findIndex((one) => one.piece === piece && one.edge === edge);
  if (entry === null) return at < 0 ? list : list.filter((_, i) => i !== at);
  if (at < 0) return [...list, { piece, edge, ...entry }];
  return list.map((one, i) => (i === at ? { ...one, ...entry } : one));
}

export function onPiece(design: Design, id: string, change: (piece: Piece) => Piece): Design {
  const pieces = design.pieces.map((piece) => (piece.id === id ? change(piece) : piece));
  return pieces.every((piece, i) => piece === design.pieces[i]) ? design : { ...design, pieces };
}

export function onPickup(design: Design, id: string, change: (pickup: Pickup) => Pickup): Design {
  const pickups = design.pickups.map((pickup) => (pickup.id === id ? change(pickup) : pickup));
  return pickups.every((pickup, i) => pickup === design.pickups[i]) ? design : { ...design, pickups };
}

import type { Grip } from '../../editor';
import type { Design } from '../../piece';

/** What is chosen of one piece: corners, or an edge. A corner is named by the edge that begins at it. */
export interface Chosen {
  readonly piece: string;
  readonly corners: readonly string[];
  readonly edge: string | null;
}

export function isIn(chosen: Chosen | null, grip: Grip): boolean {
  if (chosen?.piece !== grip.piece) return false;
  return grip.kind === 'corner' ? chosen.corners.includes(grip.edge) : chosen.edge === grip.edge;
}

/** What is chosen once a grip is: with `more`, a corner beside those that were, or no longer. */
export function chosenBy(before: Chosen | null, grip: Grip, more: boolean): Chosen {
  const { piece, edge } = grip;
  if (grip.kind !== 'corner') return { piece, corners: [], edge };
  const others = more && before?.piece === piece ? before.corners : [];
  const corners = others.includes(edge) ? others.filter((other) => other !== edge) : [...others, edge];
  return { piece, corners, edge: null };
}

/** What of it is still in the design; null where nothing is. */
export function stillThere(chosen: Chosen, design: Design): Chosen | null {
  const piece = design.pieces.find(({ id }) => id === chosen.piece);
  const there = (edge: string) => piece?.outline.some(({ id }) => id === edge) === true;
  const corners = chosen.corners.filter(there);
  const edge = chosen.edge !== null && there(chosen.edge) ? chosen.edge : null;
  return corners.length > 0 || edge !== null ? { ...chosen, corners, edge } : null;
}

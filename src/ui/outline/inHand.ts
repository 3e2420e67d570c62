import type { Grip, Held, Spot } from '../../editor';
import type { Piece } from '../../piece';
import type { Place } from '../../renderer';
import type { MeasuredEdge } from '../../shaping';

/** What a press has taken hold of, and whether it has moved since. */
export interface InHand {
  readonly held: Held | null;
  readonly grip: Grip | null;
  readonly piece: Piece;
  readonly place: Place;
  /** In mm of the view: the sheet may shift under the hand as a piece grows. */
  readonly from: Spot;
  readonly slack: number;
  readonly shift: boolean;
  readonly moved: boolean;
}

/** The measured edges of the piece in the hand that change with what is held. */
export function touchedBy({ grip, held }: InHand, edges: readonly MeasuredEdge[]): MeasuredEdge[] {
  if (!grip || !held) return [];
  const at = edges.findIndex(({ id }) => id === grip.edge);
  const before = edges[(at + edges.length - 1) % edges.length];
  const found = held.kind === 'corners' ? [before, edges[at]] : [edges[at]];
  return found.filter((edge) => edge !== undefined);
}

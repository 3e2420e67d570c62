import type { Grip, Held, Spot } from '../../editor';
import type { Piece } from '../../piece';
import type { Place } from '../../renderer';

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

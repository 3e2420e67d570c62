import type { Design } from '../piece';
import { fieldChanged, isFieldChange, type FieldChange } from './fieldChanges';
import { gaugeChanged, type GaugeChange } from './gaugeChange';
import { handoutChanged, type HandoutChange } from './handoutChange';
import { pickupChanged, type PickupChange } from './pickupChanges';
import { pieceChanged, type PieceChange } from './pieceChanges';

/** Every way in which a design can be changed: one record each, one step of the history each. */
export type Change = FieldChange | GaugeChange | HandoutChange | PieceChange | PickupChange;

const PICKUP_KINDS = {
  'add-pickup': true,
  'remove-pickup': true,
  'duplicate-pickup': true,
  along: true,
  'start-at': true,
  'turn-run': true,
  part: true,
} as const satisfies Record<PickupChange['kind'], true>;

function isPickupChange(change: PieceChange | PickupChange): change is PickupChange {
  return Object.hasOwn(PICKUP_KINDS, change.kind);
}

/**
 * The design after a change. What does not change stays the same object, so that nothing is measured or planned anew
 * without need; a change to what already is gives the same design, and so does one of what is not there. Whether the
 * new design can be knitted is for `checkDesign` to say.
 */
export function changed(design: Design, change: Change): Design {
  if (isFieldChange(change)) return fieldChanged(design, change);
  if (change.kind === 'gauge') return gaugeChanged(design, change);
  if (change.kind === 'handout') return handoutChanged(design, change);
  return isPickupChange(change) ? pickupChanged(design, change) : pieceChanged(design, change);
}

export { workAt, type NotAtGauge, type WorkedAt } from './atGauge';
export { changed, type Change } from './changes';
export { copiedPieces, pasted, type Pasted } from './clipboard';
export { COMMANDS, commandFor, type Chord, type Command, type CommandId, type Focus, type Press } from './commands';
export { drafted, LEAST_CORNERS, pieceFrom, type Draft, type DraftStep } from './draft';
export type { HandoutChange } from './handoutChange';
export { handoutWork, type HandoutWork, type HandoutWorkWords } from './handoutWork';
export { heldBy, pulled, type Catch, type Held, type Hint, type Pulled } from './drag';
export { fieldChanged, isFieldChange, type FieldChange, type PickupFields } from './fieldChanges';
export { shownGauge, usualOver } from './gauge';
export { brokenOff, IDLE, lifted, moved, pressed, type Effect, type Finger, type Gesture, type Turn } from './gesture';
export { gripsOf, sameGrip, type Grip, type PlacedGrip } from './grips';
export { redo, startHistory, step, undo, type History } from './history';
export { lengthened, type Lengthened, type Lengthening, type NotLengthened } from './lengthen';
export type { EdgeFields } from './outline/fields';
export { freshId } from './outline/ids';
export { workedSchedule, type Path } from './outline/path';
export {
  cornerAt,
  cornersIn,
  cornersOf,
  snapCorner,
  type Corner,
  type GridBox,
  type Reach,
  type Snapped,
  type SnapHint,
} from './outline/snapping';
export { isSymmetric } from './outline/symmetric';
export type { PickupChange } from './pickupChanges';
export type { EdgeChange, OutlineChange, PieceChange, PieceFields } from './pieceChanges';
export { practiceStrips, usualGauges, type Strip } from './practiceStrips';
export { regridded } from './regrid';
export { allRound, newPickup, nextTo, runBetween } from './runs';
export { centred, keptUnder, panned, SCALE, zoomed, ZOOM_STEP, type Size, type Spot, type Viewport } from './viewport';

export { changed, type Change, type PickupFields } from './changes';
export { COMMANDS, commandFor, type Chord, type Command, type CommandId, type Focus, type Press } from './commands';
export { shownGauge, usualOver } from './gauge';
export { brokenOff, IDLE, lifted, moved, pressed, type Effect, type Finger, type Gesture, type Turn } from './gesture';
export { redo, startHistory, step, undo, type History } from './history';
export { regridded } from './regrid';
export { centred, keptUnder, panned, SCALE, zoomed, ZOOM_STEP, type Size, type Spot, type Viewport } from './viewport';

/** Starter pieces. They are fetched when they are asked for, so this is an index of its own beside that of the folder. */
export { starterDesign } from './design';
export type * from './kinds';
export { startPiece } from './piece';
export { STARTER_PICKUPS } from './pickups';
export { STARTERS } from './starters';

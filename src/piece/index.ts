export { BOUNDS } from './bounds';
export { checkSense } from './check';
export { checkDesign } from './checkDesign';
export type * from './design';
export { DEFAULT_HANDOUT, HANDOUT_BLOCKS, type Handout, type HandoutBlock, type HandoutVersion } from './handout';
export { VERSION } from './migrate';
export { nearest } from './nearest';
export { resolveOutline, type ResolvedEdge, type Side } from './outline';
export { DesignError, type ListOf, type Notice, type Problem, type SyntaxReason, type UnknownField } from './problems';
export { placeDesign, rowDesign, type QuickDesign } from './quick';
export { quickFault, quickRange, rowTarget } from './quickFaults';
export {
  quickLength,
  quickRows,
  type PlaceQuestion,
  type QuickFault,
  type QuickField,
  type QuickQuestion,
  type QuickUnit,
  type RowQuestion,
} from './quickQuestion';
export { readDesign, type ReadResult } from './read';
export { expandSteps, type SingleStep } from './schedule';
export { starterDesign, startPiece, STARTER_PICKUPS, STARTERS } from './starters';
export type * from './starters/kinds';
export { titleOf } from './title';
export { findTwins } from './twins';
export { writeDesign } from './write';

export type * from './bandEdge';
export type * from './holeRow';
export type * from './plan';
export type * from './statedCheck';
export { apportion, type Apportioned, type Share } from './apportion';
export { verdictOf } from './check';
export { misreadings } from './causes';
export { allFlat } from './contradictions';
export { endsFor, gapsBetween, holesFor, stitchesFor } from './buttonholes';
export { comparePlans } from './changed';
export type * from './changed';
export { chooseOpenings } from './choose';
export { closingRow, countOut, firstRow } from './firstRow';
export { placedRow, type PlacedRow, type RowWish } from './placedRow';
export { columnOf, ribOf, type Rib } from './rib';
export { planDesign, planPickup } from './make';
export { openingsOf, type EdgeOpenings, type NeedleChoice } from './openings';
export { yarnWeights, YARN_WEIGHTS } from './plausible';
export { PlanError, type PlanProblem } from './problems';
export { answerPlace, answerRow, type PlaceAnswer, type RowAnswer } from './quick';
export { plainRatios, ratioChoices, ratioCount } from './ratios';
export { mirrorableParts } from './sections';
export { evenMarks, evenParts, rhythmOf, spreadEvenly } from './spread';
export {
  needlesBack,
  needlesCorrected,
  needlesOn,
  needlesReplan,
  needlesResumed,
  needlesStart,
  needleWork,
  readNeedlePlace,
  type Miscount,
  type NeedlePlace,
  type NeedleWork,
  type Resumed,
} from './needlePlace';
export { needleSteps, type NeedleStep } from './needleSteps';
export { replan, replanFrom, replanned, type Replan, type ReplannedSection } from './replan';
export { solveHoles, type HoleUnknown, type SolvedHoles } from './solveHoles';
export { surveyDesign, type SurveyedEdge } from './survey';
export { fitsMultiple, fittingCounts, nearestFitting } from './total';

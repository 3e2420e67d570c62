export type { EdgeShape, MeasuredEdge, Side, WorkedStep } from './measured';
export { cellOf, DRAWN_ROW, DRAWN_STITCH, measurePiece } from './measure';
export { parameterAtHeight } from './height';
export { twoRates, type Portion } from './rates';
export { slopeSteps, type Step } from './slope';
export { tidied } from './tidy';
export { curveSteps } from './drawn';
export { largestDeviation, type Deviation } from './deviation';

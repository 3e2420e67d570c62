export { drawCloseUp, type CloseUp } from './draw';
export { closeUpsOf } from './ofPlan';
export type { CloseUpKind } from '../../text';

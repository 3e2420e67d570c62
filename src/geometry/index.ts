export { arcOf, type Arc } from './arc';
export { signedArea } from './area';
export { chainJoinLength, chainLength, chainPointAt, cornerAngle, type Chain, type ChainPlace } from './chain';
export { findCrossing, type Crossing } from './crossing';
export { boundsOf, boundsOfAll, inflections, turnsInX, turnsInY, type Bounds } from './extrema';
export { lengthOf, lengthTo, parameterAt } from './length';
export { parametersAtX, parametersAtY } from './level';
export { loopOf } from './loop';
export { nearestOn, type Nearest } from './nearest';
export { cornerJoin, joinLengthOf, joinLengthTo, offsetPoint } from './parallel';
export { add, angleBetween, cross, distance, dot, leftOf, mix, norm, scale, subtract, type Point } from './point';
export {
  between,
  cubic,
  derivativeAt,
  doublesBack,
  isStraight,
  line,
  pointAt,
  reversed,
  scaled,
  sizeOf,
  unitTangentAt,
  type Cubic,
  type Line,
  type Segment,
} from './segment';
export { nearly, RELATIVE_TOLERANCE } from './tolerance';
export { turningAlong, turningOf, turningTo } from './turning';

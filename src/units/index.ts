export { rowHeight, stitchesPerMm, stitchWidth, type Gauge } from './gauge';
export { fromUnit, MM_PER_INCH, readLength, toUnit, type LengthRead, type LengthUnit } from './length';
export type { Mm, Rows, Stitches } from './quantity';
export { roundHalfDown, roundHalfUp } from './rounding';
export { shelf } from './shelf';
export { readNumber, writeFraction, writeNumber, type NumberFault, type NumberRead, type NumberStyle } from './typed';

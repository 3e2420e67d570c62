import { scaleQuantize } from 'd3-scale';

/**
 * Round numbers from 0 to `length`, about `count` steps of 1, 2 or 5 times a power of ten. Only the ticks of the scale
 * are wanted: all linear scales have the same, and a quantized one brings nothing along to mix colours with.
 *
 * @param length above 0
 * @param count above 0
 */
export function roundTicks(length: number, count: number): number[] {
  return scaleQuantize([0, length], [0, 1]).ticks(count);
}

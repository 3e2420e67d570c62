/** Where a step is rounded up to 10, 5 or 2: half way between neighbours on a logarithmic scale. */
const TO_TEN = Math.sqrt(50);
const TO_FIVE = Math.sqrt(10);
const TO_TWO = Math.sqrt(2);

/**
 * Round numbers from 0 to `length`, about `count` steps of 1, 2 or 5 times a power of ten (the step nearest on a
 * logarithmic scale: P. Heckbert, "Nice numbers for graph labels", Graphics Gems, 1990). Steps below 1 are divided, not
 * multiplied, so that 0.3 is 0.3.
 *
 * @param length above 0
 * @param count above 0
 */
export function roundTicks(length: number, count: number): number[] {
  const step = length / count;
  const power = Math.floor(Math.log10(step));
  const over = step / 10 ** power;
  const factor = over >= TO_TEN ? 10 : over >= TO_FIVE ? 5 : over >= TO_TWO ? 2 : 1;
  const value = power < 0 ? (i: number) => i / (10 ** -power / factor) : (i: number) => i * 10 ** power * factor;
  const ticks: number[] = [];
  for (let i = 0; value(i) <= length; i++) ticks.push(value(i));
  return ticks;
}

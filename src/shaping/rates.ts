/** `times` times the same interval or amount. */
export interface Portion {
  readonly size: number;
  readonly times: number;
}

/**
 * Splits `total` into `parts` whole numbers that differ by one at most: the classic two-rate schedule, "some every
 * floor and some every ceil", the smaller first. With r = total mod parts there are `parts - r` of floor(total / parts)
 * and r of one more, which is the only way (division with remainder).
 *
 * @param total whole, 0 or more
 * @param parts whole, 1 or more
 * @returns one or two portions whose sizes times their times sum to `total`
 */
export function twoRates(total: number, parts: number): Portion[] {
  const floor = Math.floor(total / parts);
  const longer = total - floor * parts;
  const portions = [
    { size: floor, times: parts - longer },
    { size: floor + 1, times: longer },
  ];
  return portions.filter((portion) => portion.times > 0);
}

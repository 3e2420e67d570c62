/** The written default of `nearly`: one part in a thousand million. */
export const RELATIVE_TOLERANCE = 1e-9;

/**
 * Whether two numbers are equal up to the error of their own computation. The slack is a share of the larger of the
 * two, and the same share of 1 where both are below 1, so that a number may be compared with nothing. Numbers that are
 * not finite are equal only to themselves.
 */
export function nearly(a: number, b: number, relative: number = RELATIVE_TOLERANCE): boolean {
  if (a === b) return true;
  const slack = relative * Math.max(1, Math.abs(a), Math.abs(b));
  return Number.isFinite(slack) && Math.abs(a - b) <= slack;
}

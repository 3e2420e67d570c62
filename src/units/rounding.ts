/**
 * Slack for numbers that are a half up to the error of their own computation: 22.5 that came out as
 * 22.500000000000004 is still a half.
 */
const HALF_SLACK = 1e-9;

// Adding 0 makes 0 of a minus nought.

/** The nearest whole number; a half goes down, since a stitch is more easily added on the first row than lost. */
export function roundHalfDown(value: number): number {
  // Nought is added so that no -0 comes out.
  return Math.ceil(value - 0.5 - HALF_SLACK * Math.max(1, Math.abs(value))) + 0;
}

/** The nearest whole number; a half goes up. */
export function roundHalfUp(value: number): number {
  return Math.floor(value + 0.5 + HALF_SLACK * Math.max(1, Math.abs(value))) + 0;
}

import type { Step } from './slope';

/** How far the tidied edge may lie from the sampled one, in stitches. */
const MOST_MOVED = 1;

/**
 * Puts the steps of a stretch that bends one way in order, so that they never wobble: 5, 4, 3, 1, 2, 1 becomes
 * 5, 4, 3, 2, 1, 1. The sum and the number of rows stay; nowhere does the edge move by more than one stitch, else the
 * gentler ordering (amounts only), else none, is used.
 *
 * @param amounts stitches of each shaping interval, bottom up, 0 or more
 * @param flattening true where the edge is flattest at its bottom and steepens upwards, so that amounts fall
 */
export function tidied(amounts: readonly number[], flattening: boolean): number[] {
  const turned = flattening ? [...amounts] : [...amounts].reverse();
  for (const candidate of [ordered(turned, true), ordered(turned, false)]) {
    if (mostMoved(turned, candidate) <= MOST_MOVED) return flattening ? candidate : candidate.reverse();
  }
  return [...amounts];
}

/** Amounts from large to small, and with `gapsToo` the even intervals between them from short to long. */
function ordered(amounts: readonly number[], gapsToo: boolean): number[] {
  const events = amounts.flatMap((amount, at) => (amount > 0 ? [{ amount, at }] : []));
  const first = events[0];
  if (!first) return [...amounts];
  const sizes = events.map((event) => event.amount).sort((a, b) => b - a);
  const gaps = events.slice(1).map((event, i) => event.at - (events[i]?.at ?? 0));
  if (gapsToo) gaps.sort((a, b) => a - b);
  const result = amounts.map(() => 0);
  let at = first.at;
  sizes.forEach((size, i) => {
    if (i > 0) at += gaps[i - 1] ?? 0;
    result[at] = size;
  });
  return result;
}

function mostMoved(a: readonly number[], b: readonly number[]): number {
  let difference = 0;
  let most = 0;
  a.forEach((amount, i) => {
    difference += amount - (b[i] ?? 0);
    most = Math.max(most, Math.abs(difference));
  });
  return most;
}

/** Joins each step with the even rows that follow it. Rows before the first step stay as a step of no stitches. */
export function joined(steps: readonly Step[]): Step[] {
  const result: Step[] = [];
  for (const step of steps) {
    const last = result.at(-1);
    if (step.across === 0 && last) result[result.length - 1] = { across: last.across, rows: last.rows + step.rows };
    else result.push(step);
  }
  return result;
}

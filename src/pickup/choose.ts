import { spreadEvenly } from './spread';

/** Openings this close to equal count as equal, relative to their mean distance. */
const EQUAL = 1e-6;

/**
 * Which openings are used for `picks` stitches, ends always used. Equal openings are spread by whole numbers
 * (spread.ts); unequal ones, as on curves and steps, by the least sum of squared distances to evenly spaced places.
 *
 * @param at distance of each opening along the join, never falling
 * @param picks whole, 0 to at.length
 */
export function chooseOpenings(at: readonly number[], picks: number, spread: 'even' | 'grouped'): boolean[] {
  if (picks <= 1 || picks >= at.length || equallySpaced(at)) return spreadEvenly(at.length, picks, spread);
  const used = at.map(() => false);
  for (const i of nearestToEven(at, picks)) used[i] = true;
  return used;
}

export function equallySpaced(at: readonly number[]): boolean {
  const first = at[0];
  const last = at.at(-1);
  if (first === undefined || last === undefined || at.length < 3) return true;
  const mean = (last - first) / (at.length - 1);
  return at.every((place, i) => Math.abs(place - first - i * mean) <= EQUAL * Math.abs(mean));
}

/**
 * The increasing choice i_0 < i_1 < … of `picks` places, the first and last fixed, that minimises
 * `sum (at[i_j] - t_j)^2` where the t_j divide the way from first to last evenly. Exact, by dynamic programming over a
 * band: pushing the nearest places apart to the right bounds each i_j from above, to the left from below (an optimal
 * i_j beyond the bound could be moved one place towards t_j together with the run it leans on, which never costs more).
 */
function nearestToEven(at: readonly number[], picks: number): number[] {
  const last = at.length - 1;
  const start = at[0] ?? 0;
  const step = ((at[last] ?? 0) - start) / (picks - 1);
  const targets = Array.from({ length: picks }, (_, j) => start + j * step);
  // Choices as good as each other up to the error of their arithmetic are a tie, wherever on the grid the edge lies.
  const tie = EQUAL * step * step;
  const { low, high } = bands(at, targets);
  const best: Float64Array[] = [];
  const from: Int32Array[] = [];
  for (let j = 0; j < picks; j++) {
    const lo = low[j] ?? 0;
    const width = (high[j] ?? 0) - lo + 1;
    const costs = new Float64Array(width);
    const origin = new Int32Array(width);
    const before = best[j - 1];
    const beforeLow = low[j - 1] ?? 0;
    let reached = -1;
    let cheapest = Infinity;
    let cheapestAt = -1;
    for (let k = 0; k < width; k++) {
      const i = lo + k;
      if (before) {
        while (reached + 1 < before.length && beforeLow + reached + 1 < i) {
          reached += 1;
          const cost = before[reached] ?? Infinity;
          if (cost < cheapest - tie) {
            cheapest = cost;
            cheapestAt = reached;
          }
        }
      }
      const distance = (at[i] ?? 0) - (targets[j] ?? 0);
      costs[k] = (before ? cheapest : 0) + distance * distance;
      origin[k] = cheapestAt;
    }
    best.push(costs);
    from.push(origin);
  }
  const chosen: number[] = [];
  let k = (best[picks - 1]?.length ?? 1) - 1;
  for (let j = picks - 1; j >= 0; j--) {
    chosen.push((low[j] ?? 0) + k);
    k = from[j]?.[k] ?? 0;
  }
  return chosen.reverse();
}

/** For each target the lowest and the highest place an optimal choice can use; the ends are fixed. */
function bands(at: readonly number[], targets: readonly number[]): { low: number[]; high: number[] } {
  const picks = targets.length;
  const last = at.length - 1;
  const off = (i: number, j: number) => Math.abs((at[i] ?? 0) - (targets[j] ?? 0));
  const tie = EQUAL * ((targets[1] ?? 0) - (targets[0] ?? 0));
  // Of equally near places (two may lie at one distance) the last bounds from above and the first from below.
  const high: number[] = [];
  for (let j = 0, i = 0; j < picks; j++) {
    while (i < last && off(i + 1, j) <= off(i, j) + tie) i += 1;
    high.push(Math.max(i, (high[j - 1] ?? -1) + 1));
  }
  const low: number[] = Array.from({ length: picks }, () => 0);
  for (let j = picks - 1, i = last; j >= 0; j--) {
    while (i > 0 && off(i - 1, j) <= off(i, j) + tie) i -= 1;
    low[j] = Math.min(i, (low[j + 1] ?? at.length) - 1);
  }
  return {
    low: low.map((value, j) => (j === picks - 1 ? last : Math.max(value, j))),
    high: high.map((value, j) => (j === 0 ? 0 : Math.min(value, last - (picks - 1 - j)))),
  };
}

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
  // Choices as good as each other up to the error of their arithmetic are a tie, wherever on the grid the edge lies.
  const tie = EQUAL * step * step;
  const { low, high } = bands(at, start, step, picks);
  /** Where in `from` the band of each target begins. */
  const bandAt = new Int32Array(picks + 1);
  let widest = 0;
  for (let j = 0; j < picks; j++) {
    const width = high[j]! - low[j]! + 1;
    bandAt[j + 1] = bandAt[j]! + width;
    widest = Math.max(widest, width);
  }
  const from = new Int32Array(bandAt[picks]!);
  let [costs, before] = [new Float64Array(widest), new Float64Array(widest)];
  for (let j = 0; j < picks; j++) {
    [costs, before] = [before, costs];
    const target = start + j * step;
    const beforeLow = j > 0 ? low[j - 1]! : 0;
    const beforeWidth = j > 0 ? bandAt[j]! - bandAt[j - 1]! : 0;
    let reached = -1;
    let cheapest = j > 0 ? Infinity : 0;
    let cheapestAt = -1;
    for (let i = low[j]!; i <= high[j]!; i++) {
      while (reached + 1 < beforeWidth && beforeLow + reached + 1 < i) {
        reached += 1;
        if (before[reached]! < cheapest - tie) {
          cheapest = before[reached]!;
          cheapestAt = reached;
        }
      }
      const distance = at[i]! - target;
      costs[i - low[j]!] = cheapest + distance * distance;
      from[bandAt[j]! + i - low[j]!] = cheapestAt;
    }
  }
  const chosen: number[] = [];
  let k = high[picks - 1]! - low[picks - 1]!;
  for (let j = picks - 1; j >= 0; j--) {
    chosen.push(low[j]! + k);
    k = from[bandAt[j]! + k]!;
  }
  return chosen.reverse();
}

/** For each target the lowest and the highest place an optimal choice can use; the ends are fixed. */
function bands(
  at: readonly number[],
  start: number,
  step: number,
  picks: number,
): { readonly low: Int32Array; readonly high: Int32Array } {
  const last = at.length - 1;
  const off = (i: number, j: number) => Math.abs(at[i]! - (start + j * step));
  const tie = EQUAL * step;
  const low = new Int32Array(picks);
  const high = new Int32Array(picks);
  // Of equally near places (two may lie at one distance) the last bounds from above and the first from below.
  for (let j = 0, i = 0, least = 0; j < picks; j++) {
    while (i < last && off(i + 1, j) <= off(i, j) + tie) i += 1;
    const most = Math.max(i, least);
    least = most + 1;
    high[j] = j === 0 ? 0 : Math.min(most, last - (picks - 1 - j));
  }
  for (let j = picks - 1, i = last, most = last; j >= 0; j--) {
    while (i > 0 && off(i - 1, j) <= off(i, j) + tie) i -= 1;
    const least = Math.min(i, most);
    most = least - 1;
    low[j] = j === picks - 1 ? last : Math.max(least, j);
  }
  return { low, high };
}

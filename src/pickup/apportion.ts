/** An edge, or a pair of twins, among which stitches are apportioned. */
export interface Share {
  /** What it wants by length; above 0. */
  readonly wanted: number;
  /** Openings it has. */
  readonly most: number;
}

export interface Apportioned {
  /** Stitches for each of the singles, and for each edge of each pair. */
  readonly singles: readonly number[];
  readonly pairs: readonly number[];
  /** What they sum to: the total asked for, or the nearest that can be had. */
  readonly total: number;
  /** Why the total is another one: not enough openings, or pairs alone against an odd total. */
  readonly short: 'openings' | 'parity' | null;
}

/**
 * Shares `total` stitches out so that `sum (k - wanted)^2 / wanted` is least, whole numbers, both edges of a pair
 * equal, none over its openings. The sum is convex and separable, so within the singles and within the pairs a choice
 * that no exchange of one stitch betters is the best (T. Ibaraki, N. Katoh, Resource Allocation Problems, MIT Press
 * 1988, ch. 4); how much the pairs get is convex too and is found by walking downhill.
 *
 * @param singles edges without a twin
 * @param pairs each stands for two edges of these figures
 * @param total whole, 0 or more
 */
export function apportion(singles: readonly Share[], pairs: readonly Share[], total: number): Apportioned {
  const mostSingles = sum(singles.map((share) => share.most));
  const mostPairs = sum(pairs.map((share) => share.most));
  const most = mostSingles + 2 * mostPairs;
  const capped = Math.min(total, most);
  const parity = mostSingles === 0 && capped % 2 === 1;
  const reachable = parity ? capped - 1 : capped;
  const lowestPairs = Math.max(0, Math.ceil((reachable - mostSingles) / 2));
  const highestPairs = Math.min(mostPairs, Math.floor(reachable / 2));
  const wantedPairs = sum(pairs.map((share) => share.wanted));
  const wantedAll = sum(singles.map((share) => share.wanted)) + 2 * wantedPairs;
  const cost = (toPairs: number) => {
    const alone = shareOut(singles, reachable - 2 * toPairs);
    const paired = shareOut(pairs, toPairs);
    return { alone, paired, cost: costOf(singles, alone) + 2 * costOf(pairs, paired) };
  };
  let toPairs = wantedAll > 0 ? Math.round((reachable * wantedPairs) / wantedAll) : 0;
  toPairs = Math.min(Math.max(toPairs, lowestPairs), highestPairs);
  let best = cost(toPairs);
  for (const way of [-1, 1]) {
    for (;;) {
      const next = toPairs + way;
      if (next < lowestPairs || next > highestPairs) break;
      const candidate = cost(next);
      if (candidate.cost >= best.cost) break;
      best = candidate;
      toPairs = next;
    }
  }
  return {
    singles: best.alone,
    pairs: best.paired,
    total: reachable,
    short: capped < total ? 'openings' : parity ? 'parity' : null,
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function costOf(shares: readonly Share[], counts: readonly number[]): number {
  return sum(shares.map((share, i) => ((counts[i] ?? 0) - share.wanted) ** 2 / share.wanted));
}

/** What one stitch more costs on a share that has `count`. */
function nextCost(share: Share, count: number): number {
  return count < share.most ? (2 * (count - share.wanted) + 1) / share.wanted : Infinity;
}

/** The best shares of `total`, which is within what they can carry. */
function shareOut(shares: readonly Share[], total: number): number[] {
  const all = sum(shares.map((share) => share.wanted));
  const counts = shares.map((share) => Math.min(share.most, Math.floor((total * share.wanted) / (all || 1))));
  let left = total - sum(counts);
  while (left !== 0) {
    const i = left > 0 ? cheapestToAdd(shares, counts) : dearestToDrop(shares, counts);
    if (i < 0) break;
    counts[i] = (counts[i] ?? 0) + Math.sign(left);
    left -= Math.sign(left);
  }
  for (;;) {
    const add = cheapestToAdd(shares, counts);
    const drop = dearestToDrop(shares, counts);
    const [adding, dropping] = [shares[add], shares[drop]];
    if (!adding || !dropping || add === drop) break;
    const gain = nextCost(dropping, (counts[drop] ?? 0) - 1) - nextCost(adding, counts[add] ?? 0);
    if (!(gain > 1e-12)) break;
    counts[add] = (counts[add] ?? 0) + 1;
    counts[drop] = (counts[drop] ?? 0) - 1;
  }
  return counts;
}

function cheapestToAdd(shares: readonly Share[], counts: readonly number[]): number {
  let best = -1;
  let least = Infinity;
  shares.forEach((share, i) => {
    const cost = nextCost(share, counts[i] ?? 0);
    if (cost < least) [least, best] = [cost, i];
  });
  return best;
}

/** The share whose last stitch cost most; of equal ones the last, so that the first keeps a stitch more. */
function dearestToDrop(shares: readonly Share[], counts: readonly number[]): number {
  let best = -1;
  let most = -Infinity;
  shares.forEach((share, i) => {
    const count = counts[i] ?? 0;
    if (count === 0) return;
    const cost = (2 * (count - 1 - share.wanted) + 1) / share.wanted;
    if (cost >= most) [most, best] = [cost, i];
  });
  return best;
}

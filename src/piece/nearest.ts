/**
 * Number of slips of the pen to make `b` of `a`: a letter changed, added or left out, or two neighbours swapped (the
 * optimal string alignment distance of Damerau, "A technique for computer detection and correction of spelling
 * errors", 1964, https://doi.org/10.1145/363958.363994).
 */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = swapped ? before[j - 2]! + 1 : Infinity;
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1, swap));
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}

/** Longest word that is compared; a longer one is no slip of the pen. */
const LONGEST = 80;

/**
 * The candidate most like `word`, or null when none is like it: slips in at most a third of the letters. Case does not
 * count. The earlier one wins a tie.
 */
export function nearest(word: string, candidates: readonly string[]): string | null {
  if (word.length > LONGEST) return null;
  let best: string | null = null;
  let least = Infinity;
  for (const candidate of candidates) {
    if (candidate.length > LONGEST) continue;
    const off = distance(word.toLowerCase(), candidate.toLowerCase());
    const allowed = Math.floor(Math.max(word.length, candidate.length) / 3);
    if (off < least && off <= allowed) {
      best = candidate;
      least = off;
    }
  }
  return best;
}

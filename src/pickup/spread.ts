import type { Run } from './plan';

/**
 * `longer` of `parts` places marked as evenly as whole numbers allow: place i is marked where round(i * longer / parts)
 * grows. Symmetric about the middle wherever that is as even; an odd one out falls near the middle. Any shift of
 * Bresenham's line gives a rotation of one Euclidean rhythm (G. Toussaint, "The Euclidean algorithm generates
 * traditional musical rhythms", BRIDGES 2005, https://archive.bridgesmathart.org/2005/bridges2005-47.html).
 *
 * @param longer whole, 0 to parts
 * @param parts whole, 1 or more
 */
export function evenMarks(longer: number, parts: number): boolean[] {
  // round(i * longer / parts) in whole numbers: floor((2 * i * longer + parts) / (2 * parts)).
  const upTo = (i: number) => Math.floor((2 * i * longer + parts) / (2 * parts));
  return Array.from({ length: parts }, (_, i) => upTo(i + 1) > upTo(i));
}

/** `parts` whole numbers that sum to `total` and differ by one at most, the larger ones spread or all first. */
export function evenParts(total: number, parts: number, spread: 'even' | 'grouped'): number[] {
  const floor = Math.floor(total / parts);
  const longer = total - floor * parts;
  const marks = spread === 'even' ? evenMarks(longer, parts) : Array.from({ length: parts }, (_, i) => i < longer);
  return marks.map((mark) => floor + (mark ? 1 : 0));
}

/**
 * Which of `openings` equal openings are used for `picks` stitches.
 * - The first and the last are used (the middle one when there is a single pick).
 * - More than half used: openings - picks + 1 runs with single skips between, their lengths a stitch apart at most.
 * - Else every pick stands alone and the gaps differ by one at most.
 *
 * @param openings whole, 0 or more
 * @param picks whole, 0 to openings
 */
export function spreadEvenly(openings: number, picks: number, spread: 'even' | 'grouped'): boolean[] {
  if (picks >= openings) return Array.from({ length: openings }, () => true);
  if (picks <= 1) {
    const middle = picks === 1 ? Math.floor((openings - 1) / 2) : -1;
    return Array.from({ length: openings }, (_, i) => i === middle);
  }
  const used: boolean[] = [];
  if (2 * picks > openings) {
    evenParts(picks, openings - picks + 1, spread).forEach((run, i) => {
      if (i > 0) used.push(false);
      for (let k = 0; k < run; k++) used.push(true);
    });
  } else {
    used.push(true);
    for (const gap of evenParts(openings - picks, picks - 1, spread)) {
      for (let k = 0; k < gap; k++) used.push(false);
      used.push(true);
    }
  }
  return used;
}

/** The rhythm of a row of openings as a knitter counts it: so many picked up, so many passed over, so many times. */
export function rhythmOf(used: readonly boolean[]): Run[] {
  const runs: Run[] = [];
  let i = 0;
  while (i < used.length) {
    let pick = 0;
    let skip = 0;
    while (used[i] === true) {
      pick += 1;
      i += 1;
    }
    while (used[i] === false) {
      skip += 1;
      i += 1;
    }
    const last = runs.at(-1);
    if (last?.pick === pick && last.skip === skip) runs[runs.length - 1] = { ...last, times: last.times + 1 };
    else runs.push({ pick, skip, times: 1 });
  }
  return runs;
}

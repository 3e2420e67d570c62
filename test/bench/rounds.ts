/** What rounds of one work took, ms. */
export interface Rounds {
  readonly median: number;
  /** Nine of ten took no longer. */
  readonly most: number;
  readonly rounds: number;
}

/** Does a work again and again for about `ms`, after a third of that to warm up. Most rounds need 20 at least. */
export function timed(work: () => unknown, ms = 1200): Rounds {
  const times: number[] = [];
  let kept: unknown;
  const until = (end: number, least: number, note: (time: number) => void) => {
    for (let i = 0; i < least || performance.now() < end; i++) {
      const start = performance.now();
      kept = work();
      note(performance.now() - start);
    }
  };
  until(performance.now() + ms / 3, 5, () => undefined);
  until(performance.now() + ms, 20, (time) => times.push(time));
  // What was made is looked at, so that no compiler leaves the work out.
  if (kept === null) throw new Error('The work made nothing.');
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.floor((times.length - 1) * share)]!;
  return { median: at(0.5), most: at(0.9), rounds: times.length };
}

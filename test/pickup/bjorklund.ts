/**
 * The Euclidean rhythm E(k, n) by Bjorklund's algorithm, as told in G. Toussaint, The Euclidean Algorithm Generates
 * Traditional Musical Rhythms, BRIDGES 2005, pages 47 to 56, https://archive.bridgesmathart.org/2005/bridges2005-47.html:
 * k ones and n - k noughts stand in a row; the remainder at the end is dealt out to the groups at the front until it is
 * one group or none.
 */
export function euclideanRhythm(k: number, n: number): boolean[] {
  let front: boolean[][] = Array.from({ length: k }, () => [true]);
  let rest: boolean[][] = Array.from({ length: n - k }, () => [false]);
  if (k === 0) return rest.flat();
  while (rest.length > 1) {
    const pairs = Math.min(front.length, rest.length);
    const joined = front.slice(0, pairs).map((group, i) => [...group, ...rest[i]!]);
    rest = front.length > pairs ? front.slice(pairs) : rest.slice(pairs);
    front = joined;
  }
  return [...front, ...rest].flat();
}

/** Whether two rings are the same up to rotation. */
export function sameRing(a: readonly boolean[], b: readonly boolean[]): boolean {
  if (a.length !== b.length) return false;
  const write = (ring: readonly boolean[]) => ring.map((one) => (one ? 'x' : '.')).join('');
  return (write(a) + write(a)).includes(write(b));
}

/** Reads a rhythm as it is printed: x for a stroke, a point for a rest. */
export function printed(rhythm: string): boolean[] {
  return Array.from(rhythm, (sign) => sign === 'x');
}

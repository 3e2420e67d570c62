/** The first of the places 0 to `length` - 1 from which on something holds, or `length`; by halving. */
export function firstFrom(length: number, holds: (i: number) => boolean): number {
  let [low, high] = [0, length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The index of the last number of a list that never falls which is no more than `value`; -1 where there is none. */
export function lastAtMost(list: readonly number[], value: number): number {
  return firstFrom(list.length, (i) => !(list[i]! <= value)) - 1;
}

import type { Mm } from '../units';

/** A growing piecewise straight map between distances along the join and distances by the pick-up's measure. */
export interface Ruler {
  /** Length by the measure at a distance along the join. */
  lengthAt(along: Mm): Mm;
  /** Distance along the join at a length by the measure. */
  alongAt(length: Mm): Mm;
  readonly joinMm: Mm;
  readonly lengthMm: Mm;
}

/** @param marks pairs (along, length), growing in both, from (0, 0) to the end */
export function rulerOf(marks: readonly (readonly [along: Mm, length: Mm])[]): Ruler {
  const last = marks.at(-1) ?? [0, 0];
  return {
    lengthAt: (along) => interpolate(marks, along, 0, 1),
    alongAt: (length) => interpolate(marks, length, 1, 0),
    joinMm: last[0],
    lengthMm: last[1],
  };
}

function interpolate(marks: readonly (readonly [number, number])[], value: number, from: 0 | 1, to: 0 | 1): number {
  let low = 0;
  let high = marks.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((marks[middle]?.[from] ?? 0) <= value) low = middle;
    else high = middle;
  }
  const a = marks[low] ?? [0, 0];
  const b = marks[high] ?? a;
  const span = b[from] - a[from];
  const fraction = span > 0 ? Math.min(1, Math.max(0, (value - a[from]) / span)) : 0;
  return a[to] + fraction * (b[to] - a[to]);
}

import type { Mm } from '../units';
import { lastAtMost } from './search';

/** A growing piecewise straight map between distances along the join and distances by the pick-up's measure. */
export interface Ruler {
  /** Length by the measure at a distance along the join. */
  lengthAt(along: Mm): Mm;
  /** Distance along the join at a length by the measure. */
  alongAt(length: Mm): Mm;
  readonly joinMm: Mm;
  readonly lengthMm: Mm;
}

/** Marks of one stretch in mm from its own start, growing, each to be taken `scale` times; and where it ends. */
export interface RulerMarks {
  readonly marks: readonly Mm[];
  readonly scale: number;
  readonly end: Mm;
}

/** Stretches end to end, and where each of them starts. */
interface Axis {
  readonly stretches: readonly RulerMarks[];
  readonly starts: readonly Mm[];
  readonly end: Mm;
}

/**
 * A ruler of stretches end to end, whose marks are read where they lie: nothing is copied.
 *
 * @param along marks of every stretch along the join
 * @param length the same marks by the measure
 */
export function rulerOf(along: readonly RulerMarks[], length: readonly RulerMarks[]): Ruler {
  const [join, measure] = [axisOf(along), axisOf(length)];
  return {
    lengthAt: (at) => read(at, join, measure),
    alongAt: (at) => read(at, measure, join),
    joinMm: join.end,
    lengthMm: measure.end,
  };
}

function axisOf(stretches: readonly RulerMarks[]): Axis {
  let end = 0;
  const starts = stretches.map((one) => {
    const start = end;
    end += one.end;
    return start;
  });
  return { stretches, starts, end };
}

function read(value: Mm, from: Axis, to: Axis): Mm {
  const i = Math.max(0, lastAtMost(from.starts, value));
  const [a, b] = [from.stretches[i], to.stretches[i]];
  if (!a || !b) return 0;
  const local = value - from.starts[i]!;
  const k = lastAtMost(a.marks, local / a.scale);
  const low = markOf(a, k);
  const span = markOf(a, k + 1) - low;
  const fraction = span > 0 ? Math.min(1, Math.max(0, (local - low) / span)) : 0;
  return to.starts[i]! + markOf(b, k) + fraction * (markOf(b, k + 1) - markOf(b, k));
}

/** Mark -1 is the start of a stretch, the one after the last its end. */
function markOf({ marks, scale, end }: RulerMarks, k: number): Mm {
  return k < 0 ? 0 : k < marks.length ? marks[k]! * scale : end;
}

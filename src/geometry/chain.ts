import { lengthOf, parameterAt } from './length';
import { cornerJoin, joinLengthOf } from './parallel';
import { angleBetween, type Point } from './point';
import { pointAt, sizeOf, unitTangentAt, type Segment } from './segment';

/** Segments joined end to end. */
export type Chain = readonly Segment[];

/** A place on a chain. */
export interface ChainPlace {
  /** Which segment it lies on. At a corner: the one that ends there. */
  readonly index: number;
  /** Where on that segment, from 0 to 1. */
  readonly t: number;
  readonly point: Point;
  /** The direction of travel, of length 1. */
  readonly tangent: Point;
}

export function chainLength(chain: Chain): number {
  return chain.reduce((sum, seg) => sum + lengthOf(seg), 0);
}

/**
 * The length of the parallel on the left at distance `inset`: that of every segment, and what each corner between two
 * of them adds or takes. Segments of no length are passed over.
 */
export function chainJoinLength(chain: Chain, inset: number): number {
  const drawn = chain.filter((seg) => sizeOf(seg) > 0);
  return drawn.reduce((sum, seg, i) => {
    const before = drawn[i - 1];
    return sum + joinLengthOf(seg, inset) + (before === undefined ? 0 : cornerJoin(cornerAngle(before, seg), inset));
  }, 0);
}

/** The angle by which the line turns from the end of one segment to the start of the next, counterclockwise. */
export function cornerAngle(before: Segment, after: Segment): number {
  return angleBetween(unitTangentAt(before, 1), unitTangentAt(after, 0));
}

/**
 * The place at a distance along a chain; a distance beyond an end gives that end. Who asks for many places on one
 * chain gives the lengths of its segments, so that they are worked out once.
 * @throws RangeError for a chain without segments.
 */
export function chainPointAt(
  chain: Chain,
  distanceAlong: number,
  lengths: readonly number[] = chain.map(lengthOf),
): ChainPlace {
  const last = chain.length - 1;
  if (last < 0) throw new RangeError('A chain without segments has no places on it.');
  let index = 0;
  let left = distanceAlong;
  while (index < last && left > lengths[index]!) {
    left -= lengths[index]!;
    index += 1;
  }
  const seg = chain[index]!;
  const t = left >= lengths[index]! && index === last ? 1 : parameterAt(seg, left);
  return { index, t, point: pointAt(seg, t), tangent: unitTangentAt(seg, t) };
}

import type { RatioUnit, StatedRatio } from '../piece';
import type { PlannedEdge } from './plan';
import type { RatioOf } from './statedCheck';

/**
 * How many rows, ridges, chains or stitches an edge has, as a knitter counts them for a ratio. A ridge and a chain are
 * two rows, and the stitches that lie flat on a curve count with its rows; an edge without rows is counted in stitches.
 */
export function placesPer({ unit, places, rows, stitches }: PlannedEdge, per: RatioUnit): number {
  if (rows === 0) return places;
  if (per === 'stitch') return stitches;
  const pairs = unit === 'chain' || unit === 'ridge';
  if (per === 'row') return pairs ? rows : places;
  return pairs ? places : Math.floor(places / 2);
}

/** A stated ratio with what it is counted in on an edge. */
export function ratioOf({ pick, of, per }: StatedRatio, edge: PlannedEdge): RatioOf {
  const unit = edge.rows === 0 ? 'stitch' : (per ?? 'row');
  return { pick, of, per: unit, places: placesPer(edge, unit) };
}

import type { EdgeRef } from '../piece';
import type { PickupPlan } from '../pickup';

export type PointWay = 'next' | 'previous' | 'first' | 'last';

/**
 * The pick-up point that lies a step on from another one in working order, round and round, or the first or last of
 * all. From no point, the next is the first of the chosen edge, and the one before is its last.
 *
 * @param from index of a point in the plan, or null
 * @param edge the chosen edge, if any
 * @returns its index in the plan's points; null where nothing is picked up
 */
export function pointFrom(plan: PickupPlan, way: PointWay, from: number | null, edge: EdgeRef | null): number | null {
  const { points } = plan;
  const step = way === 'next' || way === 'first' ? 1 : -1;
  const { length } = points;
  let at = way === 'next' || way === 'previous' ? from : null;
  if (at === null) {
    const isThere = ({ piece, measured }: PickupPlan['edges'][number]) =>
      piece.id === edge?.piece && measured.id === edge.edge;
    const own =
      way === 'next' ? plan.edges.find(isThere) : way === 'previous' ? plan.edges.findLast(isThere) : undefined;
    at = step > 0 ? (own?.firstPoint ?? 0) - 1 : (own?.pointsEnd ?? points.length);
  }
  const start = at;
  const order = points.map((_, i) => (start + step * (i + 1) + 2 * length) % length);
  return order.find((i) => points[i]!.n !== null) ?? null;
}

import { findTwins } from '../piece';
import type { PickupPlan, PlannedEdge } from '../pickup';

/** Shares of a length closer than this are the same. */
const SLACK = 1e-9;

/** The mirror image of a planned edge in the same pick-up, over the same part; undefined where it has none. */
export function mirrorImage(plan: PickupPlan, edge: PlannedEdge): PlannedEdge | undefined {
  const index = findTwins(edge.piece)[edge.measured.index];
  const [from, to] = edge.stretch.part;
  return plan.edges.find(
    (other) =>
      other !== edge &&
      other.piece === edge.piece &&
      other.measured.index === index &&
      Math.abs(other.stretch.part[0] - (1 - to)) < SLACK &&
      Math.abs(other.stretch.part[1] - (1 - from)) < SLACK,
  );
}

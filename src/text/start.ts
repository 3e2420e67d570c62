import type { PickupPlan, PlannedEdge } from '../pickup';
import { edgeTitle } from './edgeName';

/** Where working begins on an edge: `at the top of Front, neck left`, `at the right end of Back, neck`. */
export function startText(plan: PickupPlan, edge: PlannedEdge): string {
  const name = edgeTitle(edge.piece, edge.measured.edge);
  return `${endText(plan, edge)} of ${name}`;
}

function endText(plan: PickupPlan, edge: PlannedEdge): string {
  const first = plan.points[edge.firstPoint];
  const last = plan.points[edge.pointsEnd - 1];
  const across = (last?.x ?? 0) - (first?.x ?? 0);
  const up = (last?.y ?? 0) - (first?.y ?? 0);
  // Seen on the drawing: an edge that ends about as high as it began is told by its sides.
  if (Math.abs(up) > 1 && Math.abs(up) >= Math.abs(across) / 2) return up < 0 ? 'at the top' : 'at the bottom';
  if (across === 0) return 'at the start';
  return across < 0 ? 'at the right end' : 'at the left end';
}

import type { PlannedEdge } from '../pickup';
import { edgeTitle } from './edgeName';

/** Where working begins on an edge: `at the top of Front, neck left`, `at the right end of Back, neck`. */
export function startText(edge: PlannedEdge): string {
  const name = edgeTitle(edge.piece, edge.measured.edge);
  return `${endText(edge)} of ${name}`;
}

function endText({ selection }: PlannedEdge): string {
  const { x, y } = selection.openings;
  const across = (x.at(-1) ?? 0) - (x[0] ?? 0);
  const up = (y.at(-1) ?? 0) - (y[0] ?? 0);
  // Seen on the drawing: an edge that ends about as high as it began is told by its sides.
  if (Math.abs(up) > 1 && Math.abs(up) >= Math.abs(across) / 2) return up < 0 ? 'at the top' : 'at the bottom';
  if (across === 0) return 'at the start';
  return across < 0 ? 'at the right end' : 'at the left end';
}

import { resolveOutline, type Piece } from '../../piece';
import { largestDeviation, type Deviation, type MeasuredEdge } from '../../shaping';

/** How far the worked steps of an edge lie off the line that was drawn; null where the steps themselves were given. */
export function strayOf(piece: Piece, measured: MeasuredEdge): Deviation | null {
  if (measured.edge.path === 'stepped') return null;
  return largestDeviation(measured, resolveOutline(piece)[measured.index]!.path);
}

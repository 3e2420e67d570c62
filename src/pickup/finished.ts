import type { Design, Pickup, Piece } from '../piece';
import { cellOf, measurePiece } from '../shaping';
import { shelf } from '../units';
import type { FinishedWidth } from './plan';

/**
 * What each piece shows across once its picked-up side edges have turned their selvage to the inside: its widest
 * count less the inset on each outermost side that carries a pick-up.
 */
export function finishedWidths({ pieces, pickups }: Design): FinishedWidth[] {
  return pieces.map((piece) => kept(piece, [pickups], () => finishedWidth(piece, pickups)));
}

const kept = shelf<Piece, FinishedWidth>(1);

function finishedWidth(piece: Piece, pickups: readonly Pickup[]): FinishedWidth {
  const xs = piece.outline.map((edge) => edge.from[0]);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const stitches = most - least;
  const taken = takenAt(pickups, piece, 'left', least) + takenAt(pickups, piece, 'right', most);
  const widthMm = piece.gauge ? (stitches - taken) * cellOf(piece).width : null;
  return { piece: piece.id, stitches, taken, widthMm };
}

/**
 * What is turned in on one side: nothing while a side edge that reaches the piece's outermost stitch is left free, else
 * the least inset of the pick-ups on them.
 */
function takenAt(pickups: readonly Pickup[], piece: Piece, side: 'left' | 'right', outermost: number): number {
  const outer = measurePiece(piece).filter(
    (edge) => edge.side === side && edge.rows > 0 && (edge.from[0] === outermost || edge.to[0] === outermost),
  );
  const insets = outer.map((edge) =>
    Math.max(
      0,
      ...pickups
        .filter((pickup) => pickup.along.some((at) => at.piece === piece.id && at.edge === edge.id))
        .map((pickup) => pickup.inset),
    ),
  );
  return insets.length > 0 ? Math.min(...insets) : 0;
}

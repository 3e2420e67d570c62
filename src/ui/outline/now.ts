import type { EdgeRef, Piece } from '../../piece';
import { measurePiece, type MeasuredEdge } from '../../shaping';
import type { Workbench } from '../workbench.svelte';

/** A piece as it is at this moment: right after a change components still hold what was. */
export function pieceNow(bench: Workbench, id: string): Piece | undefined {
  return bench.design.pieces.find((piece) => piece.id === id);
}

/** An edge as it measures at this moment; undefined where it is gone. */
export function edgeNow(bench: Workbench, { piece: id, edge }: EdgeRef): MeasuredEdge | undefined {
  const piece = pieceNow(bench, id);
  return piece && measurePiece(piece).find((measured) => measured.id === edge);
}

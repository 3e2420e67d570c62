import { pulled, type Change } from '../../editor';
import type { Piece } from '../../piece';
import type { Chosen } from './chosen';

/** What moves the chosen corners, or edge, of a piece by whole stitches and rows; null where nothing moves. */
export function nudged(piece: Piece, { corners, edge }: Chosen, dx: number, dy: number): Change | null {
  if (corners.length > 0) return { kind: 'move-corners', piece: piece.id, corners, dx, dy };
  if (edge === null) return null;
  return pulled(piece, { kind: 'edge', piece: piece.id, edge }, [dx, dy], { x: 0, y: 0 }).change;
}

import type { Edge, GridPoint, Piece } from '../piece';
import { rowHeight, stitchWidth, type Gauge } from '../units';
import { rescheduled } from './outline/reschedule';

/**
 * The piece drawn on the grid of another gauge, as large as it was: corners go to the nearest whole stitch and row,
 * curve handles are scaled, schedules keep their shape as nearly as whole steps allow. A piece without a gauge keeps
 * its stitches and rows, since it has no size.
 */
export function regridded(piece: Piece, gauge: Gauge): Piece {
  const old = piece.gauge;
  if (!old) return { ...piece, gauge };
  const sx = stitchWidth(old) / stitchWidth(gauge);
  const sy = rowHeight(old) / rowHeight(gauge);
  // Mirrored corners stay mirrored: both are rounded from the middle of the piece outwards.
  const xs = piece.outline.map((edge) => edge.from[0]);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const newMiddle = middle % 1 === 0 ? Math.round(middle * sx) : Math.floor(middle * sx) + 0.5;
  const toX = (x: number) => {
    const away = (x - middle) * sx;
    const half = newMiddle % 1;
    return newMiddle + Math.sign(away) * (Math.round(Math.abs(away) + half) - half);
  };
  const corner = ([x, y]: GridPoint): GridPoint => [toX(x), Math.round(y * sy)];
  const handle = ([x, y]: readonly [number, number]): readonly [number, number] => [
    newMiddle + (x - middle) * sx,
    y * sy,
  ];
  const outline = piece.outline.map((edge, i): Edge => {
    const from = corner(edge.from);
    switch (edge.path) {
      case 'straight':
        return { ...edge, from };
      case 'curve':
        return { ...edge, from, handles: [handle(edge.handles[0]), handle(edge.handles[1])] };
      case 'stepped': {
        const next = piece.outline[(i + 1) % piece.outline.length] ?? edge;
        return rescheduled(edge, from, corner(next.from), (x, y) => [x * sx, y * sy]);
      }
    }
  });
  return { ...piece, gauge, outline };
}

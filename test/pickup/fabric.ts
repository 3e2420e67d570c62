import type { Piece } from '../../src/piece';
import { measurePiece } from '../../src/shaping';

type XY = readonly [number, number];

/**
 * The outline of a piece as it is worked, in stitches and rows: each step goes across first and then up, seen from the
 * bottom, or up first where the step says so, so that the fabric is a stack of whole rows.
 */
function workedOutline(piece: Piece): XY[] {
  const corners: XY[] = [];
  for (const edge of measurePiece(piece)) {
    let [x, y] = edge.from;
    corners.push([x, y]);
    for (const { across, up, rowsFirst = false } of edge.worked) {
      // On a falling edge the rows come before the stitches at their foot, and the other way where rows come first.
      corners.push(up < 0 !== rowsFirst ? [x, y + up] : [x + across, y]);
      [x, y] = [x + across, y + up];
      corners.push([x, y]);
    }
  }
  return corners;
}

/** Whether a place lies in the fabric or within `slack` of its rim, by counting crossings to the right. */
export function inFabric(piece: Piece, x: number, y: number, slack = 1e-6): boolean {
  const corners = workedOutline(piece);
  let inside = false;
  for (const [i, [ax, ay]] of corners.entries()) {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    const [left, right, low, high] = [Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by)];
    if (x >= left - slack && x <= right + slack && y >= low - slack && y <= high + slack) return true;
    if (ay > y !== by > y && x < ax) inside = !inside;
  }
  return inside;
}

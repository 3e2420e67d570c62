import { isStraight, turnsInY, pointAt, type Segment } from '../geometry';
import type { Rows, Stitches } from '../units';
import { parameterAtHeight } from './height';
import type { MeasuredEdge } from './measured';

/** How far the worked steps of an edge stray from its smooth line, and where they do so most. */
export interface Deviation {
  /** Stitches to the side, 0 or more. */
  readonly stitches: number;
  /** The row, counted from the grid's 0, at whose lower edge that is. */
  readonly row: Rows;
}

/** A stretch of the smooth line that climbs or falls all the way: where it has a height. */
type Across = (y: Rows) => Stitches;

/**
 * The largest distance between the worked steps of an edge and the smooth line that it was drawn as. Steps are taken as
 * they are measured once they are worked: each as one straight line, its stitches across by its rows up. The distance
 * is taken level, in stitches, at every whole row the steps pass through, their corners among them; so it is what
 * the edge moves by at most when the schedule takes the place of the line. Stitches bound off or cast on together at a
 * turn lie level and have none. It is 0 on an edge without steps and on one that is worked from a schedule.
 *
 * @param edge as measured
 * @param path its line on the grid, x in stitches and y in rows, in the direction of the outline
 */
export function largestDeviation(edge: Pick<MeasuredEdge, 'from' | 'worked'>, path: readonly Segment[]): Deviation {
  const smooth = path.length === 1 && path[0] ? climbsOf(path[0]) : [];
  let most: Deviation = { stitches: 0, row: edge.from[1] };
  let [x, y] = edge.from;
  for (const { across, up, climb = 0 } of edge.worked) {
    const lineAt = smooth[climb];
    const way = Math.sign(up);
    for (let row = way; lineAt && Math.abs(row) <= Math.abs(up) && row !== 0; row += way) {
      const stitches = Math.abs(x + (across * row) / up - lineAt(y + row));
      if (stitches > most.stitches) most = { stitches, row: y + row };
    }
    x += across;
    y += up;
  }
  return most;
}

/** A line cut where it turns in y, as its steps are. */
function climbsOf(line: Segment): Across[] {
  if (line.kind === 'line' || isStraight(line)) {
    const { from, to } = line;
    return [(y) => from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)];
  }
  const cuts = [0, ...turnsInY(line), 1];
  return cuts.slice(1).map(
    (t1, i): Across =>
      (y) =>
        pointAt(line, parameterAtHeight(line, y, cuts[i]!, t1)).x,
  );
}

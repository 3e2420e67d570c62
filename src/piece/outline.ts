import { cubic, line, type Point, type Segment } from '../geometry';
import type { Edge, Finish, GridPoint, Piece, Selvage, SteppedEdge } from './design';
import { quoted } from './place';
import { DesignError } from './problems';
import { expandSteps, scheduleProblem } from './schedule';

/** Which side of the fabric an edge bounds, seen with the right side facing. */
export type Side = 'top' | 'bottom' | 'left' | 'right';

/** A stretch of outline with its ends, the way it faces and the line it follows. */
export interface ResolvedEdge {
  readonly index: number;
  readonly edge: Edge;
  readonly from: GridPoint;
  readonly to: GridPoint;
  readonly side: Side;
  /** As given, or bound off on a top edge and cast on on a bottom one. */
  readonly finish: Finish;
  /** As given, or garter in garter fabric and plain in any other. */
  readonly selvage: Selvage;
  /**
   * The line in the direction of the outline, x in stitches and y in rows. A stepped edge has one straight line for
   * each step worked, its stitches across by its rows up.
   */
  readonly path: readonly Segment[];
}

/** The corner at the end of edge `index`: the one where the next edge begins. */
export function endOf(outline: readonly Edge[], index: number): GridPoint {
  const next = outline[(index + 1) % outline.length];
  if (!next) throw new RangeError('an outline has at least one edge');
  return next.from;
}

/**
 * The side an edge bounds when the outline is travelled with the fabric on the left: what climbs is the right side,
 * what falls the left, and an edge that ends at the height where it began is the bottom going right, the top going left.
 */
function sideOf(from: GridPoint, to: GridPoint): Side {
  if (to[1] !== from[1]) return to[1] > from[1] ? 'right' : 'left';
  return to[0] > from[0] ? 'bottom' : 'top';
}

function point([x, y]: readonly [number, number]): Point {
  return { x, y };
}

function steppedPath(edge: SteppedEdge, from: GridPoint, to: GridPoint): Segment[] {
  const climbs = to[1] > from[1];
  const corners = [point(climbs ? from : to)];
  for (const { dx, rows } of expandSteps(edge, from, to)) {
    const last = corners.at(-1)!;
    corners.push({ x: last.x + dx, y: last.y + rows });
  }
  if (!climbs) corners.reverse();
  return corners.slice(1).map((corner, i) => line(corners[i]!, corner));
}

function pathOf(edge: Edge, from: GridPoint, to: GridPoint): Segment[] {
  switch (edge.path) {
    case 'straight':
      return [line(point(from), point(to))];
    case 'curve':
      return [cubic(point(from), point(edge.handles[0]), point(edge.handles[1]), point(to))];
    case 'stepped':
      return steppedPath(edge, from, to);
  }
}

function resolve(piece: Piece): ResolvedEdge[] {
  return piece.outline.map((edge, index) => {
    const { from } = edge;
    const to = endOf(piece.outline, index);
    if (edge.path === 'stepped') {
      const at = `${quoted(piece.id)} > outline[${index}] ${quoted(edge.id)}`;
      const problem = scheduleProblem(edge, from, to, piece.id, at);
      if (problem) throw new DesignError(problem);
    }
    const side = sideOf(from, to);
    return {
      index,
      edge,
      from,
      to,
      side,
      finish: edge.finish ?? (side === 'bottom' ? 'cast-on' : 'bound-off'),
      selvage: edge.selvage ?? (piece.fabric === 'garter' ? 'garter' : 'plain'),
      path: pathOf(edge, from, to),
    };
  });
}

const resolved = new WeakMap<Piece, readonly ResolvedEdge[]>();

/**
 * The edges of a piece in the order of its outline, with every default of theirs filled in. Remembered per piece, since
 * pieces never change in place.
 * @throws DesignError for a stepped edge without rows or whose schedule does not end on its far corner.
 */
export function resolveOutline(piece: Piece): readonly ResolvedEdge[] {
  const known = resolved.get(piece);
  if (known) return known;
  const edges = resolve(piece);
  resolved.set(piece, edges);
  return edges;
}

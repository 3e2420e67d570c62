import { findTwins, type Edge, type Piece } from '../../piece';
import { withEdgeFields } from './fields';
import { asCurve, withPathOf, type GridPlace } from './paths';

/** The mirror of a symmetric piece: about the middle of its width. */
export interface Mirror {
  /** Twice the x of the middle: the x of a place and of its mirror image sum to it. */
  readonly sum: number;
  readonly flip: (place: GridPlace) => GridPlace;
  /** The index of the edge that is the mirror image of edge `index`, its own where it mirrors itself. */
  readonly edge: (index: number) => number;
  /** The same for the corner at which edge `index` begins. */
  readonly corner: (index: number) => number;
}

/** Twice the x of the middle of a piece's width. */
export function middleSum(outline: readonly Edge[]): number {
  const xs = outline.map(({ from }) => from[0]);
  return Math.min(...xs) + Math.max(...xs);
}

/** The mirror of a piece that is called symmetric and is; null for any other. */
export function mirrorOf(piece: Piece): Mirror | null {
  if (!piece.symmetric) return null;
  const sum = middleSum(piece.outline);
  const twins = findTwins(piece);
  return {
    sum,
    flip: ([x, y]) => [sum - x, y],
    edge: (index) => twins[index]!,
    // An edge begins where its mirror image ends.
    corner: (index) => (twins[index]! + 1) % twins.length,
  };
}

/** An edge's path seen in the mirror and travelled the other way: schedules, read bottom up, stay. */
export function mirroredPath(edge: Edge, flip: Mirror['flip']): Edge {
  return edge.path === 'curve' ? asCurve(edge, [flip(edge.handles[1]), flip(edge.handles[0])]) : edge;
}

/** The twin of an edge made like it: the same path in the mirror, the same finish and selvage, its own id and name. */
export function asTwin(twin: Edge, of: Edge, flip: Mirror['flip']): Edge {
  const path = withPathOf(twin, mirroredPath(of, flip));
  const { finish, selvage } = of;
  return path.finish === finish && path.selvage === selvage ? path : withEdgeFields(path, { finish, selvage });
}

/** An edge that is its own mirror image, made so: its handles meet those of its mirror image half-way. */
export function selfMirrored(edge: Edge, flip: Mirror['flip']): Edge {
  if (edge.path !== 'curve') return edge;
  const [a, b] = [edge.handles[0], flip(edge.handles[1])];
  const first: GridPlace = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return asCurve(edge, [first, flip(first)]);
}

/**
 * The outline with edge `index` made anew between its own corners, and its twin with it where the piece is symmetric.
 * An edge that mirrors itself can't be worked from a schedule and stays as it was then.
 */
export function withEdge(piece: Piece, index: number, edge: Edge): Piece {
  const mirror = mirrorOf(piece);
  const outline = [...piece.outline];
  outline[index] = edge;
  if (mirror) {
    const twin = mirror.edge(index);
    if (twin === index) {
      if (edge.path === 'stepped') return piece;
      outline[index] = selfMirrored(edge, mirror.flip);
    } else outline[twin] = asTwin(piece.outline[twin]!, edge, mirror.flip);
  }
  return { ...piece, outline };
}

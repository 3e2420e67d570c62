import { chainLength, chainPointAt, pointAt } from '../geometry';
import { DesignError, resolveOutline, type Edge, type Piece, type ResolvedEdge } from '../piece';
import { shelf } from '../units';

/** Something of an outline that a hand can take hold of. A corner is named by the edge that begins at it. */
export type Grip =
  | { readonly kind: 'corner'; readonly piece: string; readonly edge: string }
  | { readonly kind: 'middle'; readonly piece: string; readonly edge: string }
  | { readonly kind: 'handle'; readonly piece: string; readonly edge: string; readonly handle: 0 | 1 };

/** A grip with its place on the stitch grid, in stitches and rows. */
export interface PlacedGrip {
  readonly grip: Grip;
  readonly at: readonly [x: number, y: number];
}

/**
 * The grips of a piece in the order of its outline: each corner, the middle of the edge that begins there, and on the
 * chosen edge the two handles of a curve.
 */
export function gripsOf(piece: Piece, chosen: string | null): PlacedGrip[] {
  const id = piece.id;
  return edgesOf(piece).flatMap((resolved) => {
    const { edge, to } = resolved;
    return kept(edge, [id, ...to, edge.id === chosen], () => gripsOn(id, resolved, chosen));
  });
}

/** The grips of an edge stay the same objects as long as it and the corner at its end stay where they are. */
const kept = shelf<Edge, readonly PlacedGrip[]>(2);

function gripsOn(id: string, resolved: ResolvedEdge, chosen: string | null): PlacedGrip[] {
  const { edge, from } = resolved;
  const handles: PlacedGrip[] =
    edge.path === 'curve' && edge.id === chosen
      ? edge.handles.map((at, i) => ({
          grip: { kind: 'handle', piece: id, edge: edge.id, handle: i === 0 ? 0 : 1 },
          at,
        }))
      : [];
  return [
    { grip: { kind: 'corner', piece: id, edge: edge.id }, at: from },
    { grip: { kind: 'middle', piece: id, edge: edge.id }, at: middleOf(resolved) },
    ...handles,
  ];
}

export function sameGrip(a: Grip | null, b: Grip | null): boolean {
  if (a === null || b === null) return a === b;
  if (a.piece !== b.piece || a.edge !== b.edge) return false;
  return a.kind === 'handle' ? b.kind === 'handle' && a.handle === b.handle : a.kind === b.kind;
}

/** Where a curve or a straight edge has its middle (t = 1/2); on a stepped edge half of its length, on the grid. */
function middleOf({ path }: ResolvedEdge): readonly [number, number] {
  const [only] = path;
  const { x, y } = path.length === 1 && only ? pointAt(only, 0.5) : chainPointAt(path, chainLength(path) / 2).point;
  return [x, y];
}

/** The edges of a piece; none where one of its schedules leads nowhere, as it may while a corner is in the hand. */
function edgesOf(piece: Piece): readonly ResolvedEdge[] {
  try {
    return resolveOutline(piece);
  } catch (error) {
    if (error instanceof DesignError) return [];
    throw error;
  }
}

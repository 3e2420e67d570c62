import { boundsOfAll, findCrossing, signedArea, type Segment } from '../geometry';
import { BOUNDS } from './bounds';
import type { Design, Piece } from './design';
import { endOf, resolveOutline, type ResolvedEdge } from './outline';
import { placeOf } from './place';
import type { Problem } from './problems';
import { scheduleProblem } from './schedule';
import { matchTwins } from './twins';

/** The path of an edge with steps of one slope drawn together: the same line in fewer pieces. */
function simplePath({ path }: ResolvedEdge): Segment[] {
  const simple: Segment[] = [];
  for (const segment of path) {
    const last = simple.at(-1);
    const straightOn =
      last?.kind === 'line' &&
      segment.kind === 'line' &&
      (last.to.x - last.from.x) * (segment.to.y - segment.from.y) ===
        (last.to.y - last.from.y) * (segment.to.x - segment.from.x);
    if (straightOn) simple[simple.length - 1] = { ...last, to: segment.to };
    else simple.push(segment);
  }
  return simple;
}

function schedulesProblem(piece: Piece, placeOfEdge: (index: number) => string): Problem | null {
  for (const [i, edge] of piece.outline.entries()) {
    if (edge.path !== 'stepped') continue;
    const to = endOf(piece.outline, i);
    const problem = scheduleProblem(edge, edge.from, to, piece.id, placeOfEdge(i));
    if (problem) return problem;
  }
  return null;
}

function sizeProblem(piece: Piece, segments: readonly Segment[], at: string): Problem | null {
  const { minX, maxX, minY, maxY } = boundsOfAll(segments);
  const sizes = [
    { what: 'stitches', found: maxX - minX, limit: BOUNDS.pieceStitches },
    { what: 'rows', found: maxY - minY, limit: BOUNDS.pieceRows },
  ] as const;
  const big = sizes.find(({ found, limit }) => found > limit);
  return big ? { kind: 'piece-too-big', at, piece: piece.id, ...big } : null;
}

/** Pieces whose outline was found right; they never change in place. */
const right = new WeakSet<Piece>();

/**
 * What is wrong with the line of piece `index`, or null: schedules that miss their corner, a piece beyond the bounds,
 * an outline that crosses itself or runs clockwise, or is not symmetric though it is called so. The corners must have
 * been found right. Places are those in `file`, where the outline may still run the other way.
 */
export function outlineProblem(file: Design, piece: Piece, index: number): Problem | null {
  if (right.has(piece)) return null;
  const id = (edge: number) => piece.outline[edge]?.id ?? '';
  const at = placeOf(file, ['pieces', index]);
  const atEdge = (edge: number) => {
    const inFile = file.pieces[index]?.outline.findIndex((other) => other.id === id(edge)) ?? edge;
    return placeOf(file, ['pieces', index, 'outline', inFile]);
  };
  const schedule = schedulesProblem(piece, atEdge);
  if (schedule) return schedule;
  const paths = resolveOutline(piece).map(simplePath);
  const chain = paths.flat();
  const size = sizeProblem(piece, chain, at);
  if (size) return size;
  const crossing = findCrossing(paths);
  if (crossing) {
    const {
      first,
      second,
      at: { x, y },
    } = crossing;
    return { kind: 'crossing', at: atEdge(first), piece: piece.id, first: id(first), second: id(second), x, y };
  }
  // A line that does not cross itself encloses something, on its left or on its right.
  if (signedArea(chain) < 0) return { kind: 'clockwise', at, piece: piece.id };
  if (piece.symmetric) {
    const lone = matchTwins(piece).indexOf(-1);
    if (lone >= 0) return { kind: 'not-symmetric', at: atEdge(lone), piece: piece.id, edge: id(lone) };
  }
  right.add(piece);
  return null;
}

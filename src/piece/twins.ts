import type { GridPoint, Piece, SteppedEdge } from './design';
import { resolveOutline, type ResolvedEdge } from './outline';
import { quoted } from './place';
import { DesignError } from './problems';

/** How far apart, in stitches or rows, two curve handles may lie and still be one another's mirror image. */
const SLACK = 1e-6;

function sameCorner(a: GridPoint, b: GridPoint): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function near(a: readonly [number, number], b: readonly [number, number]): boolean {
  return Math.abs(a[0] - b[0]) <= SLACK && Math.abs(a[1] - b[1]) <= SLACK;
}

/** Steps with equal neighbours drawn together, so that 3 times once and once 3 times are alike. */
function tidied(edge: SteppedEdge): string {
  const runs: { stitches: number; every: number; times: number }[] = [];
  for (const { stitches, every, times } of edge.steps) {
    const last = runs.at(-1);
    if (last?.stitches === stitches && last.every === every) last.times += times;
    else runs.push({ stitches, every, times });
  }
  return JSON.stringify(runs);
}

/** Whether what the edge ends in is the same: the finish where it lies flat, the selvage where it climbs. */
function sameMake(a: ResolvedEdge, b: ResolvedEdge): boolean {
  const flat = a.from[1] === a.to[1];
  return flat ? a.finish === b.finish : a.selvage === b.selvage;
}

function mirrors(a: ResolvedEdge, b: ResolvedEdge, mirror: (p: GridPoint) => GridPoint): boolean {
  if (!sameCorner(mirror(a.from), b.to) || !sameCorner(mirror(a.to), b.from) || !sameMake(a, b)) return false;
  const [p, q] = [a.edge, b.edge];
  if (p.path === 'straight') return q.path === 'straight';
  if (p.path === 'stepped') return q.path === 'stepped' && tidied(p) === tidied(q);
  if (q.path !== 'curve') return false;
  return near(mirror(p.handles[0]), q.handles[1]) && near(mirror(p.handles[1]), q.handles[0]);
}

/**
 * For each edge the index of its mirror image about the middle of the piece's width, its own index when it mirrors
 * itself, or -1. The middle is that of the outermost corners: it may lie in the middle of a stitch.
 */
export function matchTwins(piece: Piece): number[] {
  const edges = resolveOutline(piece);
  const xs = piece.outline.map((edge) => edge.from[0]);
  const sum = Math.min(...xs) + Math.max(...xs);
  const mirror = ([x, y]: GridPoint): GridPoint => [sum - x, y];
  return edges.map((edge) => edges.findIndex((other) => mirrors(edge, other, mirror)));
}

const twins = new WeakMap<Piece, readonly number[]>();

/**
 * The mirror twin of every edge of a symmetric piece, by index (its own where an edge mirrors itself); all -1 for a
 * piece that is not called symmetric. Twins have the same kind of path, and the same finish or selvage.
 * @throws DesignError when a piece is called symmetric and an edge of it has no twin.
 */
export function findTwins(piece: Piece): readonly number[] {
  const known = twins.get(piece);
  if (known) return known;
  const found = piece.symmetric ? matchTwins(piece) : piece.outline.map(() => -1);
  const lone = piece.symmetric ? piece.outline[found.indexOf(-1)] : undefined;
  if (lone) throw new DesignError({ kind: 'not-symmetric', at: quoted(piece.id), piece: piece.id, edge: lone.id });
  twins.set(piece, found);
  return found;
}

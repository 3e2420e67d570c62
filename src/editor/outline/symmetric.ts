import { DesignError, findTwins, type Edge, type GridPoint, type Piece } from '../../piece';
import { cellOf } from '../../shaping';
import { freshId } from './ids';
import { mirroredPiece } from './mirror';
import { asCurve, asStraight, endCorner, type GridPlace } from './paths';
import type { Remade } from './split';
import { asTwin, middleSum, type Mirror } from './symmetry';
import type { Trace } from './trace';

/** Whether a piece could be called symmetric as it is. */
export function isSymmetric(piece: Piece): boolean {
  try {
    return !findTwins({ ...piece, symmetric: true }).includes(-1);
  } catch (error) {
    if (error instanceof DesignError) return false;
    throw error;
  }
}

/**
 * The outline made symmetric about the middle of the piece's width: the half with more corners (the right one where both
 * have as many) is mirrored onto the other, and an edge that crosses the middle runs level between them. Edges of the
 * half that goes hand their ids and names to the nearest new ones; new ones left over get new ids, old ones left over
 * are gone. Null where the outline crosses the middle more than twice, so that there are no halves.
 */
export function madeSymmetric(piece: Piece): Remade | null {
  const sum = middleSum(piece.outline);
  const sides = piece.outline.map(({ from }) => Math.sign(2 * from[0] - sum));
  const corners = (side: number) => sides.filter((one) => one === side).length;
  if (corners(1) >= corners(-1)) return fromRightHalf(piece, sum);
  // Seen in the mirror the left half is the right one.
  const image = mirroredPiece(piece);
  const made = fromRightHalf(image, sum);
  return made && { ...made, outline: mirroredPiece({ ...image, outline: made.outline }).outline };
}

function fromRightHalf(piece: Piece, sum: number): Remade | null {
  const { outline } = piece;
  const n = outline.length;
  const flip = ([x, y]: GridPlace): GridPlace => [sum - x, y];
  const sideOf = (i: number) => Math.sign(2 * outline[i % n]!.from[0] - sum);
  const starts = outline.flatMap((_, i) => (sideOf(i) > 0 && sideOf(i + n - 1) <= 0 ? [i] : []));
  const [start] = starts;
  if (start === undefined || starts.length > 1) return null;
  let last = start;
  while (sideOf(last + 1) > 0) last++;
  const before = start + n - 1;
  const opened = sideOf(before) < 0;
  const closed = sideOf(last + 1) < 0;
  const indices: number[] = [];
  for (let i = opened ? start : start - 1; i < (closed ? last : last + 1); i++) indices.push((i + n) % n);
  const right = indices.map((i) => outline[i]!);
  const crossing = new Set([...(opened ? [before % n] : []), ...(closed ? [last % n] : [])]);
  const spare = outline.map((_, i) => i).filter((i) => !indices.includes(i) && !crossing.has(i));
  const { left, gone } = mirroredHalf(piece, indices, spare, flip);
  const first = outline[start]!.from;
  const opening = opened ? [levelled({ ...outline[before % n]!, from: flip(first) }, 1, flip)] : [];
  const closing = closed ? [levelled(outline[last % n]!, 0, flip)] : [];
  const made = [...opening, ...right, ...closing, ...left];
  const head = Math.max(
    0,
    made.findIndex(({ id }) => id === outline[0]!.id),
  );
  return {
    outline: [...made.slice(head), ...made.slice(0, head)],
    traces: new Map(gone.map((i): [string, readonly Trace[]] => [outline[i]!.id, []])),
  };
}

/** The edge across the middle, level: straight, or a curve by its handle on the right (the one at index `kept`). */
function levelled(edge: Edge, kept: 0 | 1, flip: Mirror['flip']): Edge {
  if (edge.path !== 'curve') return asStraight(edge);
  const handle = edge.handles[kept];
  return asCurve(edge, kept === 0 ? [handle, flip(handle)] : [flip(handle), handle]);
}

/** The left half in the outline's order, and which of the spare edges have no place in it. */
function mirroredHalf(
  piece: Piece,
  right: readonly number[],
  spare: readonly number[],
  flip: Mirror['flip'],
): { readonly left: Edge[]; readonly gone: number[] } {
  const { outline } = piece;
  const { width, height } = cellOf(piece);
  const middle = (i: number): GridPlace => {
    const [from, to] = [outline[i]!.from, endCorner(outline, i)];
    return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  };
  const images = [...right].reverse();
  const pairs = images
    .flatMap((image, k) =>
      spare.map((old) => {
        const [a, b] = [flip(middle(image)), middle(old)];
        return { k, old, off: Math.hypot((a[0] - b[0]) * width, (a[1] - b[1]) * height) };
      }),
    )
    .sort((a, b) => a.off - b.off);
  const heirs = new Map<number, number>();
  const placed = new Set<number>();
  for (const { k, old } of pairs) {
    if (heirs.has(k) || placed.has(old)) continue;
    heirs.set(k, old);
    placed.add(old);
  }
  const taken = new Set(outline.map(({ id }) => id));
  const left = images.map((image, k): Edge => {
    const of = outline[image]!;
    const from: GridPoint = flip(endCorner(outline, image));
    const old = heirs.get(k);
    if (old !== undefined) return asTwin({ ...outline[old]!, from }, of, flip);
    const id = freshId(of.id, taken);
    taken.add(id);
    return asTwin({ id, from, path: 'straight' }, of, flip);
  });
  return { left, gone: spare.filter((old) => !placed.has(old)) };
}

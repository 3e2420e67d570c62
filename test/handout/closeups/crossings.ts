import { piecesOf, pointOn, type Piece, type Strand } from '../../../src/handout/closeups/strand';

/** Where two centre-lines cross on the sheet. */
export interface Crossing {
  readonly x: number;
  readonly y: number;
  readonly over: Piece;
  readonly under: Piece;
  /** How much nearer the upper one lies. */
  readonly apart: number;
}

/** Every crossing of the strands' centre-lines, found by straight lines between points of their pieces. */
export function crossingsOf(strands: readonly Strand[]): Crossing[] {
  const lines = strands.flatMap((strand, i) =>
    piecesOf(strand, i).flatMap((piece) =>
      [0, 0.25, 0.5, 0.75].map((t) => ({ piece, t, a: pointOn(piece, t), b: pointOn(piece, t + 0.25) })),
    ),
  );
  const found: Crossing[] = [];
  lines.forEach((one, i) => {
    for (const other of lines.slice(i + 1)) {
      if (one.piece.strand === other.piece.strand && Math.abs(one.piece.index - other.piece.index) < 2) continue;
      const [d, e] = [minus(one.b, one.a), minus(other.b, other.a)];
      const cross = d.x * e.y - d.y * e.x;
      if (Math.abs(cross) < 1e-12) continue;
      const gap = minus(other.a, one.a);
      const s = (gap.x * e.y - gap.y * e.x) / cross;
      const t = (gap.x * d.y - gap.y * d.x) / cross;
      if (s < 0 || s >= 1 || t < 0 || t >= 1) continue;
      const [z, w] = [one.a.z + (one.b.z - one.a.z) * s, other.a.z + (other.b.z - other.a.z) * t];
      found.push({
        x: one.a.x + d.x * s,
        y: one.a.y + d.y * s,
        over: z > w ? one.piece : other.piece,
        under: z > w ? other.piece : one.piece,
        apart: Math.abs(z - w),
      });
    }
  });
  return found;
}

function minus(a: { x: number; y: number }, b: { x: number; y: number }) {
  return { x: a.x - b.x, y: a.y - b.y };
}

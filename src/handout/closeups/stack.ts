import { piecesOf, pointOn, type Piece, type Strand } from './strand';

/** Pieces that follow each other on one strand and are drawn in one stroke. */
export interface Run {
  readonly strand: number;
  readonly pieces: readonly Piece[];
}

/** Two pieces that meet on the sheet: the upper hides the lower. */
export interface Meeting {
  readonly lower: number;
  readonly upper: number;
}

/** Clear paper between a strand and what it passes over, mm. */
const CLEAR = 0.1;

/** Stretches of one strand nearer together along it than so many widths are neighbours and never hide each other. */
const NEIGHBOURS = 1.4;

/**
 * All strands as layers of runs in drawing order, from the back to the front: wherever two pieces come so near that
 * their widths overlap, the deeper one is drawn first. Depth orders all pieces, so there is always such an order. Runs
 * are grown as long as it allows, and runs that hide nothing of each other share a layer, which keeps the drawing to
 * few strokes.
 */
export function stack(strands: readonly Strand[]): Run[][] {
  const pieces = strands.flatMap((strand, i) => piecesOf(strand, i));
  const above: number[][] = pieces.map(() => []);
  const waits = pieces.map(() => 0);
  for (const { lower, upper } of meetings(pieces)) {
    above[lower]!.push(upper);
    waits[upper]!++;
  }
  const layers: Run[][] = [];
  let left = pieces.map((_, i) => i);
  while (left.length > 0) {
    // Nothing that is ready waits for anything, so no two of these hide each other.
    const ready = left.filter((i) => waits[i] === 0);
    layers.push(runsOf(ready, pieces));
    for (const i of ready) for (const upper of above[i]!) waits[upper]!--;
    const done = new Set(ready);
    left = left.filter((i) => !done.has(i));
  }
  return layers;
}

function runsOf(indices: readonly number[], pieces: readonly Piece[]): Run[] {
  const runs: { strand: number; pieces: Piece[] }[] = [];
  for (const i of indices) {
    const piece = pieces[i]!;
    const last = runs.at(-1);
    const before = last?.pieces.at(-1);
    if (last && before?.strand === piece.strand && before.index + 1 === piece.index) last.pieces.push(piece);
    else runs.push({ strand: piece.strand, pieces: [piece] });
  }
  return runs;
}

/** Every two pieces that come nearer than their widths allow. */
export function meetings(pieces: readonly Piece[]): Meeting[] {
  const found: Meeting[] = [];
  const dots = pieces.map((piece) => [0, 0.25, 0.5, 0.75, 1].map((t) => pointOn(piece, t)));
  const boxes = dots.map((list) => ({
    left: Math.min(...list.map(({ x }) => x)),
    right: Math.max(...list.map(({ x }) => x)),
    top: Math.min(...list.map(({ y }) => y)),
    bottom: Math.max(...list.map(({ y }) => y)),
  }));
  for (let i = 0; i < pieces.length; i++) {
    const [a, boxA] = [pieces[i]!, boxes[i]!];
    for (let j = i + 1; j < pieces.length; j++) {
      const [b, boxB] = [pieces[j]!, boxes[j]!];
      const reach = (a.width + b.width) / 2 + CLEAR;
      if (boxB.left - boxA.right > reach || boxA.left - boxB.right > reach) continue;
      if (boxB.top - boxA.bottom > reach || boxA.top - boxB.bottom > reach) continue;
      if (a.strand === b.strand && b.start - a.end < NEIGHBOURS * a.width) continue;
      const near = dots[i]!.some((p) => dots[j]!.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < reach));
      if (near) found.push(a.z <= b.z ? { lower: i, upper: j } : { lower: j, upper: i });
    }
  }
  return found;
}

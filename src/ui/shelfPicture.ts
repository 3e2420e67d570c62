import { boundsOfAll, type Segment } from '../geometry';
import { DesignError, readDesign, type Design } from '../piece';
import { toSheet } from '../renderer';
import { measurePiece } from '../shaping';

/** A small picture of a design: the outlines of its pieces side by side, and the edges that are picked up. */
export interface ShelfPicture {
  readonly viewBox: string;
  /** Path data of whole pieces. */
  readonly pieces: readonly string[];
  /** Path data of the picked-up edges. */
  readonly picked: string;
}

/** Width of the longer side of a picture, in its own units. */
const SIZE = 100;
/** Room round the pieces, and between two, as a part of all that is drawn. */
const ROOM = 0.04;

/** Draws a small picture, the pieces in their own order, all to one scale and standing on one line. */
export function pictureOf(design: Design): ShelfPicture {
  const pieces = design.pieces.map((piece) => {
    const edges = measurePiece(piece);
    return { id: piece.id, edges, bounds: boundsOfAll(edges.flatMap(({ line }) => line)) };
  });
  const wide = pieces.reduce((sum, { bounds }) => sum + bounds.maxX - bounds.minX, 0);
  const high = Math.max(...pieces.map(({ bounds }) => bounds.maxY - bounds.minY));
  const gap = ROOM * Math.max(wide, high);
  const width = wide + gap * (pieces.length + 1);
  const height = high + gap * 2;
  const scale = SIZE / Math.max(width, height);
  let left = gap;
  const outlines: string[] = [];
  const picked: string[] = [];
  for (const { id, edges, bounds } of pieces) {
    const place = {
      piece: id,
      x: (left - bounds.minX) * scale,
      y: (gap + high + bounds.minY) * scale,
      scale,
      cell: { width: 1, height: 1 },
      box: { x: 0, y: 0, width: 0, height: 0 },
    };
    const pathOf = (chain: readonly Segment[], begun: boolean): string =>
      chain.map((segment, i) => (i === 0 && !begun ? 'M' + at(segment.from) : '') + step(segment)).join('');
    const at = ({ x, y }: Segment['from']) =>
      toSheet(place, x, y)
        .map((value) => Math.round(value * 100) / 100)
        .join(' ');
    const step = (segment: Segment) =>
      segment.kind === 'line' ? `L${at(segment.to)}` : `C${at(segment.c1)} ${at(segment.c2)} ${at(segment.to)}`;
    outlines.push(edges.map(({ line }, i) => pathOf(line, i > 0)).join('') + 'Z');
    for (const edge of edges) {
      const isPicked = design.pickups.some(({ along }) =>
        along.some((stretch) => stretch.piece === id && stretch.edge === edge.id),
      );
      if (isPicked) picked.push(pathOf(edge.line, false));
    }
    left += bounds.maxX - bounds.minX + gap;
  }
  return { viewBox: `0 0 ${round(width * scale)} ${round(height * scale)}`, pieces: outlines, picked: picked.join('') };
}

/** Pictures by design, and the writing that they show. */
const drawn = new Map<string, { readonly revision: number; readonly picture: ShelfPicture | null }>();

/**
 * The picture of a written design, or null where it can't be had or read. One that was drawn is not drawn again until
 * the design is written again.
 */
export async function pictureFor(
  id: string,
  revision: number,
  read: () => string | Promise<string | null>,
): Promise<ShelfPicture | null> {
  const known = drawn.get(id);
  if (known?.revision === revision) return known.picture;
  const text = await read();
  if (text === null) return null;
  const picture = pictureOfText(text);
  drawn.set(id, { revision, picture });
  return picture;
}

function pictureOfText(text: string): ShelfPicture | null {
  try {
    return pictureOf(readDesign(text).design);
  } catch (error) {
    // A design that can't be read any more has no picture; opening it says why.
    if (error instanceof DesignError) return null;
    throw error;
  }
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

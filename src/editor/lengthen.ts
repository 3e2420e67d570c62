import { checkDesign, DesignError, type Design, type EdgeRef, type Problem } from '../piece';
import { roundHalfDown, rowHeight, type Mm, type Rows } from '../units';
import { changed, type Change } from './changes';

/** By how much an edge is to be longer, below 0 shorter: in rows, or in mm of height. */
export type Lengthening = { readonly rows: Rows } | { readonly mm: Mm };

/** Why an edge can't be made longer or shorter by that much. */
export type NotLengthened =
  | { readonly why: 'no-edge' | 'no-rows' | 'no-gauge' | 'no-row' }
  /** No more than `most` rows can be taken out between two heights at which something turns. */
  | { readonly why: 'too-short'; readonly most: Rows }
  | { readonly why: 'invalid'; readonly problem: Problem };

export type Lengthened =
  | {
      readonly ok: true;
      readonly change: Change;
      readonly design: Design;
      /** Whole rows by which it is longer, below 0 shorter, and the real number that the mm come to. */
      readonly rows: Rows;
      readonly exactRows: number;
    }
  | ({ readonly ok: false } & NotLengthened);

/**
 * The design with an edge longer or shorter by so much, and the change that makes it so. The rows are put in, or taken
 * out, as low on the edge as may be: between its foot and the next height at which the outline has a corner, or, where
 * fewer rows lie there than go, between the next two. All that is higher moves up or down as a whole, on both halves of
 * a symmetric piece; every edge that passes there gets longer or shorter, a stepped one by an even stretch. So a neck
 * keeps its depth when the body grows. Millimetres become the nearest whole rows of the piece's gauge, a half the fewer.
 * A change after which the piece could not be knitted is refused with the problem.
 */
export function lengthened(design: Design, { piece: pieceId, edge: edgeId }: EdgeRef, by: Lengthening): Lengthened {
  const piece = design.pieces.find(({ id }) => id === pieceId);
  const index = piece?.outline.findIndex(({ id }) => id === edgeId) ?? -1;
  if (!piece || index < 0) return { ok: false, why: 'no-edge' };
  const { outline } = piece;
  const ends = [outline[index]!.from[1], outline[(index + 1) % outline.length]!.from[1]];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  if (low === high) return { ok: false, why: 'no-rows' };
  if ('mm' in by && !piece.gauge) return { ok: false, why: 'no-gauge' };
  const exactRows = 'rows' in by ? by.rows : by.mm / rowHeight(piece.gauge!);
  const rows = Math.sign(exactRows) * roundHalfDown(Math.abs(exactRows)) + 0;
  if (rows === 0) return { ok: false, why: 'no-row' };
  const heights = [...new Set(outline.map(({ from }) => from[1]))].filter((y) => y >= low && y <= high);
  heights.sort((a, b) => a - b);
  const room = heights.slice(1).map((y, i) => y - heights[i]! - 1);
  const at = room.findIndex((most) => most + rows >= 0);
  if (at < 0) return { ok: false, why: 'too-short', most: Math.max(...room) };
  const corners = outline.filter(({ from }) => from[1] > heights[at]!).map(({ id }) => id);
  const change: Change = { kind: 'move-corners', piece: pieceId, corners, dx: 0, dy: rows };
  const next = changed(design, change);
  try {
    checkDesign(next);
  } catch (error) {
    if (error instanceof DesignError) return { ok: false, why: 'invalid', problem: error.problem };
    throw error;
  }
  return { ok: true, change, design: next, rows, exactRows };
}

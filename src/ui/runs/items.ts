import type { Design, Pickup, Stretch } from '../../piece';
import { measurePiece, type MeasuredEdge } from '../../shaping';
import { edgeTitle } from '../../text';
import { inWorkingOrder } from './choosing';

/** One stretch of a run as the list shows it. */
export interface RunItem {
  /** Stays the same while the stretch is moved, turned or cut. */
  readonly key: string;
  /** As it is worked: by a left-handed knitter it is the other way than in the document. */
  readonly stretch: Stretch;
  readonly measured: MeasuredEdge;
  /** Place in working order, from 0. */
  readonly index: number;
  /** `Front, left neck`. */
  readonly title: string;
}

/** The stretches of a pick-up in working order, each with its edge. */
export function itemsOf(design: Pick<Design, 'pieces' | 'hand'>, pickup: Pick<Pickup, 'along'>): RunItem[] {
  const seen = new Map<string, number>();
  return inWorkingOrder(design, pickup.along).flatMap((stretch, index) => {
    const piece = design.pieces.find(({ id }) => id === stretch.piece);
    const measured = piece && measurePiece(piece).find(({ id }) => id === stretch.edge);
    if (!measured) return [];
    // Of an edge that is taken in parts, each part keeps a place of its own.
    const edge = JSON.stringify([stretch.piece, stretch.edge]);
    const nth = (seen.get(edge) ?? 0) + 1;
    seen.set(edge, nth);
    return [{ key: `${edge} ${nth}`, stretch, measured, index, title: edgeTitle(piece, measured.edge) }];
  });
}

/** How far a stretch leads from where its work begins: stitches to the right, rows up. */
export function wayOf({ stretch, measured }: Pick<RunItem, 'stretch' | 'measured'>): [dx: number, dy: number] {
  const [first, last] = stretch.backwards ? [measured.to, measured.from] : [measured.from, measured.to];
  return [last[0] - first[0], last[1] - first[1]];
}

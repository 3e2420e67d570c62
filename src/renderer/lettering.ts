import type { MeasuredPiece, PickupPlan } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import { drawDimensions } from './dimensions';
import type { DrawnPiece } from './drawnPiece';
import { LabelBoard } from './labels';
import type { Layout } from './layout';
import { nameEdge, namePiece } from './names';
import { depthOf, labelPickup, type Along, type DrawnEdge } from './pickup';
import type { DrawOptions } from './options';
import { drawRulers } from './rulers';
import type { Leaf, Lettering, TextMark } from './marks';

/** The drawing without its labels. */
interface Unlettered {
  readonly pickup: PickupPlan | null;
  readonly layout: Layout;
  readonly pieces: readonly DrawnPiece[];
  /** The edges of each piece that are picked up from. */
  readonly picked: readonly ReadonlySet<string>[];
  readonly drawn: readonly (DrawnEdge | null)[];
  readonly along: Along;
  readonly options: DrawOptions;
}

/**
 * Labels are placed in order of importance, each where it meets no other: rulers and dimensions (which stand outside
 * everything), the two ends, section markers, the tens, the word at the start, names of edges, names of pieces.
 */
export function letter(ground: Unlettered): Lettering {
  const { pickup, layout, pieces, drawn, options } = ground;
  const board = new LabelBoard(options.within ?? { x: 0, y: 0, width: layout.width, height: layout.height });
  for (const { traces } of pieces) for (const trace of traces) board.blockTrace(trace.line);
  const rulers = pieces.map(({ place, measured }) =>
    options.rulers ? drawRulers(place, hasGauge(measured), options.words, board) : null,
  );
  const dimensions = pieces.map(({ place, measured }) =>
    options.dimensions ? drawDimensions(place, hasGauge(measured), options.rulers, options.words, board) : null,
  );
  const labels = pickup && labelPickup(pickup, drawn, board, options.blank);
  const names = pieces.map((_, i) => (options.names === false ? [] : drawNames(ground, i, board)));
  return {
    pieces: pieces.map((_, i): Leaf[] => {
      const [ruler, dimension, name] = [rulers[i], dimensions[i], names[i]!];
      return [
        ...(ruler ? [{ name: 'rulers' as const, marks: [...ruler.marks, ...ruler.texts] }] : []),
        ...(dimension ? [{ name: 'dimensions' as const, marks: [...dimension.marks, ...dimension.texts] }] : []),
        ...(name.length > 0 ? [{ name: 'names' as const, marks: name }] : []),
      ];
    }),
    over: [
      { name: 'markers' as const, marks: labels?.markers ?? [] },
      { name: 'numbers' as const, marks: labels?.numbers ?? [] },
    ].filter(({ marks }) => marks.length > 0),
    labels: board.placed,
  };
}

function hasGauge({ piece }: MeasuredPiece): boolean {
  return piece.gauge !== undefined;
}

function drawNames({ pieces, picked, along, options }: Unlettered, i: number, board: LabelBoard): TextMark[] {
  const { measured, place, inside } = pieces[i]!;
  const nameAll = (edges: readonly MeasuredEdge[]) =>
    edges.flatMap((edge) => {
      const depth = depthOf(along(measured.piece.id, edge.id));
      return nameEdge(place, edge, depth, picked[i]!.has(edge.id), inside, board);
    });
  const first = nameAll(measured.edges.filter((edge) => picked[i]!.has(edge.id)));
  const piece = namePiece(place, measured, options.words, inside, board);
  return [...first, ...piece, ...nameAll(measured.edges.filter((edge) => !picked[i]!.has(edge.id)))];
}

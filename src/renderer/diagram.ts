import type { DesignPlan, MeasuredPiece, PickupPlan } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import type { DrawingWords } from '../text';
import type { Window } from './cells';
import { drawDimensions } from './dimensions';
import { drawShapeFabric, drawStitchFabric, type DrawnFabric, type FabricStyle } from './fabric';
import { setUp, type DrawnPiece } from './drawnPiece';
import { trackOf, type Track } from './frame';
import { idMaker } from './ids';
import { LabelBoard } from './labels';
import { layOut } from './layout';
import { nameEdge, namePiece } from './names';
import { stairOf } from './outline';
import { gridToSheet } from './place';
import { drawPickup, type DrawnPickup } from './pickup';
import { drawRulers } from './rulers';
import { chainPath, linesPath } from './toPath';
import type { Drawing, Group, Mark, Place, StitchPattern, TextMark } from './marks';

export interface DrawOptions {
  /** Index of the pick-up to draw; null for the pieces alone. */
  readonly pickup: number | null;
  /** Sheet mm to one fabric mm. */
  readonly scale: number;
  /** Smooth lines, or the stitches themselves with the edges as worked. */
  readonly detail: 'shape' | 'stitches';
  readonly words: DrawingWords;
  /** Ids of the pieces to draw; if not given, those of the pick-up, or all. */
  readonly pieces?: readonly string[];
  readonly rulers: boolean;
  readonly dimensions: boolean;
  /** Names and sizes of edges and pieces on the fabric; on if not given. */
  readonly names?: boolean;
  /** Texture: a pattern for screens, stitches near the picked edges for files, or nothing. */
  readonly fabric: FabricStyle;
  /**
   * What is in view, in fabric mm of each piece by its id: in stitch detail only stitches inside are built. A piece
   * that is not named has none.
   */
  readonly windows?: Readonly<Record<string, Window>>;
}

/**
 * Draws a plan as a list of marks in sheet mm.
 *
 * Labels are placed in order of importance, each where it meets no other: rulers and dimensions (which stand outside
 * everything), the two ends, section markers, the tens, the word at the start, names of edges, names of pieces.
 *
 * @throws RangeError when there is no such pick-up
 */
export function drawDiagram(plan: DesignPlan, options: DrawOptions): Drawing {
  const pickup = options.pickup === null ? null : plan.pickups[options.pickup];
  if (pickup === undefined) throw new RangeError(`There is no pick-up number ${options.pickup} in this plan.`);
  const chosen = chosenPieces(plan, pickup, options.pieces);
  const layout = layOut(chosen, options);
  const pieces = chosen.map((measured, i) => setUp(measured, layout.places[i]!));
  const board = new LabelBoard({ x: 0, y: 0, width: layout.width, height: layout.height });
  for (const { traces } of pieces) for (const trace of traces) board.blockTrace(trace.line);

  const rulers = pieces.map(({ place, measured }) =>
    options.rulers ? drawRulers(place, hasGauge(measured), options.words, board) : null,
  );
  const dimensions = pieces.map(({ place, measured }) =>
    options.dimensions ? drawDimensions(place, hasGauge(measured), options.rulers, options.words, board) : null,
  );
  const tracks = pickup?.edges.map((edge): Track | null => {
    const piece = pieces.find(({ measured }) => measured.piece.id === edge.stretch.piece);
    return piece ? trackOf(edge, plan.design.hand, piece.lengths[edge.measured.index]!) : null;
  });
  const drawnPickup = pickup && tracks ? drawPickup(pickup, tracks, pieces, options.detail, board) : null;

  const newId = idMaker();
  const patterns: StitchPattern[] = [];
  const groups = pieces.map((piece, i): Group => {
    const { measured, place } = piece;
    const id = measured.piece.id;
    const picked = new Set(pickup?.edges.filter((edge) => edge.stretch.piece === id).map((edge) => edge.measured.id));
    const fabric = drawFabric(piece, picked, options, newId(`stitch-${id}`));
    if (fabric.pattern) patterns.push(fabric.pattern);
    const names = options.names === false ? [] : drawNames(piece, picked, drawnPickup, options, board);
    return {
      name: 'piece',
      id: newId(`piece-${id}`),
      data: { piece: id },
      marks: [],
      groups: [
        leaf('fabric', newId(`fabric-${id}`), fabric.marks),
        ...(rulers[i] ? [leaf('rulers', newId(`rulers-${id}`), [...rulers[i].marks, ...rulers[i].texts])] : []),
        ...(dimensions[i]
          ? [leaf('dimensions', newId(`dimensions-${id}`), [...dimensions[i].marks, ...dimensions[i].texts])]
          : []),
        ...(names.length > 0 ? [leaf('names', newId(`names-${id}`), names)] : []),
        ...measured.edges.map((edge): Group => ({
          name: 'edge',
          id: newId(`edge-${id}-${edge.id}`),
          data: { piece: id, edge: edge.id, shape: edge.shape, ...(picked.has(edge.id) ? { picked: 'yes' } : {}) },
          marks: [...drawEdge(place, edge, options.detail), ...(drawnPickup?.marksOf(id, edge.id) ?? [])],
          groups: [],
        })),
      ],
    };
  });
  const over = drawnPickup
    ? [
        leaf('markers', newId('markers'), drawnPickup.markers),
        leaf('numbers', newId('numbers'), drawnPickup.numbers),
      ].filter((group) => group.marks.length > 0)
    : [];
  return {
    width: layout.width,
    height: layout.height,
    groups: [...groups, ...over],
    patterns,
    places: layout.places,
    edges: pieces.flatMap((piece) => piece.traces),
    points: drawnPickup?.traces ?? [],
    labels: board.placed,
  };
}

/** The pieces that are drawn, in the order of the document. */
export function chosenPieces(
  plan: DesignPlan,
  pickup: PickupPlan | null,
  ids: readonly string[] | undefined,
): readonly MeasuredPiece[] {
  const wanted = ids ?? (pickup ? pickup.edges.map((edge) => edge.stretch.piece) : null);
  return wanted === null ? plan.measured : plan.measured.filter(({ piece }) => wanted.includes(piece.id));
}

function hasGauge({ piece }: MeasuredPiece): boolean {
  return piece.gauge !== undefined;
}

function drawFabric(
  { measured, place }: DrawnPiece,
  picked: ReadonlySet<string>,
  options: DrawOptions,
  patternId: string,
): DrawnFabric {
  const edges = measured.edges.filter((edge) => picked.has(edge.id));
  if (options.detail === 'stitches') {
    const window = options.windows ? options.windows[measured.piece.id] : null;
    const nothing = { minX: 0, minY: 0, maxX: 0, maxY: 0 };
    return drawStitchFabric(place, measured, edges, window === undefined ? nothing : window);
  }
  return drawShapeFabric(place, measured, edges, options.fabric, patternId);
}

/** The smooth line of an edge, and in stitch detail the steps as worked. */
function drawEdge(place: Place, edge: MeasuredEdge, detail: DrawOptions['detail']): Mark[] {
  const outline: Mark = { kind: 'path', role: 'outline', d: chainPath(place, edge.line), count: 1 };
  if (detail === 'shape' || edge.shape === 'horizontal' || edge.shape === 'vertical') return [outline];
  const stair = stairOf(edge).map(([x, y]) => gridToSheet(place, x, y));
  return [outline, { kind: 'path', role: 'worked', d: linesPath(stair), count: edge.worked.length }];
}

function drawNames(
  { measured, place, inside }: DrawnPiece,
  picked: ReadonlySet<string>,
  drawn: DrawnPickup | null,
  options: DrawOptions,
  board: LabelBoard,
): TextMark[] {
  const nameAll = (edges: readonly MeasuredEdge[]) =>
    edges.flatMap((edge) => {
      const depth = drawn?.depthOf(measured.piece.id, edge.id) ?? 0;
      return nameEdge(place, edge, depth, picked.has(edge.id), inside, board);
    });
  const first = nameAll(measured.edges.filter((edge) => picked.has(edge.id)));
  const piece = namePiece(place, measured, options.words, inside, board);
  return [...first, ...piece, ...nameAll(measured.edges.filter((edge) => !picked.has(edge.id)))];
}

function leaf(name: Group['name'], id: string, marks: readonly Mark[]): Group {
  return { name, id, data: {}, marks, groups: [] };
}

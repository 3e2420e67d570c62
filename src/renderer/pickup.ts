import type { PickupPlan } from '../pickup';
import { drawButtonholes, HOLE_ROOM, holeWithin } from './buttonholes';
import type { DrawnPiece } from './drawnPiece';
import { cornersOf } from './corners';
import { frameAt, fromFrame, type Track } from './frame';
import type { LabelBoard } from './labels';
import { blockMarkers, drawMarkers, keepNamesOff, markedPlaces, type MarkedEdge } from './markers';
import { numberStep, placeNumber } from './numbers';
import { drawPoints, type DrawnPoints } from './points';
import type { StandingPoint } from './standing';
import { armDistances, ARROW_ALONG, drawStart, startWord, type StartMark } from './start';
import type { Mark, PathMark, PointTrace } from './marks';
import type { DrawOptions } from './options';

/** The points of one planned edge where it is drawn. */
export interface DrawnEdge {
  readonly piece: DrawnPiece;
  readonly track: Track;
  readonly points: DrawnPoints;
}

/** A number beside a point, and which number it is. */
interface Numbered {
  readonly n: number;
  readonly at: StandingPoint;
  readonly stem: number;
}

/** Draws the points of every planned edge; null where its piece is not drawn. */
export function drawEdges(
  plan: PickupPlan,
  tracks: readonly (Track | null)[],
  pieces: readonly DrawnPiece[],
  { detail, blank = false }: Pick<DrawOptions, 'detail' | 'blank'>,
): (DrawnEdge | null)[] {
  return plan.edges.map((edge, i) => {
    const piece = pieces.find(({ measured }) => measured.piece.id === edge.stretch.piece);
    const track = tracks[i];
    if (!piece || !track) return null;
    const corners = cornersOf(piece.measured.edges, edge.measured.index);
    return { piece, track, points: drawPoints(piece.place, plan.pickup, edge, track, corners, detail, blank) };
  });
}

/** Finds what of a pick-up is drawn along an edge, by the ids of its piece and of itself. */
export type Along = (piece: string, edge: string) => readonly DrawnPoints[];

export function alongEdges(plan: PickupPlan, drawn: readonly (DrawnEdge | null)[]): Along {
  const found = new Map<string, Map<string, DrawnPoints[]>>();
  drawn.forEach((one, i) => {
    if (!one) return;
    const { piece, edge } = plan.edges[i]!.stretch;
    const edges = found.get(piece) ?? new Map<string, DrawnPoints[]>();
    found.set(piece, edges.set(edge, [...(edges.get(edge) ?? []), one.points]));
  });
  return (piece, edge) => found.get(piece)?.get(edge) ?? [];
}

/** The path marks of these points. */
export function marksOf(points: readonly DrawnPoints[]): PathMark[] {
  return points.flatMap(({ marks }) => marks);
}

/** How far inside an edge the dots along it reach, sheet mm. */
export function depthOf(points: readonly DrawnPoints[]): number {
  return Math.max(0, ...points.map(({ depth }) => depth));
}

/** Where every point of a pick-up is drawn. */
export function tracesOf(plan: PickupPlan, drawn: readonly (DrawnEdge | null)[]): PointTrace[] {
  return drawn.flatMap((one, i) => {
    const first = plan.edges[i]!.firstPoint;
    if (!one) return [];
    const { points, stem } = one.points;
    return points.map(({ x, y, frame }, k) => ({ point: first + k, x, y, over: fromFrame(frame, stem) }));
  });
}

/** Draws start, markers and numbers of a pick-up, and takes the room of their labels. */
export function labelPickup(
  plan: PickupPlan,
  drawn: readonly (DrawnEdge | null)[],
  board: LabelBoard,
  blank = false,
): { readonly markers: readonly Mark[]; readonly numbers: readonly Mark[] } {
  const marked = drawn.map((one): MarkedEdge | null => {
    if (!one) return null;
    const { piece, track, points } = one;
    const { stem, radius, depth } = points;
    return { place: piece.place, track, depth, stem, radius, inside: piece.inside };
  });
  for (const one of drawn) if (one) blockPoints(one.points, board);
  if (blank) {
    const first = startOf({ ...plan, holes: null }, drawn, board);
    const said = first ? startWord(first.first, first.out, plan.pickup.joined, board) : [];
    return { markers: [], numbers: first ? [first.mark, ...said] : [] };
  }
  const buttonholes = drawButtonholes(plan, marked, board);
  const used = numbered(plan, drawn);
  const numbers: Mark[] = [];
  const write = ({ n, at, stem }: Numbered, role: 'end-number' | 'number') => {
    const mark = placeNumber({ text: String(n), frame: at.frame, stem: reachOf(at, stem) }, role, board);
    if (mark) numbers.push(mark);
  };
  const start = startOf(plan, drawn, board);
  const spots = markedPlaces(plan, marked);
  blockMarkers(spots, board);
  const ends = [used[0], used.length > 1 ? used.at(-1) : undefined].filter((at) => at !== undefined);
  for (const at of ends) write(at, 'end-number');

  const markers = drawMarkers(spots, board);
  const word = start ? startWord(start.first, start.out, plan.pickup.joined, board) : [];
  const length = drawn.reduce((sum, one) => sum + (one ? one.track.length * one.piece.place.scale : 0), 0);
  const step = numberStep(plan.picked, length);
  const told = new Set(spots.map(({ running }) => running));
  for (const at of used) {
    if (at.n % step === 0 && !told.has(at.n) && !ends.includes(at)) write(at, 'number');
  }
  keepNamesOff(markers, board);
  return {
    markers: [...buttonholes, ...markers.marks, ...markers.texts],
    numbers: [...(start ? [start.mark] : []), ...word, ...numbers],
  };
}

/** The used points that are drawn, numbered through: those on pieces that aren't drawn count too. */
function numbered(plan: PickupPlan, drawn: readonly (DrawnEdge | null)[]): Numbered[] {
  const found: Numbered[] = [];
  let before = 0;
  plan.edges.forEach(({ selection: { usedAt }, numbers }, i) => {
    const points = drawn[i]?.points;
    usedAt.forEach((k, j) => {
      if (points) found.push({ n: numbers?.[j] ?? before + j + 1, at: points.points[k]!, stem: points.stem });
    });
    before += usedAt.length;
  });
  return found;
}

/** The start of the work, from the first edge that has a point in it, where it is drawn. */
function startOf(plan: PickupPlan, drawn: readonly (DrawnEdge | null)[], board: LabelBoard): StartMark | null {
  const first = drawn[plan.edges.findIndex(({ selection }) => selection.usedAt.length > 0)];
  if (!first) return null;
  const { piece, track, points } = first;
  const frames = armDistances(track.length, piece.place.scale).map((at) => frameAt(piece.place, track, at));
  // A buttonhole lies in the band, so the arrow stands beyond one beside it.
  const room = holeWithin(plan, ARROW_ALONG, piece.place.scale) ? HOLE_ROOM : 0;
  return drawStart(frames, points.stem + room, plan.pickup.joined, board);
}

/** How far a stem's end lies outside the line of the edge. */
function reachOf({ tip, frame }: StandingPoint, stem: number): number {
  return Math.max(stem, (tip[0] - frame.x) * frame.outX + (tip[1] - frame.y) * frame.outY);
}

/** Labels keep off dots and stems. */
function blockPoints({ points, used, radius }: DrawnPoints, board: LabelBoard): void {
  points.forEach(({ x, y, tip }, i) => {
    board.block(x - radius, y, x + radius, y);
    if (used[i]) board.block(x, y, ...tip);
  });
}

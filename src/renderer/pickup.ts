import type { PickupPlan } from '../pickup';
import { drawButtonholes } from './buttonholes';
import type { DrawnPiece } from './drawnPiece';
import { cornersOf } from './corners';
import { frameAt, type Track } from './frame';
import type { LabelBoard } from './labels';
import { drawMarkers, markedPlaces, type MarkedEdge } from './markers';
import { numberStep, placeNumber } from './numbers';
import { drawPoints, type DrawnPoint, type DrawnPoints } from './points';
import { armDistances, drawStart, startWord, type StartMark } from './start';
import type { Mark, PathMark, PointTrace } from './marks';

/** All that a pick-up adds to the pieces it is worked from. */
export interface DrawnPickup {
  readonly markers: readonly Mark[];
  readonly numbers: readonly Mark[];
  readonly traces: readonly PointTrace[];
  marksOf(piece: string, edge: string): readonly PathMark[];
  /** How far inside an edge its dots reach, sheet mm. */
  depthOf(piece: string, edge: string): number;
}

/** Draws points, start, markers and numbers, and takes the room of their labels. */
export function drawPickup(
  plan: PickupPlan,
  tracks: readonly (Track | null)[],
  pieces: readonly DrawnPiece[],
  detail: 'shape' | 'stitches',
  board: LabelBoard,
): DrawnPickup {
  const pieceOf = plan.edges.map(({ stretch }) => pieces.find(({ measured }) => measured.piece.id === stretch.piece));
  const drawn = plan.edges.map((edge, i): DrawnPoints | null => {
    const [piece, track] = [pieceOf[i], tracks[i]];
    if (!piece || !track) return null;
    const corners = cornersOf(piece.measured.edges, edge.measured.index);
    return drawPoints(piece.place, plan, edge, track, corners, detail);
  });
  const marked = drawn.map((points, i): MarkedEdge | null => {
    const [piece, track] = [pieceOf[i], tracks[i]];
    if (!points || !piece || !track) return null;
    const { stem, radius } = points;
    return { place: piece.place, track, depth: depthOf(points), stem, radius, inside: piece.inside };
  });
  for (const points of drawn) if (points) blockPoints(points, board);
  const buttonholes = drawButtonholes(plan, marked, board);

  const all = drawn.flatMap((points) => points?.drawn ?? []);
  const used = all.filter(({ point }) => point.n !== null);
  const stemOf = (at: DrawnPoint) => drawn[at.point.edge]?.stem ?? 0;
  const numbers: Mark[] = [];
  const write = (at: DrawnPoint, role: 'end-number' | 'number') => {
    const mark = placeNumber({ text: String(at.point.n), frame: at.frame, stem: reachOf(at, stemOf(at)) }, role, board);
    if (mark) numbers.push(mark);
  };
  const start = startOf(plan, tracks, pieceOf, drawn, board);
  const ends = [used[0], used.length > 1 ? used.at(-1) : undefined].filter((at) => at !== undefined);
  for (const at of ends) write(at, 'end-number');

  const spots = markedPlaces(plan, marked);
  const { marks, texts } = drawMarkers(spots, board);
  const word = start ? startWord(start.first, start.out, plan.pickup.joined, board) : [];
  const length = tracks.reduce((sum, track, i) => sum + (track?.length ?? 0) * (pieceOf[i]?.place.scale ?? 0), 0);
  const step = numberStep(plan.picked, length);
  const told = new Set(spots.map(({ running }) => running));
  for (const at of used) {
    const n = at.point.n!;
    if (n % step === 0 && !told.has(n) && !ends.includes(at)) write(at, 'number');
  }

  const of = (piece: string, edge: string) =>
    plan.edges.flatMap((planned, i) => {
      const points = drawn[i];
      return points && planned.stretch.piece === piece && planned.stretch.edge === edge ? [{ points, i }] : [];
    });
  return {
    markers: [...buttonholes, ...marks, ...texts],
    numbers: [...(start ? [start.mark] : []), ...word, ...numbers],
    traces: drawn.flatMap((points) => points?.traces ?? []),
    marksOf: (piece, edge) => of(piece, edge).flatMap(({ points }) => points.marks),
    depthOf: (piece, edge) => Math.max(0, ...of(piece, edge).map(({ i }) => marked[i]!.depth)),
  };
}

/** The start of the work, from the first edge that is drawn and has a point in it. */
function startOf(
  plan: PickupPlan,
  tracks: readonly (Track | null)[],
  pieceOf: readonly (DrawnPiece | undefined)[],
  drawn: readonly (DrawnPoints | null)[],
  board: LabelBoard,
): StartMark | null {
  const first = plan.points.find((point) => point.n !== null)?.edge;
  const [track, place] = first === undefined ? [] : [tracks[first], pieceOf[first]?.place];
  if (!track || !place) return null;
  const frames = armDistances(track.length, place.scale).map((at) => frameAt(place, track, at));
  return drawStart(frames, drawn[first!]?.stem ?? 0, plan.pickup.joined, board);
}

function depthOf({ drawn, radius }: DrawnPoints): number {
  const deepest = drawn.reduce((most, { x, y, frame }) => {
    const inside = -((x - frame.x) * frame.outX + (y - frame.y) * frame.outY);
    return Math.max(most, inside);
  }, 0);
  return deepest + radius;
}

/** How far a stem's end lies outside the line of the edge. */
function reachOf({ tip, frame }: DrawnPoint, stem: number): number {
  return Math.max(stem, (tip[0] - frame.x) * frame.outX + (tip[1] - frame.y) * frame.outY);
}

/** Labels keep off dots and stems. */
function blockPoints({ drawn, radius }: DrawnPoints, board: LabelBoard): void {
  for (const { point, x, y, tip } of drawn) {
    board.block(x - radius, y, x + radius, y);
    if (point.n !== null) board.block(x, y, ...tip);
  }
}

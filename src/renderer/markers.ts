import type { Marker, PickupPlan, PlanPoint } from '../pickup';
import { betweenFrames, frameAt, fromFrame, reachOut, type Frame, type Track } from './frame';
import { boxAround, type LabelBoard } from './labels';
import { TYPE } from './sizes';
import { textIn } from './numbers';
import { textWidth } from './width';
import { linesPath, roundedPath, type Spot } from './toPath';
import type { Box, PathMark, Place, TextMark } from './marks';

/** A place along a whole pick-up. */
export interface PickupPlace {
  readonly edge: number;
  /** Distance from the start of the edge's stretch, along the edge, mm. */
  readonly edgeAt: number;
}

/**
 * The place at a distance along the join of a whole pick-up. Distances along the join and along the edge are known at
 * every opening and in between they grow together.
 * @param ends length along the edge of each planned edge's stretch, mm
 */
export function placeAlong(plan: PickupPlan, alongMm: number, ends: readonly number[]): PickupPlace | null {
  let last: PickupPlace | null = null;
  for (const [index, edge] of plan.edges.entries()) {
    const points = plan.points.slice(edge.firstPoint, edge.pointsEnd);
    const first = points[0];
    if (!first) continue;
    const start = first.alongMm - first.joinAt;
    const next = plan.edges.slice(index + 1).find((other) => other.pointsEnd > other.firstPoint);
    const after = next && plan.points[next.firstPoint];
    const stop = after ? after.alongMm - after.joinAt : plan.joinMm;
    const stretch = ends[index] ?? first.edgeAt;
    last = { edge: index, edgeAt: stretch };
    if (alongMm > stop && next) continue;
    const known = [
      { at: start, edgeAt: 0 },
      ...points.map((point) => ({ at: point.alongMm, edgeAt: point.edgeAt })),
      { at: stop, edgeAt: stretch },
    ];
    for (let i = 1; i < known.length; i++) {
      const [a, b] = [known[i - 1]!, known[i]!];
      if (alongMm > b.at) continue;
      const share = b.at > a.at ? Math.max(0, (alongMm - a.at) / (b.at - a.at)) : 0;
      return { edge: index, edgeAt: a.edgeAt + (b.edgeAt - a.edgeAt) * share };
    }
    return last;
  }
  return last;
}

export interface DrawnMarkers {
  readonly marks: readonly PathMark[];
  readonly texts: readonly TextMark[];
  /** The room of every tag. */
  readonly boxes: readonly Box[];
}

export interface Marked {
  readonly frame: Frame;
  readonly running: number;
  /** How far inside the edge the dots reach, and how far outside it the stems. */
  readonly depth: number;
  readonly stem: number;
  readonly inside: Inside;
}

/** Whether a place on the sheet lies on the fabric. */
export type Inside = (x: number, y: number) => boolean;

/** What is known of each planned edge once its points are drawn; null where its piece is not drawn. */
export interface MarkedEdge {
  readonly track: Track;
  readonly place: Place;
  readonly depth: number;
  readonly stem: number;
  readonly radius: number;
  readonly inside: Inside;
}

/** Tries for a tag: straight inwards as near as there is room, then to either side. */
const FARTHER = [0, 2.2, 4.4, 6.6, 9, 12];
const ASIDE = [0, 3, -3, 6, -6, 9, -9];
const TRIES = ASIDE.flatMap((along) => FARTHER.map((more) => [more, along] as const));
/** How far the line reaches beyond the stems. */
const OVER_STEMS = 1.1;
const PADDING = { x: 0.9, y: 0.55 } as const;
/** Clear distance between the dots and the tag. */
const BEYOND_DOTS = 2.2;
/** Clear distance between a marker's line and the dots beside it. */
const CLEAR_OF_DOT = 0.25;
/** Two places nearer than this, in mm, are one. */
const SAME_PLACE = 0.01;
/** Clear room to the left and right of a count, beyond that of every label, that is left free of names. */
const NAME_CLEAR = 1.2;
const HEIGHT = TYPE.number + 2 * PADDING.y;

/** Where the markers of a pick-up stand. The last section ends where the pick-up does, which has its own number. */
export function markedPlaces(plan: PickupPlan, edges: readonly (MarkedEdge | null)[]): Marked[] {
  const ends = edges.map((edge) => edge?.track.length ?? 0);
  const used = plan.points.filter((point) => point.n !== null);
  return plan.sections.slice(0, -1).flatMap(({ n, marker, running }) => {
    const at = placeAlong(plan, clearOfPoints(marker, n, used, edges), ends);
    const edge = at && edges[at.edge];
    if (!edge) return [];
    return [{ frame: markerFrame(at, edges), running, depth: edge.depth, stem: edge.stem, inside: edge.inside }];
  });
}

/** A marker that isn't tied to a corner is drawn beside its neighbouring dots, not through one of them. */
function clearOfPoints(
  { alongMm, landmark }: Marker,
  section: number,
  used: readonly PlanPoint[],
  edges: readonly (MarkedEdge | null)[],
): number {
  // By section, not by the running count: after a miscount that is another than the number of points.
  const after = used.findIndex((point) => point.section > section);
  const [last, next] = [used[after - 1], used[after]];
  const edge = last && edges[last.edge];
  if (landmark !== null || !next || !edge) return alongMm;
  const room = next.alongMm - last.alongMm;
  const clear = Math.min(room / 3, (edge.radius + CLEAR_OF_DOT) / edge.place.scale);
  return Math.min(Math.max(alongMm, last.alongMm + clear), next.alongMm - clear);
}

/** At a corner between two edges of the pick-up a marker halves it. */
function markerFrame({ edge: index, edgeAt }: PickupPlace, edges: readonly (MarkedEdge | null)[]): Frame {
  const { track, place } = edges[index]!;
  const frame = frameAt(place, track, edgeAt);
  const next = edges[index + 1];
  const before = edges[index - 1];
  const joins =
    edgeAt >= track.length - SAME_PLACE && next
      ? frameAt(next.place, next.track, 0)
      : edgeAt <= SAME_PLACE && before
        ? frameAt(before.place, before.track, before.track.length)
        : null;
  return joins && Math.hypot(joins.x - frame.x, joins.y - frame.y) < SAME_PLACE ? betweenFrames(frame, joins) : frame;
}

/** Keeps labels off the parts of the markers' lines that lie outside the fabric. */
export function blockMarkers(marked: readonly Marked[], board: LabelBoard): void {
  for (const { frame, stem } of marked) board.block(frame.x, frame.y, ...fromFrame(frame, stem + OVER_STEMS));
}

/**
 * Lines across the edge, each with the running count in a tag inside the fabric. At a corner where the fabric does not
 * lie straight inwards the line bends towards it. A tag that finds no room is left out; its line stays.
 */
export function drawMarkers(marked: readonly Marked[], board: LabelBoard): DrawnMarkers {
  const lines: string[] = [];
  const tags: string[] = [];
  const texts: TextMark[] = [];
  const boxes: Box[] = [];
  for (const { frame, running, depth, stem, inside } of marked) {
    const text = String(running);
    const width = Math.max(textWidth(text, TYPE.number) + 2 * PADDING.x, HEIGHT);
    const half = reachOut(frame, width, HEIGHT);
    const tries = TRIES.map(([more, along]) => fromFrame(frame, -(depth + BEYOND_DOTS + half + more), along));
    const rooms = tries.map((middle) => boxAround(...middle, width, HEIGHT));
    const box = board.place([...rooms.filter((one) => corners(one).every(([x, y]) => inside(x, y)))]);
    const path: Spot[] = [fromFrame(frame, stem + OVER_STEMS), [frame.x, frame.y]];
    path.push(box ? [box.x + width / 2, box.y + HEIGHT / 2] : fromFrame(frame, -(depth + BEYOND_DOTS)));
    lines.push(linesPath(path));
    board.blockTrace(path.flat());
    if (!box) continue;
    boxes.push(box);
    tags.push(roundedPath(box.x, box.y, width, HEIGHT, HEIGHT / 2));
    texts.push(textIn(box, text, 'running-number', TYPE.number));
  }
  const marks: PathMark[] = [];
  if (lines.length > 0) marks.push({ kind: 'path', role: 'marker', d: lines.join(''), count: lines.length });
  if (tags.length > 0) marks.push({ kind: 'path', role: 'running', d: tags.join(''), count: tags.length });
  return { marks, texts, boxes };
}

/** Keeps the names of edges so far from a count that they don't read as its name. */
export function keepNamesOff({ boxes }: DrawnMarkers, board: LabelBoard): void {
  for (const { x, y, width, height } of boxes) {
    board.reserve({ x: x - NAME_CLEAR, y, width: width + 2 * NAME_CLEAR, height });
  }
}

function corners({ x, y, width, height }: Box): Spot[] {
  return [
    [x, y],
    [x + width, y],
    [x, y + height],
    [x + width, y + height],
  ];
}

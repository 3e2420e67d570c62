import { between, lengthOf, nearestOn, pointAt, scaled, type Segment } from '../../geometry';
import type { Edge, GridPoint, Piece, SteppedEdge } from '../../piece';
import { cellOf } from '../../shaping';
import { freshId } from './ids';
import { endCorner, placeOf, segmentOf, type GridPlace } from './paths';
import { joinedSteps, singlesOf } from './reschedule';
import { asTwin, mirrorOf, selfMirrored, type Mirror } from './symmetry';
import type { Trace } from './trace';

/** An outline after its edges were split or run together, and where the old edges are now. */
export interface Remade {
  readonly outline: readonly Edge[];
  readonly traces: ReadonlyMap<string, readonly Trace[]>;
}

/** The parts of a split edge, and where the cuts lie as shares of its length. */
interface Cut {
  readonly parts: readonly Edge[];
  readonly shares: readonly number[];
}

interface Cell {
  readonly width: number;
  readonly height: number;
}

/**
 * A new corner on an edge, at the place of it nearest to `at` (measured on the fabric), on the grid. A curve is split
 * in its shape; its new corner goes to the nearest whole stitch and row and its inner handles with it. A schedule is
 * split between two steps, or at a row of an even stretch. The first part keeps the id. On a symmetric piece the twin
 * is split too, and an edge that mirrors itself gets a corner on the middle or two beside it. Null where the edge is
 * too short to have a corner between its own.
 */
export function withCorner(piece: Piece, index: number, at: GridPlace): Remade | null {
  const mirror = mirrorOf(piece);
  const twin = mirror ? mirror.edge(index) : -1;
  const edge = piece.outline[index]!;
  const cell = cellOf(piece);
  const to = endCorner(piece.outline, index);
  const cut = twin === index ? cutMirrored(edge, to, at, cell, mirror!) : cutOnce(edge, to, at, cell);
  if (!cut) return null;
  const cuts = new Map([[index, cut]]);
  if (mirror && twin !== index) cuts.set(twin, twinCut(piece.outline[twin]!, cut, mirror.flip));
  const taken = new Set(piece.outline.map(({ id }) => id));
  const traces = new Map<string, readonly Trace[]>();
  const outline = piece.outline.flatMap((old, i) => {
    const parts = cuts.get(i);
    if (!parts) return [old];
    const named = parts.parts.map((part, k) => {
      if (k === 0) return part;
      const id = freshId(old.id, taken);
      taken.add(id);
      return { ...part, id };
    });
    const marks = [0, ...parts.shares, 1];
    traces.set(
      old.id,
      named.map(({ id }, k) => ({ part: [marks[k]!, marks[k + 1]!], edge: id, now: [0, 1] })),
    );
    return named;
  });
  return { outline, traces };
}

function cutOnce(edge: Edge, to: GridPoint, at: GridPlace, cell: Cell): Cut | null {
  if (edge.path === 'stepped') return cutSchedule(edge, to, at, cell);
  const segment = segmentOf(edge, to);
  const place = placeOn(segment, at, cell, (corner) => !same(corner, edge.from) && !same(corner, to));
  if (!place) return null;
  return { parts: partsAt(edge, segment, [place]), shares: [shareAt(segment, place.t, cell)] };
}

/** An edge that mirrors itself: one cut on the middle, or two that mirror each other. */
function cutMirrored(edge: Edge, to: GridPoint, at: GridPlace, cell: Cell, mirror: Mirror): Cut | null {
  if (edge.path === 'stepped') return null;
  const { sum, flip } = mirror;
  const segment = segmentOf(edge, to);
  const place = placeOn(segment, at, cell, (corner) => !same(corner, edge.from) && !same(corner, to));
  if (!place) return null;
  if (2 * place.corner[0] === sum) {
    const [first, second] = partsAt(edge, segment, [{ t: 0.5, corner: place.corner }]) as [Edge, Edge];
    return { parts: [first, asTwin(second, first, flip)], shares: [0.5] };
  }
  const image = { t: 1 - place.t, corner: flip(place.corner) };
  const [near, far] = place.t < image.t ? [place, image] : [image, place];
  const [first, middle, last] = partsAt(edge, segment, [near, far]) as [Edge, Edge, Edge];
  const share = shareAt(segment, near.t, cell);
  return { parts: [first, selfMirrored(middle, flip), asTwin(last, first, flip)], shares: [share, 1 - share] };
}

interface Place {
  readonly t: number;
  readonly corner: GridPoint;
}

/** The place nearest to `at`, or the nearest beyond it, whose corner will do; null where there is none. */
function placeOn(segment: Segment, at: GridPlace, cell: Cell, will: (corner: GridPoint) => boolean): Place | null {
  const onFabric = scaled(segment, cell.width, cell.height);
  const { t: nearest } = nearestOn(onFabric, { x: at[0] * cell.width, y: at[1] * cell.height });
  const [dx, dy] = [segment.to.x - segment.from.x, segment.to.y - segment.from.y];
  const tries = 4 * Math.ceil(Math.abs(dx) + Math.abs(dy)) + 4;
  for (let k = 0; k <= tries; k++) {
    for (const t of k === 0 ? [nearest] : [nearest + k / tries, nearest - k / tries]) {
      if (t <= 0 || t >= 1) continue;
      const { x, y } = pointAt(segment, t);
      const corner: GridPoint = [Math.round(x), Math.round(y)];
      if (will(corner)) return { t, corner };
    }
  }
  return null;
}

/** The parts of an edge cut at places in order, each new corner on its whole stitch and row, handles moved with it. */
function partsAt(edge: Edge, segment: Segment, places: readonly Place[]): Edge[] {
  const starts = [{ t: 0, corner: edge.from }, ...places];
  return starts.map(({ t: t0, corner }, k): Edge => {
    if (segment.kind === 'line') return { ...edge, from: corner };
    const end = starts[k + 1];
    const part = between(segment, t0, end?.t ?? 1);
    const moved = (handle: { x: number; y: number }, from: { x: number; y: number }, to: GridPlace): GridPlace => [
      handle.x + to[0] - from.x,
      handle.y + to[1] - from.y,
    ];
    const handles = [moved(part.c1, part.from, corner), moved(part.c2, part.to, end?.corner ?? placeOf(segment.to))];
    return { ...edge, from: corner, path: 'curve', handles: [handles[0]!, handles[1]!] };
  });
}

/** Which share of the length on the fabric lies before t. */
function shareAt(segment: Segment, t: number, { width, height }: Cell): number {
  const onFabric = scaled(segment, width, height);
  return t === 0.5 && onFabric.kind === 'line' ? 0.5 : lengthOf(between(onFabric, 0, t)) / lengthOf(onFabric);
}

/** A schedule cut at the nearest place where a step ends, or at the nearest row of a stretch worked even. */
function cutSchedule(edge: SteppedEdge, to: GridPoint, at: GridPlace, { width, height }: Cell): Cut | null {
  const climbs = to[1] > edge.from[1];
  const [bottom, top] = climbs ? [edge.from, to] : [to, edge.from];
  const singles = singlesOf(edge.steps);
  const total = singles.reduce((sum, { stitches, every }) => sum + Math.hypot(stitches * width, every * height), 0);
  let best: { lower: typeof singles; upper: typeof singles; corner: GridPoint; share: number } | null = null;
  let nearest = Infinity;
  let [x, y, length] = bottom[1] === top[1] ? [0, 0, 0] : [bottom[0], bottom[1], 0];
  for (const [i, single] of singles.entries()) {
    const across = climbs ? single.stitches : 0 - single.stitches;
    // Within a step only a stretch worked even has corners on the line.
    const rows = single.stitches === 0 ? Math.max(1, Math.min(single.every, Math.round(at[1]) - y)) : single.every;
    for (const row of new Set([rows, single.every])) {
      const corner: GridPoint = [row === single.every ? x + across : x, y + row];
      const off = Math.hypot((corner[0] - at[0]) * width, (corner[1] - at[1]) * height);
      if (same(corner, top) || off >= nearest) continue;
      nearest = off;
      const rest = single.every - row;
      best = {
        lower: [...singles.slice(0, i), { ...single, every: row }],
        upper: [...(rest > 0 ? [{ ...single, every: rest }] : []), ...singles.slice(i + 1)],
        corner,
        share: (length + Math.hypot((corner[0] - x) * width, row * height)) / total,
      };
    }
    x += across;
    y += single.every;
    length += Math.hypot(single.stitches * width, single.every * height);
  }
  if (!best) return null;
  const { corner } = best;
  const [lower, upper] = [joinedSteps(best.lower), joinedSteps(best.upper)];
  const [first, second] = climbs ? [lower, upper] : [upper, lower];
  return {
    parts: [
      { ...edge, steps: first },
      { ...edge, from: corner, steps: second },
    ],
    shares: [climbs ? best.share : 1 - best.share],
  };
}

/** The parts of the twin of a split edge: mirror images in reversed order. */
function twinCut(twin: Edge, { parts, shares }: Cut, flip: Mirror['flip']): Cut {
  const reversed = [...parts].reverse();
  return {
    parts: reversed.map((part, k) => {
      const path = asTwin(twin, part, flip);
      // The first part begins where the twin did; the others where the mirror image of the part before ends.
      return k === 0 ? path : { ...path, from: flip(reversed[k - 1]!.from) };
    }),
    shares: [...shares].reverse().map((share) => 1 - share),
  };
}

function same(a: GridPlace, b: GridPlace): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

import { add, cross, distance, dot, norm, scale, subtract, type Point } from '../../geometry';
import type { CurvedEdge, Edge, Piece, ScheduleStep, SteppedEdge } from '../../piece';
import { measurePiece } from '../../shaping';
import { asCurve, asStepped, asStraight, endCorner, placeOf, pointOf, wayOf } from './paths';
import { joinedSteps } from './reschedule';
import type { Remade } from './split';
import { asTwin, mirrorOf, selfMirrored } from './symmetry';
import type { Trace } from './trace';

/** A piece keeps at least this many corners. */
const FEWEST = 3;

/** How much of a right angle two handles may be out of line and still make a smooth joint (a sine). */
const SMOOTH = 1e-3;

/**
 * The outline without some corners: the edges at each become one, which keeps the id, finish and selvage of the first.
 * Curves become one curve (the one that they were split from, where they meet smoothly), schedules that go on in one
 * direction one schedule, all else a straight edge. On a symmetric piece the twin corners go too. Null where fewer than
 * three corners would be left.
 *
 * @param corners indices of the edges that begin at them
 */
export function withoutCorners(piece: Piece, corners: readonly number[]): Remade | null {
  const { outline } = piece;
  const mirror = mirrorOf(piece);
  const gone = new Set(mirror ? corners.flatMap((i) => [i, mirror.corner(i)]) : corners);
  if (gone.size === 0 || outline.length - gone.size < FEWEST) return null;
  const groups = groupsOf(outline.length, gone);
  const merged = new Map(groups.map((group) => [group[0]!, mergedEdge(outline, group)]));
  if (mirror) {
    for (const group of groups) {
      const first = group[0]!;
      // The mirror image of a group begins with the mirror image of its last edge.
      const twin = mirror.edge(group.at(-1)!);
      if (twin === first) merged.set(first, selfMirrored(merged.get(first)!, mirror.flip));
      else if (twin > first) merged.set(twin, asTwin(merged.get(twin)!, merged.get(first)!, mirror.flip));
    }
  }
  const traces = new Map<string, readonly Trace[]>();
  const lengths = measurePiece(piece).map(({ edgeMm }) => edgeMm);
  for (const group of groups.filter(({ length }) => length > 1)) {
    const total = group.reduce((sum, i) => sum + lengths[i]!, 0);
    let done = 0;
    group.forEach((i, k) => {
      const from = done / total;
      done += lengths[i]!;
      const to = k === group.length - 1 ? 1 : done / total;
      traces.set(outline[i]!.id, [{ part: [0, 1], edge: outline[group[0]!]!.id, now: [from, to] }]);
    });
  }
  return { outline: outline.flatMap((_, i) => merged.get(i) ?? []), traces };
}

/** The edges that become one, for each corner that stays, beginning with the edge there. */
function groupsOf(edges: number, gone: ReadonlySet<number>): number[][] {
  const groups: number[][] = [];
  for (let i = 0; i < edges; i++) {
    if (gone.has(i)) continue;
    const group = [i];
    for (let next = (i + 1) % edges; gone.has(next); next = (next + 1) % edges) group.push(next);
    groups.push(group);
  }
  return groups;
}

/** The edges of a group as one; the very same edge where it is alone. */
function mergedEdge(outline: readonly Edge[], group: readonly number[]): Edge {
  const edges = group.map((i) => outline[i]!);
  const first = edges[0]!;
  if (edges.length === 1) return first;
  if (edges.every((edge) => edge.path === 'curve')) {
    const ends = group.map((i) => endCorner(outline, i));
    return edges.reduce((sum, edge, k) => oneCurve(sum, edge, ends[k]!));
  }
  const ways = group.map((i) => Math.sign(wayOf(outline, i)[1]));
  if (edges.every((edge) => edge.path === 'stepped') && ways.every((way) => way === ways[0])) {
    const upwards = ways[0]! > 0 ? edges : [...edges].reverse();
    return asStepped(first, upwards.map(({ steps }: SteppedEdge) => steps).reduce(oneSchedule));
  }
  return asStraight(first);
}

/** Two schedules worked one after the other; even stretches that meet there are one. */
function oneSchedule(lower: readonly ScheduleStep[], upper: readonly ScheduleStep[]): ScheduleStep[] {
  const [below, above] = [lower.at(-1), upper[0]];
  const isEven = (step: ScheduleStep | undefined) => step?.stitches === 0 && step.times === 1;
  if (!below || !above || !isEven(below) || !isEven(above)) return joinedSteps([...lower, ...upper]);
  return joinedSteps([...lower.slice(0, -1), { ...below, every: below.every + above.every }, ...upper.slice(1)]);
}

/**
 * Two curves as one with their outer tangents. Where they meet smoothly their inner handles tell where the curve was
 * split (de Casteljau: at t the handles there are as t to 1 - t), and the outer ones are drawn out by 1 / t and
 * 1 / (1 - t), so that a split is undone; else they stay where they are.
 */
function oneCurve(first: CurvedEdge, second: CurvedEdge, to: Edge['from']): CurvedEdge {
  const joint = pointOf(second.from);
  const [before, after] = [subtract(joint, pointOf(first.handles[1])), subtract(pointOf(second.handles[0]), joint)];
  const [a, b] = [norm(before), norm(after)];
  const smooth = a > 0 && b > 0 && dot(before, after) > 0 && Math.abs(cross(before, after)) <= SMOOTH * a * b;
  if (!smooth) return asCurve(first, [first.handles[0], second.handles[1]]);
  const t = a / (a + b);
  return asCurve(first, [
    placeOf(drawnOut(pointOf(first.from), pointOf(first.handles[0]), 1 / t)),
    placeOf(drawnOut(pointOf(to), pointOf(second.handles[1]), 1 / (1 - t))),
  ]);
}

function drawnOut(corner: Point, handle: Point, by: number): Point {
  return distance(corner, handle) > 0 ? add(corner, scale(subtract(handle, corner), by)) : corner;
}

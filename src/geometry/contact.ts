import { add, cross, distance, dot, scale, subtract, type Point } from './point';
import { between, doublesBack, isStraight, line, pointAt, unitTangentAt, type Line, type Segment } from './segment';

/** Which ends two segments have in common by the way they are joined. */
export interface Joint {
  /** The first ends where the second begins. */
  readonly endToStart: boolean;
  /** The second ends where the first begins. */
  readonly startToEnd: boolean;
}

export const APART: Joint = { endToStart: false, startToEnd: false };

/** Comparisons of parts before two curves are taken to touch. */
const MOST_COMPARISONS = 20_000;

/**
 * A place where two segments touch, cross or lie on each other, other than at the corner that joins them; null if there
 * is none. Nearer than `slack` is touching. Curves are halved as long as their hulls may overlap and they are not yet
 * straight within `slack`; each halving makes them four times as straight, so that it ends. Two segments that run on
 * round their corner in one direction can't meet elsewhere, which settles smooth joins without any halving. Curves that
 * run side by side so closely for so long that thousands of parts can't tell them apart (a hundred-millionth or so of their
 * size) touch too.
 */
export function contactOf(a: Segment, b: Segment, joint: Joint, slack: number): Point | null {
  return search(plain(a), plain(b), joint, slack, { left: MOST_COMPARISONS });
}

/** A straight curve that goes one way is its chord. */
export function plain(seg: Segment): Segment {
  return seg.kind === 'cubic' && isStraight(seg) && !doublesBack(seg) ? line(seg.from, seg.to) : seg;
}

function search(a: Segment, b: Segment, joint: Joint, slack: number, comparisons: { left: number }): Point | null {
  if (comparisons.left === 0) return pointAt(a, 0.5);
  comparisons.left -= 1;
  if (apart(a, b, slack)) return null;
  if (joint.endToStart && !joint.startToEnd && runsOn(a, b)) return null;
  if (joint.startToEnd && !joint.endToStart && runsOn(b, a)) return null;
  const aFlat = isFlat(a, slack);
  const bFlat = isFlat(b, slack);
  if (aFlat && bFlat) return contactOfFlat(a, b, joint, slack);
  const aParts = aFlat ? [a] : [between(a, 0, 0.5), between(a, 0.5, 1)];
  const bParts = bFlat ? [b] : [between(b, 0, 0.5), between(b, 0.5, 1)];
  for (const [i, aPart] of aParts.entries()) {
    for (const [j, bPart] of bParts.entries()) {
      const part: Joint = {
        endToStart: joint.endToStart && i === aParts.length - 1 && j === 0,
        startToEnd: joint.startToEnd && i === 0 && j === bParts.length - 1,
      };
      const found = search(aPart, bPart, part, slack, comparisons);
      if (found !== null) return found;
    }
  }
  return null;
}

function pointsOf(seg: Segment): readonly Point[] {
  return seg.kind === 'line' ? [seg.from, seg.to] : [seg.from, seg.c1, seg.c2, seg.to];
}

/**
 * Whether the control points of both, and so the segments, are apart as seen along the axes or along either chord. The
 * chords tell curves that run side by side, which boxes along the axes would only part in very small pieces (fat lines:
 * Sederberg and Nishita, "Curve intersection using Bézier clipping", 1990, https://doi.org/10.1016/0010-4485(90)90039-F).
 */
function apart(a: Segment, b: Segment, slack: number): boolean {
  const [as, bs] = [pointsOf(a), pointsOf(b)];
  return (
    apartAlong(as, bs, 1, 0, slack) ||
    apartAlong(as, bs, 0, 1, slack) ||
    apartAlong(as, bs, a.from.y - a.to.y, a.to.x - a.from.x, slack) ||
    apartAlong(as, bs, b.from.y - b.to.y, b.to.x - b.from.x, slack)
  );
}

function apartAlong(as: readonly Point[], bs: readonly Point[], x: number, y: number, slack: number): boolean {
  let [minA, maxA, minB, maxB] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const p of as) {
    const along = p.x * x + p.y * y;
    if (along < minA) minA = along;
    if (along > maxA) maxA = along;
  }
  for (const p of bs) {
    const along = p.x * x + p.y * y;
    if (along < minB) minB = along;
    if (along > maxB) maxB = along;
  }
  const reach = slack * Math.sqrt(x * x + y * y);
  return minA > maxB + reach || minB > maxA + reach;
}

/**
 * Whether there is a direction in which `before` always advances to the corner and `after` always away from it. The
 * derivative of a curve lies within the hull of the differences of its control points.
 */
function runsOn(before: Segment, after: Segment): boolean {
  const way = add(unitTangentAt(before, 1), unitTangentAt(after, 0));
  return advances(before, way) && advances(after, way);
}

function advances(seg: Segment, way: Point): boolean {
  const points = pointsOf(seg);
  const steps = points.slice(1).map((p, i) => dot(subtract(p, points[i]!), way));
  return steps.every((step) => step >= 0) && steps.some((step) => step > 0);
}

/** A cubic strays from evenly travelling its chord by no more than its larger second difference. */
function isFlat(seg: Segment, slack: number): boolean {
  if (seg.kind === 'line') return true;
  const bend1 = { x: seg.from.x - 2 * seg.c1.x + seg.c2.x, y: seg.from.y - 2 * seg.c1.y + seg.c2.y };
  const bend2 = { x: seg.c1.x - 2 * seg.c2.x + seg.to.x, y: seg.c1.y - 2 * seg.c2.y + seg.to.y };
  return !(Math.max(Math.abs(bend1.x), Math.abs(bend1.y), Math.abs(bend2.x), Math.abs(bend2.y)) > slack);
}

function contactOfFlat(a: Segment, b: Segment, joint: Joint, slack: number): Point | null {
  if (!joint.endToStart && !joint.startToEnd) return contactOfLines(line(a.from, a.to), line(b.from, b.to), slack);
  // Curves that leave their corner in one and the same direction part from each other sooner or later, and are looked
  // at where they have parted; only two lines can lie on each other from the corner on.
  if (a.kind !== 'line' || b.kind !== 'line') return null;
  return (
    (joint.endToStart ? (doubledBack(a.from, b, slack) ?? doubledBack(b.to, a, slack)) : null) ??
    (joint.startToEnd ? (doubledBack(b.from, a, slack) ?? doubledBack(a.to, b, slack)) : null)
  );
}

/** The far end of one line, if it lies on the other. */
function doubledBack(end: Point, other: Line, slack: number): Point | null {
  return distanceTo(other, end) <= slack ? end : null;
}

function contactOfLines(a: Line, b: Line, slack: number): Point | null {
  const da = subtract(a.to, a.from);
  const db = subtract(b.to, b.from);
  const gap = subtract(b.from, a.from);
  const turn = cross(da, db);
  if (turn !== 0) {
    const s = cross(gap, db) / turn;
    const t = cross(gap, da) / turn;
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) return add(a.from, scale(da, s));
  }
  if (distanceTo(b, a.from) <= slack) return a.from;
  if (distanceTo(b, a.to) <= slack) return a.to;
  if (distanceTo(a, b.from) <= slack) return b.from;
  if (distanceTo(a, b.to) <= slack) return b.to;
  return null;
}

function distanceTo(seg: Line, point: Point): number {
  const along = subtract(seg.to, seg.from);
  const reach = dot(along, along);
  const t = reach > 0 ? Math.min(1, Math.max(0, dot(subtract(point, seg.from), along) / reach)) : 0;
  return distance(add(seg.from, scale(along, t)), point);
}

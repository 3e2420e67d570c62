import type { PickupPlan, PlannedEdge, Selection } from '../pickup';
import { shelf } from '../units';
import type { Corners } from './corners';
import type { Track } from './frame';
import { RING, RING_SPACING, WEIGHT } from './sizes';
import { LOOP, standPoints, type Standing, type StandingPoint } from './standing';
import { circles, diamonds, linesPath, spot } from './toPath';
import type { PathMark, PathRole, Place } from './marks';

/** A diamond holds as much ink as a dot when its corners reach this much farther than the dot's edge. */
const DIAMOND = 1.3;

/** From this distance on, sheet mm, empty rings may be as large as dots and still be told apart. */
const BLANK_SPACING = 2;

export interface DrawnPoints extends Standing {
  /** Which of the points are used. */
  readonly used: readonly boolean[];
  readonly marks: readonly PathMark[];
}

const kept = shelf<Selection, DrawnPoints>(2);

/**
 * The openings of one planned edge: a dot and a stem for each that is used, a ring for each that is skipped; first
 * places round, second places diamonds, live stitches open loops.
 *
 * Below `RING_SPACING` rings would run together, so they drop out; dots and stems always stay, so that the count can
 * still be read off the drawing. With `blank` all are rings, however close.
 */
export function drawPoints(
  place: Place,
  pickup: PickupPlan['pickup'],
  edge: PlannedEdge,
  track: Track,
  corners: Corners,
  detail: 'shape' | 'stitches',
  blank = false,
): DrawnPoints {
  const standing = standPoints(place, pickup, edge, track, corners, detail);
  return kept(edge.selection, [standing, blank], () => {
    const used = blank ? edge.selection.used.map(() => false) : edge.selection.used;
    return { ...standing, used, marks: marksOf(standing, used, blank) };
  });
}

/** What each opening looks like where it is used and where it is not: written when it first is, and kept with it. */
interface Written {
  readonly over: string[];
  readonly used: string[];
  readonly skipped: string[];
}

const written = new WeakMap<Standing, Written>();

function marksOf(standing: Standing, used: readonly boolean[], blank: boolean): PathMark[] {
  const { points, spacing, radius } = standing;
  let known = written.get(standing);
  if (!known) written.set(standing, (known = { over: [], used: [], skipped: [] }));
  const { over, used: full, skipped: empty } = known;
  // Rings to be filled in are as large as dots where there is room between them.
  const ring = blank && spacing >= BLANK_SPACING ? radius : radius * RING;
  const dot = { first: circles(radius), second: diamonds(radius * DIAMOND) };
  const rings = { first: circles(ring), second: diamonds(ring * DIAMOND) };
  const paths: Record<'skipped' | 'skipped-second' | 'stem' | 'used' | 'used-second' | 'live', string[]> = {
    skipped: [],
    'skipped-second': [],
    stem: [],
    used: [],
    'used-second': [],
    live: [],
  };
  points.forEach((at, i) => {
    const live = at.point.kind === 'live';
    const second = !live && at.point.second;
    const place = second ? 'second' : 'first';
    if (used[i]) {
      paths.stem.push((over[i] ??= stemPath(at, radius)));
      const role = live ? 'live' : second ? 'used-second' : 'used';
      paths[role].push((full[i] ??= live ? loopPath(at, radius) : dot[place](at.x, at.y)));
    } else if (blank || spacing >= RING_SPACING) {
      paths[second ? 'skipped-second' : 'skipped'].push((empty[i] ??= rings[place](at.x, at.y)));
    }
  });
  // Stems that stand closer than their own weight would make a solid band; they thin to half the distance.
  const weight = spacing < 2 * WEIGHT.stem ? Math.max(spacing / 2, WEIGHT.ruler) : undefined;
  return Object.entries(paths).flatMap(([role, list]) =>
    list.length === 0
      ? []
      : [
          {
            kind: 'path' as const,
            role: role as PathRole,
            d: list.join(''),
            count: list.length,
            ...(weight !== undefined && role === 'stem' ? { weight } : {}),
          },
        ],
  );
}

/** From the dot's middle over the edge; from a live loop's top. */
function stemPath({ point, x, y, tip }: StandingPoint, radius: number): string {
  if (point.kind !== 'live') return linesPath([[x, y], tip]);
  const length = Math.hypot(tip[0] - x, tip[1] - y) || 1;
  const top = Math.min(1, (LOOP.height * radius) / length);
  return linesPath([[x + (tip[0] - x) * top, y + (tip[1] - y) * top], tip]);
}

/** An open loop that stands on the edge with its feet in the fabric. */
function loopPath({ x, y, tip }: StandingPoint, radius: number): string {
  const length = Math.hypot(tip[0] - x, tip[1] - y) || 1;
  const [ux, uy] = [(tip[0] - x) / length, (tip[1] - y) / length];
  const [half, high] = [(LOOP.width * radius) / 2, Math.min(LOOP.height * radius, length)];
  const foot = (side: number): [number, number] => [x - uy * half * side, y + ux * half * side];
  const head = (side: number): [number, number] => {
    const [fx, fy] = foot(side);
    return [fx + ux * high * 1.33, fy + uy * high * 1.33];
  };
  return `M${spot(...foot(-1))}C${spot(...head(-1))} ${spot(...head(1))} ${spot(...foot(1))}`;
}

import { chainPointAt } from '../geometry';
import type { OpeningKind, PickupPlan, PlannedEdge } from '../pickup';
import { shelf } from '../units';
import { roomAtCorner, type Corners } from './corners';
import { alongLine, frameAt, frameThere, fromFrame, type Frame, type Track } from './frame';
import { gridToSheet } from './place';
import { DOT, STEM, WEIGHT } from './sizes';
import type { Place } from './marks';

/** How far inside the line a chain and a garter bump lie, in stitches; all else lies the pick-up's inset inside it. */
const CHAIN_INSET = 0.5;
const BUMP_INSET = 0.25;

/** Live loops are this many radii of a dot wide and high; their stems reach farther by a part of that height. */
export const LOOP = { width: 1.5, height: 2.6, over: 0.6 } as const;

/** Clear room between a dot and the line of its edge, sheet mm. */
const CLEAR_OF_LINE = 0.14;

/** What all points of an edge share. */
interface Setting {
  readonly place: Place;
  readonly pickup: PickupPlan['pickup'];
  readonly edge: PlannedEdge;
  readonly track: Track;
  readonly corners: Corners;
  readonly stem: number;
  readonly radius: number;
}

/** An opening of the edge, wherever in the pick-up the edge comes. */
interface Shown {
  readonly kind: OpeningKind;
  readonly second: boolean;
  readonly x: number;
  readonly y: number;
  readonly edgeAt: number;
}

/** An opening as it stands on the sheet, used or not. */
export interface StandingPoint {
  readonly point: Shown;
  /** The middle of its dot or ring. */
  readonly x: number;
  readonly y: number;
  /** Where its stem ends. */
  readonly tip: readonly [number, number];
  readonly frame: Frame;
}

/** The openings of a planned edge as they stand on the sheet, whichever of them are used. */
export interface Standing {
  readonly points: readonly StandingPoint[];
  /** Mean distance between neighbouring openings, sheet mm. */
  readonly spacing: number;
  /** How far stems reach over the edge. */
  readonly stem: number;
  readonly radius: number;
  /** How far inside the edge its dots reach. */
  readonly depth: number;
}

const kept = shelf<PlannedEdge['selection']['openings'], Standing>(2);

/**
 * Where the openings of one planned edge stand. They are kept as long as nothing changes that this follows from: how
 * many of them are used, and how many come before them in the pick-up, are no part of it.
 *
 * Marks shrink with the distance between neighbouring openings on the sheet, down to a floor (`DOT.floor`).
 */
export function standPoints(
  place: Place,
  pickup: PickupPlan['pickup'],
  edge: PlannedEdge,
  track: Track,
  corners: Corners,
  detail: 'shape' | 'stitches',
): Standing {
  const { x, y, scale, cell } = place;
  // Outer corners leave all the room there is, whatever their angle.
  const [before, after] = [Math.min(corners.before, 0), Math.min(corners.after, 0)];
  const stand = [x, y, scale, cell.width, cell.height, track.start, track.sign, track.length, before, after, detail];
  return kept(edge.selection.openings, [edge.measured, pickup.inset, pickup.garterAt, ...stand], () => {
    const { openings } = edge.selection;
    const spacing = spacingOf(openings.edgeAt, track) * place.scale;
    const radius = Math.min(DOT.most, Math.max(DOT.floor, spacing * DOT.part));
    const stem = Math.min(STEM.most, Math.max(STEM.least, spacing * STEM.part));
    const setting: Setting = { place, pickup, edge, track, corners, stem, radius };
    const points = openings.sort.map(({ kind, second }, i) => {
      const point: Shown = { kind, second, x: openings.x[i]!, y: openings.y[i]!, edgeAt: openings.edgeAt[i]! };
      return detail === 'shape' ? onLine(setting, point) : onGrid(setting, point);
    });
    return { points, spacing, stem, radius, depth: deepest(points) + radius };
  });
}

/** Mean distance between neighbouring openings of a kind, in fabric mm. */
function spacingOf(edgeAt: readonly number[], track: Track): number {
  if (edgeAt.length < 2) return track.length;
  return Math.abs(edgeAt.at(-1)! - edgeAt[0]!) / (edgeAt.length - 1);
}

/** How far inside the line of the edge the farthest point lies. */
function deepest(points: readonly StandingPoint[]): number {
  return points.reduce((most, { x, y, frame }) => {
    const inside = -((x - frame.x) * frame.outX + (y - frame.y) * frame.outY);
    return Math.max(most, inside);
  }, 0);
}

/**
 * In shape detail: on straight edges the place itself, on all others the smooth line's parallel, so that the row of
 * dots lies calm. A dot that would touch the line of the edge is moved in just clear of it.
 */
function onLine(at: Setting, point: Shown): StandingPoint {
  const { place, pickup, edge, track, stem, radius } = at;
  const distance = alongLine(track, point.edgeAt);
  // Found once: on a curve finding a place by its distance is what takes the time.
  const there = chainPointAt(track.line, distance, track.lengths);
  const frame = frameThere(place, there, track.sign);
  const straight = edge.shape === 'horizontal' || edge.shape === 'vertical';
  const [realX, realY] = straight
    ? gridToSheet(place, point.x, point.y)
    : fromFrame(frame, -insetOf(pickup, point) * place.cell.width * place.scale);
  const inside = (frame.x - realX) * frame.outX + (frame.y - realY) * frame.outY;
  const more = point.kind === 'live' ? 0 : Math.max(0, radius + WEIGHT.outline / 2 + CLEAR_OF_LINE - inside);
  const whole = point.kind === 'live' ? stem + LOOP.height * radius * LOOP.over : stem;
  const reach = Math.min(whole, roomFor(at, distance));
  return {
    point,
    x: realX - frame.outX * more,
    y: realY - frame.outY * more,
    tip: fromFrame(frame, reach),
    frame,
  };
}

/** How far a stem may reach out, `at` mm along the line of its edge, before it meets those of the edge round the corner. */
function roomFor({ place, edge, corners }: Setting, at: number): number {
  const before = roomAtCorner(at * place.scale, corners.before);
  return Math.min(before, roomAtCorner((edge.measured.edgeMm - at) * place.scale, corners.after));
}

function insetOf(pickup: PickupPlan['pickup'], point: Shown): number {
  if (point.kind === 'chain') return CHAIN_INSET;
  if (point.kind === 'ridge' && pickup.garterAt === 'bump') return BUMP_INSET;
  return pickup.inset;
}

/**
 * In stitch detail: the real place on the grid. Its stem leaves the fabric the short way, sideways from a row, up or
 * down from a stitch, over the worked edge.
 */
function onGrid({ place, pickup, track, stem, radius }: Setting, point: Shown): StandingPoint {
  const frame = frameAt(place, track, point.edgeAt);
  const [x, y] = gridToSheet(place, point.x, point.y);
  if (point.kind === 'stitch' || point.kind === 'live') {
    const depth = point.kind === 'live' ? LOOP.height * radius * LOOP.over : 0.5 * place.cell.height * place.scale;
    return { point, x, y, tip: [x, y + (Math.sign(frame.outY) || -1) * (depth + stem)], frame };
  }
  const depth = insetOf(pickup, point) * place.cell.width * place.scale;
  return { point, x, y, tip: [x + (Math.sign(frame.outX) || 1) * (depth + stem), y], frame };
}

import { offsetPoint, chainPointAt } from '../geometry';
import type { OpeningKind, PickupPlan, PlannedEdge, Selection } from '../pickup';
import { shelf } from '../units';
import { roomAtCorner, type Corners } from './corners';
import { alongLine, frameAt, type Frame, type Track } from './frame';
import { gridToSheet, toSheet } from './place';
import { DOT, RING, RING_SPACING, STEM, WEIGHT } from './sizes';
import { circlePath, diamondPath, linesPath, spot } from './toPath';
import type { PathMark, PathRole, Place } from './marks';

/** How far inside the line a chain and a garter bump lie, in stitches; all else lies the pick-up's inset inside it. */
const CHAIN_INSET = 0.5;
const BUMP_INSET = 0.25;

/** A diamond holds as much ink as a dot when its corners reach this much farther than the dot's edge. */
const DIAMOND = 1.3;

/** Live loops are this many radii of a dot wide and high; their stems reach farther by a part of that height. */
const LOOP = { width: 1.5, height: 2.6, over: 0.6 } as const;

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
  readonly used: boolean;
}

/** A point as it stands on the sheet. */
export interface DrawnPoint {
  readonly point: Shown;
  /** The middle of its dot or ring. */
  readonly x: number;
  readonly y: number;
  /** Where its stem ends. */
  readonly tip: readonly [number, number];
  readonly frame: Frame;
}

export interface DrawnPoints {
  readonly marks: readonly PathMark[];
  readonly drawn: readonly DrawnPoint[];
  /** How far stems reach over the edge. */
  readonly stem: number;
  readonly radius: number;
  /** How far inside the edge its dots reach. */
  readonly depth: number;
}

const kept = shelf<Selection, DrawnPoints>(2);

/**
 * The openings of one planned edge as `drawn` makes them. They are kept as long as nothing changes that they are drawn
 * from: how many come before them in the pick-up is no part of it.
 */
export function drawPoints(
  place: Place,
  pickup: PickupPlan['pickup'],
  edge: PlannedEdge,
  track: Track,
  corners: Corners,
  detail: 'shape' | 'stitches',
): DrawnPoints {
  const { x, y, scale, cell } = place;
  // Outer corners leave all the room there is, whatever their angle.
  const [before, after] = [Math.min(corners.before, 0), Math.min(corners.after, 0)];
  const stand = [x, y, scale, cell.width, cell.height, track.start, track.sign, track.length, before, after, detail];
  return kept(edge.selection, [edge.measured, pickup.inset, pickup.garterAt, ...stand], () =>
    drawn(place, pickup, edge, track, corners, detail),
  );
}

/**
 * The openings of one planned edge: a dot and a stem for each that is used, a ring for each that is skipped; first
 * places round, second places diamonds, live stitches open loops.
 *
 * Marks shrink with the distance between neighbouring openings on the sheet, down to a floor (`DOT.floor`). Below
 * `RING_SPACING` rings would run together, so they drop out; dots and stems always stay, so that the count can still
 * be read off the drawing.
 */
function drawn(
  place: Place,
  pickup: PickupPlan['pickup'],
  edge: PlannedEdge,
  track: Track,
  corners: Corners,
  detail: 'shape' | 'stitches',
): DrawnPoints {
  const { openings, used: usedOnes } = edge.selection;
  const spacing = spacingOf(openings.edgeAt, track) * place.scale;
  const radius = Math.min(DOT.most, Math.max(DOT.floor, spacing * DOT.part));
  const stem = Math.min(STEM.most, Math.max(STEM.least, spacing * STEM.part));
  const setting: Setting = { place, pickup, edge, track, corners, stem, radius };
  const drawn = openings.sort.map(({ kind, second }, i) => {
    const [x, y, edgeAt] = [openings.x[i]!, openings.y[i]!, openings.edgeAt[i]!];
    const point: Shown = { kind, second, x, y, edgeAt, used: usedOnes[i]! };
    return detail === 'shape' ? onLine(setting, point) : onGrid(setting, point);
  });
  const used = drawn.filter(({ point }) => point.used);
  const skipped = spacing >= RING_SPACING ? drawn.filter(({ point }) => !point.used) : [];
  const ring = radius * RING;
  const of = (list: readonly DrawnPoint[], wanted: 'first' | 'second' | 'live') =>
    list.filter(({ point }) => wanted === (point.kind === 'live' ? 'live' : point.second ? 'second' : 'first'));
  const paths = (role: PathRole, list: readonly DrawnPoint[], d: (at: DrawnPoint) => string, weight?: number) =>
    list.length === 0
      ? []
      : [{ kind: 'path' as const, role, d: list.map(d).join(''), count: list.length, ...(weight ? { weight } : {}) }];
  // Stems that stand closer than their own weight would make a solid band; they thin to half the distance.
  const weight = spacing < 2 * WEIGHT.stem ? Math.max(spacing / 2, WEIGHT.ruler) : undefined;
  const skippedLive = of(skipped, 'live');
  const marks = [
    ...paths('skipped', [...of(skipped, 'first'), ...skippedLive], ({ x, y }) => circlePath(x, y, ring)),
    ...paths('skipped-second', of(skipped, 'second'), ({ x, y }) => diamondPath(x, y, ring * DIAMOND)),
    ...paths('stem', used, (at) => stemPath(at, radius), weight),
    ...paths('used', of(used, 'first'), ({ x, y }) => circlePath(x, y, radius)),
    ...paths('used-second', of(used, 'second'), ({ x, y }) => diamondPath(x, y, radius * DIAMOND)),
    ...paths('live', of(used, 'live'), (at) => loopPath(at, radius)),
  ];
  return { marks, drawn, stem, radius, depth: deepest(drawn) + radius };
}

/** Mean distance between neighbouring openings of a kind, in fabric mm. */
function spacingOf(edgeAt: readonly number[], track: Track): number {
  if (edgeAt.length < 2) return track.length;
  return Math.abs(edgeAt.at(-1)! - edgeAt[0]!) / (edgeAt.length - 1);
}

/** How far inside the line of the edge the farthest point lies. */
function deepest(drawn: readonly DrawnPoint[]): number {
  return drawn.reduce((most, { x, y, frame }) => {
    const inside = -((x - frame.x) * frame.outX + (y - frame.y) * frame.outY);
    return Math.max(most, inside);
  }, 0);
}

/**
 * In shape detail: on straight edges the place itself, on all others the smooth line's parallel, so that the row of
 * dots lies calm. A dot that would touch the line of the edge is moved in just clear of it.
 */
function onLine(at: Setting, point: Shown): DrawnPoint {
  const { place, edge, track, stem, radius } = at;
  const frame = frameAt(place, track, point.edgeAt);
  const straight = edge.shape === 'horizontal' || edge.shape === 'vertical';
  const [realX, realY] = straight ? gridToSheet(place, point.x, point.y) : onParallel(at, point);
  const inside = (frame.x - realX) * frame.outX + (frame.y - realY) * frame.outY;
  const more = point.kind === 'live' ? 0 : Math.max(0, radius + WEIGHT.outline / 2 + CLEAR_OF_LINE - inside);
  const whole = point.kind === 'live' ? stem + LOOP.height * radius * LOOP.over : stem;
  const reach = Math.min(whole, roomFor(at, point));
  return {
    point,
    x: realX - frame.outX * more,
    y: realY - frame.outY * more,
    tip: [frame.x + frame.outX * reach, frame.y + frame.outY * reach],
    frame,
  };
}

function onParallel({ place, pickup, track }: Setting, point: Shown): [number, number] {
  const { index, t } = chainPointAt(track.line, alongLine(track, point.edgeAt), track.lengths);
  const inside = offsetPoint(track.line[index]!, t, insetOf(pickup, point) * place.cell.width);
  return toSheet(place, inside.x, inside.y);
}

/** How far a stem may reach out before it meets those of the edge round the corner. */
function roomFor({ place, edge, track, corners }: Setting, point: Shown): number {
  const at = alongLine(track, point.edgeAt);
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
function onGrid({ place, pickup, track, stem, radius }: Setting, point: Shown): DrawnPoint {
  const frame = frameAt(place, track, point.edgeAt);
  const [x, y] = gridToSheet(place, point.x, point.y);
  if (point.kind === 'stitch' || point.kind === 'live') {
    const depth = point.kind === 'live' ? LOOP.height * radius * LOOP.over : 0.5 * place.cell.height * place.scale;
    return { point, x, y, tip: [x, y + (Math.sign(frame.outY) || -1) * (depth + stem)], frame };
  }
  const depth = insetOf(pickup, point) * place.cell.width * place.scale;
  return { point, x, y, tip: [x + (Math.sign(frame.outX) || 1) * (depth + stem), y], frame };
}

/** From the dot's middle over the edge; from a live loop's top. */
function stemPath({ point, x, y, tip }: DrawnPoint, radius: number): string {
  if (point.kind !== 'live') return linesPath([[x, y], tip]);
  const length = Math.hypot(tip[0] - x, tip[1] - y) || 1;
  const top = Math.min(1, (LOOP.height * radius) / length);
  return linesPath([[x + (tip[0] - x) * top, y + (tip[1] - y) * top], tip]);
}

/** An open loop that stands on the edge with its feet in the fabric. */
function loopPath({ x, y, tip }: DrawnPoint, radius: number): string {
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

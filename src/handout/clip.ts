import { digits } from '../renderer';
import { drawPath } from './pdf/path';

/** A rectangle in mm; (x, y) is its upper left corner. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

type Spot = readonly [x: number, y: number];

/** A stroke of the pen without lifting it: as it is written, and the straight lines that it comes to. */
interface Stroke {
  d: string;
  readonly spots: readonly Spot[];
  closed: boolean;
}

/** The same while it is read: a line is where it leads, a curve has its two control points before that. */
interface ReadStroke {
  d: string;
  readonly steps: (readonly Spot[])[];
  closed: boolean;
}

/** Strokes of this size, mm, are marks that are kept whole: a dot, a stem, the tag of a marker. */
const MARK = 9;
/** A curve is cut as this many straight lines. */
const PARTS = 24;

/**
 * What of a path lies in a frame. Strokes that lie inside stay as they are; small ones belong to the frame that holds
 * their middle; all others are cut at its border, their curves as straight lines of a fraction of a mm. Path data of
 * nothing is empty.
 */
export function clippedPath(d: string, frame: Frame): string {
  return strokesOf(d)
    .map((stroke) => clippedStroke(stroke, frame, clippedLines))
    .join('');
}

/** The same of a path that is filled and has no line round it: what is left is closed along the border. */
export function clippedArea(d: string, frame: Frame): string {
  return strokesOf(d)
    .map((stroke) => clippedStroke(stroke, frame, clippedRing))
    .join('');
}

/** Whether a place lies in a frame; its left and upper border belong to it. */
export function holds({ x, y, width, height }: Frame, [px, py]: Spot): boolean {
  return px >= x && px < x + width && py >= y && py < y + height;
}

function clippedStroke(read: ReadStroke, frame: Frame, cut: (stroke: Stroke, frame: Frame) => string): string {
  const { d, closed } = read;
  // A curve never goes beyond its control points: most strokes need not be followed any closer.
  const hull = reachOf(read.steps.flat());
  if (isBeyond(hull, frame)) return '';
  if (
    hull.left > frame.x &&
    hull.right < frame.x + frame.width &&
    hull.upper > frame.y &&
    hull.lower < frame.y + frame.height
  ) {
    return d;
  }
  const stroke: Stroke = { d, spots: followed(read), closed };
  const { left, right, upper, lower } = reachOf(stroke.spots);
  if (isBeyond({ left, right, upper, lower }, frame)) return '';
  if (right - left <= MARK && lower - upper <= MARK) {
    return holds(frame, [(left + right) / 2, (upper + lower) / 2]) ? d : '';
  }
  const inside =
    left >= frame.x && right <= frame.x + frame.width && upper >= frame.y && lower <= frame.y + frame.height;
  return inside ? d : cut(stroke, frame);
}

interface Reach {
  readonly left: number;
  readonly right: number;
  readonly upper: number;
  readonly lower: number;
}

function reachOf(spots: readonly Spot[]): Reach {
  let [left, right, upper, lower] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of spots) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    upper = Math.min(upper, y);
    lower = Math.max(lower, y);
  }
  return { left, right, upper, lower };
}

function isBeyond({ left, right, upper, lower }: Reach, { x, y, width, height }: Frame): boolean {
  return right < x || left > x + width || lower < y || upper > y + height;
}

function clippedLines({ spots, closed }: Stroke, frame: Frame): string {
  const ring = closed ? [...spots, spots[0]!] : spots;
  let written = '';
  let pen: Spot | null = null;
  for (let i = 0; i + 1 < ring.length; i++) {
    const part = clippedLine(ring[i]!, ring[i + 1]!, frame);
    if (!part) continue;
    const [from, to] = part;
    if (pen?.[0] !== from[0] || pen[1] !== from[1]) written += `M${digits(from[0])},${digits(from[1])}`;
    written += `L${digits(to[0])},${digits(to[1])}`;
    pen = to;
  }
  return written;
}

/** A closed line cut by one border after the other (Sutherland and Hodgman 1974). */
function clippedRing({ spots }: Stroke, { x, y, width, height }: Frame): string {
  const borders: readonly ((spot: Spot) => number)[] = [
    ([sx]) => sx - x,
    ([sx]) => x + width - sx,
    ([, sy]) => sy - y,
    ([, sy]) => y + height - sy,
  ];
  let ring: readonly Spot[] = spots;
  for (const inside of borders) {
    ring = ring.flatMap((to, i): Spot[] => {
      const from = ring.at(i - 1)!;
      const [before, after] = [inside(from), inside(to)];
      const share = before / (before - after);
      const crossing: Spot = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
      return [...(before < 0 !== after < 0 ? [crossing] : []), ...(after < 0 ? [] : [to])];
    });
  }
  return ring.length < 3
    ? ''
    : `${ring.map(([sx, sy], i) => `${i === 0 ? 'M' : 'L'}${digits(sx)},${digits(sy)}`).join('')}Z`;
}

/** The part of a straight line that lies in a frame (Liang and Barsky 1984); null where none does. */
function clippedLine(a: Spot, b: Spot, { x, y, width, height }: Frame): readonly [Spot, Spot] | null {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  let [from, to] = [0, 1];
  const borders = [
    [-dx, a[0] - x],
    [dx, x + width - a[0]],
    [-dy, a[1] - y],
    [dy, y + height - a[1]],
  ] as const;
  for (const [towards, room] of borders) {
    if (towards === 0) {
      if (room < 0) return null;
    } else if (towards < 0) from = Math.max(from, room / towards);
    else to = Math.min(to, room / towards);
  }
  if (from >= to) return null;
  return [from === 0 ? a : [a[0] + dx * from, a[1] + dy * from], to === 1 ? b : [a[0] + dx * to, a[1] + dy * to]];
}

function strokesOf(data: string): ReadStroke[] {
  const strokes: ReadStroke[] = [];
  const at = (x: number, y: number) => `${digits(x)},${digits(y)}`;
  const last = () => strokes.at(-1)!;
  drawPath(data, {
    moveTo: (x, y) => strokes.push({ d: `M${at(x, y)}`, steps: [[[x, y]]], closed: false }),
    lineTo: (x, y) => {
      last().d += `L${at(x, y)}`;
      last().steps.push([[x, y]]);
    },
    curveTo: (x1, y1, x2, y2, x, y) => {
      last().d += `C${at(x1, y1)} ${at(x2, y2)} ${at(x, y)}`;
      last().steps.push([
        [x1, y1],
        [x2, y2],
        [x, y],
      ]);
    },
    close: () => {
      last().d += 'Z';
      last().closed = true;
    },
  });
  return strokes;
}

/** A stroke as straight lines, every curve as many short ones. */
function followed({ steps }: ReadStroke): Spot[] {
  const spots: Spot[] = [];
  for (const step of steps) {
    const [first, second, to] = step;
    if (!first || !second || !to) {
      spots.push(...step);
      continue;
    }
    const [x0, y0] = spots.at(-1)!;
    for (let i = 1; i <= PARTS; i++) {
      const t = i / PARTS;
      const s = 1 - t;
      const [a, b, c, e] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
      spots.push([
        a * x0 + b * first[0] + c * second[0] + e * to[0],
        a * y0 + b * first[1] + c * second[1] + e * to[1],
      ]);
    }
  }
  return spots;
}

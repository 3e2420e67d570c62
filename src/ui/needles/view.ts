import { zoomed, ZOOM_STEP, type Size, type Viewport } from '../../editor';
import type { MeasuredPiece, NeedleWork, PlanPoint } from '../../pickup';
import { layOut, toSheet, type Layout, type PointTrace } from '../../renderer';

/** Room round the present stretch, sheet mm: what is done and what comes next stay in sight. */
const AROUND = 13;
/** No stitch is drawn larger than this, sheet mm. */
const LARGEST = 5.5;

/** What is drawn at a step: one piece, and how it is seen. */
export interface Seen {
  readonly pieces: readonly MeasuredPiece[];
  readonly view: Viewport;
}

const bare = { rulers: false, dimensions: false } as const;

/** The sheet of the pieces that are drawn, without rulers. */
export function needleLayout(pieces: readonly MeasuredPiece[], scale: number): Layout {
  return layOut(pieces, { scale, ...bare });
}

/**
 * A close view with the present stretch in its middle. The scale goes by steps, so that the drawing mostly moves along
 * without growing or shrinking.
 *
 * @param size of the view, sheet mm
 * @param stretch the openings of the present step, at least one
 */
export function closeTo(measured: MeasuredPiece, stretch: readonly PlanPoint[], size: Size): Viewport {
  const { cell } = needleLayout([measured], 1).places[0]!;
  const xs = stretch.map(({ x }) => x * cell.width);
  const ys = stretch.map(({ y }) => y * cell.height);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const fitting = Math.min(
    LARGEST / Math.max(cell.width, cell.height),
    Math.max(size.width - 2 * AROUND, 1) / Math.max(right - left, 1e-6),
    Math.max(size.height - 2 * AROUND, 1) / Math.max(high - low, 1e-6),
  );
  const scale = zoomed(ZOOM_STEP ** Math.floor(Math.log(fitting) / Math.log(ZOOM_STEP)), 1);
  const place = needleLayout([measured], scale).places[0]!;
  const [x, y] = toSheet(place, (left + right) / 2, (low + high) / 2);
  return { scale, left: x - size.width / 2, top: y - size.height / 2 };
}

/** What lies over the drawing, as paths in sheet mm. */
export interface Progress {
  /** Along the ends of the stems that are on the needle: the needle itself. */
  readonly done: string;
  /** Along the openings of the present step. */
  readonly now: string;
  /** Round each opening of it that is used. */
  readonly rings: string;
}

/** Where one is, drawn: what is done by a heavy line, the present step by a band and rings. */
export function progressOf({ plan, steps, at }: NeedleWork, traces: readonly PointTrace[]): Progress {
  const step = steps[at];
  const from = step?.from ?? plan.points.length;
  const to = step?.to ?? from;
  const drawn = traces.map((trace) => ({ ...trace, of: plan.points[trace.point]! }));
  const done = drawn.filter(({ point, of }) => point < from && of.n !== null);
  const now = drawn.filter(({ point }) => point >= from && point < to);
  return {
    done: byEdge(done, ({ over }) => over),
    now: byEdge(now, ({ x, y }) => [x, y]),
    rings: ringsRound(now.filter(({ of }) => of.n !== null)),
  };
}

/** Radius of the ring round an opening of the present step, sheet mm; below the least it would hide its dot. */
const RING = { most: 1.35, least: 0.7 } as const;

/** Rings round dots; none where the dots stand too close for them. */
function ringsRound(points: readonly Drawn[]): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return '';
  const spacing = points.length < 2 ? Infinity : Math.hypot(last.x - first.x, last.y - first.y) / (points.length - 1);
  const r = Math.min(RING.most, spacing / 2);
  if (r < RING.least) return '';
  const turn = (way: 1 | -1) => `a${digits(r)} ${digits(r)} 0 1 0 ${digits(2 * r * way)} 0`;
  return points.map(({ x, y }) => `M${digits(x - r)} ${digits(y)}${turn(1)}${turn(-1)}`).join('');
}

type Drawn = PointTrace & { readonly of: PlanPoint };

/** Lines from point to point, a new one for every edge; a single point is a line of no length, a dot. */
function byEdge(points: readonly Drawn[], spot: (point: Drawn) => readonly [number, number]): string {
  return points
    .map((point, i) => {
      const [x, y] = spot(point).map(digits);
      const before = points[i - 1];
      const goesOn = before?.of.edge === point.of.edge;
      const alone = !goesOn && points[i + 1]?.of.edge !== point.of.edge;
      return `${goesOn ? 'L' : 'M'}${x} ${y}${alone ? 'h0' : ''}`;
    })
    .join('');
}

function digits(value: number): string {
  return String(Math.round(value * 100) / 100);
}

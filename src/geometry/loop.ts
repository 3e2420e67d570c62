import { turnsInX, turnsInY } from './extrema';
import { cross, type Point } from './point';
import { doublesBack, isStraight, pointAt, type Cubic } from './segment';

/** Loops narrower than this in t are cusps up to the error of their own computation. */
const NARROWEST = 1e-6;

/** Parameters this little beyond 0 or 1 are still on the curve. */
const END_SLACK = 1e-9;

/**
 * The two parameters, ascending, at which a curve passes through one and the same point, or null; a straight curve that
 * doubles back has no such pair of its own. With B(t) = p t³ +
 * q t² + r t + B(0), B(s) = B(t) and s unlike t give p (S² - P) + q S + r = 0, where S = s + t and P = s t: two linear
 * equations in S² - P and S. Source: worked out here; the same double point is in Stone and DeRose, "A geometric
 * characterization of parametric cubic curves", 1989, https://doi.org/10.1145/64967.64980.
 */
export function loopOf(seg: Cubic): [first: number, second: number] | null {
  if (isStraight(seg)) return null;
  const { from, c1, c2, to } = seg;
  const p: Point = { x: to.x - 3 * c2.x + 3 * c1.x - from.x, y: to.y - 3 * c2.y + 3 * c1.y - from.y };
  const q: Point = { x: 3 * (c2.x - 2 * c1.x + from.x), y: 3 * (c2.y - 2 * c1.y + from.y) };
  const r: Point = { x: 3 * (c1.x - from.x), y: 3 * (c1.y - from.y) };
  const turn = cross(p, q);
  const sum = -cross(p, r) / turn;
  const rest = cross(q, r) / turn;
  const inner = 4 * rest - 3 * sum * sum;
  if (!(inner > NARROWEST * NARROWEST) || !Number.isFinite(inner)) return null;
  const root = Math.sqrt(inner);
  const [first, second] = [(sum - root) / 2, (sum + root) / 2];
  return first >= -END_SLACK && second <= 1 + END_SLACK ? [Math.max(0, first), Math.min(1, second)] : null;
}

/**
 * A place where a curve meets itself: the knot of its loop, or where it turns round on its own line. `closed`: its two
 * ends are joined, and their meeting is no matter.
 */
export function selfContact(seg: Cubic, closed: boolean): Point | null {
  if (isStraight(seg)) return doublesBack(seg) ? turnRound(seg) : null;
  const loop = loopOf(seg);
  if (loop === null || (closed && loop[0] <= END_SLACK && loop[1] >= 1 - END_SLACK)) return null;
  return pointAt(seg, loop[0]);
}

/** Where a straight curve that doubles back first turns round. */
function turnRound(seg: Cubic): Point {
  const first = [...turnsInX(seg), ...turnsInY(seg)].sort((s, t) => s - t)[0];
  return pointAt(seg, first ?? 0);
}

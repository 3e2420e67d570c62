import { bracketedRoot } from './bracket';
import { turnsInX, turnsInY } from './extrema';
import type { Point } from './point';
import { pointAt, type Segment } from './segment';

/** How near a turn or an end must come to a level to touch it, as a share of the size of the numbers. */
const TOUCH = 1e-12;

/**
 * Every parameter from 0 to 1, ascending, at which a segment has the height y; a turn or an end that only touches it
 * counts. A level segment at that height has both its ends: [0, 1].
 */
export function parametersAtY(seg: Segment, y: number): number[] {
  return parametersAt(seg, y, turnsInY(seg), (p) => p.y);
}

/** Every parameter from 0 to 1, ascending, at which a segment crosses or touches the upright line at x. */
export function parametersAtX(seg: Segment, x: number): number[] {
  return parametersAt(seg, x, turnsInX(seg), (p) => p.x);
}

/** Between two turns the coordinate only climbs or only falls, so that a bracket holds one root at most. */
function parametersAt(seg: Segment, level: number, turns: readonly number[], of: (p: Point) => number): number[] {
  const points = seg.kind === 'line' ? [seg.from, seg.to] : [seg.from, seg.c1, seg.c2, seg.to];
  const slack = TOUCH * Math.max(Math.abs(level), ...points.map((p) => Math.abs(of(p))));
  const above = (t: number): number => of(pointAt(seg, t)) - level;
  const found: number[] = [];
  const stops = [0, ...turns, 1];
  for (const [i, t] of stops.entries()) {
    if (i > 0) {
      const before = stops[i - 1]!;
      const low = above(before);
      const high = above(t);
      if (Math.abs(low) > slack && Math.abs(high) > slack && low < 0 !== high < 0)
        found.push(bracketedRoot(above, before, t));
    }
    if (Math.abs(above(t)) <= slack) found.push(t);
  }
  return found;
}

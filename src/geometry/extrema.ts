import type { Point } from './point';
import { signChanges } from './quadratic';
import { isStraight, pointAt, sizeOf, type Segment } from './segment';
import { bends } from './turning';

/** A curve that strays less than this share of its size from a level is level, and turns nowhere. */
const LEVEL = 1e-12;

/** A box with its sides along the axes. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The interior parameters, ascending, at which a segment turns from climbing to falling or back. */
export function turnsInY(seg: Segment): number[] {
  return turns(seg, (p) => p.y);
}

/** The interior parameters, ascending, at which a segment turns from going right to going left or back. */
export function turnsInX(seg: Segment): number[] {
  return turns(seg, (p) => p.x);
}

/** The interior parameters, ascending, at which a segment changes from bending one way to bending the other. */
export function inflections(seg: Segment): number[] {
  return seg.kind === 'line' || isStraight(seg) ? [] : bends(seg);
}

function turns(seg: Segment, of: (p: Point) => number): number[] {
  if (seg.kind === 'line') return [];
  const d0 = of(seg.c1) - of(seg.from);
  const d1 = of(seg.c2) - of(seg.c1);
  const d2 = of(seg.to) - of(seg.c2);
  if (Math.max(Math.abs(d0), Math.abs(d1), Math.abs(d2)) <= LEVEL * sizeOf(seg)) return [];
  return signChanges(d0 - 2 * d1 + d2, 2 * (d1 - d0), d0);
}

/** The smallest box round a segment, not merely round its handles. */
export function boundsOf(seg: Segment): Bounds {
  const x = [seg.from.x, seg.to.x, ...turnsInX(seg).map((t) => pointAt(seg, t).x)];
  const y = [seg.from.y, seg.to.y, ...turnsInY(seg).map((t) => pointAt(seg, t).y)];
  return { minX: Math.min(...x), minY: Math.min(...y), maxX: Math.max(...x), maxY: Math.max(...y) };
}

/** The smallest box round all the segments. Without any it is empty: its least is Infinity, its most -Infinity. */
export function boundsOfAll(segs: readonly Segment[]): Bounds {
  let all: Bounds = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const seg of segs) {
    const one = boundsOf(seg);
    all = {
      minX: Math.min(all.minX, one.minX),
      minY: Math.min(all.minY, one.minY),
      maxX: Math.max(all.maxX, one.maxX),
      maxY: Math.max(all.maxY, one.maxY),
    };
  }
  return all;
}

import { APART, contactOf } from './contact';
import type { Point } from './point';
import { selfContact } from './loop';
import { sizeOf, type Segment } from './segment';

/** Where an outline meets itself. */
export interface Crossing {
  /** Indices of the two edges, `first` <= `second`; equal where an edge meets itself. */
  readonly first: number;
  readonly second: number;
  readonly at: Point;
}

/** Nearer than this share of the size of the outline is touching. */
const TOUCH = 1e-9;

/** Numbers this far from the origin, times this, are as near to each other as they get. */
const GRAIN = 1e-14;

interface Stretch {
  readonly edge: number;
  readonly seg: Segment;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/**
 * Where a closed outline first meets itself other than at the corners between neighbours, or null. Crossing, touching
 * and lying on each other all count, and so does an edge that touches a corner of another one, doubles back over its
 * neighbour or has a loop of its own. Edges are chains of segments, each ending where the next begins, the last where
 * the first begins. Segments of no length are passed over.
 *
 * Boxes are swept along x and only those that overlap are compared, as in Cohen et al., "I-COLLIDE", 1995,
 * https://doi.org/10.1145/199404.199437.
 */
export function findCrossing(edges: readonly (readonly Segment[])[]): Crossing | null {
  const ring = edges.flatMap((chain, edge) =>
    chain.filter((seg) => sizeOf(seg) > 0).map((seg) => stretchOf(edge, seg)),
  );
  const slack = slackOf(ring);
  for (const [i, j] of pairsThatMayMeet(ring, slack)) {
    const [a, b] = [ring[i]!, ring[j]!];
    const at =
      i === j ? ownContact(a.seg, ring.length === 1) : contactOf(a.seg, b.seg, jointOf(i, j, ring.length), slack);
    if (at !== null) return { first: a.edge, second: b.edge, at };
  }
  return null;
}

function ownContact(seg: Segment, closed: boolean): Point | null {
  return seg.kind === 'line' ? null : selfContact(seg, closed);
}

function jointOf(i: number, j: number, n: number): { endToStart: boolean; startToEnd: boolean } {
  const endToStart = j === i + 1;
  const startToEnd = i === 0 && j === n - 1;
  return endToStart || startToEnd ? { endToStart, startToEnd } : APART;
}

function stretchOf(edge: number, seg: Segment): Stretch {
  const x = [seg.from.x, seg.to.x];
  const y = [seg.from.y, seg.to.y];
  if (seg.kind === 'cubic') {
    x.push(seg.c1.x, seg.c2.x);
    y.push(seg.c1.y, seg.c2.y);
  }
  return { edge, seg, minX: Math.min(...x), maxX: Math.max(...x), minY: Math.min(...y), maxY: Math.max(...y) };
}

function slackOf(ring: readonly Stretch[]): number {
  let [minX, maxX, minY, maxY] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const s of ring) {
    minX = Math.min(minX, s.minX);
    maxX = Math.max(maxX, s.maxX);
    minY = Math.min(minY, s.minY);
    maxY = Math.max(maxY, s.maxY);
  }
  const size = Math.max(maxX - minX, maxY - minY);
  const farthest = Math.max(Math.abs(minX), Math.abs(maxX), Math.abs(minY), Math.abs(maxY));
  return Math.max(TOUCH * size, GRAIN * farthest);
}

/** Pairs i <= j whose boxes overlap, every stretch paired with itself too, in the order of the outline. */
function pairsThatMayMeet(ring: readonly Stretch[], slack: number): [number, number][] {
  const order = ring.map((_, i) => i).sort((i, j) => ring[i]!.minX - ring[j]!.minX);
  const pairs: [number, number][] = ring.map((_, i) => [i, i]);
  let open: number[] = [];
  for (const i of order) {
    const a = ring[i]!;
    open = open.filter((j) => ring[j]!.maxX + slack >= a.minX);
    for (const j of open) {
      const b = ring[j]!;
      if (a.minY <= b.maxY + slack && b.minY <= a.maxY + slack) pairs.push(i < j ? [i, j] : [j, i]);
    }
    open.push(i);
  }
  return pairs.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
}

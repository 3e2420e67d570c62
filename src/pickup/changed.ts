import type { EdgeRef } from '../piece';
import type { Mm, Rows, Stitches } from '../units';
import type { DesignPlan, MeasuredPiece, PickupPlan, PlannedEdge } from './plan';

/** What was, and what is instead. */
export interface Both<T> {
  readonly before: T;
  readonly after: T;
}

/** An edge of a piece whose rows, stitches or length are others now. Lengths are null without a gauge. */
export interface MovedEdge {
  readonly edge: EdgeRef;
  readonly rows: Both<Rows>;
  readonly stitches: Both<Stitches>;
  readonly lengthMm: Both<Mm | null>;
}

/** A count that a pattern states, and the real number it becomes once the edge is another. */
export interface StatedChange {
  readonly stated: number;
  readonly becomes: number;
}

/** One edge of a pick-up, all its stretches together. */
export interface ChangedEdge {
  readonly edge: EdgeRef;
  readonly rows: Both<Rows>;
  readonly wanted: Both<number | null>;
  readonly count: Both<number>;
  /** Null where the pattern states nothing of it, or nothing is wanted by length. */
  readonly pattern: StatedChange | null;
}

/** A pick-up that a change of a piece concerns. */
export interface ChangedPickup extends Both<PickupPlan> {
  /** Those whose rows, want or count are others now. */
  readonly edges: readonly ChangedEdge[];
  readonly pattern: StatedChange | null;
}

/** What a change of a piece does to its other edges and to the pick-ups. */
export interface Changed {
  readonly moved: readonly MovedEdge[];
  readonly pickups: readonly ChangedPickup[];
}

/** A length that differs by less than this is the same, mm. */
const SAME = 1e-6;

/**
 * Two plans of one design, before and after a change of its pieces; its edges and pick-ups must be the same ones.
 *
 * What the pattern's count becomes is the count stated times what is wanted now over what was wanted before: the
 * stretch that the pattern gave the old edge, its own ease, stays (common practice).
 */
export function comparePlans(before: DesignPlan, after: DesignPlan): Changed {
  return {
    moved: before.measured.flatMap((piece) => {
      const now = after.measured.find((one) => one.piece.id === piece.piece.id);
      return now ? movedEdges(piece, now) : [];
    }),
    pickups: before.pickups.flatMap((old) => {
      const now = after.pickups.find(({ pickup }) => pickup.id === old.pickup.id);
      if (!now) return [];
      const edges = changedEdges(old, now);
      const pattern = patternNow(old.pickup.statedTotal, old.wanted, now.wanted);
      return edges.length === 0 && old.target === now.target ? [] : [{ before: old, after: now, edges, pattern }];
    }),
  };
}

function movedEdges(before: MeasuredPiece, after: MeasuredPiece): MovedEdge[] {
  return before.edges.flatMap((old): MovedEdge[] => {
    const now = after.edges.find(({ id }) => id === old.id);
    if (!now || now === old) return [];
    const same = now.rows === old.rows && now.stitches === old.stitches && Math.abs(now.edgeMm - old.edgeMm) < SAME;
    if (same) return [];
    return [
      {
        edge: { piece: before.piece.id, edge: old.id },
        rows: { before: old.rows, after: now.rows },
        stitches: { before: old.stitches, after: now.stitches },
        lengthMm: { before: old.hasGauge ? old.edgeMm : null, after: now.hasGauge ? now.edgeMm : null },
      },
    ];
  });
}

function changedEdges(before: PickupPlan, after: PickupPlan): ChangedEdge[] {
  const refs = before.edges.map((edge): EdgeRef => ({ piece: edge.piece.id, edge: edge.measured.id }));
  const firsts = refs.filter((ref, i) => refs.findIndex((one) => sameEdge(one, ref)) === i);
  return firsts.flatMap((edge): ChangedEdge[] => {
    const [old, now] = [wholeOf(before, edge), wholeOf(after, edge)];
    const wantsSame = old.wanted === now.wanted || Math.abs((old.wanted ?? NaN) - (now.wanted ?? NaN)) < SAME;
    if (old.rows === now.rows && old.count === now.count && wantsSame) return [];
    const stated = before.pickup.stated.find((one) => sameEdge(one, edge))?.count ?? null;
    return [
      {
        edge,
        rows: { before: old.rows, after: now.rows },
        wanted: { before: old.wanted, after: now.wanted },
        count: { before: old.count, after: now.count },
        pattern: patternNow(stated, old.wanted, now.wanted),
      },
    ];
  });
}

function wholeOf({ edges }: PickupPlan, ref: EdgeRef): Pick<PlannedEdge, 'rows' | 'wanted' | 'count'> {
  const parts = edges.filter(({ piece, measured }) => sameEdge({ piece: piece.id, edge: measured.id }, ref));
  return parts.reduce<Pick<PlannedEdge, 'rows' | 'wanted' | 'count'>>(
    (sum, part) => ({
      rows: sum.rows + part.rows,
      wanted: sum.wanted === null || part.wanted === null ? null : sum.wanted + part.wanted,
      count: sum.count + part.count,
    }),
    { rows: 0, wanted: 0, count: 0 },
  );
}

function patternNow(stated: number | null, before: number | null, after: number | null): StatedChange | null {
  if (stated === null || before === null || after === null || !(before > 0)) return null;
  return { stated, becomes: (stated * after) / before };
}

function sameEdge(a: EdgeRef, b: EdgeRef): boolean {
  return a.piece === b.piece && a.edge === b.edge;
}

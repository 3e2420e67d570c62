import type { OpeningKind, PickupPlan, PlannedEdge } from '../pickup';

/** How many openings of one sort an edge has. */
export interface Sort {
  readonly kind: OpeningKind;
  readonly second: boolean;
  count: number;
}

/** What one opening of an edge is called in its rhythm: `place` where they are of several sorts. */
export function unitOf(plan: PickupPlan, edge: PlannedEdge): OpeningKind | 'place' {
  const sorts = sortsOf(plan, edge);
  const [only] = sorts;
  return sorts.length === 1 && only && !only.second ? only.kind : sorts.length === 0 ? edge.unit : 'place';
}

/** The sorts of openings that a plan shows on an edge, first places before second ones. */
export function sortsOf(plan: PickupPlan, edge: PlannedEdge): Sort[] {
  const sorts: Sort[] = [];
  for (const { kind, second } of plan.points.slice(edge.firstPoint, edge.pointsEnd)) {
    const known = sorts.find((sort) => sort.kind === kind && sort.second === second);
    if (known) known.count += 1;
    else sorts.push({ kind, second, count: 1 });
  }
  return sorts.sort(
    (a, b) => Number(a.second) - Number(b.second) || Number(b.kind === edge.unit) - Number(a.kind === edge.unit),
  );
}

import type { OpeningKind, PickupPlan, PlannedEdge } from '../pickup';
import { openingLabel, openingsLabel } from './labels';
import type { Terms } from './terms';
import { counted, listed } from './words';

/** How many openings of one sort an edge has. */
interface Sort {
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

/** The openings that a plan shows on an edge: `33 rows`, `16 bound-off stitches`, `24 rows and 10 stitches`. */
export function placesText(plan: PickupPlan, edge: PlannedEdge, terms: Terms): string {
  const sorts = sortsOf(plan, edge);
  if (sorts.length === 0) return openingsLabel(0, edge.unit);
  if (edge.shape === 'horizontal') {
    const count = sorts.reduce((sum, sort) => sum + sort.count, 0);
    return counted(count, `${flatStitch(edge, terms)} stitch`, `${flatStitch(edge, terms)} stitches`);
  }
  return listed(sorts.map(({ count, kind, second }) => openingsLabel(count, kind, second)));
}

/** `one from every bound-off stitch`, `one from every place`: where each opening is used once. */
export function everyPlace(plan: PickupPlan, edge: PlannedEdge, terms: Terms): string {
  if (edge.shape === 'horizontal') return `one from every ${flatStitch(edge, terms)} stitch`;
  const unit = unitOf(plan, edge);
  return `one from every ${unit === 'place' ? unit : openingLabel(unit)}`;
}

/** `bound-off`: before a noun the words take a hyphen. */
export function boundOffStitch(terms: Terms): string {
  return terms.boundOff.replace(' ', '-');
}

/** What the stitches of a horizontal edge are, as an adjective. */
function flatStitch(edge: PlannedEdge, terms: Terms): string {
  switch (edge.measured.finish) {
    case 'cast-on':
      return 'cast-on';
    case 'bound-off':
      return boundOffStitch(terms);
    case 'live':
      return 'held';
    case 'provisional':
      return 'provisional';
  }
}

function sortsOf(plan: PickupPlan, edge: PlannedEdge): Sort[] {
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

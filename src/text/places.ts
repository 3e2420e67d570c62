import type { PickupPlan, PlannedEdge } from '../pickup';
import { openingLabel, openingsLabel } from './labels';
import { sortsOf, unitOf } from './sorts';
import type { Terms } from './terms';
import { counted, listed } from './words';

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

/** What lies under the pointer on the drawing, in one line. */
import type { EdgeRef } from '../piece';
import type { PickupPlan, PlanPoint } from '../pickup';
import { edgeTitle } from './edgeName';
import { openingLabel, openingsLabel } from './labels';
import { unitOf } from './sorts';
import { counted, stitchesText } from './words';

/** Where an opening lies in its piece, counted from 1: `row 105`, `stitch 37 from the left`, `chain at row 13`. */
export function openingPlace(plan: PickupPlan, point: PlanPoint): string {
  const corners = plan.edges[point.edge]!.piece.outline.map(({ from }) => from);
  const left = Math.min(...corners.map(([x]) => x));
  const bottom = Math.min(...corners.map(([, y]) => y));
  const label = openingLabel(point.kind, point.second);
  const row = `row ${Math.floor(point.row - bottom) + 1}`;
  if (point.second) return `${label} at ${row}`;
  if (point.kind === 'stitch' || point.kind === 'live') {
    return `${label} ${Math.floor(point.column - left) + 1} from the left`;
  }
  return point.kind === 'row' ? row : `${label} at ${row}`;
}

/** An opening: `Front, left neck: stitch 23 of 108, in row 105`, or that it is passed over. */
export function pointReadout(plan: PickupPlan, point: PlanPoint): string {
  const edge = plan.edges[point.edge]!;
  return `${edgeTitle(edge.piece, edge.measured.edge)}: ${pointSaid(plan, point)}`;
}

/** The same where the edge is known: `stitch 23 of 108, in row 105`. */
function pointSaid(plan: PickupPlan, point: PlanPoint): string {
  const place = openingPlace(plan, point);
  return point.n === null ? `${place} is passed over` : `stitch ${point.n} of ${plan.picked}, in ${place}`;
}

/**
 * What is said aloud of a point that is gone to: its edge where it is another one, the point, and how many openings
 * before it are passed over: `stitch 24 of 108, in row 107, after 1 passed over`.
 *
 * @param index of the point in the plan
 * @param from index of the point where one stood, or null
 */
export function pointAloud(plan: PickupPlan, index: number, from: number | null): string {
  const { points } = plan;
  const point = points[index]!;
  let before = index;
  while (points[before - 1]?.n === null) before -= 1;
  const said = from !== null && points[from]!.edge === point.edge ? pointSaid(plan, point) : pointReadout(plan, point);
  return before < index ? `${said}, after ${index - before} passed over` : said;
}

/** An edge of the pick-up: `Front, left neck: 23 stitches from 33 rows`, or `places` of several sorts; null where nothing is picked up there. */
export function edgeReadout(plan: PickupPlan, { piece, edge }: EdgeRef): string | null {
  const stretches = plan.edges.filter((one) => one.piece.id === piece && one.measured.id === edge);
  const [first] = stretches;
  if (!first) return null;
  const counts = stretches.map((one) => {
    const unit = unitOf(plan, one);
    const places = unit === 'place' ? counted(one.openings, unit) : openingsLabel(one.openings, unit);
    return `${stitchesText(one.count)} from ${places}`;
  });
  return `${edgeTitle(first.piece, first.measured.edge)}: ${counts.join(', then ')}`;
}

import { apportion } from './apportion';
import { chooseOpenings } from './choose';
import { firstRow } from './firstRow';
import type { FirstRow, PickupPlan, PlanPoint, Run } from './plan';
import { PlanError } from './problems';
import { rhythmOf } from './spread';

/** What is left of a section after a marker, planned again. */
export interface ReplannedSection {
  readonly n: number;
  readonly count: number;
  readonly running: number;
  /** The new rhythm of the section, edge by edge. */
  readonly runs: readonly { readonly edge: number; readonly rhythm: readonly Run[] }[];
}

/** The rest of a pick-up, planned again from a marker. */
export interface Replan {
  /** The marker stands after this section, counted from 1; 0 is the start. */
  readonly marker: number;
  readonly onNeedle: number;
  /** What the plan has at the marker. */
  readonly planned: number;
  readonly way: 'next' | 'rest';
  readonly sections: readonly ReplannedSection[];
  /** The openings after the marker, used or skipped anew. */
  readonly points: readonly PlanPoint[];
  readonly picked: number;
  readonly firstRow: FirstRow;
}

/**
 * Plans the rest again for a knitter who has `onNeedle` stitches at a marker: the difference is made good in the next
 * section alone, or spread over all that remain. What the openings can't take is left to the first row.
 *
 * @throws PlanError `no-marker` when the plan has no such marker, or when the first row can't reach the target
 */
export function replan(plan: PickupPlan, marker: number, onNeedle: number, way: 'next' | 'rest'): Replan {
  const count = plan.sections.length;
  const section = plan.sections[marker - 1];
  if (marker < 0 || marker >= Math.max(count, 1) || (marker > 0 && !section)) {
    throw new PlanError({ kind: 'no-marker', pickup: plan.pickup.name, marker, markers: Math.max(0, count - 1) });
  }
  const planned = section?.running ?? 0;
  const rest = plan.points.filter((point) => marker === 0 || point.section > marker);
  const missing = planned - onNeedle;
  const redone =
    way === 'rest' || count === 0
      ? chooseAgain(rest, missing, plan)
      : [
          ...chooseAgain(
            rest.filter((point) => point.section === marker + 1),
            missing,
            plan,
          ),
          ...rest.filter((point) => point.section > marker + 1).map((point) => point.n !== null),
        ];
  let n = onNeedle;
  const points = rest.map((point, i) => ({ ...point, n: redone[i] ? (n += 1) : null }));
  return {
    marker,
    onNeedle,
    planned,
    way,
    sections: sectionsOfRest(points, marker, onNeedle),
    points,
    picked: n,
    firstRow: firstRow(n, plan.target, plan.pickup.joined),
  };
}

/** Chooses among these openings anew for as many as planned and `more`; what does not fit is left out. */
function chooseAgain(points: readonly PlanPoint[], more: number, plan: PickupPlan): boolean[] {
  const stretches = byEdge(points);
  const wanted = points.filter((point) => point.n !== null).length + more;
  const shares = stretches.map((stretch) => ({
    wanted: Math.max(stretch.filter((point) => point.n !== null).length, 1e-9),
    most: stretch.length,
  }));
  const { singles } = apportion(shares, [], Math.max(0, wanted));
  return stretches.flatMap((stretch, i) =>
    chooseOpenings(
      stretch.map((point) => point.alongMm),
      singles[i] ?? 0,
      plan.pickup.spread,
    ),
  );
}

function byEdge(points: readonly PlanPoint[]): PlanPoint[][] {
  const stretches: PlanPoint[][] = [];
  for (const point of points) {
    const last = stretches.at(-1);
    if (last?.[0]?.edge === point.edge) last.push(point);
    else stretches.push([point]);
  }
  return stretches;
}

function sectionsOfRest(points: readonly PlanPoint[], marker: number, onNeedle: number): ReplannedSection[] {
  const numbers = [...new Set(points.map((point) => point.section))];
  let running = onNeedle;
  return numbers.map((n) => {
    const inside = points.filter((point) => point.section === n);
    const count = inside.filter((point) => point.n !== null).length;
    running += count;
    const runs = byEdge(inside).map((stretch) => ({
      edge: stretch[0]?.edge ?? 0,
      rhythm: rhythmOf(stretch.map((point) => point.n !== null)),
    }));
    return { n: Math.max(n, marker), count, running, runs };
  });
}

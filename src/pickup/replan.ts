import { roundHalfUp } from '../units';
import { apportion } from './apportion';
import { chooseOpenings } from './choose';
import type { BandEdge } from './bandEdge';
import type { FirstRow, Note, PickupPlan, PlannedEdge, PlanPoint, RowNote, Run, Section } from './plan';
import { PlanError } from './problems';
import { rowFor } from './rowFor';
import { rhythmOf } from './spread';

/** What is left of a section, planned again. */
export interface ReplannedSection {
  readonly n: number;
  readonly count: number;
  readonly running: number;
  /** The new rhythm of the section, edge by edge. */
  readonly runs: readonly { readonly edge: number; readonly rhythm: readonly Run[] }[];
}

/** The rest of a pick-up, planned again from a marker, or from any place between two openings. */
export interface Replan {
  /** Index into the plan's points of the first opening that is planned again. */
  readonly from: number;
  /** The marker stands after this section, counted from 1; 0 is the start; null where there is none. */
  readonly marker: number | null;
  readonly onNeedle: number;
  /** What the plan has on the needle there. */
  readonly planned: number;
  readonly way: 'next' | 'rest';
  readonly sections: readonly ReplannedSection[];
  /** The openings from there on, used or skipped anew. */
  readonly points: readonly PlanPoint[];
  readonly picked: number;
  readonly firstRow: FirstRow;
  /** What that could not keep of how the pick-up asks it to be placed. */
  readonly notes: readonly RowNote[];
}

/**
 * Plans the rest again for a knitter who has `onNeedle` stitches at a marker: the difference is made good in the next
 * section alone, or spread over all that remain. What the openings can't take is left to the first row.
 *
 * @throws PlanError `no-marker` when the plan has no such marker, or when the first row can't reach the target
 */
export function replan(plan: PickupPlan, marker: number, onNeedle: number, way: 'next' | 'rest'): Replan {
  const count = plan.sections.length;
  if (marker < 0 || marker >= Math.max(count, 1)) {
    throw new PlanError({ kind: 'no-marker', pickup: plan.pickup.name, marker, markers: Math.max(0, count - 1) });
  }
  return { ...replanFrom(plan, openingsUpTo(plan, marker), onNeedle, way), marker };
}

/** How many openings lie before a marker, counted from 1; 0 is the start. */
export function openingsUpTo(plan: PickupPlan, marker: number): number {
  const found = marker === 0 ? 0 : plan.points.findIndex((point) => point.section > marker);
  return found < 0 ? plan.points.length : found;
}

/** What a plan has on the needle before the opening of this index is worked. */
export function plannedBefore(plan: PickupPlan, from: number): number {
  for (let i = from; i < plan.points.length; i++) {
    const { n } = plan.points[i]!;
    if (n !== null) return n - 1;
  }
  return plan.picked;
}

/**
 * The same from any place: `from` openings lie behind, and the next way takes what is left of the section there. With
 * as many on the needle as planned nothing changes.
 *
 * @param from whole, 0 to the number of openings
 * @param onNeedle whole, 0 or more
 * @throws PlanError when the first row can't reach the target
 */
export function replanFrom(plan: PickupPlan, from: number, onNeedle: number, way: 'next' | 'rest'): Replan {
  const rest = plan.points.slice(from);
  const planned = plannedBefore(plan, from);
  const missing = planned - onNeedle;
  const here = rest.filter((point) => way === 'rest' || point.section === rest[0]?.section);
  const redone = missing === 0 ? [] : chooseAgain(here, missing, plan);
  let n = onNeedle;
  const points = rest.map((point, i) => ({ ...point, n: (redone[i] ?? point.n !== null) ? (n += 1) : null }));
  const all = [...plan.points.slice(0, from), ...points];
  const edges = edgesWith(plan, from, all);
  const sections = sectionsWith(plan, { from, onNeedle, picked: n }, all);
  const holes = holeNumbers(edges, all);
  const row = rowFor({ pickup: plan.pickup, picked: n, target: plan.target, holes, sections, edges });
  return {
    from,
    marker: markerAt(plan, from),
    onNeedle,
    planned,
    way,
    sections: sectionsOfRest(points, onNeedle),
    points,
    picked: n,
    firstRow: row.firstRow,
    notes: row.notes,
  };
}

function markerAt({ points }: PickupPlan, from: number): number | null {
  if (from === 0) return 0;
  const [before, after] = [points[from - 1], points[from]];
  return before && after && after.section > before.section ? after.section - 1 : null;
}

/** A plan with its rest as it was planned again: points, edges, sections, total and first row are what is worked now. */
export function replanned(plan: PickupPlan, again: Replan): PickupPlan {
  const { from, picked, firstRow } = again;
  const points = [...plan.points.slice(0, from), ...again.points];
  const edges = edgesWith(plan, from, points);
  const sections = sectionsWith(plan, again, points);
  const notes = [...plan.notes.filter(({ kind }) => !ROW_NOTES.has(kind)), ...again.notes];
  const bandEdge = cornersMoved(plan, points);
  return { ...plan, points, edges, sections, picked, firstRow, notes, bandEdge };
}

/** The stitches of a band's corners by their new numbers: of the same openings, or of the nearest that are used. */
function cornersMoved({ bandEdge, points: before }: PickupPlan, points: readonly PlanPoint[]): BandEdge | null {
  if (bandEdge === null || bandEdge.corners.length === 0) return bandEdge;
  const used = points.flatMap(({ n }, i) => (n === null ? [] : [{ n, i }]));
  const moved = (stitch: number): number => {
    const at = before.findIndex(({ n }) => n === stitch);
    const apart = used.map(({ i }) => Math.abs(i - at));
    return used[apart.indexOf(Math.min(...apart))]?.n ?? stitch;
  };
  const corners = bandEdge.corners.map((corner) => ({ ...corner, stitches: corner.stitches.map(moved) }));
  return { ...bandEdge, corners };
}

const ROW_NOTES: ReadonlySet<Note['kind']> = new Set(['row-not-by-sections', 'row-not-clear', 'row-not-in-rib']);

/** The edges of a plan whose points were chosen again from one of them on. */
function edgesWith(plan: PickupPlan, from: number, points: readonly PlanPoint[]): PlannedEdge[] {
  return plan.edges.map((edge) => {
    if (edge.pointsEnd <= from) return edge;
    const inside = points.slice(edge.firstPoint, edge.pointsEnd);
    const used = inside.map((point) => point.n !== null);
    const usedAt = inside.flatMap((point, i) => (point.n === null ? [] : [i]));
    const rhythm = rhythmOf(used);
    const numbers = inside.flatMap(({ n }) => n ?? []);
    const { sort } = edge.selection.openings;
    const holes = usedAt.flatMap((i, j) => (sort[i]!.hole ? [j + 1] : []));
    const selection = { ...edge.selection, used, usedAt, holes, rhythm };
    return { ...edge, count: usedAt.length, rhythm, numbers, selection };
  });
}

/**
 * The sections of such a plan: what is on the needle at each marker, and what the first row leaves in each. That stays
 * as planned unless some would have to grow and others to shrink: the row is then shared out anew.
 */
function sectionsWith(
  plan: PickupPlan,
  { from, onNeedle, picked }: Pick<Replan, 'from' | 'onNeedle' | 'picked'>,
  points: readonly PlanPoint[],
): Section[] {
  let before = 0;
  const sections = plan.sections.map((section) => {
    const end = openingsUpTo(plan, section.n);
    const made = points.slice(from, end).filter((point) => point.n !== null).length;
    // With fewer on the needle than there should have been at an earlier marker nobody knows where they are missing.
    const running = end < from ? Math.min(section.running, onNeedle) : onNeedle + made;
    const count = running - before;
    before = running;
    return { ...section, running, count };
  });
  const way = Math.sign(plan.target - picked);
  if (picked === 0 || sections.every(({ count, after }) => after === count || Math.sign(after - count) === way))
    return sections;
  const share = (running: number) => roundHalfUp((plan.target * running) / picked);
  return sections.map((section) => ({
    ...section,
    after: share(section.running) - share(section.running - section.count),
  }));
}

/** Numbers of the stitches in step holes; none where a miscount has left their places in doubt. */
function holeNumbers(edges: readonly PlannedEdge[], points: readonly PlanPoint[]): number[] {
  const numbers = edges.flatMap(({ firstPoint, selection: { usedAt, openings } }) =>
    usedAt.flatMap((at) => (openings.sort[at]!.hole ? (points[firstPoint + at]!.n ?? []) : [])),
  );
  return numbers.every((n, i) => i === 0 || n > numbers[i - 1]!) ? numbers : [];
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

function sectionsOfRest(points: readonly PlanPoint[], onNeedle: number): ReplannedSection[] {
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
    return { n, count, running, runs };
  });
}

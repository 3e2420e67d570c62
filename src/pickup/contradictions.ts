import type { Pickup } from '../piece';
import type { Total } from './check';
import type { Note, PlannedEdge } from './plan';
import type { Agreement, StatedCheck } from './statedCheck';
import { fitsMultiple } from './total';

/** What of a pattern's statement contradicts itself, and what agrees. */
export interface Statement {
  readonly notes: readonly Note[];
  readonly agreements: readonly Agreement[];
}

/** Whether what a pattern states agrees with itself: parts with the total, the total with the multiple, left with right. */
export function contradictions(
  pickup: Pickup,
  edges: readonly PlannedEdge[],
  total: Total,
  checks: readonly StatedCheck[],
  gotCheck: StatedCheck | null,
): Statement {
  const notes: Note[] = [];
  const agreements: Agreement[] = [];
  const stated = pickup.statedTotal ?? total.target;
  if (pickup.statedSections) {
    const sum = pickup.statedSections.reduce((all, count) => all + count, 0);
    const by = pickup.statedTotal === null ? 'plan' : 'total';
    if (sum === stated) agreements.push({ kind: 'sections-sum', sum, stated: by });
    else notes.push({ kind: 'sections-do-not-sum', sum, total: stated, stated: by });
  }
  // An edge worked in two stretches is stated once: on the first of them.
  const counts = edges.map((edge, i) => {
    const known = edges.findIndex((one) => one.piece === edge.piece && one.measured === edge.measured);
    return known === i ? statedOn(pickup, edge) : 0;
  });
  if (pickup.statedTotal !== null && counts.length > 0 && counts.every((count) => count !== null)) {
    const sum = counts.reduce((all, count) => all + count, 0);
    if (sum !== pickup.statedTotal) notes.push({ kind: 'stated-edges-do-not-sum', sum, total: pickup.statedTotal });
    else if (edges.length > 1) agreements.push({ kind: 'edges-sum', sum });
  }
  if (pickup.statedTotal !== null) {
    const { multiple, plus } = pickup.band;
    const fact = { total: pickup.statedTotal, multiple, plus };
    if (!fitsMultiple(pickup.statedTotal, pickup.band)) notes.push({ kind: 'total-off-multiple', ...fact });
    else if (multiple > 1) agreements.push({ kind: 'total-fits', ...fact });
  }
  edges.forEach((edge, i) => {
    const twin = edges[edge.twin];
    const [left, right] = [counts[i], counts[edge.twin]];
    if (!twin || edge.twin <= i || typeof left !== 'number' || typeof right !== 'number') return;
    const sides = { left: refOf(edge), right: refOf(twin) };
    if (left === right) agreements.push({ kind: 'sides-alike', ...sides, count: left });
    else notes.push({ kind: 'sides-differ', ...sides, leftCount: left, rightCount: right });
  });
  const whole = checks.find((check) => check.edge === null);
  if (gotCheck) {
    const { stated: got, stretch, verdict } = gotCheck;
    notes.push({ kind: 'got', got, target: total.target, stretch, verdict, fits: fitsMultiple(got, pickup.band) });
    if (whole?.stated === got && stretch !== null && verdict !== 'lies flat') {
      notes.push({ kind: 'matches-but-stretched', edge: null, count: got, stretch });
    }
  }
  return { notes, agreements };
}

function statedOn(pickup: Pickup, edge: PlannedEdge): number | null {
  return pickup.stated.find((one) => one.piece === edge.piece.id && one.edge === edge.measured.id)?.count ?? null;
}

function refOf(edge: PlannedEdge): { piece: string; edge: string } {
  return { piece: edge.piece.id, edge: edge.measured.id };
}

/** True when nothing stated puckers, ruffles or contradicts itself: what the command's check answers. */
export function allFlat(checks: readonly StatedCheck[], notes: readonly Note[]): boolean {
  const bad: readonly Note['kind'][] = [
    'sections-do-not-sum',
    'stated-edges-do-not-sum',
    'total-off-multiple',
    'sides-differ',
    'matches-but-stretched',
  ];
  return (
    checks.every((check) => check.verdict === null || check.verdict === 'lies flat') &&
    !notes.some((note) => bad.includes(note.kind))
  );
}

import type { EdgeRef, Pickup } from '../piece';
import { stitchesPerMm, type Gauge } from '../units';
import type { Cause, Note, PlannedEdge, StatedCheck, Verdict } from './plan';
import { fitsMultiple } from './total';

/** Two counts are taken for the same when they differ by less than this share. */
const ALIKE = 0.025;

/** How a stretch (count / wanted - 1) shows in the finished piece; thresholds in percent (common practice). */
export function verdictOf(stretch: number, flat: Pickup['flat']): Verdict {
  const percent = Math.abs(stretch) * 100;
  const slack = 1e-9;
  if (percent <= flat.slight + slack) return 'lies flat';
  if (percent <= flat.strong + slack) return stretch < 0 ? 'slightly tight' : 'slightly loose';
  return stretch < 0 ? 'will pucker' : 'will ruffle';
}

/** The stated counts of a pattern beside what this piece needs, edge by edge and then in all. */
export function checkStated(
  pickup: Pickup,
  edges: readonly PlannedEdge[],
  total: { readonly wanted: number; readonly target: number },
  band: Gauge | null,
): StatedCheck[] {
  const checks = pickup.stated.flatMap((stated): StatedCheck[] => {
    const edge = wholeEdge(edges, stated);
    if (!edge) return [];
    const wanted = edge.wanted ?? edge.count;
    const stretch = wanted > 0 ? stated.count / wanted - 1 : null;
    const verdict = stretch === null ? null : verdictOf(stretch, pickup.flat);
    return [
      {
        edge: { piece: stated.piece, edge: stated.edge },
        stated: stated.count,
        planned: edge.count,
        wanted: edge.wanted,
        stretch,
        verdict,
        impliedPer10cm: implied(stated.count, edge.lengthMm, pickup),
        causes: verdict === 'lies flat' || verdict === null ? [] : causesOf(stated.count, wanted, edge, pickup, band),
      },
    ];
  });
  if (pickup.statedTotal === null) return checks;
  const stretch = total.wanted > 0 ? pickup.statedTotal / total.wanted - 1 : null;
  const lengths = edges.map((edge) => edge.lengthMm);
  const length = lengths.every((mm) => mm !== null) ? lengths.reduce((sum, mm) => sum + mm, 0) : null;
  const only = edges.length === 1 ? edges[0] : undefined;
  const verdict = stretch === null ? null : verdictOf(stretch, pickup.flat);
  checks.push({
    edge: null,
    stated: pickup.statedTotal,
    planned: total.target,
    wanted: total.wanted,
    stretch,
    verdict,
    impliedPer10cm: implied(pickup.statedTotal, length, pickup),
    causes:
      only && verdict !== null && verdict !== 'lies flat'
        ? causesOf(pickup.statedTotal, total.wanted, only, pickup, band)
        : [],
  });
  return checks;
}

/** What a pick-up has of one edge, all its stretches taken together; undefined where it does not run along it. */
function wholeEdge(edges: readonly PlannedEdge[], { piece, edge }: EdgeRef): PlannedEdge | undefined {
  const [first, ...others] = edges.filter((one) => one.piece.id === piece && one.measured.id === edge);
  return others.reduce<PlannedEdge | undefined>(
    (whole, part) =>
      whole && {
        ...whole,
        stitches: whole.stitches + part.stitches,
        rows: whole.rows + part.rows,
        openings: whole.openings + part.openings,
        count: whole.count + part.count,
        lengthMm: whole.lengthMm === null || part.lengthMm === null ? null : whole.lengthMm + part.lengthMm,
        wanted: whole.wanted === null || part.wanted === null ? null : whole.wanted + part.wanted,
      },
    first,
  );
}

/** Band stitches over 10 cm that a count on a length implies, the draw-in taken out. */
function implied(count: number, lengthMm: number | null, pickup: Pickup): number | null {
  return lengthMm !== null && lengthMm > 0 ? (100 * count) / (lengthMm * (1 - pickup.band.drawIn / 100)) : null;
}

/** What the numbers themselves tell about where a wrong count comes from, the likeliest first. */
function causesOf(stated: number, wanted: number, edge: PlannedEdge, pickup: Pickup, band: Gauge | null): Cause[] {
  const causes: Cause[] = [];
  const near = (value: number) => value > 0 && Math.abs(stated / value - 1) <= ALIKE;
  const byRows = edge.unit === 'row' && edge.rows > 0;
  if (stated < wanted && ((byRows && near(edge.rows / 2)) || near(wanted / 2))) {
    causes.push({ kind: 'openings-counted-as-rows', unit: edge.unit });
  }
  if (stated > wanted && (edge.unit === 'chain' || edge.unit === 'ridge') && (near(wanted * 2) || near(edge.rows))) {
    causes.push({ kind: 'rows-counted-as-openings', unit: edge.unit });
  }
  const side = edge.unit === 'row' || edge.unit === 'chain' || edge.unit === 'ridge';
  if (causes.length === 0 && side && stated === edge.openings) causes.push({ kind: 'one-from-each', unit: edge.unit });
  const body = edge.piece.gauge;
  if (body && band && edge.wanted !== null) {
    const factor = stitchesPerMm(body) / stitchesPerMm(band);
    if (Math.abs(factor - 1) > ALIKE && near(wanted * factor)) causes.push({ kind: 'body-gauge' });
  }
  const left = 1 - pickup.band.drawIn / 100;
  if (pickup.band.drawIn > 0 && near(wanted * left)) causes.push({ kind: 'reduced-twice' });
  if (causes.length === 0 && edge.rows > 0 && wanted > 0) {
    causes.push({ kind: 'lengthened', rows: Math.round(edge.rows * (stated / wanted - 1)) });
  }
  return causes;
}

/** Whether what a pattern states agrees with itself: parts with the total, the total with the multiple, left with right. */
export function contradictions(
  pickup: Pickup,
  edges: readonly PlannedEdge[],
  total: { readonly wanted: number; readonly target: number },
  checks: readonly StatedCheck[],
): Note[] {
  const notes: Note[] = [];
  const stated = pickup.statedTotal ?? total.target;
  if (pickup.statedSections) {
    const sum = pickup.statedSections.reduce((all, count) => all + count, 0);
    if (sum !== stated) {
      notes.push({
        kind: 'sections-do-not-sum',
        sum,
        total: stated,
        stated: pickup.statedTotal === null ? 'plan' : 'total',
      });
    }
  }
  // An edge worked in two stretches is stated once: on the first of them.
  const counts = edges.map((edge, i) => {
    const known = edges.findIndex((one) => one.piece === edge.piece && one.measured === edge.measured);
    return known === i ? statedOn(pickup, edge) : 0;
  });
  if (pickup.statedTotal !== null && counts.length > 0 && counts.every((count) => count !== null)) {
    const sum = counts.reduce((all, count) => all + count, 0);
    if (sum !== pickup.statedTotal) notes.push({ kind: 'stated-edges-do-not-sum', sum, total: pickup.statedTotal });
  }
  if (pickup.statedTotal !== null && !fitsMultiple(pickup.statedTotal, pickup.band)) {
    const { multiple, plus } = pickup.band;
    notes.push({ kind: 'total-off-multiple', total: pickup.statedTotal, multiple, plus });
  }
  edges.forEach((edge, i) => {
    const twin = edges[edge.twin];
    const [left, right] = [counts[i], counts[edge.twin]];
    if (!twin || edge.twin <= i || typeof left !== 'number' || typeof right !== 'number' || left === right) return;
    notes.push({
      kind: 'sides-differ',
      left: refOf(edge),
      right: refOf(twin),
      leftCount: left,
      rightCount: right,
    });
  });
  const whole = checks.find((check) => check.edge === null);
  if (pickup.got !== null) {
    const stretch = total.wanted > 0 ? pickup.got / total.wanted - 1 : null;
    const verdict = stretch === null ? null : verdictOf(stretch, pickup.flat);
    const fits = fitsMultiple(pickup.got, pickup.band);
    notes.push({ kind: 'got', got: pickup.got, target: total.target, stretch, verdict, fits });
    if (whole?.stated === pickup.got && stretch !== null && verdict !== 'lies flat') {
      notes.push({ kind: 'matches-but-stretched', edge: null, count: pickup.got, stretch });
    }
  }
  return notes;
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

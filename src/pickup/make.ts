import type { Design, Pickup, Piece } from '../piece';
import { measurePiece } from '../shaping';
import { checkStated, contradictions, verdictOf } from './check';
import { countsOf } from './counts';
import { finishedWidths } from './finished';
import { closingRow, firstRow } from './firstRow';
import type { DesignPlan, FirstRow, Note, PickupPlan, PlannedEdge, PlanPoint } from './plan';
import { gaugeNotes } from './plausible';
import { PlanError } from './problems';
import { ratioChoices } from './ratios';
import { rulerOf, type Ruler } from './ruler';
import { mirrorableParts, sectionsOf, type Landmark } from './sections';
import { mirrored, selectOpenings, type Selection } from './select';
import { rhythmOf } from './spread';
import { stretchesOf, twinsOf, type WorkedStretch } from './stretches';
import { choicesFor } from './total';
import { bandGauge, wantOf, type Want } from './wants';

/** A tape that differs from the computed length by less than this share is not worth a word. */
const TAPE_DIFFERS = 0.005;

/**
 * Plans every pick-up of a design.
 *
 * @throws PlanError where the first row can't reach the target or a pick-up has no opening
 * @throws DesignError where a piece is not what it says (crossing, off the grid, not symmetric)
 */
export function planDesign(design: Design): DesignPlan {
  return {
    design,
    measured: design.pieces.map((piece) => ({ piece, edges: measurePiece(piece) })),
    pickups: design.pickups.map((pickup) => planPickup(design, pickup)),
    finished: finishedWidths(design),
  };
}

interface Kept {
  readonly hand: string;
  readonly pieces: readonly Piece[];
  readonly plan: PickupPlan;
}

const kept = new WeakMap<Pickup, Kept>();

/** Plans one pick-up; kept while neither it nor a piece of the design has changed. */
export function planPickup(design: Design, pickup: Pickup): PickupPlan {
  const known = kept.get(pickup);
  const pieces = design.pieces.filter((piece) => pickup.along.some((at) => at.piece === piece.id));
  if (known?.hand === design.hand && sameItems(known.pieces, pieces)) return known.plan;
  const plan = makePlan(design, pickup);
  kept.set(pickup, { hand: design.hand, pieces, plan });
  return plan;
}

function sameItems<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((item, i) => item === b[i]);
}

function makePlan(design: Design, pickup: Pickup): PickupPlan {
  const stretches = stretchesOf(design, pickup);
  const band = bandGauge(pickup, stretches);
  const wants = stretches.map((one) => wantOf(one, pickup, band, pickup.target !== null));
  if (wants.every((want) => want.most === 0)) throw new PlanError({ kind: 'nothing-to-pick-up', pickup: pickup.name });
  const twins = twinsOf(stretches);
  const { counts, wanted, target, notes: countNotes } = countsOf(pickup, stretches, wants, twins);
  const selections = selectionsOf(stretches, counts, twins, pickup.spread);
  const { points, starts, holes } = pointsOf(stretches, selections);
  const picked = points.filter((point) => point.n !== null).length;
  const edges = stretches.map((one, i) =>
    plannedEdge(one, wants[i]!, selections[i]!, counts[i] ?? 0, twins[i] ?? -1, starts[i] ?? 0),
  );
  const ruler = pickupRuler(stretches, selections, wants);
  const hasLength = wants.every((want) => want.lengthMm !== null);
  const sections = pickup.sections
    ? sectionsOf({
        wish: pickup.sections,
        used: points.filter((point) => point.n !== null).map((point) => point.alongMm),
        landmarks: landmarksOf(stretches, twins),
        ruler,
        hasLength,
        target,
      })
    : [];
  const total = { wanted, target };
  const stated = checkStated(pickup, edges, total, band);
  const used = design.pieces.filter((piece) => stretches.some((one) => one.piece === piece));
  return {
    pickup,
    bandGauge: band,
    edges,
    points: numbered(points, sections),
    joinMm: ruler.joinMm,
    wanted,
    target,
    picked,
    stretch: wanted > 0 ? target / wanted - 1 : null,
    choices: choicesFor(wanted, pickup.band),
    sections,
    firstRow: rowFor(picked, target, holes, pickup),
    stated,
    notes: [
      ...countNotes,
      ...tapeNotes(stretches, pickup),
      ...sectionNotes(pickup, picked),
      ...stretchNotes(edges, pickup),
      ...contradictions(pickup, edges, total, stated),
      ...gaugeNotes(used, pickup),
    ],
  };
}

function rowFor(picked: number, target: number, holes: readonly number[], pickup: Pickup): FirstRow {
  if (picked - target === holes.length) {
    const closing = closingRow(picked, holes, pickup.joined);
    if (closing) return closing;
  }
  try {
    return firstRow(picked, target, pickup.joined);
  } catch (error) {
    if (error instanceof PlanError && 'from' in error.problem) {
      throw new PlanError({ ...error.problem, pickup: pickup.name });
    }
    throw error;
  }
}

/** The chosen openings of every stretch; of twins the first is chosen and the other is its mirror image. */
function selectionsOf(
  stretches: readonly WorkedStretch[],
  counts: readonly number[],
  twins: readonly number[],
  spread: Pickup['spread'],
): Selection[] {
  const selections: Selection[] = [];
  stretches.forEach((one, i) => {
    const twin = twins[i] ?? -1;
    const [other, chosen] = [stretches[twin], selections[twin]];
    const alike = counts[twin] === counts[i] && other?.openings.length === one.openings.length;
    const mirror = twin >= 0 && twin < i && other && chosen && alike;
    selections.push(mirror ? mirrored(other, one, chosen) : selectOpenings(one, counts[i] ?? 0, spread));
  });
  return selections;
}

/** A point whose section is not known yet. */
interface Draft extends PlanPoint {
  section: number;
}

function pointsOf(
  stretches: readonly WorkedStretch[],
  selections: readonly Selection[],
): { points: Draft[]; starts: number[]; holes: number[] } {
  const points: Draft[] = [];
  const starts: number[] = [];
  const holes: number[] = [];
  let n = 0;
  let before = 0;
  stretches.forEach((one, edge) => {
    starts.push(points.length);
    const selection = selections[edge];
    selection?.openings.forEach((opening, i) => {
      const { kind, second, column, row, x, y, edgeAt, joinAt } = opening;
      const isUsed = selection.used[i] === true;
      if (isUsed) n += 1;
      if (isUsed && opening.hole) holes.push(n);
      points.push({
        kind,
        second,
        column,
        row,
        x,
        y,
        edgeAt,
        joinAt,
        n: isUsed ? n : null,
        edge,
        alongMm: before + joinAt,
        section: 1,
      });
    });
    before += one.joinMm;
  });
  starts.push(points.length);
  return { points, starts, holes };
}

function plannedEdge(
  one: WorkedStretch,
  want: Want,
  selection: Selection,
  planned: number,
  twin: number,
  firstPoint: number,
): PlannedEdge {
  const count = selection.used.filter(Boolean).length;
  const brought = planned > want.first;
  const openings = brought ? want.most : want.first;
  const value = (want.byLength ?? count) / want.first;
  const { measured, measuredMm, piece, stretch, stitches, rows } = one;
  return {
    stretch,
    piece,
    measured,
    shape: measured.shape,
    stitches,
    rows,
    edgeMm: measured.hasGauge ? one.edgeMm : null,
    joinMm: measured.hasGauge ? one.joinMm : null,
    lengthMm: want.lengthMm,
    measuredMm,
    openings,
    unit: unitOf(selection, measured.shape === 'horizontal'),
    rate: want.bare ? { kind: 'count', count } : want.rate,
    wanted: want.byLength,
    count,
    changed: want.byLength !== null && want.byLength > 0 ? count / want.byLength - 1 : null,
    rhythm: rhythmOf(selection.used),
    ratios: ratioChoices(want.first, value, want.byLength, want.most),
    twin,
    firstPoint,
    pointsEnd: firstPoint + selection.openings.length,
  };
}

/** What an edge is counted in: its rows, chains or ridges where it has any, else its stitches. */
function unitOf(selection: Selection, flat: boolean): PlannedEdge['unit'] {
  const first = selection.openings[0]?.kind ?? 'row';
  if (flat) return first;
  return selection.openings.find((opening) => opening.kind !== 'stitch')?.kind ?? first;
}

/** The map from the join to the pick-up's measure, stretch by stretch. */
function pickupRuler(
  stretches: readonly WorkedStretch[],
  selections: readonly Selection[],
  wants: readonly Want[],
): Ruler {
  const marks: [number, number][] = [[0, 0]];
  let [along, length] = [0, 0];
  stretches.forEach((one, i) => {
    const scale = (wants[i]?.lengthMm ?? one.edgeMm) / (one.edgeMm || 1);
    for (const { joinAt, edgeAt } of selections[i]?.openings ?? [])
      marks.push([along + joinAt, length + edgeAt * scale]);
    along += one.joinMm;
    length += one.edgeMm * scale;
    marks.push([along, length]);
  });
  return rulerOf(marks);
}

/** Corners and seams between stretches, and the centres of edges that mirror themselves. */
function landmarksOf(stretches: readonly WorkedStretch[], twins: readonly number[]): Landmark[] {
  const landmarks: Landmark[] = [];
  let along = 0;
  stretches.forEach((one, i) => {
    const ref = { piece: one.piece.id, edge: one.measured.id };
    if (i > 0) landmarks.push({ alongMm: along, ref });
    if (twins[i] === i) landmarks.push({ alongMm: along + one.joinMm / 2, ref });
    along += one.joinMm;
  });
  return landmarks;
}

/** Tells each point its section: used ones by the running counts, skipped ones by the marker's place. */
function numbered(points: readonly Draft[], sections: PickupPlan['sections']): readonly PlanPoint[] {
  let s = 0;
  for (const point of points) {
    const past = () => {
      const section = sections[s];
      if (!section || s === sections.length - 1) return false;
      return point.n !== null ? point.n > section.running : point.alongMm > section.marker.alongMm;
    };
    while (past()) s += 1;
    point.section = s + 1;
  }
  return points;
}

function tapeNotes(stretches: readonly WorkedStretch[], pickup: Pickup): Note[] {
  return stretches.flatMap((one): Note[] => {
    const computedMm = pickup.measure === 'join' ? one.joinMm : one.edgeMm;
    if (one.measuredMm === null || !one.measured.hasGauge) return [];
    if (Math.abs(one.measuredMm / computedMm - 1) < TAPE_DIFFERS) return [];
    const edge = { piece: one.piece.id, edge: one.measured.id };
    return [{ kind: 'measured-differs', edge, measuredMm: one.measuredMm, computedMm }];
  });
}

function sectionNotes({ sections }: Pickup, picked: number): Note[] {
  if (!sections) return [];
  if (sections.counts === 'same') return sections.by === 'length' ? [] : [{ kind: 'same-needs-length' }];
  if (sections.by === 'landmarks') return [];
  const { parts } = sections;
  if (parts % 2 === 1 || (picked % parts) % 2 === 0) return [];
  return [{ kind: 'sections-cannot-mirror', count: picked, parts, better: mirrorableParts(picked, parts) }];
}

/** Edges whose count the knitter fixed and that will not lie flat. */
function stretchNotes(edges: readonly PlannedEdge[], pickup: Pickup): Note[] {
  return edges.flatMap((edge): Note[] => {
    const fixed = edge.rate.kind !== 'length';
    if (!fixed || edge.changed === null || edge.wanted === null || Math.abs(edge.count - edge.wanted) <= 1) return [];
    const verdict = verdictOf(edge.changed, pickup.flat);
    if (verdict === 'lies flat') return [];
    return [
      {
        kind: 'stretched',
        edge: { piece: edge.piece.id, edge: edge.measured.id },
        stretch: edge.changed,
        verdict,
      },
    ];
  });
}

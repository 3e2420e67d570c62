import type { Design, Pickup, Piece } from '../piece';
import { measurePiece } from '../shaping';
import { shelf } from '../units';
import { bandEdge } from './bandCorners';
import type { BandEdge } from './bandEdge';
import { holeRow } from './buttonholes';
import { checkGot, checkStated } from './check';
import { contradictions } from './contradictions';
import { countsOf } from './counts';
import { finishedWidths } from './finished';
import { sectionNotes, stretchNotes, tapeNotes } from './notes';
import type { DesignPlan, PickupPlan, PlanPoint } from './plan';
import { plannedEdge } from './plannedEdge';
import { gaugeNotes } from './plausible';
import { legsOf, pointsOf, usedPlaces } from './points';
import { PlanError } from './problems';
import { rowFor } from './rowFor';
import { rulerOf } from './ruler';
import { sectionsOf, type Landmark } from './sections';
import { selectionsOf } from './select';
import { stretchesOf, twinsOf, type WorkedStretch } from './stretches';
import { choicesFor } from './total';
import { bandGauge, wantOf } from './wants';

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

const kept = shelf<Pickup, PickupPlan>(1);

/** Plans one pick-up; kept while neither it nor a piece of the design has changed. */
export function planPickup(design: Design, pickup: Pickup): PickupPlan {
  const pieces = design.pieces.filter((piece) => pickup.along.some((at) => at.piece === piece.id));
  return kept(pickup, [design.hand, ...pieces], () => makePlan(design, pickup, pieces));
}

function makePlan(design: Design, pickup: Pickup, pieces: readonly Piece[]): PickupPlan {
  const stretches = stretchesOf(design, pickup);
  const band = bandGauge(pickup, stretches);
  const wants = stretches.map((one) => wantOf(one, pickup, band, pickup.target !== null));
  if (wants.every((want) => want.most === 0)) throw new PlanError({ kind: 'nothing-to-pick-up', pickup: pickup.name });
  const twins = twinsOf(stretches);
  const { counts, wanted, target, notes: countNotes } = countsOf(pickup, stretches, wants, twins);
  const legs = legsOf(stretches, selectionsOf(stretches, counts, twins, pickup.spread));
  const edges = stretches.map((one, i) => {
    const { selection, firstPoint } = legs[i]!;
    return plannedEdge(one, wants[i]!, selection, counts[i] ?? 0, twins[i] ?? -1, firstPoint);
  });
  const used = usedPlaces(legs);
  const picked = used.length;
  const ruler = rulerOf(
    stretches.map(({ joinMm }, i) => ({ marks: legs[i]!.selection.openings.joinAt, scale: 1, end: joinMm })),
    stretches.map(({ edgeMm }, i) => {
      const end = wants[i]!.lengthMm ?? edgeMm;
      return { marks: legs[i]!.selection.openings.edgeAt, scale: end / (edgeMm || 1), end };
    }),
  );
  const hasLength = wants.every((want) => want.lengthMm !== null);
  const landmarks = landmarksOf(stretches, twins);
  const sections = pickup.sections
    ? sectionsOf({ wish: pickup.sections, used, landmarks, ruler, hasLength, target })
    : [];
  const total = { wanted, target };
  const stated = checkStated(pickup, edges, total, band);
  const gotCheck = checkGot(pickup, edges, total, band);
  const statement = contradictions(pickup, edges, total, stated, gotCheck);
  const buttons = holeRow(pickup, target, used);
  const holes = legs.flatMap(({ selection, pickedBefore }) => selection.holes.map((n) => pickedBefore + n));
  const row = rowFor({ pickup, picked, target, holes, sections, edges });
  let points: readonly PlanPoint[] | null = null;
  let free: BandEdge | null | undefined;
  const lengths = wants.map(({ lengthMm }) => lengthMm);
  return {
    pickup,
    bandGauge: band,
    edges,
    // Made when they are first asked for: a plan is often looked at only for its counts.
    get points() {
      return (points ??= pointsOf(legs, sections));
    },
    get bandEdge() {
      const { band: of, joined } = pickup;
      return (free ??= bandEdge({ band: of, joined, gauge: band, stretches, lengths, counts, target }));
    },
    joinMm: ruler.joinMm,
    wanted,
    target,
    picked,
    stretch: wanted > 0 ? target / wanted - 1 : null,
    choices: choicesFor(wanted, pickup.band),
    sections,
    firstRow: row.firstRow,
    stated,
    gotCheck,
    agreements: statement.agreements,
    holes: buttons.holes,
    notes: [
      ...countNotes,
      ...tapeNotes(stretches, pickup),
      ...sectionNotes(pickup, picked),
      ...stretchNotes(edges, pickup),
      ...row.notes,
      ...buttons.notes,
      ...statement.notes,
      ...gaugeNotes(pieces, pickup),
    ],
  };
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

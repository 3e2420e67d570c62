import type { Rate } from '../piece';
import type {
  Choice,
  DesignPlan,
  HoleRow,
  OpeningKind,
  PickupPlan,
  PlannedEdge,
  PlanPoint,
  RatioChoice,
  Run,
} from '../pickup';
import type { EdgeShape } from '../shaping';
import { rowHeight, stitchWidth, type Mm } from '../units';
import { bandDocument, type BandDocument } from './bandDocument';
import { checkedDocument, type CheckedDocument } from './checkReport';
import { edgeNames, type EdgeNames } from './edgeName';
import { firstRowText } from './firstRow';
import { instructions } from './instructions';
import { rowOrRound } from './rowOrRound';
import { noteText } from './notes';
import { voiceOf, type Voice } from './voice';
import { listed } from './words';

/** The plan as every export gives it: numbers in full precision, words in the terms of the design. */
export interface PlanDocument {
  readonly format: 'edgewise-plan';
  readonly version: 1;
  readonly design: string;
  readonly pickups: readonly PickupDocument[];
  readonly finished: readonly FinishedDocument[];
}

export interface PickupDocument {
  readonly id: string;
  readonly name: string;
  readonly edges: readonly EdgeDocument[];
  readonly wanted: number;
  readonly target: number;
  readonly picked: number;
  /** target / wanted - 1. */
  readonly stretch: number | null;
  readonly choices: readonly Choice[];
  readonly sections: readonly SectionDocument[];
  readonly firstRow: { readonly from: number; readonly to: number; readonly text: string };
  readonly points: readonly PointDocument[];
  readonly stated: readonly CheckedDocument[];
  /** The buttonholes of the band, null where there are none. */
  readonly buttonholes: HoleRow | null;
  /** The free edge of the band and its corners, null where its depth or a length is not known. */
  readonly band: BandDocument | null;
  readonly text: readonly string[];
  readonly notes: readonly { readonly kind: string; readonly text: string }[];
}

export interface EdgeDocument {
  readonly piece: string;
  readonly edge: string;
  readonly shape: EdgeShape;
  readonly stitches: number;
  readonly rows: number;
  readonly edgeMm: Mm | null;
  readonly joinMm: Mm | null;
  readonly openings: number;
  readonly unit: OpeningKind;
  readonly rate: Rate;
  readonly lengthMm: Mm | null;
  readonly measuredMm: Mm | null;
  readonly wanted: number | null;
  readonly count: number;
  readonly stretch: number | null;
  readonly rhythm: readonly Run[];
  readonly ratios: readonly RatioChoice[];
}

export interface SectionDocument {
  readonly n: number;
  readonly lengthMm: Mm | null;
  readonly count: number;
  readonly running: number;
  readonly after: number;
}

export interface PointDocument {
  readonly n: number | null;
  readonly piece: string;
  readonly edge: string;
  readonly opening: OpeningKind;
  readonly second: boolean;
  readonly used: boolean;
  readonly column: number;
  readonly row: number;
  readonly xMm: Mm;
  readonly yMm: Mm;
  readonly alongMm: Mm;
  readonly section: number;
}

export interface FinishedDocument {
  readonly piece: string;
  readonly stitches: number;
  readonly taken: number;
  readonly widthMm: Mm | null;
}

/** A stitch and a row of a piece without a gauge, which is drawn 3 stitches to 4 rows, in mm. */
const BARE = { width: 4, height: 3 };

/**
 * The plan document of a design, or of one of its pick-ups.
 *
 * @param voice what to say otherwise than the design asks for
 * @throws RangeError where the design has no pick-up of that id, in a sentence for the user
 */
export function planDocument(plan: DesignPlan, voice: Partial<Voice> = {}, pickupId?: string): PlanDocument {
  const { design } = plan;
  const chosen = pickupId === undefined ? plan.pickups : plan.pickups.filter(({ pickup }) => pickup.id === pickupId);
  if (pickupId !== undefined && chosen.length === 0) throw new RangeError(noSuchPickup(plan, pickupId));
  const said = voiceOf(design, voice);
  const names = edgeNames(design);
  return {
    format: 'edgewise-plan',
    version: 1,
    design: design.name,
    pickups: chosen.map((pickup) => pickupDocument(pickup, said, names)),
    finished: plan.finished.map(({ piece, stitches, taken, widthMm }) => ({ piece, stitches, taken, widthMm })),
  };
}

/** What is said where a pick-up is asked for that the design does not have. */
export function noSuchPickup({ pickups }: DesignPlan, id: string): string {
  const known = listed(pickups.map(({ pickup }) => `"${pickup.id}"`));
  return known === ''
    ? `The design has no pick-ups, so none called "${id}": plan one first.`
    : `The design has no pick-up "${id}": choose ${pickups.length === 1 ? '' : 'one of '}${known}.`;
}

function pickupDocument(plan: PickupPlan, voice: Voice, names: EdgeNames): PickupDocument {
  return {
    id: plan.pickup.id,
    name: plan.pickup.name,
    edges: plan.edges.map(edgeDocument),
    wanted: plan.wanted,
    target: plan.target,
    picked: plan.picked,
    stretch: plan.stretch,
    choices: plan.choices.map(({ count, stretch }) => ({ count, stretch })),
    sections: plan.sections.map(({ n, lengthMm, count, running, after }) => ({ n, lengthMm, count, running, after })),
    firstRow: { from: plan.firstRow.from, to: plan.firstRow.to, text: firstRowText(plan.firstRow) },
    points: plan.points.map((point) => pointDocument(plan, point)),
    stated: plan.stated.map((check) => checkedDocument(check, voice)),
    buttonholes: plan.holes,
    band: bandDocument(plan),
    text: instructions(plan, voice),
    notes: plan.notes.map((note) => ({ kind: note.kind, text: noteText(note, names, voice, rowOrRound(plan)) })),
  };
}

function edgeDocument(edge: PlannedEdge): EdgeDocument {
  return {
    piece: edge.piece.id,
    edge: edge.measured.id,
    shape: edge.shape,
    stitches: edge.stitches,
    rows: edge.rows,
    edgeMm: edge.edgeMm,
    joinMm: edge.joinMm,
    openings: edge.openings,
    unit: edge.unit,
    rate: edge.rate,
    lengthMm: edge.lengthMm,
    measuredMm: edge.measuredMm,
    wanted: edge.wanted,
    count: edge.count,
    stretch: edge.changed,
    rhythm: edge.rhythm.map(({ pick, skip, times }) => ({ pick, skip, times })),
    ratios: edge.ratios.map(({ pick, of, count, stretch }) => ({ pick, of, count, stretch })),
  };
}

function pointDocument(plan: PickupPlan, point: PlanPoint): PointDocument {
  const edge = plan.edges[point.edge]!;
  const gauge = edge.piece.gauge;
  const width = gauge ? stitchWidth(gauge) : BARE.width;
  const height = gauge ? rowHeight(gauge) : BARE.height;
  return {
    n: point.n,
    piece: edge.piece.id,
    edge: edge.measured.id,
    opening: point.kind,
    second: point.second,
    used: point.n !== null,
    column: point.column,
    row: point.row,
    xMm: point.x * width,
    yMm: point.y * height,
    alongMm: point.alongMm,
    section: point.section,
  };
}

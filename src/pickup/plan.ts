/** What planning gives back: exact numbers and records; text/ words them and writes the plan document. */
import type { Design, EdgeRef, Pickup, Piece, Rate, Stretch } from '../piece';
import type { MeasuredEdge, EdgeShape } from '../shaping';
import type { Gauge, Mm, Rows, Stitches } from '../units';
import type { BandEdge } from './bandEdge';
import type { HoleRow } from './holeRow';
import type { Agreement, StatedCheck, Verdict } from './statedCheck';

export type OpeningKind = 'stitch' | 'row' | 'chain' | 'ridge' | 'live';

/** A place in the edge where a new stitch can be drawn through, in working order. */
export interface Opening {
  readonly kind: OpeningKind;
  /**
   * A place brought in only when more is wanted than there are first places: the gap beside a chain, the hollow
   * between two ridges, the hole at the foot of a step.
   */
  readonly second: boolean;
  /** The stitch or row the place lies in: a stitch spans column to column + 1, a row spans row to row + 1. */
  readonly column: Stitches;
  readonly row: Rows;
  /** The place itself on the grid, in stitches and rows. */
  readonly x: Stitches;
  readonly y: Rows;
  /** Distance from the start of its stretch in working order, along the edge and along the join line, mm. */
  readonly edgeAt: Mm;
  readonly joinAt: Mm;
}

/** What an opening is made of. There are few of these, shared by all openings. */
export interface OpeningSort {
  readonly kind: OpeningKind;
  readonly second: boolean;
  /** The large hole at the foot of a step, which is used whenever the knitter chose to use holes. */
  readonly hole: boolean;
}

/**
 * Openings one after another, a list for each of their fields: ten thousand are a few lists of numbers and not ten
 * thousand objects. All lists are equally long. The column is that of the place, `floor(x)`.
 */
export interface OpeningList {
  readonly sort: readonly OpeningSort[];
  readonly row: readonly Rows[];
  readonly x: readonly Stitches[];
  readonly y: readonly Rows[];
  readonly edgeAt: readonly Mm[];
  readonly joinAt: readonly Mm[];
}

/** The openings of a stretch that a plan shows, and which of them it uses. */
export interface Selection {
  readonly openings: OpeningList;
  readonly used: readonly boolean[];
  /** Indices of the used ones. */
  readonly usedAt: readonly number[];
  /** Those of the used ones, counted from 1, that are holes at the foot of a step. */
  readonly holes: readonly number[];
  readonly rhythm: readonly Run[];
  readonly unit: OpeningKind;
}

/** An opening in its place in the whole pick-up. */
export interface PlanPoint extends Opening {
  /** 1, 2, 3 … for the used ones; null for a skipped one. */
  readonly n: number | null;
  /** Index into the plan's edges. */
  readonly edge: number;
  /** Distance along the join from the start of the pick-up, mm. */
  readonly alongMm: Mm;
  /** Section it belongs to, counted from 1. */
  readonly section: number;
}

/** `times` times: pick up `pick`, then pass over `skip`. */
export interface Run {
  readonly pick: number;
  readonly skip: number;
  readonly times: number;
}

/** A plain ratio and what it would give on an edge. */
export interface RatioChoice {
  readonly pick: number;
  readonly of: number;
  readonly count: number;
  /** count / wanted - 1; null where nothing is wanted by length. */
  readonly stretch: number | null;
}

export interface PlannedEdge {
  readonly stretch: Stretch;
  readonly piece: Piece;
  readonly measured: MeasuredEdge;
  readonly shape: EdgeShape;
  readonly stitches: Stitches;
  readonly rows: Rows;
  /** Null where the piece has no gauge. */
  readonly edgeMm: Mm | null;
  readonly joinMm: Mm | null;
  /** The length that the plan counts by: measured, edge or join. */
  readonly lengthMm: Mm | null;
  /** What a tape said, if it was used. */
  readonly measuredMm: Mm | null;
  /** First places. */
  readonly places: number;
  /** First places, or all places where second ones were brought in. */
  readonly openings: number;
  /** What this edge is counted in. */
  readonly unit: OpeningKind;
  readonly rate: Rate;
  readonly wanted: number | null;
  readonly count: number;
  readonly changed: number | null;
  readonly rhythm: readonly Run[];
  readonly ratios: readonly RatioChoice[];
  /** Index of its mirror twin among the plan's edges, itself when it mirrors itself, or -1. */
  readonly twin: number;
  /** Range of its openings in the plan's points. */
  readonly firstPoint: number;
  readonly pointsEnd: number;
  /** Its openings without their places in the whole: the same object as long as nothing of them has changed. */
  readonly selection: Selection;
  /** Numbers of its used openings where they are not simply counted on, after a miscount. */
  readonly numbers?: readonly number[];
}

export interface Choice {
  readonly count: number;
  readonly stretch: number | null;
}

export interface Marker {
  /** Running count up to the marker. */
  readonly running: number;
  /** Where it is drawn, along the join from the start of the pick-up, mm. */
  readonly alongMm: Mm;
  /** The corner it stands at, when it stands at a landmark: the edge that begins there. */
  readonly landmark: EdgeRef | null;
}

export interface Section {
  readonly n: number;
  /** By the measure of the pick-up, to its marker as drawn; null where a piece has no gauge. */
  readonly lengthMm: Mm | null;
  readonly count: number;
  readonly running: number;
  /** With the same count in every section: what the first row leaves in this one. */
  readonly after: number;
  readonly marker: Marker;
}

/** One work of a first row: takes `takes` stitches from the left needle, leaves `leaves` on the right one. */
export interface RowWork {
  readonly work: 'plain' | 'increase' | 'decrease';
  readonly count: number;
  /** In a rib, how an increase or decrease is worked on this side, so that it keeps its column. */
  readonly as?: 'knit' | 'purl';
}

/** A stretch of a first row worked `times` times. */
export interface RowGroup {
  readonly times: number;
  readonly works: readonly RowWork[];
}

/** What the first row does in one section. */
export interface SectionRow {
  readonly section: number;
  readonly from: number;
  readonly to: number;
  readonly groups: readonly RowGroup[];
}

export interface FirstRow {
  readonly from: number;
  readonly to: number;
  readonly joined: boolean;
  /** In working order; empty when nothing changes. */
  readonly groups: readonly RowGroup[];
  /** Where sections are put right each by itself: a row to each, in the order they are worked. */
  readonly parts?: readonly SectionRow[];
}

/** What a first row could not keep of how it was asked to be placed. */
export type RowNote =
  | { readonly kind: 'row-not-by-sections' }
  | { readonly kind: 'row-not-clear' }
  | { readonly kind: 'row-not-in-rib'; readonly why: 'no-rib' | 'no-room' };

export type Note =
  | {
      readonly kind: 'too-few-openings';
      readonly edge: EdgeRef;
      readonly wanted: number;
      readonly openings: number;
      readonly unit: OpeningKind;
      /** Where the stitches are made that it can't take. */
      readonly made: 'first-row' | 'other-edges';
    }
  | RowNote
  | { readonly kind: 'twins-odd'; readonly target: number; readonly picked: number }
  | { readonly kind: 'fixed-counts'; readonly target: number; readonly picked: number }
  | { readonly kind: 'same-needs-length' }
  | {
      readonly kind: 'same-sections';
      readonly each: number;
      readonly parts: number;
      readonly picked: number;
      readonly target: number;
    }
  | {
      readonly kind: 'target-off-multiple';
      readonly target: number;
      readonly multiple: number;
      readonly plus: number;
      readonly below: number;
      readonly above: number;
    }
  | { readonly kind: 'measured-differs'; readonly edge: EdgeRef; readonly measuredMm: Mm; readonly computedMm: Mm }
  | {
      readonly kind: 'sections-cannot-mirror';
      readonly count: number;
      readonly parts: number;
      readonly better: readonly number[];
    }
  | {
      readonly kind: 'sections-do-not-sum';
      readonly sum: number;
      readonly total: number;
      readonly stated: 'total' | 'plan';
    }
  | { readonly kind: 'stated-edges-do-not-sum'; readonly sum: number; readonly total: number }
  | { readonly kind: 'total-off-multiple'; readonly total: number; readonly multiple: number; readonly plus: number }
  | {
      readonly kind: 'sides-differ';
      readonly left: EdgeRef;
      readonly right: EdgeRef;
      readonly leftCount: number;
      readonly rightCount: number;
    }
  | {
      readonly kind: 'matches-but-stretched';
      readonly edge: EdgeRef | null;
      readonly count: number;
      readonly stretch: number;
    }
  | { readonly kind: 'stretched'; readonly edge: EdgeRef; readonly stretch: number; readonly verdict: Verdict }
  | {
      readonly kind: 'gauge-unusual';
      readonly what: 'piece' | 'band';
      readonly name: string;
      readonly per10cm: number;
      readonly rowsPer10cm: number;
      readonly reason: 'outside-ranges' | 'rows-to-stitches';
    }
  | { readonly kind: 'buttonholes-not-in-rib'; readonly why: 'no-rib' | 'no-room' }
  | { readonly kind: 'buttonholes-do-not-fit'; readonly holes: number; readonly needed: number; readonly total: number }
  | {
      readonly kind: 'got';
      readonly got: number;
      readonly target: number;
      readonly stretch: number | null;
      readonly verdict: Verdict | null;
      readonly fits: boolean;
    };

export interface PickupPlan {
  readonly pickup: Pickup;
  readonly bandGauge: Gauge | null;
  /** In working order (a left-handed knitter's is the reverse). */
  readonly edges: readonly PlannedEdge[];
  readonly points: readonly PlanPoint[];
  readonly joinMm: Mm;
  readonly wanted: number;
  readonly target: number;
  readonly picked: number;
  readonly stretch: number | null;
  readonly choices: readonly Choice[];
  readonly sections: readonly Section[];
  readonly firstRow: FirstRow;
  readonly stated: readonly StatedCheck[];
  /** The same of what came out; null where that is not told. */
  readonly gotCheck: StatedCheck | null;
  readonly agreements: readonly Agreement[];
  /** Null where none are asked for, or there is no room for them. */
  readonly holes: HoleRow | null;
  /** The free edge of the band and its corners; null without a depth, a gauge or a length. */
  readonly bandEdge: BandEdge | null;
  readonly notes: readonly Note[];
}

/** What the piece shows once its picked-up side edges have turned their selvage to the inside. */
export interface FinishedWidth {
  readonly piece: string;
  readonly stitches: Stitches;
  readonly taken: Stitches;
  readonly widthMm: Mm | null;
}

/** A piece with every edge of its outline measured, in outline order. */
export interface MeasuredPiece {
  readonly piece: Piece;
  readonly edges: readonly MeasuredEdge[];
}

export interface DesignPlan {
  readonly design: Design;
  /** Every piece of the design, picked up from or not, in the order of the document: what is drawn. */
  readonly measured: readonly MeasuredPiece[];
  readonly pickups: readonly PickupPlan[];
  readonly finished: readonly FinishedWidth[];
}

/** The design document, as stored (version 1 of the format). Plain JSON; never mutated in place. */
import type { Gauge, Mm, Rows, Stitches } from '../units';
import type { Handout } from './handout';

export type Units = 'cm' | 'in';
export type Terms = 'US' | 'UK';
export type Hand = 'right' | 'left';
export type Fabric = 'stockinette' | 'reverse-stockinette' | 'garter' | 'seed' | 'rib';
export type Finish = 'cast-on' | 'bound-off' | 'live' | 'provisional';
export type Selvage = 'plain' | 'slipped' | 'garter';

/** A corner on the stitch grid: x in stitches, y in rows, y up. Whole numbers. */
export type GridPoint = readonly [x: Stitches, y: Rows];

/** One line of a shaping schedule, in the order of knitting: `times` times, `stitches` over `every` rows. */
export interface ScheduleStep {
  /** Below 0 takes the fabric in, above 0 brings it out, 0 works even. */
  readonly stitches: Stitches;
  readonly every: Rows;
  readonly times: number;
}

interface EdgeBase {
  readonly id: string;
  readonly name?: string;
  readonly from: GridPoint;
  /** Read only on stretches without rows: what the stitches end in. */
  readonly finish?: Finish;
  /** Read only on edges that climb: what the side is made of. */
  readonly selvage?: Selvage;
}

export interface StraightEdge extends EdgeBase {
  readonly path: 'straight';
}

export interface CurvedEdge extends EdgeBase {
  readonly path: 'curve';
  /** The two control points of a cubic Bézier, on the grid's axes; they need not be whole. */
  readonly handles: readonly [readonly [number, number], readonly [number, number]];
}

export interface SteppedEdge extends EdgeBase {
  readonly path: 'stepped';
  /** In the order of knitting, bottom up, whichever way the outline runs. */
  readonly steps: readonly ScheduleStep[];
}

/** One stretch of an outline. It ends where the next one begins. */
export type Edge = StraightEdge | CurvedEdge | SteppedEdge;

export interface Piece {
  readonly id: string;
  readonly name: string;
  /** A piece without a gauge is a bare strip: it is drawn 3 to 4 and has no lengths. */
  readonly gauge?: Gauge;
  readonly fabric: Fabric;
  /** Mirrored about the middle of its width. */
  readonly symmetric: boolean;
  /** Counterclockwise with y up, closed. */
  readonly outline: readonly Edge[];
}

/** Points at an edge of a piece by their ids. */
export interface EdgeRef {
  readonly piece: string;
  readonly edge: string;
}

/** One stretch of a pick-up, in working order. */
export interface Stretch extends EdgeRef {
  readonly backwards: boolean;
  /** From and to, as fractions of the edge's length in the direction of the outline; 0 <= from < to <= 1. */
  readonly part: readonly [number, number];
}

export type Rate =
  | { readonly kind: 'each' }
  | { readonly kind: 'length' }
  | { readonly kind: 'ratio'; readonly pick: number; readonly of: number }
  | { readonly kind: 'count'; readonly count: number };

export interface Band {
  /** Defaults to the gauge of the first piece of the pick-up that has one. */
  readonly gauge?: Gauge;
  readonly fabric: Fabric;
  readonly multiple: number;
  readonly plus: number;
  readonly rows?: Rows;
  /** Percent by which the band is made shorter than the edge. */
  readonly drawIn: number;
}

export interface SectionsWish {
  /** `landmarks` are the corners between edges; with it `parts` is ignored. */
  readonly by: 'length' | 'landmarks' | 'both';
  readonly parts: number;
  /** `same`: the whole number below in each, the first row makes up the rest. */
  readonly counts: 'exact' | 'same';
}

/** What a pattern's ratio is counted in. */
export type RatioUnit = 'row' | 'ridge' | 'chain' | 'stitch';

/** A ratio that a pattern states: `pick` from every `of`. */
export interface StatedRatio {
  readonly pick: number;
  readonly of: number;
  /** Left out, it is rows on an edge with rows, stitches on a level one. */
  readonly per?: RatioUnit;
}

/** How the first row or round is placed, where even spacing alone is not enough. */
export interface FirstRowWish {
  /** Over the row as a whole, or every section by itself. */
  readonly by: 'whole' | 'sections';
  /** No increase at a marker or a seam, no decrease across one. */
  readonly clear: boolean;
  /** Keep the rib of the band: increases become purl columns, decreases are worked as the column they leave. */
  readonly rib: boolean;
}

/** A row of buttonholes, counted in stitches of the band in working order. */
export interface Buttonholes {
  readonly holes: number;
  /** Stitches of each hole. */
  readonly stitches: Stitches;
  /** Stitches before the first hole, and after the last. */
  readonly from: Stitches;
  readonly to: Stitches;
  /** Moved so that the middle of each falls in a purl column of the rib. */
  readonly rib?: boolean | undefined;
}

export interface Pickup {
  readonly id: string;
  readonly name: string;
  readonly along: readonly Stretch[];
  /** Worked in the round. */
  readonly joined: boolean;
  readonly measure: 'edge' | 'join';
  readonly measured: readonly (EdgeRef & { readonly mm: Mm })[];
  /** Stitches taken into the join on side edges. */
  readonly inset: 1 | 0.5 | 0;
  readonly band: Band;
  readonly rates: readonly (EdgeRef & { readonly rate: Rate })[];
  readonly target: number | null;
  readonly spread: 'even' | 'grouped';
  readonly sections?: SectionsWish;
  readonly stated: readonly (EdgeRef & { readonly count: number })[];
  readonly statedRatios?: readonly (EdgeRef & StatedRatio)[];
  readonly statedTotal: number | null;
  readonly statedSections: readonly number[] | null;
  readonly got: number | null;
  /** Thresholds of the verdicts, percent. */
  readonly flat: { readonly slight: number; readonly strong: number };
  /** Use the large hole at the foot of a bound-off step: one extra stitch there, decreased on the next row. */
  readonly stepHoles: boolean;
  /** Catch the half loop at the end of a provisional cast-on, to keep n stitches of n. */
  readonly halfLoop: boolean;
  /** Where the needle goes on a garter edge: the bump at the very edge, or between the selvage and its neighbour. */
  readonly garterAt: 'bump' | 'inside';
  readonly buttonholes?: Buttonholes;
  readonly firstRow?: FirstRowWish;
}

/** A whole document with every default filled in. Unknown fields are kept on the objects they stood on. */
export interface Design {
  readonly format: 'edgewise';
  readonly version: 1;
  readonly name: string;
  readonly units: Units;
  readonly terms: Terms;
  readonly hand: Hand;
  readonly pieces: readonly Piece[];
  readonly pickups: readonly Pickup[];
  /** How it is printed, where that was ever chosen. */
  readonly handout?: Handout;
}

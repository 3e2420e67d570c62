/** What can be wrong with a document, and what is worth saying of one that is right: records, worded in text/. */
import type { Rows, Stitches } from '../units';

/** Which list of a document an id or a count belongs to. */
export type ListOf = 'pieces' | 'outline' | 'steps' | 'pickups' | 'along' | 'gauges';

/** Why a text is not JSON, where the reason can be told. */
export type SyntaxReason =
  'empty' | 'ends-early' | 'comment' | 'trailing-comma' | 'quotes' | 'number' | 'text' | 'other';

interface TooLarge {
  readonly kind: 'too-large';
  readonly bytes: number;
  readonly limit: number;
}
interface NotJson {
  readonly kind: 'not-json';
  /** Counted from 1. */
  readonly line: number;
  readonly column: number;
  readonly reason: SyntaxReason;
  /** The character that is out of place; null at the end of the text. */
  readonly found: string | null;
}
interface TooDeep {
  readonly kind: 'too-deep';
  readonly limit: number;
}
interface NotEdgewise {
  readonly kind: 'not-edgewise';
  readonly found: unknown;
}
interface BadVersion {
  readonly kind: 'bad-version' | 'future-version';
  readonly found: unknown;
  readonly newest: number;
}
interface NoVersion {
  readonly kind: 'no-version';
  readonly newest: number;
}
interface Missing {
  readonly kind: 'missing';
  readonly field: string;
}
interface WrongType {
  readonly kind: 'wrong-type';
  readonly expected: 'text' | 'number' | 'yes-no' | 'list' | 'object';
  readonly found: unknown;
}
interface WrongCount {
  readonly kind: 'wrong-count';
  /** How many entries there must be, and are. */
  readonly expected: number;
  readonly found: number;
}
interface NotOneOf {
  readonly kind: 'not-one-of';
  readonly options: readonly (string | number)[];
  readonly found: unknown;
  readonly nearest: string | null;
}
interface OutOfBounds {
  readonly kind: 'out-of-bounds';
  readonly found: number;
  readonly min: number | null;
  readonly max: number | null;
  /** The bound itself is not allowed either. */
  readonly beyond: boolean;
}
interface NotWhole {
  readonly kind: 'not-whole';
  readonly found: number;
}
interface TooFew {
  readonly kind: 'too-few' | 'too-many';
  readonly list: ListOf;
  readonly found: number;
  readonly limit: number;
}
interface EmptyId {
  readonly kind: 'empty-id';
}
interface SameId {
  readonly kind: 'same-id';
  readonly list: ListOf;
  readonly id: string;
}
interface GaugeBounds {
  readonly kind: 'gauge-bounds';
  readonly what: 'stitches' | 'rows';
  readonly per10cm: number;
  readonly min: number;
  readonly max: number;
}
interface PieceTooBig {
  readonly kind: 'piece-too-big';
  readonly piece: string;
  readonly what: 'stitches' | 'rows';
  readonly found: number;
  readonly limit: number;
}
interface FarCorner {
  readonly kind: 'far-corner';
  readonly x: Stitches;
  readonly y: Rows;
  readonly limit: number;
}
interface OffGrid {
  readonly kind: 'off-grid';
  readonly piece: string;
  readonly edge: string;
  readonly x: Stitches;
  readonly y: Rows;
}
interface NoLength {
  readonly kind: 'no-length' | 'schedule-flat';
  readonly piece: string;
  readonly edge: string;
}
interface Crossing {
  readonly kind: 'crossing';
  readonly piece: string;
  readonly first: string;
  readonly second: string;
  readonly x: Stitches;
  readonly y: Rows;
}
interface Clockwise {
  readonly kind: 'clockwise';
  readonly piece: string;
}
interface ScheduleOff {
  readonly kind: 'schedule-off';
  readonly piece: string;
  readonly edge: string;
  /** What the edge asks of its schedule, the fabric taken in below 0. */
  readonly stitches: Stitches;
  readonly rows: Rows;
  /** What the schedule comes to. */
  readonly gotStitches: Stitches;
  readonly gotRows: Rows;
}
interface NotSymmetric {
  readonly kind: 'not-symmetric';
  readonly piece: string;
  /** The first edge without a twin. */
  readonly edge: string;
}
interface UnknownPiece {
  readonly kind: 'unknown-piece';
  readonly piece: string;
  readonly nearest: string | null;
}
interface UnknownEdge {
  readonly kind: 'unknown-edge';
  readonly piece: string;
  readonly edge: string;
  readonly nearest: string | null;
}
interface SameStretch {
  readonly kind: 'same-stretch';
  readonly piece: string;
  readonly edge: string;
  /** The fractions that both take. */
  readonly from: number;
  readonly to: number;
}
interface PartOrder {
  readonly kind: 'part-order';
  readonly from: number;
  readonly to: number;
}
interface AboutEdge {
  /** Said of an edge that the pick-up does not run along, or said twice of the same edge. */
  readonly kind: 'not-along' | 'given-twice';
  readonly piece: string;
  readonly edge: string;
}
interface RatioAboveOne {
  readonly kind: 'ratio-above-one';
  readonly pick: number;
  readonly of: number;
}
interface LengthWithoutGauge {
  readonly kind: 'length-without-gauge';
  readonly piece: string;
  readonly edge: string;
  /** Whose gauge is wanting. */
  readonly wants: 'piece' | 'band';
}
interface FlatOrder {
  readonly kind: 'flat-order';
  readonly slight: number;
  readonly strong: number;
}
interface TooLong {
  readonly kind: 'too-long';
  /** Letters. */
  readonly found: number;
  readonly limit: number;
}
interface BlockTwice {
  readonly kind: 'block-twice';
  readonly block: string;
}

/** Why a document is refused. The numbers and names are those a sentence needs; `found` is the value that stood there. */
export type Problem = {
  /** The place in the file, such as `pieces[0] "front" > outline[2] "neck-left" > steps[1].every`; empty for the whole. */
  readonly at: string;
} & (
  | TooLarge
  | NotJson
  | TooDeep
  | NotEdgewise
  | BadVersion
  | NoVersion
  | Missing
  | WrongType
  | WrongCount
  | NotOneOf
  | OutOfBounds
  | NotWhole
  | TooFew
  | EmptyId
  | SameId
  | GaugeBounds
  | PieceTooBig
  | FarCorner
  | OffGrid
  | NoLength
  | Crossing
  | Clockwise
  | ScheduleOff
  | NotSymmetric
  | UnknownPiece
  | UnknownEdge
  | SameStretch
  | PartOrder
  | AboutEdge
  | RatioAboveOne
  | LengthWithoutGauge
  | FlatOrder
  | TooLong
  | BlockTwice
);

/** A field this version does not know, kept as it is. */
export interface UnknownField {
  readonly at: string;
  /** The known field it resembles, if any: it may be misspelt. */
  readonly nearest: string | null;
}

/** What is worth telling about a document that was read. */
export type Notice =
  | { readonly kind: 'unknown-fields'; readonly fields: readonly UnknownField[] }
  | { readonly kind: 'turned-round'; readonly at: string; readonly piece: string }
  | { readonly kind: 'migrated'; readonly from: number; readonly to: number };

/** A document that can't be taken, with the reason as a record. The sentence for it is `problemSentence` in text/. */
export class DesignError extends Error {
  override readonly name = 'DesignError';
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.at === '' ? problem.kind : `${problem.kind}: ${problem.at}`);
    this.problem = problem;
  }
}

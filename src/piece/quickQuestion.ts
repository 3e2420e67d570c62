import type { Mm } from '../units';

/** What an edge is counted in when a question is asked without a drawing; `length` where only its length is known. */
export type QuickUnit = 'row' | 'ridge' | 'chain' | 'stitch' | 'length';

/** Place so many stitches along one straight edge. */
export interface PlaceQuestion {
  readonly kind: 'place';
  /** Stitches wanted. */
  readonly place: number;
  /** How many rows, ridges, chains or stitches the edge has; in mm where it is a length. */
  readonly over: number;
  readonly unit: QuickUnit;
  /** The gauge of the edge over 10 cm: its rows, or its stitches where it is counted in stitches; null if not known. */
  readonly per10cm: number | null;
  /** Equal sections between markers; null for none. */
  readonly sections: number | null;
  readonly spread: 'even' | 'grouped';
}

/** Increase or decrease evenly in one row or round. */
export interface RowQuestion {
  readonly kind: 'row';
  /** Stitches on the needle. */
  readonly have: number;
  readonly change: 'increase' | 'decrease';
  /** How many stitches to add or lose, or how many are to be there afterwards. */
  readonly amount: number;
  readonly amountIs: 'by' | 'to';
  readonly round: boolean;
}

export type QuickQuestion = PlaceQuestion | RowQuestion;

/** The fields of both questions. */
export type QuickField = 'place' | 'over' | 'per10cm' | 'sections' | 'have' | 'amount';

/** Why a question has no answer: the field to look at, and what is wrong with it. */
export type QuickFault = { readonly ok: false; readonly field: QuickField } & (
  | { readonly reason: 'not-whole'; readonly found: number }
  | {
      readonly reason: 'out-of-range';
      readonly found: number;
      readonly least: number;
      readonly most: number;
      /** What the range is in: mm are shown in the unit of the reader. */
      readonly unit: QuickUnit;
    }
  | {
      /** More stitches than the edge has places, and than the first row can then make of them. */
      readonly reason: 'too-many-stitches';
      readonly found: number;
      readonly over: number;
      readonly unit: QuickUnit;
      readonly places: number;
      readonly most: number;
    }
  | { readonly reason: 'more-sections-than-stitches'; readonly found: number; readonly place: number }
  | {
      /** The count on this length makes a gauge that no knitting has. */
      readonly reason: 'no-such-gauge';
      readonly per10cm: number;
      readonly least: number;
      readonly most: number;
    }
  | { readonly reason: 'too-many-rows'; readonly found: number; readonly most: number }
  | { readonly reason: 'too-many-increases'; readonly have: number; readonly by: number }
  | { readonly reason: 'too-many-decreases'; readonly have: number; readonly by: number; readonly most: number }
  | { readonly reason: 'leaves-too-few'; readonly have: number; readonly to: number; readonly least: number }
  | {
      readonly reason: 'wrong-way';
      readonly change: 'increase' | 'decrease';
      readonly have: number;
      readonly to: number;
    }
);

/** The length that a question is about, mm; null where neither a length nor a gauge is given. */
export function quickLength({ over, unit, per10cm }: PlaceQuestion): Mm | null {
  if (unit === 'length') return over;
  if (per10cm === null) return null;
  return (100 * over * quickRows(unit)) / per10cm;
}

/** Rows to one of what an edge is counted in: a ridge and a chain take two. A stitch counts as itself. */
export function quickRows(unit: QuickUnit): 1 | 2 {
  return unit === 'ridge' || unit === 'chain' ? 2 : 1;
}

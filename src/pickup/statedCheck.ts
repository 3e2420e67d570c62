/** What checking a pattern gives back: each count that it states beside what this piece needs, as plain records. */
import type { EdgeRef, RatioUnit } from '../piece';
import type { OpeningKind } from './plan';

export type Verdict = 'lies flat' | 'slightly tight' | 'slightly loose' | 'will pucker' | 'will ruffle';

/** How a ratio of `pick` from every `of` can be misread; what each way gives is told at `misreadings`. */
export type Misreading = 'skip-of' | 'turned-round' | 'of-then-skip' | 'one-of';

export type Cause =
  | { readonly kind: 'openings-counted-as-rows'; readonly unit: OpeningKind }
  | { readonly kind: 'rows-counted-as-openings'; readonly unit: OpeningKind }
  | { readonly kind: 'one-from-each'; readonly unit: OpeningKind }
  | { readonly kind: 'ratio-misread'; readonly pick: number; readonly of: number; readonly as: Misreading }
  | { readonly kind: 'other-ratio'; readonly pick: number; readonly of: number; readonly per: RatioUnit }
  | { readonly kind: 'body-gauge' }
  | { readonly kind: 'reduced-twice' }
  | { readonly kind: 'not-reduced' }
  /** Rows by which the side edges, of which there are `edges`, would have to be longer in all, shorter below 0. */
  | { readonly kind: 'lengthened'; readonly rows: number; readonly edges?: number }
  /** The same for stitches, where no edge has rows. */
  | { readonly kind: 'widened'; readonly stitches: number }
  | { readonly kind: 'other-size' };

/** A ratio that a pattern states, with what it is counted in on this edge and how many of those there are. */
export interface RatioOf {
  readonly pick: number;
  readonly of: number;
  readonly per: RatioUnit;
  readonly places: number;
}

/** A stated count, or what came out, beside what this piece needs. */
export interface StatedCheck {
  readonly what: 'edge' | 'ratio' | 'total' | 'got';
  /** Null for the whole pick-up. */
  readonly edge: EdgeRef | null;
  /** Where a ratio is stated: `stated` is what it gives. */
  readonly ratio: RatioOf | null;
  readonly stated: number;
  readonly planned: number;
  readonly wanted: number | null;
  readonly stretch: number | null;
  readonly verdict: Verdict | null;
  /** Band stitches over 10 cm that the statement implies. */
  readonly impliedPer10cm: number | null;
  readonly causes: readonly Cause[];
}

/** What of a pattern's statement agrees with itself; what does not is a note. */
export type Agreement =
  | { readonly kind: 'sections-sum'; readonly sum: number; readonly stated: 'total' | 'plan' }
  | { readonly kind: 'edges-sum'; readonly sum: number }
  | { readonly kind: 'total-fits'; readonly total: number; readonly multiple: number; readonly plus: number }
  | { readonly kind: 'sides-alike'; readonly left: EdgeRef; readonly right: EdgeRef; readonly count: number };

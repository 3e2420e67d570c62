/**
 * Numbers that carry their unit in the type. The mark is optional, so a plain number may be given where a quantity
 * is wanted, but one quantity can never be taken for another.
 */
declare const unit: unique symbol;

/** Millimetres on the finished, blocked fabric. */
export type Mm = number & { readonly [unit]?: 'mm' };

/** Stitches across: whole for corners and counts, fractional only for what is wanted or drawn. */
export type Stitches = number & { readonly [unit]?: 'stitches' };

/** Rows up: whole for corners, fractional only for places inside a row. */
export type Rows = number & { readonly [unit]?: 'rows' };

import { outsideText, refusedText } from '../text';
import { readLength, readNumber, type LengthUnit } from '../units';

/** What was typed into a field: a number, nothing, or why it is neither, given what stays instead. */
export type Reading =
  { readonly ok: true; readonly value: number | null } | { readonly ok: false; readonly why: (kept: string) => string };

export type Reader = (typed: string) => Reading;

interface Range {
  readonly least: number;
  readonly most: number;
  /** An empty field means something of its own. */
  readonly optional?: boolean;
}

export function wholeNumber(range: Range): Reader {
  return (typed) => inRange(typed, readNumber(typed), range, true);
}

export function decimalNumber(range: Range): Reader {
  return (typed) => inRange(typed, readNumber(typed), range, false);
}

/** A length in the unit shown, or with a unit of its own; the range is in mm. */
export function lengthIn(unit: LengthUnit, range: Range): Reader {
  return (typed) => inRange(typed, readLength(typed, unit), range, false);
}

function inRange(
  typed: string,
  read: ReturnType<typeof readLength>,
  { least, most, optional = false }: Range,
  whole: boolean,
): Reading {
  if (!read.ok) {
    if (read.reason === 'empty' && optional) return { ok: true, value: null };
    const { reason } = read;
    return { ok: false, why: (kept) => refusedText(typed.trim(), reason, kept) };
  }
  const { value } = read;
  const fits = value >= least && value <= most && (!whole || Number.isInteger(value));
  return fits ? { ok: true, value } : { ok: false, why: (kept) => outsideText(least, most, whole, kept) };
}

import type { Units } from '../piece';
import { outsideLengthText, outsideText, refusedText } from '../text';
import { readLength, readNumber } from '../units';

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
  return (typed) => inRange(typed, readNumber(typed), range, numberOutside(range, true), true);
}

export function decimalNumber(range: Range): Reader {
  return (typed) => inRange(typed, readNumber(typed), range, numberOutside(range, false));
}

/** A length in the unit shown, or with a unit of its own; the range is in mm. */
export function lengthIn(unit: Units, range: Range): Reader {
  const outside: Refusal = (kept) => outsideLengthText(range.least, range.most, unit, kept);
  return (typed) => inRange(typed, readLength(typed, unit), range, outside);
}

type Refusal = (kept: string) => string;

function numberOutside({ least, most }: Range, whole: boolean): Refusal {
  return (kept) => outsideText(least, most, whole, kept);
}

function inRange(
  typed: string,
  read: ReturnType<typeof readLength>,
  { least, most, optional = false }: Range,
  outside: Refusal,
  whole = false,
): Reading {
  if (!read.ok) {
    if (read.reason === 'empty' && optional) return { ok: true, value: null };
    const { reason } = read;
    return { ok: false, why: (kept) => refusedText(typed.trim(), reason, kept) };
  }
  const { value } = read;
  const fits = value >= least && value <= most && (!whole || Number.isInteger(value));
  return fits ? { ok: true, value } : { ok: false, why: outside };
}

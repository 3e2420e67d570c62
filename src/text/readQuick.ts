import type { PlaceQuestion, QuickField, QuickUnit, RowQuestion, Units } from '../piece';
import { MM_PER_INCH, readLength, readNumber, type NumberFault } from '../units';
import type { QuickMeasure } from './quickWords';

/** A question about an edge as it was typed; an empty text is a field left empty. */
export interface PlaceTyped {
  readonly place: string;
  readonly over: string;
  readonly measure: QuickMeasure;
  readonly sections: string;
  /** Rows (for an edge of stitches: stitches) to 10 cm, or to 4 in where lengths are in inches. */
  readonly gauge: string;
  readonly spread: PlaceQuestion['spread'];
}

/** A question about a row as it was typed. */
export interface RowTyped {
  readonly have: string;
  readonly change: RowQuestion['change'];
  readonly amount: string;
  readonly amountIs: RowQuestion['amountIs'];
  readonly round: boolean;
}

/** A field whose text is no number. */
export interface QuickUnread {
  readonly ok: false;
  readonly field: QuickField;
  readonly reason: NumberFault | 'unknown-unit';
  readonly typed: string;
}

type Read<Question> = { readonly ok: true; readonly question: Question } | QuickUnread;

/** The unit in which the lengths of a question and its gauge are meant: that of its edge, else the one shown. */
export function quickUnits(measure: QuickMeasure, shown: Units): Units {
  return measure === 'cm' || measure === 'in' ? measure : shown;
}

/** What an edge is counted in, whatever the unit of its length. */
export function quickUnit(measure: QuickMeasure): QuickUnit {
  return measure === 'cm' || measure === 'in' ? 'length' : measure;
}

/** Over which length the gauge of a question is typed, mm: 10 cm or 4 in. */
export function quickGaugeOver(units: Units): number {
  return units === 'in' ? 4 * MM_PER_INCH : 100;
}

/** The question that was typed, numbers read as people write them; or the first field that holds none. */
export function readPlace(typed: PlaceTyped, shown: Units): Read<PlaceQuestion> {
  const unit = quickUnit(typed.measure);
  const units = quickUnits(typed.measure, shown);
  const place = readNumber(typed.place);
  if (!place.ok) return unread('place', typed.place, place.reason);
  const over = unit === 'length' ? readLength(typed.over, units) : readNumber(typed.over);
  if (!over.ok) return unread('over', typed.over, over.reason);
  const gauge = optional(typed.gauge);
  if (!gauge.ok) return unread('per10cm', typed.gauge, gauge.reason);
  const sections = optional(typed.sections);
  if (!sections.ok) return unread('sections', typed.sections, sections.reason);
  return {
    ok: true,
    question: {
      kind: 'place',
      place: place.value,
      over: over.value,
      unit,
      per10cm: gauge.value === null ? null : (100 * gauge.value) / quickGaugeOver(units),
      sections: sections.value,
      spread: typed.spread,
    },
  };
}

export function readRow(typed: RowTyped): Read<RowQuestion> {
  const have = readNumber(typed.have);
  if (!have.ok) return unread('have', typed.have, have.reason);
  const amount = readNumber(typed.amount);
  if (!amount.ok) return unread('amount', typed.amount, amount.reason);
  const { change, amountIs, round } = typed;
  return { ok: true, question: { kind: 'row', have: have.value, change, amount: amount.value, amountIs, round } };
}

/** What an edge is counted in by its word, in one or many: `rows`, `st`, `inches`; undefined for any other. */
export function quickMeasure(word: string): QuickMeasure | undefined {
  return MEASURES.get(word.toLowerCase().replace(/\.$/u, ''));
}

const MEASURES: ReadonlyMap<string, QuickMeasure> = new Map([
  ...['row', 'rows'].map((word) => [word, 'row'] as const),
  ...['ridge', 'ridges'].map((word) => [word, 'ridge'] as const),
  ...['chain', 'chains'].map((word) => [word, 'chain'] as const),
  ...['stitch', 'stitches', 'st', 'sts'].map((word) => [word, 'stitch'] as const),
  ...['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((word) => [word, 'cm'] as const),
  ...['in', 'inch', 'inches', '"', '″', '”'].map((word) => [word, 'in'] as const),
]);

function optional(typed: string): ReturnType<typeof readNumber> | { readonly ok: true; readonly value: null } {
  return typed.trim() === '' ? { ok: true, value: null } : readNumber(typed);
}

function unread(field: QuickField, typed: string, reason: QuickUnread['reason']): QuickUnread {
  return { ok: false, field, typed: typed.trim(), reason };
}

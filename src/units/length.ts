import type { Mm } from './quantity';
import { readNumber, type NumberFault } from './typed';

/** The international inch, exact since 1959: https://www.nist.gov/pml/us-surveyfoot. */
export const MM_PER_INCH = 25.4;

/** What lengths are shown in. Inside they are always mm. */
export type LengthUnit = 'cm' | 'in';

const MM_PER: Readonly<Record<LengthUnit, Mm>> = { cm: 10, in: MM_PER_INCH };

/** A length in mm, in the unit shown. */
export function toUnit(mm: Mm, unit: LengthUnit): number {
  return mm / MM_PER[unit];
}

/** A length in the unit shown, in mm. */
export function fromUnit(value: number, unit: LengthUnit): Mm {
  return value * MM_PER[unit];
}

export type LengthRead =
  { readonly ok: true; readonly value: Mm } | { readonly ok: false; readonly reason: NumberFault | 'unknown-unit' };

/** Millimetres in every unit that may be typed behind a number. Two single marks are read as one double. */
const MM_PER_WORD: ReadonlyMap<string, Mm> = new Map([
  ['mm', 1],
  ['cm', 10],
  ['m', 1000],
  ...['in', 'in.', 'inch', 'inches', '"', '″', '”', "''", '′′', '’’'].map((word): [string, Mm] => [word, MM_PER_INCH]),
]);

/**
 * The length that someone typed, in mm: "10", "10 cm", "100mm", "4 in", "4½\"". Without a unit of its own it is in the
 * one that is shown. Numbers are read as by `readNumber`; a unit without a number is empty.
 */
export function readLength(text: string, unit: LengthUnit): LengthRead {
  const [, number = '', word = ''] = /^(.*?)\s*(\p{L}+\.?|["″”]|''|′′|’’)?$/su.exec(text.trim()) ?? [];
  const mm = word === '' ? MM_PER[unit] : MM_PER_WORD.get(word.toLowerCase());
  const read = readNumber(number);
  if (!read.ok) return read.reason === 'empty' && mm === undefined ? { ok: false, reason: 'not-a-number' } : read;
  return mm === undefined ? { ok: false, reason: 'unknown-unit' } : { ok: true, value: read.value * mm };
}

import type { Units } from '../piece';
import { roundHalfDown, toUnit, writeFraction, writeNumber, type Mm } from '../units';

/** Inches are written to the eighth. */
const INCH_PARTS = 8;
/** A stretch below this is written as none: half of the last digit shown. */
const NO_STRETCH = 0.0005;
/** From this percentage on, tenths say nothing. */
const WHOLE_PERCENT = 10;

/** At most `decimals` decimals, those at the end that are 0 left out: `2.2`, `23`. */
export function plainNumber(value: number, decimals = 1): string {
  return writeNumber(value, { digits: decimals, language: 'en' });
}

/** Exactly `decimals` decimals, for columns of figures: `2.0`. */
export function fixedNumber(value: number, decimals = 1): string {
  return writeNumber(value, { digits: decimals, language: 'en', padded: true });
}

/** A length: `10.7 cm`, or to the eighth of an inch `4¼ in`. */
export function lengthText(mm: Mm, units: Units): string {
  const value = toUnit(mm, units);
  return units === 'in' ? `${writeFraction(value, INCH_PARTS)} in` : `${fixedNumber(value)} cm`;
}

/** `2.0% short`, `3.0% over`, `14% over`, `exact`: how far a count lies from what is wanted, as count / wanted - 1. */
export function stretchText(stretch: number): string {
  if (Math.abs(stretch) < NO_STRETCH) return 'exact';
  return `${percentText(Math.abs(stretch))} ${stretch < 0 ? 'short' : 'over'}`;
}

/** `2.0%`, `14%`, of a share of 1. */
export function percentText(share: number): string {
  const percent = share * 100;
  return `${fixedNumber(percent, Math.abs(percent) < WHOLE_PERCENT ? 1 : 0)}%`;
}

/**
 * What is wanted and the whole number it comes to: `22.9, so 23`; where it lies half way, both neighbours:
 * `31.5, so 31 or 32`; a whole number alone.
 */
export function wantedText(wanted: number): string {
  const shown = fixedNumber(wanted);
  if (Number(shown) === Math.round(wanted)) return plainNumber(wanted, 0);
  if (shown.endsWith('.5')) return `${shown}, so ${Math.floor(wanted)} or ${Math.ceil(wanted)}`;
  return `${shown}, so ${roundHalfDown(wanted)}`;
}

/** `4 × 27`, `4 × 27 + 2`: a total by a band's repeat. */
export function byMultiple(total: number, multiple: number, plus: number): string {
  const repeats = Math.floor((total - plus) / multiple);
  const rest = total - repeats * multiple;
  return rest === 0 ? `${repeats} × ${multiple}` : `${repeats} × ${multiple} + ${rest}`;
}

/** `a multiple of 4`, `a multiple of 4 plus 2`. */
export function multipleText(multiple: number, plus: number): string {
  return plus === 0 ? `a multiple of ${multiple}` : `a multiple of ${multiple} plus ${plus}`;
}

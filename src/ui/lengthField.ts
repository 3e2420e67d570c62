import { fixedNumber } from '../text';
import { toUnit, writeFraction, type LengthUnit, type Mm } from '../units';

/** A length as a field shows it, without its unit: `6.5`, in inches `2½`. It reads back to what is shown. */
export function lengthShown(mm: Mm | null, unit: LengthUnit): string {
  if (mm === null) return '';
  const value = toUnit(mm, unit);
  return unit === 'in' ? writeFraction(value, 8) : fixedNumber(value, 1);
}

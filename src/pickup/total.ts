import { roundHalfDown } from '../units';
import type { Choice } from './plan';

/** The multiple of a stitch pattern: `multiple * k + plus` stitches. */
export interface Multiple {
  readonly multiple: number;
  readonly plus: number;
}

export function fitsMultiple(count: number, { multiple, plus }: Multiple): boolean {
  return count >= plus && (count - plus) % multiple === 0;
}

/** The fitting counts next to `wanted`, below (or equal) and above; below is left out where there is none above 0. */
export function fittingCounts(wanted: number, { multiple, plus }: Multiple): number[] {
  const exact = (wanted - plus) / multiple;
  const nearest = Math.round(exact);
  const k = Math.abs(exact - nearest) < 1e-9 ? nearest : Math.floor(exact);
  return [multiple * Math.max(k, 0) + plus, multiple * (Math.max(k, -1) + 1) + plus].filter(
    (count, i, all) => count > 0 && all.indexOf(count) === i,
  );
}

/** The fitting count nearest to `wanted`; of two equally near the lower. */
export function nearestFitting(wanted: number, { multiple, plus }: Multiple): number {
  const k = Math.max(0, roundHalfDown((wanted - plus) / multiple));
  return multiple * k + plus > 0 ? multiple * k + plus : multiple + plus;
}

export function choicesFor(wanted: number, pattern: Multiple): Choice[] {
  return fittingCounts(wanted, pattern).map((count) => ({
    count,
    stretch: wanted > 0 ? count / wanted - 1 : null,
  }));
}

import { partNoGauge, partRefused, partUnread } from '../../text';
import { readLength, readNumber, type LengthUnit, type Mm } from '../../units';
import type { Reader } from '../typed';

/**
 * Reads a place along an edge, as a share of its length: a number or a percentage, or a length with a unit of its own
 * from where the work begins.
 *
 * @param lengthMm how long the edge is; null on a piece without a gauge
 * @param range the least and the most share that is taken
 */
export function placeAlong(lengthMm: Mm | null, unit: LengthUnit, [least, most]: readonly [number, number]): Reader {
  return (typed) => {
    const share = shareOf(typed, lengthMm, unit);
    if (share === 'no-gauge') return { ok: false, why: (kept) => partNoGauge(typed, kept) };
    if (share === null) return { ok: false, why: (kept) => partUnread(typed, kept) };
    const fits = share >= least && share <= most;
    return fits ? { ok: true, value: share } : { ok: false, why: (kept) => partRefused(least, most, kept) };
  };
}

function shareOf(typed: string, lengthMm: Mm | null, unit: LengthUnit): number | 'no-gauge' | null {
  const percent = readNumber(typed.trim().replace(/\s*%$/u, ''));
  if (percent.ok) return percent.value / 100;
  const length = readLength(typed, unit);
  if (!length.ok) return null;
  return lengthMm === null ? 'no-gauge' : length.value / lengthMm;
}

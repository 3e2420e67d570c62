import { readLength, readNumber } from '../../units';
import { outsideText, refusedText } from '../../text';
import type { Reader } from '../typed';

/** A number with a unit of length after it: `12 cm`, `4½ in`, `5"`. */
const WITH_UNIT = /[a-z"”″]\s*$/iu;

interface Span {
  readonly least: number;
  readonly most: number;
  /** Size of one stitch or row, mm; null on a piece without a gauge. */
  readonly one: number | null;
}

/**
 * Stitches or rows, typed as a whole number or as a length, which is taken for the nearest whole number of them. A
 * number with a fraction and no unit is refused: knitting has no halves.
 */
export function countOrLength({ least, most, one }: Span): Reader {
  return (typed) => {
    const isLength = one !== null && WITH_UNIT.test(typed);
    const read = isLength ? readLength(typed, 'cm') : readNumber(typed);
    if (!read.ok) {
      const { reason } = read;
      return { ok: false, why: (kept) => refusedText(typed.trim(), reason, kept) };
    }
    const value = isLength ? Math.round(read.value / one) : read.value;
    const fits = Number.isInteger(value) && value >= least && value <= most;
    return fits ? { ok: true, value } : { ok: false, why: (kept) => outsideText(least, most, true, kept) };
  };
}

import { noGaugeText, type SizeKind, type Voice } from '../../text';
import { readLength, readNumber, roundHalfUp, type Mm } from '../../units';
import { wholeNumber, type Reader } from '../typed';

/** How an edge's stitches or rows are read. */
interface SizeField {
  readonly kind: SizeKind;
  /** Width of a stitch or height of a row in mm; null on a piece without a gauge. */
  readonly cellMm: Mm | null;
  /** The most that a piece can have. */
  readonly most: number;
  readonly voice: Pick<Voice, 'terms' | 'units'>;
  /** A length was typed, and this is what it came to. */
  readonly onlength: (typed: string, count: number, mm: Mm) => void;
}

/** Words that may stand behind a count. */
const COUNT_WORDS = /\s*(?:sts?|stitch(?:es)?|rows?)\.?$/iu;

/**
 * Reads stitches or rows: a whole number, below 0 for an edge that goes the other way, or a length with a unit of its
 * own, which is brought to the nearest whole number at the piece's gauge.
 */
export function sizeReader({ kind, cellMm, most, voice, onlength }: SizeField): Reader {
  const count = wholeNumber({ least: -most, most });
  return (typed) => {
    const plain = typed.trim().replace(COUNT_WORDS, '');
    const length = readNumber(plain).ok ? null : readLength(plain, voice.units);
    if (!length?.ok) return count(plain);
    if (cellMm === null) return { ok: false, why: (kept) => noGaugeText(typed, kind, voice, kept) };
    const nearest = Math.sign(length.value) * roundHalfUp(Math.abs(length.value) / cellMm);
    const reading = count(String(nearest));
    if (reading.ok) onlength(typed, nearest, Math.abs(nearest) * cellMm);
    return reading;
  };
}

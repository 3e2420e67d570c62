/** The few words that stand on a drawing, kept short because room there is dear. */
import type { Gauge, Mm } from '../units';
import { toUnit, writeNumber } from '../units';
import type { Units } from '../piece';
import { lengthText, plainNumber } from './numbers';
import { counted, listed } from './words';

/** How a drawing is worded. */
export interface DrawingWords {
  readonly units: Units;
  /** A language tag for the numbers of rulers, such as `de`; English if not given. */
  readonly language?: string;
}

export const drawingWords = {
  start: 'start',
  startAndEnd: 'start and end',
  stitches: 'stitches',
  rows: 'rows',
} as const;

/** A number on a ruler. */
export function rulerNumber(value: number, words: DrawingWords): string {
  return writeNumber(value, { digits: 2, language: words.language ?? 'en' });
}

/** A length in fabric mm in the unit of a ruler. */
export function rulerLength(mm: Mm, words: DrawingWords): number {
  return toUnit(mm, words.units);
}

export function drawnStitches(count: number): string {
  return counted(count, 'st');
}

export function drawnRows(count: number): string {
  return counted(count, 'row');
}

/** Beside a dimension line: `50.0 cm · 110 sts`; without a gauge the count alone. */
export function dimensionText(mm: Mm | null, count: string, words: DrawingWords): string {
  return mm === null ? count : `${lengthText(mm, words.units)} · ${count}`;
}

/** The size of an edge: `12 sts × 24 rows`, or the one that is not 0. */
export function drawnEdgeSize(stitches: number, rows: number): string {
  if (rows === 0) return drawnStitches(stitches);
  if (stitches === 0) return drawnRows(rows);
  return `${drawnStitches(stitches)} × ${drawnRows(rows)}`;
}

/** Lengths that a gauge (UK: tension) is said over where the file's own is no round one in the shown unit. */
const SAID_OVER: Readonly<Record<Units, number>> = { cm: 10, in: 4 };

/** Under the name of a piece: `22 sts and 30 rows to 10 cm`. */
export function drawnGauge({ stitches, rows, over }: Gauge, words: DrawingWords): string {
  const own = toUnit(over, words.units);
  const round = Math.abs(own - Math.round(own)) < 1e-6;
  const said = round ? own : SAID_OVER[words.units];
  const count = (number: number) => plainNumber((number * said) / own, round ? 2 : 1);
  return `${count(stitches)} sts and ${count(rows)} rows to ${plainNumber(said, 0)} ${words.units}`;
}

/** The title of a drawing: `Round-neck pullover: Neckband`. */
export function drawingTitle(design: string, pickup: string | null): string {
  return pickup === null ? design : `${design}: ${pickup}`;
}

/** What a drawing shows, in a sentence or two for those who don't see it. */
export function drawingDescription(
  pieces: readonly string[],
  pickup: { readonly name: string; readonly picked: number; readonly edges: number } | null,
): string {
  if (pieces.length === 0) return 'Nothing is drawn yet.';
  const drawn = `${listed(pieces)}, drawn with the right side facing.`;
  if (!pickup) return drawn;
  return `${drawn} ${pickup.name}: ${counted(pickup.picked, 'stitch', 'stitches')} along ${counted(pickup.edges, 'edge')}.`;
}

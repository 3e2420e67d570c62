import type { Piece, Pickup } from '../piece';
import type { Gauge } from '../units';
import type { Note } from './plan';

/** Four inches, over which the yarn weights are stated, in mm. */
const FOUR_INCHES = 101.6;

/**
 * Stitches over 4 in of stockinette by yarn weight, 0 lace to 7 jumbo: Craft Yarn Council, Standard Yarn Weight System,
 * https://www.craftyarncouncil.com/standards/yarn-weight-system (guidelines, not rules).
 */
export const YARN_WEIGHTS: readonly { readonly weight: number; readonly from: number; readonly to: number }[] = [
  { weight: 0, from: 33, to: 40 },
  { weight: 1, from: 27, to: 32 },
  { weight: 2, from: 23, to: 26 },
  { weight: 3, from: 21, to: 24 },
  { weight: 4, from: 16, to: 20 },
  { weight: 5, from: 12, to: 15 },
  { weight: 6, from: 7, to: 11 },
  { weight: 7, from: 4, to: 6 },
];

/** Rows to a stitch that stockinette usually has (common practice, no source). */
const USUAL_ROWS = { from: 1.1, to: 1.75 };

/** The yarn weights whose range holds a gauge; none when it lies outside all of them. */
export function yarnWeights(gauge: Gauge): number[] {
  const stitches = Math.round((gauge.stitches * FOUR_INCHES) / gauge.over);
  return YARN_WEIGHTS.filter(({ from, to }) => stitches >= from && stitches <= to).map(({ weight }) => weight);
}

/** A gentle note where a gauge is unusual. Never an error. */
export function gaugeNotes(pieces: readonly Piece[], pickup: Pickup): Note[] {
  const notes = pieces.flatMap((piece) =>
    piece.gauge ? gaugeNote('piece', piece.name, piece.gauge, piece.fabric === 'stockinette') : [],
  );
  if (!pickup.band.gauge) return notes;
  return [...notes, ...gaugeNote('band', pickup.name, pickup.band.gauge, pickup.band.fabric === 'stockinette')];
}

function gaugeNote(what: 'piece' | 'band', name: string, gauge: Gauge, stockinette: boolean): Note[] {
  const per10cm = (100 * gauge.stitches) / gauge.over;
  const rowsPer10cm = (100 * gauge.rows) / gauge.over;
  const note = (reason: 'outside-ranges' | 'rows-to-stitches'): Note => ({
    kind: 'gauge-unusual',
    what,
    name,
    per10cm,
    rowsPer10cm,
    reason,
  });
  if (yarnWeights(gauge).length === 0) return [note('outside-ranges')];
  const rows = gauge.rows / gauge.stitches;
  return stockinette && (rows < USUAL_ROWS.from || rows > USUAL_ROWS.to) ? [note('rows-to-stitches')] : [];
}

import { rowHeight, roundHalfUp, stitchWidth, type Gauge } from '../../units';
import { BOUNDS } from '../bounds';
import type { MeasureKey, MeasureValues, StarterFault, StarterKind } from './kinds';
import { STARTERS } from './starters';

/** The measures of one starter in its gauge: lengths in mm, or counted out in whole stitches and rows. */
export interface Counts {
  /** In mm, or in stitches or rows where the measure is. */
  readonly value: (key: MeasureKey) => number;
  /** The nearest whole number of stitches in `share` of a width, `least` at least. */
  readonly stitches: (key: MeasureKey, least: number, share?: number) => number;
  /** The nearest even number of rows in a height, so that what comes next begins on a right-side row. */
  readonly rows: (key: MeasureKey, least: number) => number;
}

/** The counts, or what is wrong with a value by itself. */
export function countsOf(kind: StarterKind, values: MeasureValues, gauge: Gauge): Counts | StarterFault {
  const known = new Map<MeasureKey, number>();
  for (const { key, unit, usual, least, most } of STARTERS[kind].measures) {
    const found = values[key] ?? usual;
    // Written so that no number at all is out of range too.
    if (!(found >= least && found <= most)) {
      return { ok: false, reason: 'out-of-range', measure: key, unit, found, least, most };
    }
    if (unit !== 'mm' && !Number.isInteger(found)) return { ok: false, reason: 'not-whole', measure: key, found };
    known.set(key, found);
  }
  const value = (key: MeasureKey): number => {
    const found = known.get(key);
    if (found === undefined) throw new RangeError(`${kind} has no measure ${key}`);
    return found;
  };
  return {
    value,
    stitches: (key, least, share = 1) => Math.max(least, roundHalfUp((share * value(key)) / stitchWidth(gauge))),
    rows: (key, least) => Math.max(least, 2 * roundHalfUp(value(key) / rowHeight(gauge) / 2)),
  };
}

/** The fault of a piece that is larger than a piece may be, or null. */
export function sizeFault(
  across: readonly [key: MeasureKey, stitches: number],
  up: readonly [key: MeasureKey, rows: number],
): StarterFault | null {
  const sizes = [
    { measure: across[0], what: 'stitches', found: across[1], limit: BOUNDS.pieceStitches },
    { measure: up[0], what: 'rows', found: up[1], limit: BOUNDS.pieceRows },
  ] as const;
  const big = sizes.find(({ found, limit }) => found > limit);
  return big ? { ok: false, reason: 'too-big', ...big } : null;
}

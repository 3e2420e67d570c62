import type { Gauge } from '../../units';
import type { Piece } from '../design';
import { back, cardiganLeft, cardiganRight, raglan, roundNeck, vNeck } from './body';
import { countsOf, type Counts } from './counts';
import type { MeasureValues, StartedPiece, StarterFault, StarterKind } from './kinds';
import { outlineOf, type Leg } from './legs';
import { garterSquare, heelFlap, rectangle, shawl, sleeve, strip } from './plain';
import { STARTERS } from './starters';

const DRAWN: Readonly<Record<StarterKind, (counts: Counts) => Leg[] | StarterFault>> = {
  strip,
  rectangle,
  'round-neck': roundNeck,
  'v-neck': vNeck,
  'cardigan-left': cardiganLeft,
  'cardigan-right': cardiganRight,
  back,
  sleeve,
  raglan,
  'heel-flap': heelFlap,
  shawl,
  'garter-square': garterSquare,
};

/** Starters whose halves are not each other's mirror image, or whose halves nobody would shape alike. */
const ONE_SIDED: readonly StarterKind[] = ['strip', 'cardigan-left', 'cardigan-right'];

/**
 * A starter drawn to measure: an ordinary piece, its foot at row 0, corners on whole stitches and rows. Widths are
 * rounded to the nearest stitch (on a piece that mirrors itself to the nearest two), heights to the nearest two rows;
 * a gauge too coarse for a shape gives it as many stitches as it takes.
 *
 * @param values in mm, stitches or rows as the measure has it; what is left out is the usual value
 * @param gauge null for the usual one of this starter; for a strip, for none
 * @param names of edges by id; an edge without one goes by its id
 * @returns the piece, or which measure is at fault and why
 */
export function startPiece(
  kind: StarterKind,
  values: MeasureValues,
  gauge: Gauge | null,
  name: string,
  id: string,
  names: (edge: string) => string | undefined = () => undefined,
): StartedPiece {
  const starter = STARTERS[kind];
  const counts = countsOf(kind, values, gauge ?? starter.usualGauge);
  if ('ok' in counts) return counts;
  const legs = DRAWN[kind](counts);
  if ('ok' in legs) return legs;
  const worked = gauge ?? (starter.gauge ? starter.usualGauge : null);
  const piece: Piece = {
    id,
    name,
    ...(worked ? { gauge: worked } : {}),
    fabric: starter.fabric,
    symmetric: !ONE_SIDED.includes(kind),
    outline: outlineOf(legs, names),
  };
  return { ok: true, piece };
}

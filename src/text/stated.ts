import type { Cause, StatedCheck } from '../pickup';
import type { EdgeNames } from './edgeName';
import { densityLabel, HEADINGS, verdictLabel } from './labels';
import { plainNumber, stretchText } from './numbers';
import type { Voice } from './voice';
import { rowsText } from './words';

/** What a stated count is of: its edge, or `In all`. */
export function statedTitle(check: StatedCheck, names: EdgeNames): string {
  return check.edge ? names(check.edge) : HEADINGS.inAll;
}

/** A stated count in a line: `Front, neck left: 24 stated, 23.5 wanted, 2.3% over: lies flat.` */
export function statedText(check: StatedCheck, names: EdgeNames): string {
  const wanted = check.wanted === null ? `${check.planned} planned` : `${plainNumber(check.wanted)} wanted`;
  const stretch = check.stretch === null ? '' : `, ${stretchText(check.stretch)}`;
  const verdict = check.verdict === null ? '' : `: ${verdictLabel(check.verdict)}`;
  return `${statedTitle(check, names)}: ${check.stated} stated, ${wanted}${stretch}${verdict}.`;
}

/** A count this close to half of what is wanted is called half of it. */
const ALIKE = 0.03;

/** The likely cause of a stated count that is off, in a sentence. */
export function causeText(
  cause: Cause,
  { stated, wanted, planned }: Pick<StatedCheck, 'stated' | 'wanted' | 'planned'>,
  { terms }: Pick<Voice, 'terms'>,
): string {
  switch (cause.kind) {
    case 'openings-counted-as-rows': {
      const half = Math.abs((2 * stated) / (wanted ?? planned) - 1) <= ALIKE;
      const unit = cause.unit === 'chain' || cause.unit === 'ridge' ? `${cause.unit}s` : 'ridges or chains';
      return half
        ? `${stated} is half of what is wanted: a rate for rows was worked into ${unit}, and each of them is two rows.`
        : `${stated} is one for every two rows: ${unit} were counted as rows.`;
    }
    case 'rows-counted-as-openings':
      return `${stated} takes rows for ${cause.unit}s: this edge has one ${cause.unit} for every two rows.`;
    case 'one-from-each':
      return `${stated} is one from each ${cause.unit}, which this edge needs ${stated < (wanted ?? planned) ? 'more' : 'fewer'} than.`;
    case 'body-gauge':
      return `${stated} is what the ${terms.gauge} of the body gives: the band has its own.`;
    case 'reduced-twice':
      return `${stated} takes the draw-in off twice: the count wanted has it already.`;
    case 'lengthened': {
      const rows = rowsText(Math.abs(cause.rows));
      return cause.rows < 0
        ? `${stated} would suit an edge ${rows} shorter: the piece may have been made longer than the pattern has it.`
        : `${stated} would suit an edge ${rows} longer: the piece may have been made shorter than the pattern has it.`;
    }
  }
}

/** The gauge that a stated count implies: `It implies 19.8 stitches to 10 cm in the band.` */
export function impliedText(per10cm: number, { units }: Pick<Voice, 'units'>): string {
  return `It implies ${densityLabel(per10cm, units)} in the band.`;
}

import type { Pickup, RatioUnit, Units } from '../piece';
import type { Agreement, Cause, Misreading, StatedCheck } from '../pickup';
import { MM_PER_INCH } from '../units';
import type { EdgeNames } from './edgeName';
import { HEADINGS, verdictLabel } from './labels';
import { fixedNumber, multipleText, plainNumber, stretchText } from './numbers';
import type { Voice } from './voice';
import { rowsText, stitchesText } from './words';

/** A stated count, or what came out, in the words of a table: what every view and report says of it. */
export interface CheckRow {
  readonly title: string;
  /** What is stated: `24`, `3 of every 4 rows: 84`. */
  readonly stated: string;
  /** What this piece wants, a real number; empty where it is not known. */
  readonly wanted: string;
  readonly planned: string;
  readonly off: string;
  readonly verdict: string;
  readonly implies: string;
  readonly causes: readonly string[];
}

export function checkRow(check: StatedCheck, names: EdgeNames, voice: Pick<Voice, 'terms' | 'units'>): CheckRow {
  const { wanted, planned, stretch, verdict, impliedPer10cm } = check;
  return {
    title: statedTitle(check, names),
    stated: check.ratio ? `${ratioWords(check.ratio)}: ${check.stated}` : `${check.stated}`,
    wanted: wanted === null ? '' : fixedNumber(wanted),
    planned: `${planned}`,
    off: stretch === null ? '' : stretchText(stretch),
    verdict: verdict === null ? '' : verdictLabel(verdict),
    implies: impliedPer10cm === null ? '' : impliedLabel(impliedPer10cm, voice.units),
    causes: check.causes.map((cause) => causeText(cause, check, voice)),
  };
}

/** What a stated count is of: its edge, `In all`, or `What you got`. */
export function statedTitle(check: Pick<StatedCheck, 'what' | 'edge'>, names: EdgeNames): string {
  if (check.what === 'got') return HEADINGS.got;
  return check.edge ? names(check.edge) : HEADINGS.inAll;
}

const UNITS: Readonly<Record<RatioUnit, readonly [one: string, many: string]>> = {
  row: ['row', 'rows'],
  ridge: ['ridge', 'ridges'],
  chain: ['chain', 'chains'],
  stitch: ['stitch', 'stitches'],
};

/** `rows`, `chains`: what a ratio is counted in. */
export function ratioUnitLabel(per: RatioUnit): string {
  return UNITS[per][1];
}

/** `3 of every 4 rows`. */
export function ratioWords({ pick, of, per }: { readonly pick: number; readonly of: number; readonly per: RatioUnit }) {
  return `${pick} of every ${of} ${UNITS[per][of === 1 ? 0 : 1]}`;
}

/** A count this close to half of what is wanted is called half of it. */
const ALIKE = 0.03;

/** The likely cause of a stated count that is off, in a sentence or two with its numbers. */
export function causeText(
  cause: Cause,
  { stated, wanted, planned }: Pick<StatedCheck, 'stated' | 'wanted' | 'planned'>,
  { terms }: Pick<Voice, 'terms'>,
): string {
  const need = wanted ?? planned;
  switch (cause.kind) {
    case 'openings-counted-as-rows': {
      const half = Math.abs((2 * stated) / need - 1) <= ALIKE;
      const unit = cause.unit === 'chain' || cause.unit === 'ridge' ? `${cause.unit}s` : 'ridges or chains';
      return half
        ? `${stated} is half of what is wanted: a rate for rows was worked into ${unit}, and each of them is two rows.`
        : `${stated} is one for every two rows: ${unit} were counted as rows.`;
    }
    case 'rows-counted-as-openings':
      return `${stated} takes rows for ${cause.unit}s: this edge has one ${cause.unit} for every two rows.`;
    case 'one-from-each':
      return `${stated} is one from each ${cause.unit}, which this edge needs ${stated < need ? 'more' : 'fewer'} than.`;
    case 'ratio-misread': {
      const { pick, of } = cause;
      const read = MISREAD[cause.as](pick, of, terms.pickUp);
      return `${stated} is what “${read}” gives. ${pick} of every ${of} means: ${terms.pickUp} ${pick}, skip ${of - pick}.`;
    }
    case 'other-ratio':
      return (
        `This edge wants ${ratioWords(cause)}, or near it: the ratio stated suits another ${terms.gauge}, or an edge ` +
        'with another slope.'
      );
    case 'body-gauge':
      return `${stated} is what the ${terms.gauge} of the body gives: the band has its own.`;
    case 'reduced-twice':
      return `${stated} takes the draw-in off twice: the count wanted has it already.`;
    case 'not-reduced':
      return `${stated} leaves the draw-in out: the count wanted is smaller by that much.`;
    case 'lengthened': {
      const rows = rowsText(Math.abs(cause.rows));
      const edges = cause.edges === undefined ? 'an edge' : `${cause.edges} edges`;
      const inAll = cause.edges === undefined ? '' : ' in all';
      return cause.rows < 0
        ? `${stated} would suit ${edges} ${rows} shorter${inAll}: the piece may have been made longer than the pattern has it.`
        : `${stated} would suit ${edges} ${rows} longer${inAll}: the piece may have been made shorter than the pattern has it.`;
    }
    case 'widened':
      return (
        `${stated} would suit an edge ${stitchesText(Math.abs(cause.stitches))} ` +
        `${cause.stitches < 0 ? 'narrower' : 'wider'}: the pattern may have another size in mind.`
      );
    case 'other-size':
      return `No one slip explains ${stated} where ${plainNumber(need)} is wanted: the pattern may have another size, edge or ${terms.gauge} in mind.`;
  }
}

/** How a misread ratio is worked, by its kind. */
const MISREAD: Readonly<Record<Misreading, (pick: number, of: number, pickUp: string) => string>> = {
  'skip-of': (pick, of, pickUp) => `${pickUp} ${pick}, skip ${of}`,
  'turned-round': (pick, of, pickUp) => `${pickUp} ${of - pick}, skip ${pick}`,
  'of-then-skip': (_pick, of, pickUp) => `${pickUp} ${of}, skip 1`,
  'one-of': (_pick, of, pickUp) => `${pickUp} 1, skip ${of - 1}`,
};

/** The gauge that a stated count implies: `19.8 to 10 cm`, in inches `5.03 to the inch`. */
export function impliedLabel(per10cm: number, units: Units): string {
  return units === 'in'
    ? `${plainNumber((per10cm * MM_PER_INCH) / 100, 2)} to the inch`
    : `${plainNumber(per10cm)} to 10 cm`;
}

/** What of a pattern's statement agrees with itself, in a sentence. */
export function agreementText(agreement: Agreement, names: EdgeNames): string {
  switch (agreement.kind) {
    case 'sections-sum':
      return `The sections stated add up to the ${agreement.sum} ${agreement.stated === 'total' ? 'stated in all' : 'of this plan'}.`;
    case 'edges-sum':
      return `The counts stated edge by edge add up to the ${agreement.sum} stated in all.`;
    case 'total-fits':
      return `The total stated, ${agreement.total}, is ${multipleText(agreement.multiple, agreement.plus)}, as the band's pattern needs.`;
    case 'sides-alike':
      return `${names(agreement.left)} and its mirror image are stated alike, with ${agreement.count} each.`;
  }
}

/** Where the verdicts change: `Lies flat within 3%, …`. */
export function thresholdsText({ slight, strong }: Pickup['flat']): string {
  return (
    `Up to ${plainNumber(slight, 2)}% off lies flat, up to ${plainNumber(strong, 2)}% is slightly tight or loose, more ` +
    'puckers or ruffles.'
  );
}

import type { Fabric, Finish, Rate, Selvage, Units } from '../piece';
import type { OpeningKind, Verdict } from '../pickup';
import type { EdgeShape } from '../shaping';
import { MM_PER_INCH } from '../units';
import { plainNumber } from './numbers';
import type { Terms } from './terms';
import { counted } from './words';

/** Over which gauges are told where lengths are in inches, mm. */
const FOUR_INCHES = 4 * MM_PER_INCH;

const SHAPES: Readonly<Record<EdgeShape, string>> = {
  horizontal: 'horizontal',
  vertical: 'vertical',
  sloped: 'sloped',
  curved: 'curved',
};

export function shapeLabel(shape: EdgeShape): string {
  return SHAPES[shape];
}

/** What the stitches of a horizontal edge end in. */
export function finishLabel(finish: Finish, terms: Terms): string {
  const labels: Record<Finish, string> = {
    'cast-on': 'cast on',
    'bound-off': terms.boundOff,
    live: 'held stitches',
    provisional: 'provisional cast-on',
  };
  return labels[finish];
}

/** What a side edge is made of. */
export function selvageLabel(selvage: Selvage): string {
  return { plain: 'plain', slipped: 'slipped', garter: 'garter' }[selvage];
}

export function fabricLabel(fabric: Fabric, terms: Terms): string {
  const labels: Record<Fabric, string> = {
    stockinette: terms.stockinette,
    'reverse-stockinette': terms.reverseStockinette,
    garter: 'garter stitch',
    seed: terms.seed,
    rib: 'rib',
  };
  return labels[fabric];
}

const OPENINGS: Readonly<Record<OpeningKind, readonly [one: string, many: string]>> = {
  stitch: ['stitch', 'stitches'],
  row: ['row', 'rows'],
  chain: ['chain', 'chains'],
  ridge: ['ridge', 'ridges'],
  live: ['held stitch', 'held stitches'],
};

const SECOND_OPENINGS: Readonly<Record<OpeningKind, readonly [one: string, many: string]>> = {
  stitch: ['step hole', 'step holes'],
  row: ['step hole', 'step holes'],
  chain: ['gap between chains', 'gaps between chains'],
  ridge: ['hollow between ridges', 'hollows between ridges'],
  live: ['half loop', 'half loops'],
};

/** What one opening of an edge is called; `second` for a place brought in only when the first ones are too few. */
export function openingLabel(kind: OpeningKind, second = false): string {
  return (second ? SECOND_OPENINGS : OPENINGS)[kind][0];
}

/** `33 rows`, `1 chain`, `31 gaps between chains`. */
export function openingsLabel(count: number, kind: OpeningKind, second = false): string {
  return counted(count, ...(second ? SECOND_OPENINGS : OPENINGS)[kind]);
}

/** A verdict in a table or a sentence: `lies flat`, `will pucker`. */
export function verdictLabel(verdict: Verdict): string {
  return verdict;
}

/** A verdict as the end of a sentence: `lies flat`, `is slightly tight`, `will pucker`. */
export function verdictClause(verdict: Verdict): string {
  return verdict === 'slightly tight' || verdict === 'slightly loose' ? `is ${verdict}` : verdict;
}

/** How an edge gets its count: `one each`, `by length`, `3 of every 4`, `24, as given`. */
export function rateLabel(rate: Rate): string {
  switch (rate.kind) {
    case 'each':
      return 'one each';
    case 'length':
      return 'by length';
    case 'ratio':
      return `${rate.pick} of every ${rate.of}`;
    case 'count':
      return `${rate.count}, as given`;
  }
}

export function unitsLabel(units: Units): string {
  return units === 'in' ? 'inches' : 'centimetres';
}

/** `22 stitches and 30 rows to 10 cm`, in inches `to 4 in`: a gauge as a ball band says it. */
export function gaugeLabel(
  gauge: { readonly stitches: number; readonly rows: number; readonly over: number },
  units: Units,
): string {
  const over = units === 'in' ? FOUR_INCHES : 100;
  const stitches = plainNumber((gauge.stitches * over) / gauge.over, 2);
  const rows = plainNumber((gauge.rows * over) / gauge.over, 2);
  return `${stitches} stitches and ${rows} rows to ${units === 'in' ? '4 in' : '10 cm'}`;
}

/** `19.8 stitches to 10 cm`, in inches `to 4 in`: how close stitches lie, given over 10 cm. */
export function densityLabel(per10cm: number, units: Units): string {
  const over = units === 'in' ? FOUR_INCHES : 100;
  return `${plainNumber((per10cm * over) / 100)} stitches to ${units === 'in' ? '4 in' : '10 cm'}`;
}

/** Column heads and headings of reports. */
export const HEADINGS = {
  piece: 'Piece',
  edge: 'Edge',
  shape: 'Shape',
  made: 'Made of',
  stitches: 'Stitches',
  rows: 'Rows',
  edgeLength: 'Edge',
  joinLength: 'Join',
  openings: 'Places',
  shaping: 'Shaping',
  length: 'Length',
  wanted: 'Wanted',
  pickUp: 'Pick up',
  stretch: 'Off by',
  rate: 'Rate',
  section: 'Section',
  running: 'Running',
  onNeedle: 'After the first row',
  stated: 'Stated',
  verdict: 'Verdict',
  planned: 'Planned',
  implies: 'Implies',
  got: 'What you got',
  instructions: 'Instructions',
  sections: 'Sections',
  notes: 'Notes',
  check: 'Stated counts',
  finished: 'Finished width',
  inAll: 'In all',
  sums: 'Sums',
} as const;

import type { Gauge, Rows } from '../units';
import { BOUNDS } from './bounds';
import type { Design, Rate } from './design';
import { quickFault, rowTarget } from './quickFaults';
import { quickLength, quickRows, type PlaceQuestion, type QuickFault, type RowQuestion } from './quickQuestion';
import { begunDesign } from './starters/begun';
import type { StarterWords } from './starters/kinds';
import { outlineOf, type Leg } from './starters/legs';
import { stripLegs } from './starters/plain';

/** A strip is this many stitches wide, or this many rows high, beside the edge that is asked about. */
const BESIDE = 10;
/** Stitches to a row of the strip's fabric: a bare strip is drawn 3 to 4, garter's ridges are as high as its stitches. */
const SHAPE = { plain: 3 / 4, garter: 1 / 2 };

export interface QuickDesign {
  readonly ok: true;
  readonly design: Design;
  /**
   * False where only the length of the edge is known: the design then has a place for each stitch, so that sections and
   * lengths can be planned, but its places are not those of the edge.
   */
  readonly hasOpenings: boolean;
}

/** The design of one strip that a question about an edge comes to, or what is wrong with the question. */
export function placeDesign(question: PlaceQuestion, words: StarterWords): QuickDesign | QuickFault {
  const fault = quickFault(question);
  if (fault) return fault;
  const { place, over, unit, per10cm, sections, spread } = question;
  const length = quickLength(question);
  const band = length === null ? null : (100 * place) / length;
  const hasOpenings = unit !== 'length' || per10cm !== null;
  const across = unit === 'stitch' || !hasOpenings;
  const count = unit === 'stitch' ? over : hasOpenings ? edgeRows(question) : place;
  const legs = across
    ? stripLegs(count, BESIDE, 'plain')
    : stripLegs(BESIDE, count, unit === 'ridge' ? 'garter' : unit === 'chain' ? 'slipped' : 'plain');
  const fabric = unit === 'ridge' ? 'garter' : 'stockinette';
  const shape = unit === 'ridge' ? SHAPE.garter : SHAPE.plain;
  const dense = length === null ? 0 : (100 * count) / length;
  const design = quickDesign(words, legs, {
    edge: across ? 'bound-off' : 'edge',
    fabric,
    gauge: length === null ? null : across ? gaugeOf(dense, dense / shape) : gaugeOf(shape * dense, dense),
    bandGauge: band === null ? null : gaugeOf(band, band / SHAPE.plain),
    // By its length in every case: a garter edge, or a bound-off one, would else take one from each place.
    rate: band === null ? null : { kind: 'length' },
    target: place,
    joined: false,
    spread,
    sections,
  });
  return { ok: true, design, hasOpenings };
}

/** The design of a row of held stitches that is increased or decreased, or what is wrong with the question. */
export function rowDesign(question: RowQuestion, words: StarterWords): QuickDesign | QuickFault {
  const fault = quickFault(question);
  if (fault) return fault;
  const design = quickDesign(words, stripLegs(question.have, BESIDE, 'plain', 'live'), {
    edge: 'bound-off',
    fabric: 'stockinette',
    gauge: null,
    bandGauge: null,
    rate: { kind: 'each' },
    target: rowTarget(question),
    joined: question.round,
    spread: 'even',
    sections: null,
  });
  return { ok: true, design, hasOpenings: true };
}

/** Whole rows of the edge: as counted, or as many as its length has. */
function edgeRows({ over, unit, per10cm }: PlaceQuestion): Rows {
  if (unit !== 'length') return over * quickRows(unit);
  return Math.max(1, Math.round((over * (per10cm ?? 0)) / 100));
}

/** Over 10 cm, kept to what a gauge may be: the side that nobody asked about is only drawn. */
function gaugeOf(stitches: number, rows: number): Gauge {
  const { stitches: wide, rows: high } = BOUNDS.gauge;
  return { stitches: kept(stitches, wide), rows: kept(rows, high), over: 100 };
}

function kept(value: number, [least, most]: readonly [number, number]): number {
  return Math.min(most, Math.max(least, value));
}

interface Strip {
  readonly edge: string;
  readonly fabric: 'stockinette' | 'garter';
  readonly gauge: Gauge | null;
  readonly bandGauge: Gauge | null;
  readonly rate: Rate | null;
  readonly target: number;
  readonly joined: boolean;
  readonly spread: 'even' | 'grouped';
  readonly sections: number | null;
}

function quickDesign(words: StarterWords, legs: readonly Leg[], strip: Strip): Design {
  const at = { piece: 'strip', edge: strip.edge };
  const outline = outlineOf(legs, (id: string) => words.edges?.(id));
  const gauge = strip.gauge ? { gauge: strip.gauge } : {};
  const piece = { id: at.piece, name: words.piece, ...gauge, fabric: strip.fabric, symmetric: false, outline };
  const band = {
    id: 'band',
    name: words.pickups('band'),
    along: [at],
    joined: strip.joined,
    band: strip.bandGauge ? { gauge: { ...strip.bandGauge } } : {},
    rates: strip.rate ? [{ ...at, rate: strip.rate }] : [],
    target: strip.target,
    spread: strip.spread,
    ...(strip.sections === null ? {} : { sections: { by: 'length' as const, parts: strip.sections } }),
  };
  return begunDesign(words, piece, [band]);
}

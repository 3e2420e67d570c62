import type { Gauge } from '../units';
import type { Design, Edge, Pickup, Piece } from './design';
import { DEFAULT_HANDOUT, type Handout } from './handout';
import type { RawDesign, RawHandout, RawPickup, RawPiece } from './schema';
import { titleOf } from './title';

/** Fields of `raw` in their order, then those of `defaults` that it does not have. */
function filled<R extends object, D extends object>(raw: R, defaults: D): R & D {
  const wanting = Object.entries(defaults).filter(([key]) => !Object.hasOwn(raw, key));
  return { ...raw, ...Object.fromEntries(wanting) } as R & D;
}

type RawGauge = NonNullable<RawPiece['gauge']>;

/** A null gauge says "none", and goes. */
function withGauge<R extends { gauge?: RawGauge | null | undefined }>(raw: R): Omit<R, 'gauge'> & { gauge?: Gauge } {
  const { gauge, ...rest } = raw;
  // Spread over `raw`, so that the gauge keeps its place among the fields.
  return gauge ? { ...raw, gauge: filled(gauge, { over: 100 }) } : rest;
}

function edgeOf(raw: RawPiece['outline'][number]): Edge {
  if (raw.path !== 'stepped') return raw;
  return { ...raw, steps: raw.steps.map((step) => filled(step, { times: 1 })) };
}

function pieceOf(raw: RawPiece): Piece {
  const piece = { ...withGauge(raw), outline: raw.outline.map(edgeOf) };
  return filled(piece, { name: titleOf(raw.id), fabric: 'stockinette', symmetric: false } as const);
}

const BAND = { fabric: 'stockinette', multiple: 1, plus: 0, drawIn: 0 } as const;

const PICKUP = {
  joined: false,
  measure: 'edge',
  measured: [],
  inset: 1,
  band: {},
  rates: [],
  target: null,
  spread: 'even',
  stated: [],
  statedTotal: null,
  statedSections: null,
  got: null,
  flat: {},
  stepHoles: false,
  halfLoop: false,
  garterAt: 'bump',
} as const;

/** Where landmarks make the sections no number need be given, and none is read. */
const SECTIONS = { by: 'length', parts: 2, counts: 'exact' } as const;

/** Ends of two to four stitches are usual: Knitting Magic, "Buttonholes", https://www.knittingmagic.biz. */
const BUTTONHOLES = { stitches: 2, from: 3, to: 3 } as const;

const FIRST_ROW = { by: 'whole', clear: false, rib: false } as const;

function pickupOf(raw: RawPickup): Pickup {
  const pickup = filled(raw, { name: titleOf(raw.id), ...PICKUP });
  const whole = {
    ...pickup,
    along: raw.along.map((stretch) => filled(stretch, { backwards: false, part: [0, 1] as const })),
    band: filled(withGauge(raw.band ?? {}), BAND),
    flat: filled(raw.flat ?? {}, { slight: 3, strong: 8 }),
  };
  const { sections, ...undivided } = whole;
  const divided = sections ? { ...whole, sections: filled(sections, SECTIONS) } : undivided;
  const { buttonholes, ...closed } = divided;
  const holed = buttonholes ? { ...divided, buttonholes: filled(buttonholes, BUTTONHOLES) } : closed;
  const { firstRow, ...even } = holed;
  return firstRow ? { ...holed, firstRow: filled(firstRow, FIRST_ROW) } : even;
}

function handoutOf(raw: RawHandout): Handout {
  const handout = filled(raw, DEFAULT_HANDOUT);
  return { ...handout, gauges: handout.gauges.map((gauge) => filled(gauge, { over: 100 })) };
}

/**
 * The document with every default filled in. Finish and selvage stay as they are, since theirs depend on which way an
 * edge faces (outline.ts). Fields keep their order, defaults come behind them; unknown fields stay.
 */
export function fillDesign(raw: RawDesign): Design {
  const pieces = raw.pieces.map(pieceOf);
  const name = pieces[0]?.name ?? '';
  const design = filled(raw, { name, units: 'cm', terms: 'US', hand: 'right', pickups: [] } as const);
  const whole = { ...design, pieces, pickups: design.pickups.map(pickupOf) };
  const { handout, ...unprinted } = whole;
  return handout ? { ...whole, handout: handoutOf(handout) } : unprinted;
}

import * as v from 'valibot';
import { BOUNDS } from './bounds';
import { HANDOUT_BLOCKS } from './handout';

/**
 * The shape of a raw document: types, choices and bounds of single values. What takes two values to judge (ids, the
 * outline, references) is in check.ts. Objects are loose, since fields of other hands are kept.
 */

/**
 * An object that keeps fields it does not know. It is typed as if it had no others, since an index signature would
 * swallow the types of the known ones.
 */
function record<const E extends v.ObjectEntries>(entries: E) {
  return v.looseObject(entries) as unknown as v.ObjectSchema<E, undefined>;
}

/** A record without required fields, for which a list could pass too. */
function looseRecord<const E extends v.ObjectEntries>(entries: E) {
  return v.pipe(
    v.custom<unknown>((value) => !Array.isArray(value)),
    record(entries),
  );
}

function optionalRecord<const E extends v.ObjectEntries>(entries: E) {
  return v.optional(looseRecord(entries));
}

const number = () => v.pipe(v.number(), v.finite());
const between = ([min, max]: readonly [number, number]) => v.pipe(number(), v.minValue(min), v.maxValue(max));
const whole = (min: number, max: number) => v.pipe(number(), v.integer(), v.minValue(min), v.maxValue(max));
const above = (min: number, max: number) => v.pipe(number(), v.gtValue(min), v.maxValue(max));
const count = () => whole(0, BOUNDS.count);
const text = () => v.string();
const yesNo = () => v.optional(v.boolean());

const gauge = record({
  stitches: number(),
  rows: number(),
  over: v.optional(between(BOUNDS.over)),
});

const fabric = v.picklist(['stockinette', 'reverse-stockinette', 'garter', 'seed', 'rib']);

const edgeBase = {
  id: text(),
  name: v.optional(text()),
  from: v.strictTuple([number(), number()]),
  finish: v.optional(v.picklist(['cast-on', 'bound-off', 'live', 'provisional'])),
  selvage: v.optional(v.picklist(['plain', 'slipped', 'garter'])),
};

const step = record({
  stitches: whole(-BOUNDS.pieceStitches, BOUNDS.pieceStitches),
  every: whole(1, BOUNDS.pieceRows),
  times: v.optional(whole(1, BOUNDS.pieceRows)),
});

const edge = v.variant('path', [
  record({ ...edgeBase, path: v.literal('straight') }),
  record({
    ...edgeBase,
    path: v.literal('curve'),
    handles: v.strictTuple([v.strictTuple([number(), number()]), v.strictTuple([number(), number()])]),
  }),
  record({ ...edgeBase, path: v.literal('stepped'), steps: v.pipe(v.array(step), v.minLength(1)) }),
]);

const piece = record({
  id: text(),
  name: v.optional(text()),
  gauge: v.nullish(gauge),
  fabric: v.optional(fabric),
  symmetric: yesNo(),
  outline: v.pipe(v.array(edge), v.minLength(BOUNDS.edges[0]), v.maxLength(BOUNDS.edges[1])),
});

const ref = { piece: text(), edge: text() };

const rate = v.variant('kind', [
  record({ kind: v.literal('each') }),
  record({ kind: v.literal('length') }),
  record({ kind: v.literal('ratio'), pick: whole(1, BOUNDS.count), of: whole(1, BOUNDS.count) }),
  record({ kind: v.literal('count'), count: count() }),
]);

const part = between([0, 1]);

const band = optionalRecord({
  gauge: v.nullish(gauge),
  fabric: v.optional(fabric),
  multiple: v.optional(whole(1, BOUNDS.count)),
  plus: v.optional(count()),
  rows: v.optional(whole(0, BOUNDS.pieceRows)),
  drawIn: v.optional(between(BOUNDS.drawIn)),
});

const statedRatio = record({
  ...ref,
  pick: whole(1, BOUNDS.count),
  of: whole(1, BOUNDS.count),
  per: v.optional(v.picklist(['row', 'ridge', 'chain', 'stitch'])),
});

/** A hole at the very end of a band would have no stitch to stop it. */
const end = () => v.optional(whole(1, BOUNDS.count));

const buttonholes = record({
  holes: whole(BOUNDS.holes[0], BOUNDS.holes[1]),
  stitches: v.optional(whole(BOUNDS.holeStitches[0], BOUNDS.holeStitches[1])),
  from: end(),
  to: end(),
  rib: yesNo(),
});

const firstRow = record({ by: v.optional(v.picklist(['whole', 'sections'])), clear: yesNo(), rib: yesNo() });

const parts = whole(BOUNDS.parts[0], BOUNDS.parts[1]);
const counts = v.optional(v.picklist(['exact', 'same']));

/** By length unless it says otherwise; with landmarks alone the number of parts is ignored, whatever it is. */
const sections = v.variant('by', [
  record({ by: v.optional(v.literal('length')), parts, counts }),
  record({ by: v.literal('both'), parts, counts }),
  record({ by: v.literal('landmarks'), parts: v.optional(number()), counts }),
]);

const pickup = record({
  id: text(),
  name: v.optional(text()),
  along: v.pipe(
    v.array(record({ ...ref, backwards: yesNo(), part: v.optional(v.strictTuple([part, part])) })),
    v.minLength(BOUNDS.stretches[0]),
    v.maxLength(BOUNDS.stretches[1]),
  ),
  joined: yesNo(),
  measure: v.optional(v.picklist(['edge', 'join'])),
  measured: v.optional(v.array(record({ ...ref, mm: above(0, BOUNDS.tape) }))),
  inset: v.optional(v.picklist([1, 0.5, 0])),
  band,
  rates: v.optional(v.array(record({ ...ref, rate }))),
  target: v.nullish(whole(2, BOUNDS.count)),
  spread: v.optional(v.picklist(['even', 'grouped'])),
  sections: v.nullish(sections),
  stated: v.optional(v.array(record({ ...ref, count: count() }))),
  statedRatios: v.optional(v.array(statedRatio)),
  statedTotal: v.nullish(count()),
  statedSections: v.nullish(v.array(count())),
  got: v.nullish(count()),
  flat: optionalRecord({ slight: v.optional(between(BOUNDS.flat)), strong: v.optional(between(BOUNDS.flat)) }),
  stepHoles: yesNo(),
  halfLoop: yesNo(),
  garterAt: v.optional(v.picklist(['bump', 'inside'])),
  buttonholes: v.nullish(buttonholes),
  firstRow: v.nullish(firstRow),
});

const handout = looseRecord({
  paper: v.optional(v.picklist(['A4', 'Letter'])),
  orientation: v.optional(v.picklist(['portrait', 'landscape'])),
  diagram: v.optional(v.picklist(['fitted', 'true-size'])),
  version: v.optional(v.picklist(['sheet', 'exercise', 'answers'])),
  ink: v.optional(v.picklist(['colour', 'black'])),
  note: v.optional(v.pipe(text(), v.maxLength(BOUNDS.note))),
  blocks: v.optional(v.array(v.picklist(HANDOUT_BLOCKS))),
  gauges: v.optional(v.pipe(v.array(gauge), v.maxLength(BOUNDS.handoutGauges))),
});

export const designSchema = record({
  format: v.literal('edgewise'),
  version: v.literal(1),
  name: v.optional(text()),
  units: v.optional(v.picklist(['cm', 'in'])),
  terms: v.optional(v.picklist(['US', 'UK'])),
  hand: v.optional(v.picklist(['right', 'left'])),
  pieces: v.pipe(v.array(piece), v.minLength(BOUNDS.pieces[0]), v.maxLength(BOUNDS.pieces[1])),
  pickups: v.optional(v.pipe(v.array(pickup), v.maxLength(BOUNDS.pickups))),
  handout: v.nullish(handout),
});

export type RawDesign = v.InferOutput<typeof designSchema>;
export type RawPiece = v.InferOutput<typeof piece>;
export type RawPickup = v.InferOutput<typeof pickup>;
export type RawHandout = v.InferOutput<typeof handout>;

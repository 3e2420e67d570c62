import { needleSteps, type NeedleStep } from './needleSteps';
import type { PickupPlan } from './plan';
import { PlanError } from './problems';
import { openingsUpTo, plannedBefore, replanFrom, replanned, type Replan } from './replan';

/** What the knitter had on the needle at some place where the plan has something else, and how it is made good. */
export interface Miscount {
  /** So many openings lay behind. */
  readonly opening: number;
  readonly onNeedle: number;
  readonly way: 'next' | 'rest';
}

/** What the plan was when the place was noted, so that a changed one is recognised. */
export interface NotedPlan {
  /** Signatures of the plan, and of the openings that lie behind as they were worked. */
  readonly whole: string;
  readonly done: string;
  /** The marker passed last, counted from 1, 0 for none, with what was on the needle there, and the edge before it. */
  readonly marker: number;
  readonly atMarker: number;
  readonly edge: string;
  /** How many sections there were. */
  readonly parts: number;
  readonly onNeedle: number;
}

/** Where a knitter is in a pick-up: plain data that can be kept. */
export interface NeedlePlace {
  readonly pickup: string;
  /** Openings that lie behind; one more once the first row is worked too. */
  readonly opening: number;
  /** Growing by their openings. */
  readonly miscounts: readonly Miscount[];
  readonly noted: NotedPlan;
}

/** The pick-up as it is worked, with the present step. */
export interface NeedleWork {
  /** As it stands after all miscounts. */
  readonly plan: PickupPlan;
  readonly steps: readonly NeedleStep[];
  /** Index of the step to be done now; their number for the first row, one more when all is done. */
  readonly at: number;
  readonly onNeedle: number;
}

/** What became of a place when its design was changed. */
export type Resumed =
  | { readonly kind: 'as-left' }
  | { readonly kind: 'rest-changed' }
  | { readonly kind: 'from-marker'; readonly marker: number; readonly onNeedle: number; readonly planned: number }
  | { readonly kind: 'lost'; readonly marker: number; readonly onNeedle: number };

/** The start of a pick-up. */
export function needlesStart(plan: PickupPlan): NeedlePlace {
  return placed(plan, 0, []);
}

/** The steps of a pick-up from a place on. @throws PlanError where its miscounts do not belong to this plan */
export function needleWork(plan: PickupPlan, { opening, miscounts }: Pick<NeedlePlace, 'opening' | 'miscounts'>) {
  const standing = standingPlan(plan, miscounts);
  const length = standing.points.length;
  const steps = needleSteps(standing, [...miscounts.map((one) => one.opening), opening]);
  const found = steps.findIndex(({ from }) => from === opening);
  const at = opening > length ? steps.length + 1 : found < 0 ? steps.length : found;
  const onNeedle = opening > length ? standing.target : plannedBefore(standing, opening);
  return { plan: standing, steps, at, onNeedle } satisfies NeedleWork;
}

/** The place after the present step; at the end it stays. */
export function needlesOn(plan: PickupPlan, place: NeedlePlace): NeedlePlace {
  const { steps, at } = needleWork(plan, place);
  return placed(plan, steps[at]?.to ?? plan.points.length + 1, place.miscounts);
}

/** The place one step back; at the start it stays. A miscount further on is kept, for it may still be so. */
export function needlesBack(plan: PickupPlan, place: NeedlePlace): NeedlePlace {
  const { steps, at } = needleWork(plan, place);
  return placed(plan, at > steps.length ? plan.points.length : (steps[at - 1]?.from ?? 0), place.miscounts);
}

/**
 * The rest as it would be planned again from the present place. What was said of this place or of later ones before is
 * taken back first.
 * @throws PlanError when the first row can't reach the target
 */
export function needlesReplan(plan: PickupPlan, place: NeedlePlace, onNeedle: number, way: 'next' | 'rest'): Replan {
  return replanFrom(standingPlan(plan, earlier(place)), behind(plan, place), onNeedle, way);
}

/**
 * The place with another count on the needle than planned.
 * @throws PlanError when the first row can't reach the target
 */
export function needlesCorrected(
  plan: PickupPlan,
  place: NeedlePlace,
  onNeedle: number,
  way: 'next' | 'rest',
): NeedlePlace {
  const opening = behind(plan, place);
  const asPlanned = needlesReplan(plan, place, onNeedle, way).planned === onNeedle;
  return placed(plan, opening, [...earlier(place), ...(asPlanned ? [] : [{ opening, onNeedle, way }])]);
}

/**
 * Finds a kept place in a plan that may have changed since: the very place where all that lies behind is as it was,
 * else the marker passed last where there still is one on the same edge, else the start. What is on the needle is a
 * fact: where the plan now has another count at that marker, the rest is planned again.
 */
export function needlesResumed(
  plan: PickupPlan,
  place: NeedlePlace,
): { readonly place: NeedlePlace; readonly resumed: Resumed } {
  const { opening, miscounts, noted } = place;
  if (noted.whole === wholeSignature(plan)) return { place, resumed: { kind: 'as-left' } };
  const start = needlesStart(plan);
  if (opening === 0) return { place: start, resumed: { kind: 'as-left' } };
  const past = miscounts.filter((one) => one.opening <= opening);
  const kept = tried(() => placed(plan, opening, past));
  if (kept?.noted.done === noted.done && kept.noted.onNeedle === noted.onNeedle) {
    return { place: kept, resumed: { kind: 'rest-changed' } };
  }
  const { marker, atMarker: onNeedle } = noted;
  const from = openingsUpTo(plan, marker);
  const same = marker > 0 && plan.sections.length === noted.parts && edgeBefore(plan, from) === noted.edge;
  const planned = plannedBefore(plan, from);
  const again = onNeedle === planned ? [] : [{ opening: from, onNeedle, way: 'rest' as const }];
  const moved = same ? tried(() => placed(plan, from, again)) : null;
  if (moved) return { place: moved, resumed: { kind: 'from-marker', marker, onNeedle, planned } };
  return { place: start, resumed: { kind: 'lost', marker, onNeedle: noted.onNeedle } };
}

/** The plan after all that was said of what is on the needle. */
function standingPlan(plan: PickupPlan, miscounts: readonly Miscount[]): PickupPlan {
  return miscounts.reduce(
    (standing, { opening, onNeedle, way }) => replanned(standing, replanFrom(standing, opening, onNeedle, way)),
    plan,
  );
}

function earlier({ opening, miscounts }: NeedlePlace): Miscount[] {
  return miscounts.filter((one) => one.opening < opening);
}

/** How many openings lie behind. */
function behind(plan: PickupPlan, { opening }: NeedlePlace): number {
  return Math.min(opening, plan.points.length);
}

function placed(plan: PickupPlan, opening: number, miscounts: readonly Miscount[]): NeedlePlace {
  const standing = standingPlan(plan, miscounts);
  const done = Math.min(opening, standing.points.length);
  const passed = standing.sections.slice(0, -1).filter(({ n }) => openingsUpTo(standing, n) <= done);
  return {
    pickup: plan.pickup.id,
    opening,
    miscounts,
    noted: {
      whole: wholeSignature(plan),
      done: signature(standing, done),
      marker: passed.length,
      atMarker: passed.at(-1)?.running ?? 0,
      edge: passed.length > 0 ? edgeBefore(standing, openingsUpTo(standing, passed.length)) : '',
      parts: plan.sections.length,
      onNeedle: plannedBefore(standing, done),
    },
  };
}

function edgeBefore(plan: PickupPlan, from: number): string {
  const point = plan.points[from - 1];
  return point ? edgeKey(plan, point.edge) : '';
}

function edgeKey(plan: PickupPlan, edge: number): string {
  const { piece, measured } = plan.edges[edge]!;
  return JSON.stringify([piece.id, measured.id]);
}

/** A whole plan as it is worked: its openings, and what the first row makes of them. */
function wholeSignature(plan: PickupPlan): string {
  return `${signature(plan, plan.points.length)}-${plan.target}`;
}

/**
 * Says in a few letters which of the first `end` openings are used, and on which edges they lie: FNV-1a, 32 bits, over
 * their description (draft-eastlake-fnv, https://datatracker.ietf.org/doc/html/draft-eastlake-fnv), and their number.
 */
function signature(plan: PickupPlan, end: number): string {
  let hash = 0x811c9dc5;
  let edge = -1;
  const take = (code: number) => (hash = Math.imul(hash ^ code, 0x01000193));
  for (let i = 0; i < end; i++) {
    const point = plan.points[i]!;
    if (point.edge !== edge) {
      edge = point.edge;
      for (const letter of edgeKey(plan, edge)) take(letter.codePointAt(0)!);
    }
    take(point.n === null ? 0 : 1);
    take(point.section);
  }
  return `${end}-${(hash >>> 0).toString(36)}`;
}

function tried(work: () => NeedlePlace): NeedlePlace | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof PlanError) return null;
    throw error;
  }
}

/** A place out of a store, where nobody knows what lies; null where it is none. */
export function readNeedlePlace(value: unknown): NeedlePlace | null {
  if (!isRecord(value) || typeof value.pickup !== 'string' || !isCount(value.opening)) return null;
  const { miscounts, noted } = value;
  if (!Array.isArray(miscounts) || !isRecord(noted)) return null;
  const isMiscount = (one: unknown) =>
    isRecord(one) && isCount(one.opening) && isCount(one.onNeedle) && (one.way === 'next' || one.way === 'rest');
  const counts = [noted.marker, noted.atMarker, noted.parts, noted.onNeedle];
  const words = [noted.whole, noted.done, noted.edge];
  const whole = miscounts.every(isMiscount) && counts.every(isCount) && words.every((word) => typeof word === 'string');
  return whole ? (value as unknown as NeedlePlace) : null;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

import type { DesignPlan, Note, PickupPlan, StatedCheck } from '../pickup';
import { edgeNames, shownName, type EdgeNames } from './edgeName';
import { HEADINGS, verdictLabel } from './labels';
import { rowOrRound } from './needle';
import { noteText } from './notes';
import { fixedNumber, stretchText } from './numbers';
import { causeText, impliedText, statedTitle } from './stated';
import { tableText, type Column } from './table';
import { voiceOf, type Voice } from './voice';
import { counted } from './words';
import { wrapped } from './wrap';

const COLUMNS: readonly Column[] = [
  { head: HEADINGS.edge, align: 'left' },
  { head: HEADINGS.stated, align: 'right' },
  { head: HEADINGS.wanted, align: 'right' },
  { head: HEADINGS.planned, align: 'right' },
  { head: HEADINGS.stretch, align: 'right' },
  { head: HEADINGS.verdict, align: 'left' },
];

/** Notes that say something of what a pattern states, or of what came out. */
const OF_THE_PATTERN: readonly Note['kind'][] = [
  'sections-do-not-sum',
  'stated-edges-do-not-sum',
  'total-off-multiple',
  'sides-differ',
  'matches-but-stretched',
  'got',
];

/** What a check found, as data. */
export interface CheckDocument {
  readonly format: 'edgewise-check';
  readonly version: 1;
  readonly design: string;
  readonly flat: boolean;
  readonly pickups: readonly {
    readonly id: string;
    readonly name: string;
    readonly flat: boolean;
    readonly stated: readonly {
      readonly piece: string | null;
      readonly edge: string | null;
      readonly count: number;
      readonly planned: number;
      readonly wanted: number | null;
      readonly stretch: number | null;
      readonly verdict: StatedCheck['verdict'];
      readonly impliedPer10cm: number | null;
      readonly causes: readonly string[];
    }[];
    readonly notes: readonly { readonly kind: string; readonly text: string }[];
  }[];
}

/** @param isFlat tells whether nothing stated for a pick-up puckers, ruffles or contradicts itself */
export function checkDocument(
  plan: DesignPlan,
  isFlat: (pickup: PickupPlan) => boolean,
  changes: Partial<Voice> = {},
): CheckDocument {
  const voice = voiceOf(plan.design, changes);
  const names = edgeNames(plan.design);
  return {
    format: 'edgewise-check',
    version: 1,
    design: plan.design.name,
    flat: plan.pickups.every(isFlat),
    pickups: plan.pickups.map((pickup) => ({
      id: pickup.pickup.id,
      name: pickup.pickup.name,
      flat: isFlat(pickup),
      stated: pickup.stated.map((check) => ({
        piece: check.edge?.piece ?? null,
        edge: check.edge?.edge ?? null,
        count: check.stated,
        planned: check.planned,
        wanted: check.wanted,
        stretch: check.stretch,
        verdict: check.verdict,
        impliedPer10cm: check.impliedPer10cm,
        causes: check.causes.map((cause) => causeText(cause, check, voice)),
      })),
      notes: patternNotes(pickup).map((note) => ({
        kind: note.kind,
        text: noteText(note, names, voice, rowOrRound(pickup)),
      })),
    })),
  };
}

/**
 * What a pattern states, beside what each piece needs, in plain text, and in its last line whether all lies flat.
 *
 * @param isFlat tells whether nothing stated for a pick-up puckers, ruffles or contradicts itself
 */
export function checkReport(
  plan: DesignPlan,
  isFlat: (pickup: PickupPlan) => boolean,
  changes: Partial<Voice> = {},
): string {
  const voice = voiceOf(plan.design, changes);
  const names = edgeNames(plan.design);
  const parts = plan.pickups.map((pickup) => pickupText(pickup, voice, names));
  return [shownName(plan.design.name), ...parts, summary(plan, isFlat)].join('\n\n') + '\n';
}

function pickupText(plan: PickupPlan, voice: Voice, names: EdgeNames): string {
  const lines = checkLines(plan, voice, names);
  const notes = patternNotes(plan).map((note) =>
    wrapped(`  ${noteText(note, names, voice, rowOrRound(plan))}`, undefined, '    '),
  );
  if (lines.length === 0 && notes.length === 0)
    return `${shownName(plan.pickup.name)}: nothing is stated, so there is nothing to check.`;
  return [
    shownName(plan.pickup.name),
    ...(lines.length > 0 ? [lines.join('\n')] : []),
    ...(notes.length > 0 ? [notes.join('\n')] : []),
  ].join('\n\n');
}

function summary(plan: DesignPlan, isFlat: (pickup: PickupPlan) => boolean): string {
  const stated = plan.pickups.reduce((sum, pickup) => sum + pickup.stated.length, 0);
  const off = plan.pickups
    .flatMap((pickup) => pickup.stated)
    .filter(({ verdict }) => verdict !== null && verdict !== 'lies flat').length;
  const against = plan.pickups.filter((pickup) => !isFlat(pickup)).length;
  if (against === 0)
    return stated === 0 ? 'The file is valid. It states no counts.' : `The file is valid. ${allFlatText(stated)}`;
  if (off === 0) return 'The file is valid. What it states lies flat, but contradicts itself.';
  return `The file is valid. Of ${counted(stated, 'count')} stated, ${off} ${off === 1 ? 'does' : 'do'} not lie flat.`;
}

function allFlatText(stated: number): string {
  return stated === 1 ? 'The count stated lies flat.' : `All ${stated} counts stated lie flat.`;
}

/** The notes that say something of what a pattern states, or of what came out. */
export function patternNotes(plan: Pick<PickupPlan, 'notes'>): Note[] {
  return plan.notes.filter((note) => OF_THE_PATTERN.includes(note.kind));
}

/** The stated counts of a pick-up as a table, with what each off one implies and its likely causes beneath. */
export function checkLines(plan: PickupPlan, voice: Voice, names: EdgeNames): string[] {
  if (plan.stated.length === 0) return [];
  const rows = plan.stated.map((check) => [
    statedTitle(check, names),
    `${check.stated}`,
    check.wanted === null ? '' : fixedNumber(check.wanted),
    `${check.planned}`,
    check.stretch === null ? '' : stretchText(check.stretch),
    check.verdict === null ? '' : verdictLabel(check.verdict),
  ]);
  const reasons = plan.stated
    .filter(({ verdict }) => verdict !== null && verdict !== 'lies flat')
    .map((check) => {
      const causes = check.causes.map((cause) => causeText(cause, check, voice));
      const implied = check.impliedPer10cm === null ? [] : [impliedText(check.impliedPer10cm, voice)];
      return [statedTitle(check, names), [...causes, ...implied].join(' ')] as const;
    })
    .filter(([, said]) => said !== '')
    .map(([name, said]) => wrapped(`  ${name}: ${said}`, undefined, '    '));
  return [tableText(COLUMNS, rows), ...(reasons.length > 0 ? ['', ...reasons] : [])];
}

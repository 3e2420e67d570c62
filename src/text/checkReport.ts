import type { DesignPlan, Note, PickupPlan, StatedCheck } from '../pickup';
import { edgeNames, shownName, type EdgeNames } from './edgeName';
import { HEADINGS } from './labels';
import { rowOrRound } from './rowOrRound';
import { noteText } from './notes';
import { agreementText, causeText, checkRow, thresholdsText } from './stated';
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
  { head: HEADINGS.implies, align: 'left' },
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

/** A count, or what a ratio gives, as data; `piece` and `edge` are null for the whole. */
export interface CheckedDocument {
  readonly piece: string | null;
  readonly edge: string | null;
  readonly ratio: StatedCheck['ratio'];
  readonly count: number;
  readonly planned: number;
  readonly wanted: number | null;
  readonly stretch: number | null;
  readonly verdict: StatedCheck['verdict'];
  readonly impliedPer10cm: number | null;
  readonly causes: readonly string[];
}

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
    readonly stated: readonly CheckedDocument[];
    /** What came out, held against the plan in the same way; null where it is not told. */
    readonly got: CheckedDocument | null;
    /** Where the verdicts change, percent. */
    readonly thresholds: { readonly slight: number; readonly strong: number };
    /** What of the statement agrees with itself; what does not is among the notes. */
    readonly agreements: readonly { readonly kind: string; readonly text: string }[];
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
      stated: pickup.stated.map((check) => checkedDocument(check, voice)),
      got: pickup.gotCheck && checkedDocument(pickup.gotCheck, voice),
      thresholds: { slight: pickup.pickup.flat.slight, strong: pickup.pickup.flat.strong },
      agreements: pickup.agreements.map((one) => ({ kind: one.kind, text: agreementText(one, names) })),
      notes: patternNotes(pickup).map((note) => ({
        kind: note.kind,
        text: noteText(note, names, voice, rowOrRound(pickup)),
      })),
    })),
  };
}

/** One stated count as data, with its causes in words. */
export function checkedDocument(check: StatedCheck, voice: Pick<Voice, 'terms'>): CheckedDocument {
  const { stated: count, edge, ratio, planned, wanted, stretch, verdict, impliedPer10cm } = check;
  const causes = check.causes.map((cause) => causeText(cause, check, voice));
  const place = { piece: edge?.piece ?? null, edge: edge?.edge ?? null };
  return { ...place, ratio, count, planned, wanted, stretch, verdict, impliedPer10cm, causes };
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
  const said = [
    ...plan.agreements.map((one) => agreementText(one, names)),
    ...patternNotes(plan).map((note) => noteText(note, names, voice, rowOrRound(plan))),
    ...(lines.length > 0 ? [thresholdsText(plan.pickup.flat)] : []),
  ];
  const notes = said.map((text) => wrapped(`  ${text}`, undefined, '    '));
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

/** What is stated and what came out as a table, with the likely causes of what is off beneath. */
export function checkLines(plan: PickupPlan, voice: Voice, names: EdgeNames): string[] {
  const checks = [...plan.stated, ...(plan.gotCheck ? [plan.gotCheck] : [])];
  if (checks.length === 0) return [];
  const rows = checks.map((check) => checkRow(check, names, voice));
  const reasons = rows
    .filter(({ causes }) => causes.length > 0)
    .map(({ title, causes }) => wrapped(`  ${title}: ${causes.join(' ')}`, undefined, '    '));
  const cells = rows.map((row) => [row.title, row.stated, row.wanted, row.planned, row.off, row.verdict, row.implies]);
  return [tableText(COLUMNS, cells), ...(reasons.length > 0 ? ['', ...reasons] : [])];
}

import { describe, expect, test } from 'vitest';
import type { Cause, DesignPlan, Note } from '../../src/pickup';
import {
  causeText,
  checkReport,
  edgeName,
  edgeNames,
  fabricLabel,
  finishLabel,
  measureReport,
  noteText,
  notLengthenedText,
  planDocument,
  planReport,
  TERMS,
  termsFor,
  voiceOf,
  type Terms,
} from '../../src/text';
import { allFlat, surveyDesign } from '../../src/pickup';
import { planSample, SAMPLES } from '../samples/sample';
import { NOTES } from './notes';

/** The causes whose sentences have a word of one country in them. */
const CAUSES: readonly Cause[] = [
  { kind: 'body-gauge' },
  { kind: 'ratio-misread', pick: 3, of: 4, as: 'skip-of' },
  { kind: 'other-ratio', pick: 5, of: 7, per: 'row' },
  { kind: 'other-size' },
];

/** Words that only one side of the Atlantic uses of knitting; names out of the samples are taken away first. */
const ONLY_US =
  /\b(bind(ing)?[ -]off|bound[ -]off|gauge|stockinette|seed stitch|selvages?|pick(ing)? up and knit(ting)?|even\b(?! \w*ly)|kfb|ssk|s2kp2|pu&k)\b/i;
const ONLY_UK =
  /\b(cast(ing)?[ -]off|tension|stocking stitch|moss stitch|selvedges?|knit(ting)? up|straight|k1f&b|skpo|psso|yfwd)\b/i;

/** Everything that is worded for a design. */
function everyWord(plan: DesignPlan, terms: Terms): string {
  const voice = voiceOf(plan.design, { terms });
  const rows = surveyDesign(plan.design).map(({ measured: edge, ...rest }) => ({ ...rest, edge }));
  const isFlat = (one: DesignPlan['pickups'][number]) => allFlat(one.stated, one.notes);
  return [
    measureReport(plan.design, rows, { terms }),
    planReport(plan, { terms }),
    checkReport(plan, isFlat, { terms }),
    ...(['long', 'short'] as const).flatMap((form) =>
      planDocument(plan, { terms, form }).pickups.flatMap(({ text, notes }) => [
        ...text,
        ...notes.map((note) => note.text),
      ]),
    ),
    ...NOTES.map((note: Note) => noteText(note, edgeNames(plan.design), voice)),
    ...CAUSES.map((cause) => causeText(cause, { stated: 12, wanted: 13, planned: 13 }, voice)),
    notLengthenedText({ why: 'no-gauge' }, terms),
  ].join('\n');
}

/** Takes the names of the design out, which are nobody's terms. */
function withoutNames(text: string, plan: DesignPlan): string {
  const names = [
    ...plan.pickups.map(({ pickup }) => pickup.name),
    ...plan.design.pieces.flatMap(({ name, outline }) => [name, ...outline.map(edgeName)]),
  ];
  return names.sort((a, b) => b.length - a.length).reduce((left, name) => left.replaceAll(name, '…'), text);
}

/** `rib` has no seed; the ways of being even that both share are `come out even` and `spaced evenly`. */
const shared = (text: string): string => text.replace(/(come|comes) out even/g, '').replace(/\s+/g, ' ');

describe('terms', () => {
  test('have a word on both sides for everything, and the words differ unless both are used', () => {
    expect(Object.keys(TERMS.UK)).toEqual(Object.keys(TERMS.US));
    for (const [key, word] of Object.entries(TERMS.US)) expect(word, key).not.toBe(TERMS.UK[key as keyof Terms]);
    expect(termsFor('UK').gauge).toBe('tension');
  });

  test('the words themselves are on the right side', () => {
    for (const word of Object.values(TERMS.UK)) expect(word).not.toMatch(ONLY_US);
    for (const word of Object.values(TERMS.US)) expect(word).not.toMatch(ONLY_UK);
    expect(fabricLabel('seed', TERMS.UK)).toBe('moss stitch');
    expect(finishLabel('bound-off', TERMS.UK)).toBe('cast off');
  });

  test.each(SAMPLES)('a knitter of one country never meets a word of the other: %s', (name) => {
    const plan = planSample(name);
    const [us, uk] = [TERMS.US, TERMS.UK].map((terms) => shared(withoutNames(everyWord(plan, terms), plan)));
    expect(ONLY_US.exec(uk!)?.[0]).toBeUndefined();
    expect(ONLY_UK.exec(us!)?.[0]).toBeUndefined();
    // Else the two patterns above could be blind.
    expect(us).toMatch(ONLY_US);
    expect(uk).toMatch(ONLY_UK);
  });
});

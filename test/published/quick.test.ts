import { describe, expect, it } from 'vitest';
import { answerPlace, answerRow, countOut } from '../../src/pickup';
import { checkDesign } from '../../src/piece';
import {
  placeReport,
  quickFaultText,
  quickUnits,
  quickWords,
  readPlace,
  readRow,
  rowReport,
  type PlaceTyped,
  type RowTyped,
} from '../../src/text';
import { sum } from './published';
import { QUICK_CASES } from './quickCases';

function answered(asks: PlaceTyped | RowTyped) {
  const units = 'have' in asks ? 'cm' : quickUnits(asks.measure, 'cm');
  const voice = { units, terms: 'US', hand: 'right' } as const;
  if ('have' in asks) {
    const read = readRow(asks);
    if (!read.ok) throw new Error(quickFaultText(read, units));
    const answer = answerRow(read.question, quickWords(read.question, voice));
    if (!answer.ok) throw new Error(quickFaultText(answer, units));
    return { ...answer, report: rowReport(answer) };
  }
  const read = readPlace(asks, units);
  if (!read.ok) throw new Error(quickFaultText(read, units));
  const answer = answerPlace(read.question, quickWords(read.question, voice));
  if (!answer.ok) throw new Error(quickFaultText(answer, units));
  return { ...answer, report: placeReport(answer) };
}

/** A report on one line, as its words are compared. */
const flowing = (report: string) => report.replace(/\s+/gu, ' ');

describe('small cases, typed into the quick question', () => {
  it.each(QUICK_CASES)('$id: $says [$title, $address]', ({ asks, shows, sections }) => {
    const { report, pickup, design } = answered(asks);
    for (const words of shows) expect(flowing(report)).toContain(words);
    if (sections) expect(pickup.sections.map(({ count }) => count)).toEqual(sections);
    // What one click would put on the bench is a valid design.
    expect(() => checkDesign(design)).not.toThrow();
    const { firstRow } = pickup;
    if (firstRow.groups.length > 0) {
      expect(countOut(firstRow.groups)).toEqual({ uses: firstRow.from, leaves: firstRow.to });
    }
    const [edge] = pickup.edges;
    expect(sum(edge!.rhythm.map(({ pick, times }) => pick * times))).toBe(edge!.count);
  });

  it('are at least 30, each with its source beside it', () => {
    expect(QUICK_CASES.length).toBeGreaterThanOrEqual(30);
    expect(new Set(QUICK_CASES.map(({ id }) => id)).size).toBe(QUICK_CASES.length);
    for (const { title, address } of QUICK_CASES) {
      if (address === null) expect(title).toBe('a case from practice');
      else expect(address).toMatch(/^https?:\/\/\S+$/u);
    }
  });

  it('is every 8th twice and every 9th 12 times in 124 increased by 14', () => {
    const { pickup } = answered(QUICK_CASES.find(({ id }) => id === '124 plus 14')!.asks);
    const gaps: Record<number, number> = {};
    for (const { times, works } of pickup.firstRow.groups) gaps[works[0]!.count] = (gaps[works[0]!.count] ?? 0) + times;
    expect(gaps).toEqual({ 8: 2, 9: 12 });
  });
});

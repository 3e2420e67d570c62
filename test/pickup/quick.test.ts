import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerPlace, answerRow, countOut, planDesign, type PlaceAnswer } from '../../src/pickup';
import { checkDesign, quickFault, rowTarget, type PlaceQuestion, type RowQuestion } from '../../src/piece';
import { quickWords } from '../../src/text';
import { readSample } from '../samples/sample';

const VOICE = { units: 'cm', terms: 'US', hand: 'right' } as const;
const BASE: PlaceQuestion = {
  ...{ kind: 'place', place: 71, over: 88, unit: 'row', per10cm: null, sections: null, spread: 'even' },
};

function placed(change: Partial<PlaceQuestion>): PlaceAnswer {
  const question = { ...BASE, ...change };
  const answer = answerPlace(question, quickWords(question, VOICE));
  if (!answer.ok) throw new Error(`${answer.field}: ${answer.reason}`);
  return answer;
}

describe('stitches over an edge', () => {
  it('are planned as the sample of the bare strip is', () => {
    const sample = planDesign(readSample('strip').design).pickups[0]!;
    const { pickup } = placed({ sections: 4 });
    expect(pickup.points).toEqual(sample.points);
    expect(pickup.edges[0]?.rhythm).toEqual(sample.edges[0]?.rhythm);
    expect(pickup.sections).toEqual(sample.sections);
  });

  it('come from rows, ridges, chains or stitches, one opening to each', () => {
    for (const unit of ['row', 'ridge', 'chain', 'stitch'] as const) {
      const { pickup, edge } = placed({ unit, place: 70 });
      expect(edge.unit).toBe(unit);
      expect(pickup.points.filter(({ second }) => !second)).toHaveLength(88);
      expect(edge.count).toBe(70);
    }
  });

  it('on a length with its rows stand on as many rows as it has', () => {
    const { edge, lengthMm, impliedPer10cm, hasOpenings } = placed({
      ...{ unit: 'length', over: 254, place: 40, per10cm: (26 * 100) / 101.6 },
    });
    expect(edge).toMatchObject({ unit: 'row', rows: 65, count: 40 });
    expect(edge.lengthMm).toBeCloseTo(254, 9);
    expect([lengthMm, hasOpenings]).toEqual([254, true]);
    expect(impliedPer10cm).toBeCloseTo(16 / 1.016, 9);
  });

  it('on a length alone have sections and a gauge, but no openings', () => {
    const { pickup, impliedPer10cm, hasOpenings } = placed({ unit: 'length', over: 500, place: 80, sections: 4 });
    expect(hasOpenings).toBe(false);
    expect(impliedPer10cm).toBeCloseTo(16, 12);
    expect(pickup.sections.map(({ count }) => count)).toEqual([20, 20, 20, 20]);
    for (const { lengthMm } of pickup.sections) expect(lengthMm).toBeCloseTo(125, 9);
  });

  it.each([
    ['row', 28, 22.5909],
    ['ridge', 36, 14.5227],
    ['chain', 36, 14.5227],
    ['stitch', 20, 16.1364],
  ] as const)('over 88 of %s with a gauge of %f imply %f to 10 cm', (unit, per10cm, implied) => {
    const { impliedPer10cm, edge } = placed({ unit, per10cm });
    expect(impliedPer10cm).toBeCloseTo(implied, 4);
    // The plan counts by the same length and comes to the same stitches.
    expect(edge.wanted).toBeCloseTo(71, 9);
    expect(edge.count).toBe(71);
  });

  it('more than the places are increased on the first row', () => {
    const { pickup } = placed({ unit: 'chain', over: 32, place: 115 });
    expect(pickup.points.every(({ n }) => n !== null)).toBe(true);
    expect(pickup.firstRow).toMatchObject({ from: 64, to: 115 });
  });

  it('make a plan and a valid design whenever the question has no fault', () => {
    const questions = fc.record({
      kind: fc.constant('place' as const),
      place: fc.integer({ min: 0, max: 700 }),
      over: fc.integer({ min: 0, max: 300 }),
      unit: fc.constantFrom('row', 'ridge', 'chain', 'stitch', 'length'),
      per10cm: fc.option(fc.integer({ min: 2, max: 310 })),
      sections: fc.option(fc.integer({ min: 0, max: 70 })),
      spread: fc.constantFrom('even', 'grouped'),
    });
    fc.assert(
      fc.property(questions, (question) => {
        const answer = answerPlace(question, quickWords(question, VOICE));
        expect(answer.ok).toBe(quickFault(question) === null);
        if (!answer.ok) return;
        expect(() => checkDesign(answer.design)).not.toThrow();
        expect(answer.pickup.target).toBe(question.place);
        expect(answer.pickup.firstRow.to).toBe(question.place);
        const { picked, points } = answer.pickup;
        expect(picked).toBe(Math.min(question.place, points.length));
      }),
      { numRuns: 150 },
    );
  });
});

describe('increases and decreases in a row', () => {
  it('use what is there and leave what is asked, whenever the question has no fault', () => {
    const questions = fc.record({
      kind: fc.constant('row' as const),
      have: fc.integer({ min: 0, max: 300 }),
      change: fc.constantFrom('increase', 'decrease'),
      amount: fc.integer({ min: 0, max: 400 }),
      amountIs: fc.constantFrom('by', 'to'),
      round: fc.boolean(),
    });
    fc.assert(
      fc.property(questions, (question: RowQuestion) => {
        const answer = answerRow(question, quickWords(question, VOICE));
        expect(answer.ok).toBe(quickFault(question) === null);
        if (!answer.ok) return;
        expect(() => checkDesign(answer.design)).not.toThrow();
        const { firstRow } = answer.pickup;
        expect(countOut(firstRow.groups)).toEqual({ uses: question.have, leaves: rowTarget(question) });
        expect(firstRow.joined).toBe(question.round);
      }),
      { numRuns: 150 },
    );
  });
});

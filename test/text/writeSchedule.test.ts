import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ScheduleStep } from '../../src/piece';
import { normalisedSteps, readSchedule, TERMS, writtenSteps } from '../../src/text';

const steps = (...list: [stitches: number, every: number, times: number][]): ScheduleStep[] =>
  list.map(([stitches, every, times]) => ({ stitches, every, times }));

describe('writtenSteps', () => {
  test.each<[string, ScheduleStep[], string]>([
    [
      'a neck',
      steps([-3, 2, 1], [-2, 2, 2], [-1, 2, 4], [-1, 4, 3], [0, 6, 1]),
      'bind off 3, 2, 2 every 2 rows; decrease 1 every 2 rows 4 times, every 4 rows 3 times; work 6 rows even',
    ],
    ['a sleeve', steps([0, 1, 1], [1, 6, 7]), 'work 1 row even; increase 1 every 6 rows 7 times'],
    ['a shoulder', steps([-5, 2, 4]), 'bind off 5 (4 times) every 2 rows'],
    ['wide steps', steps([-5, 4, 2], [-5, 1, 1]), 'bind off 5 every 4 rows twice, every row once'],
    [
      'what comes out',
      steps([3, 2, 1], [2, 2, 1], [1, 2, 1]),
      'cast on 3, 2 every 2 rows; increase 1 every 2 rows once',
    ],
    ['nothing', [], ''],
  ])('%s', (_, list, text) => {
    expect(writtenSteps(list, { terms: TERMS.US })).toBe(text);
  });

  test('in the words of the United Kingdom', () => {
    expect(writtenSteps(steps([-3, 2, 2], [0, 6, 1]), { terms: TERMS.UK })).toBe(
      'cast off 3, 3 every 2 rows; work 6 rows straight',
    );
  });

  test('is read back to the same steps', () => {
    const step = fc.record({
      stitches: fc.oneof(fc.integer({ min: -6, max: 6 }), fc.integer({ min: -2000, max: 2000 })),
      every: fc.oneof(fc.constantFrom(1, 2, 4), fc.integer({ min: 1, max: 40 })),
      times: fc.integer({ min: 1, max: 8 }),
    });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 15 }), fc.constantFrom('US', 'UK'), (list, name) => {
        const terms = TERMS[name];
        const read = readSchedule(writtenSteps(list, { terms }), { way: 'either', terms });
        expect(read).toEqual({ ok: true, steps: normalisedSteps(list) });
      }),
      { numRuns: 2000 },
    );
  });
});

describe('normalisedSteps', () => {
  test('joins what is alike, and rows worked even', () => {
    expect(
      normalisedSteps(steps([-1, 2, 2], [-1, 2, 1], [0, 4, 2], [0, 1, 1], [-1, 2, 0], [0, 3, 1], [1, 2, 1])),
    ).toEqual(steps([-1, 2, 3], [0, 12, 1], [1, 2, 1]));
  });

  test('leads along the same line', () => {
    const step = fc.record({
      stitches: fc.integer({ min: -2, max: 2 }),
      every: fc.integer({ min: 1, max: 3 }),
      times: fc.integer({ min: 0, max: 3 }),
    });
    /** Places after every row at which the line changes its direction. */
    const line = (list: readonly ScheduleStep[]) => {
      const corners: [number, number, number][] = [];
      let [x, y] = [0, 0];
      for (const { stitches, every, times } of list) {
        for (let i = 0; i < times; i++) {
          [x, y] = [x + stitches, y + every];
          const last = corners.at(-1);
          if (last?.[2] === 0 && stitches === 0) corners.pop();
          corners.push([x, y, stitches]);
        }
      }
      return corners;
    };
    fc.assert(
      fc.property(fc.array(step, { maxLength: 8 }), (list) => {
        expect(line(normalisedSteps(list))).toEqual(line(list));
        expect(normalisedSteps(normalisedSteps(list))).toEqual(normalisedSteps(list));
      }),
    );
  });
});

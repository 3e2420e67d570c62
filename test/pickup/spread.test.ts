import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenMarks, evenParts, rhythmOf, spreadEvenly } from '../../src/pickup';
import { euclideanRhythm, printed, sameRing } from './bjorklund';

const openingsAndPicks = fc
  .integer({ min: 2, max: 120 })
  .chain((openings) => fc.tuple(fc.constant(openings), fc.integer({ min: 2, max: openings })));

/** Lengths of the stretches between two used openings. */
function gapsOf(used: readonly boolean[]): number[] {
  const places = used.flatMap((one, i) => (one ? [i] : []));
  return places.slice(1).map((place, i) => place - places[i]! - 1);
}

function runsOf(used: readonly boolean[]): number[] {
  return used
    .map((one) => (one ? 'x' : '.'))
    .join('')
    .split('.')
    .map((run) => run.length);
}

const spread = (list: readonly number[]) => Math.max(...list) - Math.min(...list);

describe('the reference', () => {
  /** Printed in Toussaint (2005): the Cuban tresillo, the cinquillo, and the bell patterns of 9, 12 and 16 beats. */
  it.each([
    [3, 8, 'x..x..x.'],
    [5, 8, 'x.xx.xx.'],
    [4, 9, 'x.x.x.x..'],
    [7, 12, 'x.xx.x.xx.x.'],
    [5, 12, 'x..x.x..x.x.'],
    [5, 16, 'x..x..x..x..x...'],
  ])('has E(%i, %i) as published', (k, n, rhythm) => {
    expect(sameRing(euclideanRhythm(k, n), printed(rhythm))).toBe(true);
  });

  it('tells rings apart', () => {
    expect(sameRing(printed('xx..'), printed('x.x.'))).toBe(false);
  });
});

describe('spreadEvenly', () => {
  it('is, with one skip behind it and closed to a ring, E(K, M + 1) where more than half are used', () => {
    fc.assert(
      fc.property(openingsAndPicks, ([openings, picks]) => {
        fc.pre(2 * picks > openings);
        const ring = [...spreadEvenly(openings, picks, 'even'), false];
        expect(sameRing(ring, euclideanRhythm(picks, openings + 1))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('has its long gaps among all gaps as a Euclidean rhythm where half or less are used', () => {
    fc.assert(
      fc.property(openingsAndPicks, ([openings, picks]) => {
        fc.pre(2 * picks <= openings);
        const gaps = gapsOf(spreadEvenly(openings, picks, 'even'));
        const short = Math.floor((openings - picks) / (picks - 1));
        const long = gaps.map((gap) => gap > short);
        const count = long.filter(Boolean).length;
        expect(count).toBe((openings - picks) % (picks - 1));
        expect(sameRing(long, euclideanRhythm(count, picks - 1))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it.each(['even', 'grouped'] as const)('uses the first and the last, and as many as asked: %s', (way) => {
    fc.assert(
      fc.property(openingsAndPicks, ([openings, picks]) => {
        const used = spreadEvenly(openings, picks, way);
        expect(used).toHaveLength(openings);
        expect(used.filter(Boolean)).toHaveLength(picks);
        expect([used[0], used.at(-1)]).toEqual([true, true]);
      }),
    );
  });

  it.each(['even', 'grouped'] as const)('has M - K + 1 runs a stitch apart at most above one half: %s', (way) => {
    fc.assert(
      fc.property(openingsAndPicks, ([openings, picks]) => {
        fc.pre(2 * picks > openings);
        const used = spreadEvenly(openings, picks, way);
        expect(Math.max(0, ...gapsOf(used))).toBeLessThanOrEqual(1);
        expect(runsOf(used)).toHaveLength(openings - picks + 1);
        expect(spread(runsOf(used))).toBeLessThanOrEqual(1);
      }),
    );
  });

  it.each(['even', 'grouped'] as const)('has every pick alone and the gaps one apart at most, else: %s', (way) => {
    fc.assert(
      fc.property(openingsAndPicks, ([openings, picks]) => {
        fc.pre(2 * picks <= openings);
        const gaps = gapsOf(spreadEvenly(openings, picks, way));
        expect(Math.min(...gaps)).toBeGreaterThanOrEqual(1);
        expect(spread(gaps)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('uses the middle one for a single pick, and none for none', () => {
    expect(spreadEvenly(5, 1, 'even')).toEqual([false, false, true, false, false]);
    expect(spreadEvenly(4, 1, 'even').indexOf(true)).toBe(1);
    expect(spreadEvenly(3, 0, 'even')).toEqual([false, false, false]);
    expect(spreadEvenly(0, 0, 'even')).toEqual([]);
  });

  it('groups: "pick up 4, skip 1, 17 times; then pick up 3"', () => {
    expect(rhythmOf(spreadEvenly(88, 71, 'grouped'))).toEqual([
      { pick: 4, skip: 1, times: 17 },
      { pick: 3, skip: 0, times: 1 },
    ]);
  });
});

describe('evenMarks', () => {
  const cases = Array.from({ length: 24 }, (_, p) =>
    Array.from({ length: p + 2 }, (_, longer) => [longer, p + 1] as const),
  ).flat();
  const mirrors = (marks: readonly boolean[]) => marks.every((mark, i) => mark === marks.at(-1 - i));

  it('is symmetric about the middle wherever an arrangement as even is', () => {
    for (const [longer, parts] of cases) {
      const marks = evenMarks(longer, parts);
      const rotations = marks.map((_, i) => [...marks.slice(i), ...marks.slice(0, i)]);
      expect([longer, parts, mirrors(marks)]).toEqual([longer, parts, rotations.some(mirrors)]);
    }
  });

  it('is a Euclidean rhythm', () => {
    for (const [longer, parts] of cases) {
      expect(sameRing(evenMarks(longer, parts), euclideanRhythm(longer, parts))).toBe(true);
    }
  });

  it('has an odd one out near the middle, never at an end', () => {
    for (let parts = 3; parts <= 40; parts++) {
      for (const marks of [evenMarks(1, parts), evenMarks(parts - 1, parts).map((mark) => !mark)]) {
        expect(marks.filter(Boolean)).toHaveLength(1);
        expect(Math.abs(marks.indexOf(true) - (parts - 1) / 2)).toBeLessThanOrEqual(0.5);
      }
    }
  });

  it('sums, in parts one apart at most', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 80 }), (total, parts) => {
        for (const way of ['even', 'grouped'] as const) {
          const made = evenParts(total, parts, way);
          expect(made).toHaveLength(parts);
          expect(made.reduce((sum, one) => sum + one, 0)).toBe(total);
          expect(spread(made)).toBeLessThanOrEqual(1);
        }
        expect(evenParts(total, parts, 'grouped')).toEqual(
          [...evenParts(total, parts, 'grouped')].sort((a, b) => b - a),
        );
      }),
    );
  });
});

describe('rhythmOf', () => {
  it('spells out exactly what was counted', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (used) => {
        const runs = rhythmOf(used);
        const spelled = runs.flatMap(({ pick, skip, times }) =>
          Array.from({ length: times }, () => [
            ...Array<boolean>(pick).fill(true),
            ...Array<boolean>(skip).fill(false),
          ]).flat(),
        );
        expect(spelled).toEqual(used);
        expect(runs.slice(1).every((run) => run.pick > 0)).toBe(true);
        expect(runs.slice(0, -1).every((run) => run.skip > 0)).toBe(true);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countOut, PlanError, replan, type PickupPlan } from '../../src/pickup';
import { along, plan, rectangle } from './builders';
import { everyPlan, numbersOf, sum } from './plans';

const strip = (fields: object = {}) =>
  plan(rectangle(20, 151), along(['right'], { sections: { by: 'length', parts: 8 }, ...fields }));

const ways = ['next', 'rest'] as const;

/** Markers with something behind them, and the start. */
const markersOf = (made: PickupPlan) => Array.from({ length: Math.max(1, made.sections.length) }, (_, i) => i);

describe('replan', () => {
  it.each(ways)('from every marker ends on the target, or its first row says the difference: %s', (way) => {
    fc.assert(
      fc.property(fc.integer({ min: -6, max: 6 }), fc.boolean(), (off, grouped) => {
        const made = strip(grouped ? { spread: 'grouped' } : {});
        for (const marker of markersOf(made)) {
          const onNeedle = Math.max(0, (made.sections[marker - 1]?.running ?? 0) + off);
          const again = replan(made, marker, onNeedle, way);
          expect(again.picked).toBe(onNeedle + numbersOf(again.points).length);
          expect([again.firstRow.from, again.firstRow.to]).toEqual([again.picked, made.target]);
          if (again.picked !== made.target) {
            expect(countOut(again.firstRow.groups)).toEqual({ uses: again.picked, leaves: made.target });
          }
          // The openings can take it: 151 rows for 108 stitches. In one section of 19 rows there is room for 5 more.
          if (way === 'rest' && marker < 7) expect(again.picked).toBe(made.target);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('numbers the points on from the needle, and its sections add up', () => {
    const made = strip();
    const again = replan(made, 3, 38, 'rest');
    expect(numbersOf(again.points)).toEqual(Array.from({ length: 70 }, (_, i) => 39 + i));
    expect([again.planned, again.onNeedle, again.picked]).toEqual([41, 38, 108]);
    expect(again.sections.map((section) => section.n)).toEqual([4, 5, 6, 7, 8]);
    expect(38 + sum(again.sections.map((section) => section.count))).toBe(108);
    expect(again.sections.at(-1)!.running).toBe(108);
  });

  it('next: makes good in the next section alone, the others as planned', () => {
    const made = strip();
    const again = replan(made, 3, 38, 'next');
    const planned = made.sections.slice(3).map((section) => section.count);
    expect(again.sections.map((section) => section.count)).toEqual([planned[0]! + 3, ...planned.slice(1)]);
    const later = (points: PickupPlan['points']) =>
      points.filter((point) => point.section > 4).map(({ y, n }) => [y, n !== null]);
    expect(later(again.points)).toEqual(later(made.points));
  });

  it('rest: spreads it, so that no section is off by more than its share', () => {
    const made = strip();
    const again = replan(made, 1, 10, 'rest');
    again.sections.forEach((section, i) => expect(section.count - made.sections[i + 1]!.count).toBeLessThanOrEqual(1));
  });

  it('leaves to the first row what the openings cannot take', () => {
    const made = strip();
    const again = replan(made, 7, 60, 'rest');
    const room = made.points.filter((point) => point.section === 8).length;
    expect(again.picked).toBe(60 + room);
    expect(again.firstRow).toMatchObject({ from: 60 + room, to: 108 });
  });

  it('takes none back: with too many on the needle already the first row decreases', () => {
    const again = replan(strip(), 7, 130, 'rest');
    expect(again.points.every((point) => point.n === null)).toBe(true);
    expect(again.firstRow).toMatchObject({ from: 130, to: 108 });
  });

  it('has a rhythm that spells out its points', () => {
    const again = replan(strip(), 2, 25, 'rest');
    const spelled = again.sections
      .flatMap((section) => section.runs)
      .flatMap(({ rhythm }) =>
        rhythm.map(({ pick, skip, times }) => ('x'.repeat(pick) + '.'.repeat(skip)).repeat(times)),
      );
    expect(spelled.join('')).toBe(again.points.map((point) => (point.n === null ? '.' : 'x')).join(''));
  });

  it('goes over several edges, on any design with sections', () => {
    everyPlan((made) => {
      if (made.sections.length < 2) return;
      for (const marker of [1, made.sections.length - 1]) {
        for (const way of ways) {
          try {
            const again = replan(made, marker, made.sections[marker - 1]!.running, way);
            if (made.pickup.stepHoles) continue;
            expect(again.picked).toBe(made.picked);
          } catch (error) {
            if (!(error instanceof PlanError)) throw error;
          }
        }
      }
    }, 40);
  });

  it('refuses a marker that is not there, with how many there are', () => {
    expect(() => replan(strip(), 8, 108, 'rest')).toThrow(
      expect.objectContaining({ problem: { kind: 'no-marker', pickup: 'Pickup 0', marker: 8, markers: 7 } }),
    );
    expect(() => replan(strip(), -1, 0, 'rest')).toThrow(PlanError);
  });
});

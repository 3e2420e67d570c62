import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/piece';
import {
  countOut,
  needlesBack,
  needlesCorrected,
  needlesOn,
  needlesReplan,
  needlesResumed,
  needlesStart,
  needleWork,
  planDesign,
  PlanError,
  readNeedlePlace,
  type NeedlePlace,
  type PickupPlan,
} from '../../src/pickup';
import { along, design, plan, rectangle } from './builders';
import { everyPlan, numbersOf } from './plans';

const made = (fields: object = {}, rows = 88): Design =>
  design(rectangle(30, rows), along(['right'], { target: 71, sections: { parts: 4 }, ...fields }));
const planOf = (whole: Design): PickupPlan => planDesign(whole).pickups[0]!;
const strip = planOf(made());
const neck = plan(rectangle(30, 40), along(['right', 'top', 'left'], { sections: { parts: 6 }, joined: true }));
const ways = ['next', 'rest'] as const;

/** The place so many steps on. */
function after(made: PickupPlan, steps: number, from = needlesStart(made)): NeedlePlace {
  let place = from;
  for (let i = 0; i < steps; i++) place = needlesOn(made, place);
  return place;
}
/** The place at a marker. */
function atMarker(made: PickupPlan, marker: number, from = needlesStart(made)): NeedlePlace {
  let place = from;
  for (;;) {
    const { steps, at } = needleWork(made, place);
    const before = steps[at - 1];
    if (before?.markers.includes(marker)) return place;
    if (at >= steps.length) throw new Error(`No marker ${marker}`);
    place = needlesOn(made, place);
  }
}

describe('a way through a pick-up', () => {
  it('passes every step once, then the first row, then all is done; and comes back the same way', () => {
    everyPlan((made) => {
      const forth = [needlesStart(made)];
      for (;;) {
        const next = needlesOn(made, forth.at(-1)!);
        if (next.opening === forth.at(-1)!.opening) break;
        forth.push(next);
      }
      const { steps } = needleWork(made, forth[0]!);
      expect(forth.map((place) => needleWork(made, place).at)).toEqual(
        Array.from({ length: steps.length + 2 }, (_, i) => i),
      );
      expect(needleWork(made, forth.at(-1)!).onNeedle).toBe(made.target);
      expect(needleWork(made, forth.at(-2)!).onNeedle).toBe(made.picked);
      let back = forth.at(-1)!;
      for (const place of forth.toReversed().slice(1)) {
        back = needlesBack(made, back);
        expect(back).toEqual(place);
      }
      expect(needlesBack(made, back)).toEqual(back);
    }, 15);
  });

  it('is plain data that comes back out of a store', () => {
    const place = needlesCorrected(strip, atMarker(strip, 2), 34, 'rest');
    expect(readNeedlePlace(JSON.parse(JSON.stringify(place)))).toEqual(place);
    for (const bad of [
      null,
      3,
      {},
      { ...place, opening: -1 },
      { ...place, miscounts: [{ opening: 1 }] },
      { ...place, noted: {} },
    ])
      expect(readNeedlePlace(bad)).toBeNull();
  });
});

describe('a miscount', () => {
  it('at any marker, by as much as is plausible, ends on the target or says what the first row must do', () => {
    for (const made of [strip, neck]) {
      fc.assert(
        fc.property(fc.integer({ min: -6, max: 6 }), fc.constantFrom(...ways), (off, way) => {
          for (const { n, running } of made.sections.slice(0, -1)) {
            const place = needlesCorrected(made, atMarker(made, n), running + off, way);
            const work = needleWork(made, place);
            expect(work.onNeedle).toBe(running + off);
            const rest = work.steps.slice(work.at);
            expect(running + off + rest.reduce((sum, { count }) => sum + count, 0)).toBe(work.plan.picked);
            const { firstRow } = work.plan;
            expect([firstRow.from, firstRow.to]).toEqual([work.plan.picked, made.target]);
            if (work.plan.picked === made.target) expect(firstRow.groups).toEqual([]);
            else expect(countOut(firstRow.groups)).toEqual({ uses: work.plan.picked, leaves: made.target });
          }
        }),
        { numRuns: 12 },
      );
    }
  });

  it('on any design, at any step, is made good or refused with a reason', () => {
    everyPlan((made, _) => {
      for (const steps of [1, 3]) {
        const place = after(made, steps);
        for (const way of ways) {
          for (const off of [-2, 1, 3]) {
            const onNeedle = Math.max(0, needleWork(made, place).onNeedle + off);
            try {
              const work = needleWork(made, needlesCorrected(made, place, onNeedle, way));
              expect(work.onNeedle).toBe(onNeedle);
              expect([work.plan.firstRow.from, work.plan.firstRow.to]).toEqual([work.plan.picked, made.target]);
            } catch (error) {
              if (!(error instanceof PlanError)) throw error;
              expect(error.problem.kind).toMatch(/^too-many-(in|de)creases$/);
            }
          }
        }
      }
    }, 12);
  });

  it('after another one is planned from what stands then', () => {
    const first = needlesCorrected(strip, atMarker(strip, 1), 16, 'rest');
    const second = atMarker(strip, 3, first);
    const standing = needleWork(strip, second);
    expect(standing.onNeedle).toBe(standing.plan.sections[2]!.running);
    expect(standing.onNeedle).not.toBe(strip.sections[2]!.running - 2);
    const both = needlesCorrected(strip, second, standing.onNeedle + 2, 'rest');
    expect(both.miscounts).toHaveLength(2);
    const { plan: end } = needleWork(strip, both);
    expect(end.picked).toBe(71);
    const last = numbersOf(end.points.filter(({ section }) => section === 4));
    expect(last[0]).toBe(standing.onNeedle + 3);
    expect(last.at(-1)).toBe(71);
  });

  it('said again at the same place takes the place of the first; as planned takes it back', () => {
    const there = atMarker(strip, 2);
    const first = needlesCorrected(strip, there, 30, 'next');
    const again = needlesCorrected(strip, first, 34, 'rest');
    expect(again).toEqual(needlesCorrected(strip, there, 34, 'rest'));
    expect(needlesCorrected(strip, again, 36, 'rest')).toEqual(there);
    expect(needlesReplan(strip, again, 33, 'next').planned).toBe(36);
  });

  it('at the end is left to the first row, which then is another', () => {
    const end = after(strip, needleWork(strip, needlesStart(strip)).steps.length);
    const work = needleWork(strip, needlesCorrected(strip, end, 69, 'rest'));
    expect([work.at, work.onNeedle, work.plan.picked]).toEqual([work.steps.length, 69, 69]);
    expect(countOut(work.plan.firstRow.groups)).toEqual({ uses: 69, leaves: 71 });
    expect(() => needlesCorrected(strip, end, 30, 'rest')).toThrow(PlanError);
  });

  it('at an earlier place drops what was said of later ones', () => {
    const late = needlesCorrected(strip, atMarker(strip, 3), 50, 'rest');
    let place = late;
    while (place.opening > atMarker(strip, 1).opening) place = needlesBack(strip, place);
    expect(place.miscounts).toEqual(late.miscounts);
    expect(needlesCorrected(strip, place, 17, 'next').miscounts).toEqual([
      { opening: place.opening, onNeedle: 17, way: 'next' },
    ]);
  });
});

describe('a place in a design that has changed since', () => {
  const left = needlesCorrected(strip, atMarker(strip, 2), 34, 'rest');

  it('is as it was where nothing of the pick-up changed', () => {
    const same = planOf({ ...made(), name: 'Another name' });
    expect(needlesResumed(same, left)).toEqual({ place: left, resumed: { kind: 'as-left' } });
    expect(needlesResumed(planOf(made({ target: 80 })), needlesStart(strip)).resumed).toEqual({ kind: 'as-left' });
  });

  it('stays to the opening where all that lies behind is as it was', () => {
    const two = (count: number) =>
      planOf(
        design(
          rectangle(30, 40),
          along(['right', 'top'], {
            rates: [
              { piece: 'piece', edge: 'right', rate: { kind: 'count', count: 30 } },
              { piece: 'piece', edge: 'top', rate: { kind: 'count', count } },
            ],
          }),
        ),
      );
    const place = after(two(24), 2);
    const found = needlesResumed(two(20), place);
    expect(found.resumed).toEqual({ kind: 'rest-changed' });
    expect(found.place.opening).toBe(place.opening);
    expect(needleWork(two(20), found.place).onNeedle).toBe(needleWork(two(24), place).onNeedle);
  });

  it('goes to the marker passed last, and plans the rest for what is on the needle', () => {
    const changed = planOf(made({ target: 75 }));
    const { place, resumed } = needlesResumed(changed, after(strip, 1, left));
    expect(resumed).toEqual({ kind: 'from-marker', marker: 2, onNeedle: 34, planned: changed.sections[1]!.running });
    const work = needleWork(changed, place);
    expect([work.onNeedle, work.plan.picked]).toEqual([34, 75]);
    expect(work.steps[work.at]!.section).toBe(3);
  });

  it('is told as lost where there is no such marker any more, and begins at the start', () => {
    for (const changed of [made({ sections: { parts: 5 } }), made({ target: 16 })]) {
      const found = needlesResumed(planOf(changed), left);
      expect(found.resumed).toMatchObject({ kind: 'lost', marker: 2, onNeedle: 34 });
      expect(found.place).toEqual(needlesStart(planOf(changed)));
    }
  });
});

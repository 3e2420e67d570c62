import { describe, expect, it } from 'vitest';
import { needleSteps, replan, replanned, type NeedleStep, type PickupPlan } from '../../src/pickup';
import { along, plan, rectangle } from './builders';
import { everyPlan, numbersOf, sum } from './plans';

const strip = plan(rectangle(30, 88), along(['right'], { target: 71, sections: { parts: 4 } }));

const spelled = ({ runs }: NeedleStep): string =>
  runs.map(({ pick, skip, times }) => ('x'.repeat(pick) + '.'.repeat(skip)).repeat(times)).join('');
const drawn = (made: PickupPlan): string => made.points.map(({ n }) => (n === null ? '.' : 'x')).join('');
const numbers = ({ runs }: NeedleStep): number =>
  sum(runs.map(({ pick, skip, times }) => [pick > 0, skip > 0, times > 1].filter(Boolean).length));

/** What every list of steps owes its plan. */
function checkSteps(made: PickupPlan, steps: readonly NeedleStep[]): void {
  expect(steps.map(spelled).join('')).toBe(drawn(made));
  let at = 0;
  for (const step of steps) {
    expect(step.from).toBe(at);
    const inside = made.points.slice(step.from, step.to);
    expect(inside.every(({ section, edge }) => section === step.section && edge === step.edge)).toBe(true);
    expect(step.count).toBe(numbersOf(inside).length);
    if (step.count > 0) expect(step.running).toBe(numbersOf(inside).at(-1));
    // One line holds five numbers at most; a single run is never cut.
    expect(numbers(step) <= 5 || step.runs.length === 1).toBe(true);
    at = step.to;
  }
  expect(at).toBe(made.points.length);
}

describe('the steps of a pick-up', () => {
  it('cover every opening once, in order, on any design', () => {
    everyPlan((made) => checkSteps(made, needleSteps(made)), 40);
  });

  it('end at every marker with its running count', () => {
    everyPlan((made) => {
      const steps = needleSteps(made);
      for (const { n, running } of made.sections.slice(0, -1)) {
        const at = steps.find(({ markers }) => markers.includes(n));
        const before = steps.filter(({ section }) => section <= n);
        expect(before.at(-1)?.running ?? 0).toBe(running);
        if (before.length > 0 && before.length < steps.length) expect(at).toBe(before.at(-1));
      }
    }, 40);
  });

  it('are short lines: 71 over 88 in four sections', () => {
    const steps = needleSteps(strip);
    expect(steps.slice(0, 2).map(({ runs, running, markers }) => ({ runs, running, markers }))).toEqual([
      {
        runs: [
          { pick: 4, skip: 1, times: 4 },
          { pick: 2, skip: 0, times: 1 },
        ],
        running: 18,
        markers: [1],
      },
      {
        runs: [
          { pick: 2, skip: 1, times: 1 },
          { pick: 4, skip: 1, times: 3 },
        ],
        running: 32,
        markers: [],
      },
    ]);
    expect(steps.at(-1)!.running).toBe(71);
  });

  it('begin anew at breaks, and are the same before them', () => {
    everyPlan((made) => {
      const steps = needleSteps(made);
      for (const { from } of steps.slice(1, 4)) {
        const broken = needleSteps(made, [from]);
        checkSteps(made, broken);
        const before = (list: readonly NeedleStep[]) => list.filter(({ to }) => to <= from);
        expect(before(broken)).toEqual(before(steps));
      }
    }, 20);
  });

  it('go on from what is on the needle after the rest was planned again', () => {
    const standing = replanned(strip, replan(strip, 2, 34, 'rest'));
    const steps = needleSteps(standing);
    checkSteps(standing, steps);
    const after = steps.find(({ section }) => section === 3)!;
    expect(after.running).toBe(34 + after.count);
    expect(steps.at(-1)!.running).toBe(71);
  });
});

import { describe, expect, it } from 'vitest';
import { expandSteps, type DesignError, type SteppedEdge } from '../../src/piece';

const armhole: SteppedEdge = {
  id: 'armhole',
  from: [47, 60],
  path: 'stepped',
  steps: [
    { stitches: -5, every: 2, times: 1 },
    { stitches: -1, every: 2, times: 3 },
    { stitches: 0, every: 10, times: 1 },
    { stitches: 2, every: 4, times: 2 },
  ],
};

describe('expandSteps', () => {
  it('goes in towards -x and out towards +x up the right side', () => {
    expect(expandSteps(armhole, [47, 60], [43, 86])).toEqual([
      { dx: -5, rows: 2 },
      { dx: -1, rows: 2 },
      { dx: -1, rows: 2 },
      { dx: -1, rows: 2 },
      { dx: 0, rows: 10 },
      { dx: 2, rows: 4 },
      { dx: 2, rows: 4 },
    ]);
  });

  it('goes the mirror image of it on the left side, bottom up though the outline falls', () => {
    const right = expandSteps(armhole, [47, 60], [43, 86]);
    const left = expandSteps(armhole, [-43, 86], [-47, 60]);
    expect(left).toEqual(right.map(({ dx, rows }) => ({ dx: 0 - dx, rows })));
  });

  it.each<[SteppedEdge['from'], SteppedEdge['from'], object]>([
    [[47, 60], [44, 86], { kind: 'schedule-off', stitches: -3, gotStitches: -4, rows: 26, gotRows: 26 }],
    [[47, 60], [43, 84], { kind: 'schedule-off', stitches: -4, gotStitches: -4, rows: 24, gotRows: 26 }],
    [[-47, 86], [-43, 60], { kind: 'schedule-off', stitches: 4, gotStitches: -4 }],
    [[47, 60], [43, 60], { kind: 'schedule-flat', edge: 'armhole' }],
  ])('refuses to lead from %o to %o', (from, to, problem) => {
    try {
      expandSteps(armhole, from, to);
      expect.unreachable();
    } catch (error) {
      expect((error as DesignError).problem).toMatchObject(problem);
    }
  });
});

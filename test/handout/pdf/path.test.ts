import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { drawPath } from '../../../src/handout/pdf/path';

/** What a pen was told, as absolute path data. */
function drawn(data: string): string {
  const steps: string[] = [];
  const say =
    (letter: string) =>
    (...numbers: number[]) =>
      void steps.push(letter + numbers.map((one) => Math.round(one * 1000) / 1000).join(' '));
  drawPath(data, { moveTo: say('M'), lineTo: say('L'), curveTo: say('C'), close: say('Z') });
  return steps.join('');
}

describe('drawPath', () => {
  it.each([
    ['M1,2 3,4L5-6', 'M1 2L3 4L5 -6'],
    ['m1,2 3,4l5-6', 'M1 2L4 6L9 0'],
    ['M1 2H5h1V7v1', 'M1 2L5 2L6 2L6 7L6 8'],
    ['M1.5.5l-.5-.5', 'M1.5 0.5L1 0'],
    ['M1e1,2E-1', 'M10 0.2'],
    ['M0,0c1,1 2,1 3,0s2-1 3,0', 'M0 0C1 1 2 1 3 0C4 -1 5 -1 6 0'],
    ['M0,0C1,1 2,1 3,0S5,-1 6,0', 'M0 0C1 1 2 1 3 0C4 -1 5 -1 6 0'],
    ['M0,0L1,1S5,-1 6,0', 'M0 0L1 1C1 1 5 -1 6 0'],
    ['M0,0Q3,3 6,0T12,0', 'M0 0C2 2 4 2 6 0C8 -2 10 -2 12 0'],
    ['M0,0q3,3 6,0t6,0', 'M0 0C2 2 4 2 6 0C8 -2 10 -2 12 0'],
    ['M1,1l2,0l0,2zl5,5M9,9z', 'M1 1L3 1L3 3ZL6 6M9 9Z'],
    ['M0,0a5,0 0 1 0 3,4', 'M0 0C0 0 3 4 3 4'],
    ['M0,0a5,0 0 103,4', 'M0 0C0 0 3 4 3 4'],
    ['', ''],
    [' M 1 , 1 \n L 2 2 ', 'M1 1L2 2'],
  ])('takes %j', (data, steps) => {
    expect(drawn(data)).toBe(steps);
  });

  it.each(['L1,1', 'M1', 'M1,1L2', 'M1,1 x', 'M1,1z3', 'M0,0a1,1 0 2 0 1,1', 'M1,1,l2,2,,x', '1,1'])(
    'refuses %j',
    (data) => {
      expect(() => drawn(data)).toThrow(RangeError);
    },
  );

  it('is as long as svg-path-properties finds it', () => {
    const data = 'M10,10c5,0 10,10 0,20s20,10 30,0q5,-20 15,0t20,5a8,5 30 1 0 10,5h10v-20l-30,-9z';
    const [before, after] = [new svgPathProperties(data), new svgPathProperties(drawn(data))];
    expect(Math.abs(before.getTotalLength() - after.getTotalLength())).toBeLessThan(0.05);
  });
});

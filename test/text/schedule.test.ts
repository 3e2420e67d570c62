import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slopeSteps, type WorkedStep } from '../../src/shaping';
import { scheduleText, TERMS } from '../../src/text';
import { planSample, SAMPLES } from '../samples/sample';
import { readSchedule } from './scheduleReader';

const US = { terms: TERMS.US, hand: 'right' } as const;

function rising(worked: readonly WorkedStep[]) {
  return { shape: 'curved', side: 'right', finish: 'bound-off', stitches: 0, worked, from: [0, 0] } as const;
}

/** The same edge mirrored: a falling outline, listed from its top. */
function falling(worked: readonly WorkedStep[]) {
  const turned = [...worked].reverse().map(({ across, up }) => ({ across, up: -up }));
  return { ...rising(turned), side: 'left' } as const;
}

const steps = (...pairs: [across: number, up: number][]): WorkedStep[] => pairs.map(([across, up]) => ({ across, up }));
const neck = steps([-5, 2], [-4, 2], [-3, 2], [-2, 2], [-1, 2], [-1, 2], [-1, 4], [-1, 4], [-1, 10]);

describe('scheduleText', () => {
  test('says a neck as a knitter would', () => {
    expect(scheduleText(rising(neck), US, 'neck edge')).toBe(
      'bind off 5, 4, 3, 2 at the neck edge on every second row (at the start of right-side rows); decrease 1 every ' +
        'second row 2 times, every fourth row 3 times; work 6 rows even',
    );
  });

  test('puts bind-offs at the start of wrong-side rows on the left edge', () => {
    const text = scheduleText(falling(neck), US);
    expect(text).toContain('at the left edge on every second row (at the start of wrong-side rows)');
    expect(readSchedule(text)).toEqual(readSchedule(scheduleText(rising(neck), US)));
  });

  test('turns the sides of the rows round for a left-handed knitter', () => {
    const left = { ...US, hand: 'left' } as const;
    expect(scheduleText(rising(neck), left)).toContain('wrong-side rows');
    expect(scheduleText(falling(neck), left)).toContain('right-side rows');
  });

  test('names the side of a row only where every bind-off falls on the same side', () => {
    expect(scheduleText(rising(steps([-3, 3], [-2, 3])), US)).toBe(
      'bind off 3, 2 at the right edge on every third row',
    );
  });

  test('says equal bind-offs once', () => {
    expect(scheduleText(rising(steps([-6, 2], [-6, 2], [-6, 2])), US)).toBe(
      'bind off 6 at the right edge on every second row 3 times (at the start of right-side rows)',
    );
    expect(scheduleText(rising(steps([-3, 2], [-2, 2], [-2, 2], [-2, 2], [-2, 2])), US)).toContain('3, 2 (4 times)');
  });

  test('says what takes the fabric out', () => {
    expect(scheduleText(rising(steps([1, 6], [1, 6], [3, 2], [3, 2])), US)).toBe(
      'increase 1 at the right edge every sixth row 2 times; cast on 3 on every second row 2 times (at the start of ' +
        'right-side rows)',
    );
  });

  test('says a single bind-off and a single decrease', () => {
    expect(scheduleText(rising(steps([-5, 4])), US)).toBe(
      'bind off 5 at the right edge at the start of the next right-side row; work 3 rows even',
    );
    expect(scheduleText(rising(steps([0, 6], [-1, 2])), US)).toBe(
      'work 6 rows even; decrease 1 at the right edge on the next row; work 1 row even',
    );
    expect(scheduleText(rising(steps([-1, 12], [-1, 12], [-1, 14], [-1, 14])), US)).toBe(
      'decrease 1 at the right edge every 12th row 2 times, every 14th row 2 times',
    );
  });

  test('keeps a single stitch inside a run of bind-offs', () => {
    expect(scheduleText(rising(steps([-2, 2], [-1, 2], [-2, 2], [-1, 2], [-1, 2])), US)).toBe(
      'bind off 2, 1, 2 at the right edge on every second row (at the start of right-side rows); decrease 1 every ' +
        'second row 2 times',
    );
  });

  test('says the flat middle of a curve first, then its two sides', () => {
    const curve = steps([-1, -2], [-3, -2], [-10, 0], [-3, 2], [-1, 2]);
    expect(scheduleText({ ...rising(curve), side: 'top', from: [16, 100] }, US)).toBe(
      'bind off 10 together; bind off 3 at the left edge at the start of the next wrong-side row; work 1 row even; ' +
        'decrease 1 on the next row; work 1 row even; bind off 3 at the right edge at the start of the next right-side ' +
        'row; work 1 row even; decrease 1 on the next row; work 1 row even',
    );
  });

  test('says what a horizontal edge ends in, and that a vertical one is worked even', () => {
    const flat = (finish: 'cast-on' | 'bound-off' | 'live' | 'provisional') =>
      scheduleText({ ...rising([]), shape: 'horizontal', finish, stitches: 24 }, US);
    expect(flat('cast-on')).toBe('cast on 24');
    expect(flat('bound-off')).toBe('bind off 24');
    expect(flat('live')).toBe('leave 24 on hold');
    expect(flat('provisional')).toBe('cast on 24 provisionally');
    expect(scheduleText({ ...rising(steps([0, 74])), shape: 'vertical' }, US)).toBe('work 74 rows even');
  });

  test('speaks to knitters of the United Kingdom', () => {
    expect(scheduleText(rising(steps([-3, 2], [-2, 2], [0, 6])), { ...US, terms: TERMS.UK })).toBe(
      'cast off 3, 2 at the right edge on every second row (at the start of right-side rows); work 6 rows straight',
    );
  });

  test('its words add up to the stitches and rows of any steps', () => {
    const step = fc.record({
      across: fc.integer({ min: -6, max: 6 }),
      up: fc.oneof(fc.constant(2), fc.integer({ min: 1, max: 24 })),
    });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 20 }), fc.boolean(), (worked, right) => {
        const text = scheduleText(right ? rising(worked) : falling(worked), US);
        expect(readSchedule(text)).toEqual({
          stitches: worked.reduce((sum, { across }) => sum + across, 0),
          rows: worked.reduce((sum, { up }) => sum + up, 0),
        });
      }),
      { numRuns: 600 },
    );
  });

  test('its words add up on straight slopes', () => {
    const size = fc.integer({ min: 1, max: 200 });
    fc.assert(
      fc.property(size, size, (stitches, rows) => {
        const worked = slopeSteps(stitches, rows).map((step) => ({ across: -step.across, up: step.rows }));
        expect(readSchedule(scheduleText(rising(worked), US))).toEqual({ stitches: -stitches, rows });
      }),
    );
  });

  test.each(SAMPLES)('its words add up on the side edges of the sample %s', (name) => {
    for (const { edges } of planSample(name).measured) {
      for (const edge of edges.filter(
        ({ shape, side }) => shape !== 'horizontal' && (side === 'left' || side === 'right'),
      )) {
        const read = readSchedule(scheduleText(edge, US));
        expect(Math.abs(read.stitches)).toBe(edge.stitches);
        expect(read.rows).toBe(edge.rows);
      }
    }
  });
});

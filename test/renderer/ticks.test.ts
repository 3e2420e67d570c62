import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundTicks } from '../../src/renderer/ticks';

describe('round ticks', () => {
  it('are 1, 2 or 5 times a power of ten apart', () => {
    expect(roundTicks(42, 10)).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40]);
    expect(roundTicks(78, 8)).toEqual([0, 10, 20, 30, 40, 50, 60, 70]);
    expect(roundTicks(1, 10)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]);
    expect(roundTicks(2000, 4)).toEqual([0, 500, 1000, 1500, 2000]);
  });

  it('begin at 0, are equally far apart, and leave less than a step over', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2_000_000 }), fc.integer({ min: 1, max: 200 }), (thousandths, count) => {
        const length = thousandths / 1000;
        const ticks = roundTicks(length, count);
        const step = (ticks[1] ?? length * 2) - ticks[0]!;
        expect(ticks[0]).toBe(0);
        ticks.forEach((tick, i) => expect(tick).toBeCloseTo(i * step, 6));
        expect(length - ticks.at(-1)!).toBeLessThan(step * (1 + 1e-9));
        expect(ticks.at(-1)!).toBeLessThanOrEqual(length);
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { shownGauge, usualOver } from '../../src/editor';

describe('a gauge in fields', () => {
  it.each([
    [{ stitches: 22, rows: 30, over: 100 }, 'cm'],
    [{ stitches: 11, rows: 15, over: 50 }, 'cm'],
    [{ stitches: 22, rows: 30, over: 101.6 }, 'in'],
    [{ stitches: 5.5, rows: 7, over: 25.4 }, 'in'],
  ] as const)('%o stays as it was typed in %s', (gauge, unit) => {
    expect(shownGauge(gauge, unit)).toBe(gauge);
  });

  it.each(['cm', 'in'] as const)('is told over the usual length in %s where its own reads badly', (unit) => {
    const gauge = unit === 'cm' ? { stitches: 22, rows: 30, over: 101.6 } : { stitches: 22, rows: 30, over: 100 };
    const shown = shownGauge(gauge, unit);
    expect(shown.over).toBe(usualOver(unit));
    expect(shown.stitches / shown.over).toBeCloseTo(gauge.stitches / gauge.over, 12);
    expect(shown.rows / shown.over).toBeCloseTo(gauge.rows / gauge.over, 12);
  });
});

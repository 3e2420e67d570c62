import { describe, expect, it } from 'vitest';
import { rowHeight, stitchesPerMm, stitchWidth } from '../../src/units';

describe('gauge', () => {
  const gauge = { stitches: 20, rows: 28, over: 100 };

  it('gives the size of a stitch', () => {
    expect(stitchWidth(gauge)).toBe(5);
    expect(rowHeight(gauge)).toBeCloseTo(100 / 28, 12);
    expect(stitchesPerMm(gauge)).toBe(0.2);
  });

  it('is the same over another length', () => {
    const overFourInches = { stitches: 20.32, rows: 28.448, over: 101.6 };
    expect(stitchWidth(overFourInches)).toBeCloseTo(stitchWidth(gauge), 12);
    expect(rowHeight(overFourInches)).toBeCloseTo(rowHeight(gauge), 12);
    expect(stitchesPerMm(overFourInches)).toBeCloseTo(0.2, 12);
  });
});

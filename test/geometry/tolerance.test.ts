import { describe, expect, it } from 'vitest';
import { nearly, RELATIVE_TOLERANCE } from '../../src/geometry';

describe('nearly', () => {
  it('takes one part in a thousand million by default, on either side', () => {
    expect(RELATIVE_TOLERANCE).toBe(1e-9);
    expect(nearly(1000, 1000 + 0.9e-6)).toBe(true);
    expect(nearly(1000, 1000 + 1.1e-6)).toBe(false);
    expect(nearly(1000 + 0.9e-6, 1000)).toBe(true);
    expect(nearly(1000 + 1.1e-6, 1000)).toBe(false);
  });

  it('compares with nothing by the same share of 1', () => {
    expect(nearly(0, 0.9e-9)).toBe(true);
    expect(nearly(0, 1.1e-9)).toBe(false);
    expect(nearly(-0.9e-9, 0)).toBe(true);
  });

  it('takes another tolerance', () => {
    expect(nearly(10, 10.05, 0.01)).toBe(true);
    expect(nearly(10, 10.2, 0.01)).toBe(false);
  });

  it('knows a sign, and numbers that are not finite', () => {
    expect(nearly(5, -5)).toBe(false);
    expect(nearly(Infinity, Infinity)).toBe(true);
    expect(nearly(Infinity, 1e300)).toBe(false);
    expect(nearly(Infinity, -Infinity)).toBe(false);
    expect(nearly(NaN, NaN)).toBe(false);
  });
});

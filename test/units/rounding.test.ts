import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundHalfDown, roundHalfUp } from '../../src/units';

describe('rounding', () => {
  it.each([
    [31.5, 31, 32],
    [31.4, 31, 31],
    [31.6, 32, 32],
    [31, 31, 31],
    [0.5, 0, 1],
    [-0.5, -1, 0],
    [-31.5, -32, -31],
    [22.500000000000004, 22, 23],
    [22.499999999999996, 22, 23],
    [22.5001, 23, 23],
    [22.4999, 22, 22],
    [1e6 + 0.5, 1e6, 1e6 + 1],
  ])('%d: a half goes down to %d, up to %d', (value, down, up) => {
    expect(roundHalfDown(value)).toBeCloseTo(down, 12);
    expect(roundHalfUp(value)).toBeCloseTo(up, 12);
  });

  it('has no minus nought', () => {
    for (const value of [0, -0, 0.4, -0.4]) {
      expect(Object.is(roundHalfDown(value), 0)).toBe(true);
      expect(Object.is(roundHalfUp(value), 0)).toBe(true);
    }
  });

  it('keeps whole numbers and is never off by more than a half', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e6, max: 1e6 }),
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        (whole, value) => {
          expect(roundHalfDown(whole) === whole && roundHalfUp(whole) === whole).toBe(true);
          for (const rounded of [roundHalfDown(value), roundHalfUp(value)]) {
            expect(Number.isInteger(rounded)).toBe(true);
            expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 + 2e-9 * Math.max(1, Math.abs(value)));
          }
        },
      ),
    );
  });
});

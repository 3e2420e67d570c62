import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  byMultiple,
  fixedNumber,
  lengthText,
  multipleText,
  percentText,
  plainNumber,
  stretchText,
  wantedText,
} from '../../src/text';

describe('numbers', () => {
  test('writes as many decimals as are needed, or a fixed number of them', () => {
    expect(plainNumber(2.2)).toBe('2.2');
    expect(plainNumber(23)).toBe('23');
    expect(plainNumber(2.4567, 2)).toBe('2.46');
    expect(fixedNumber(23)).toBe('23.0');
    expect(fixedNumber(-0.01)).toBe('0.0');
  });

  test('writes lengths in cm and in eighths of an inch', () => {
    expect(lengthText(106.63, 'cm')).toBe('10.7 cm');
    expect(lengthText(100, 'cm')).toBe('10.0 cm');
    expect(lengthText(107.95, 'in')).toBe('4¼ in');
    expect(lengthText(25.4, 'in')).toBe('1 in');
    expect(lengthText(9.525, 'in')).toBe('⅜ in');
  });

  test('says which way a count is off', () => {
    expect(stretchText(-0.02)).toBe('2.0% short');
    expect(stretchText(0.03)).toBe('3.0% over');
    expect(stretchText(0.14)).toBe('14% over');
    expect(stretchText(-0.25)).toBe('25% short');
    expect(stretchText(0)).toBe('exact');
    expect(stretchText(0.0004)).toBe('exact');
    expect(stretchText(-0.0006)).toBe('0.1% short');
    expect(percentText(0.0995)).toBe('10.0%');
  });

  test('says what a number comes to', () => {
    expect(wantedText(22.9)).toBe('22.9, so 23');
    expect(wantedText(31.5)).toBe('31.5, so 31 or 32');
    expect(wantedText(23.46)).toBe('23.5, so 23 or 24');
    expect(wantedText(31.4)).toBe('31.4, so 31');
    expect(wantedText(16)).toBe('16');
    expect(wantedText(15.97)).toBe('16');
  });

  test('a number shown as a half always has both neighbours beside it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.6, max: 900, noNaN: true }), (wanted) => {
        const [, shown, so] = /^(\d+(?:\.\d)?)(?:, so (.*))?$/.exec(wantedText(wanted))!;
        expect(Math.abs(Number(shown) - wanted)).toBeLessThanOrEqual(0.05 + 1e-9);
        const whole = so === undefined ? [Number(shown)] : so.split(' or ').map(Number);
        expect(whole).toHaveLength(shown!.endsWith('.5') ? 2 : 1);
        for (const one of whole) expect(Math.abs(one - wanted)).toBeLessThanOrEqual(0.55);
      }),
    );
  });

  test('says a total by its repeat', () => {
    expect(byMultiple(108, 4, 0)).toBe('27 × 4');
    expect(byMultiple(110, 4, 2)).toBe('27 × 4 + 2');
    expect(multipleText(4, 0)).toBe('a multiple of 4');
    expect(multipleText(4, 2)).toBe('a multiple of 4 plus 2');
  });
});

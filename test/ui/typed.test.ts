import { describe, expect, it } from 'vitest';
import { readCounts } from '../../src/ui/counts';
import { lengthShown } from '../../src/ui/lengthField';
import { decimalNumber, lengthIn, wholeNumber } from '../../src/ui/typed';

const whyOf = (reading: ReturnType<ReturnType<typeof wholeNumber>>, kept: string): string => {
  if (reading.ok) throw new Error('This was taken.');
  return reading.why(kept);
};

describe('what is typed into a field', () => {
  it.each([
    ['4½', 4.5],
    ['5,5', 5.5],
    ['5.5', 5.5],
    ['4 1/2', 4.5],
  ])('%s is a number', (typed, value) => {
    expect(decimalNumber({ least: 0, most: 10 })(typed)).toEqual({ ok: true, value });
  });

  it('may be a length with a unit of its own, and is mm inside', () => {
    const read = lengthIn('cm', { least: 1, most: 1000 });
    expect(read('6,5')).toEqual({ ok: true, value: 65 });
    expect(read('2 in')).toEqual({ ok: true, value: 50.8 });
    expect(whyOf(read('3 ells'), '6.5')).toContain('unit');
  });

  it('outside its range is told in the unit that is shown', () => {
    const range = { least: 60, most: 400 };
    expect(whyOf(lengthIn('cm', range)('44'), '18.0')).toBe(
      'A length from 6.0 cm to 40.0 cm is needed, so 18.0 stays.',
    );
    expect(whyOf(lengthIn('in', range)('1 in'), '7')).toBe('A length from 2⅜ in to 15¾ in is needed, so 7 stays.');
  });

  it('is nothing only where a field may be empty', () => {
    expect(wholeNumber({ least: 0, most: 9, optional: true })(' ')).toEqual({ ok: true, value: null });
    expect(whyOf(wholeNumber({ least: 0, most: 9 })(' '), '4')).toBe('A number is needed here, so 4 stays.');
  });

  it('is refused in a sentence that says what stays', () => {
    const read = wholeNumber({ least: 2, most: 64 });
    expect(whyOf(read('abc'), '14')).toBe('“abc” is not a number, so 14 stays.');
    expect(whyOf(read('1'), '6')).toBe('A whole number from 2 to 64 is needed, so 6 stays.');
    expect(whyOf(read('4.5'), '6')).toContain('whole number');
    expect(whyOf(read('1,234'), '6')).toContain('thousands');
    expect(whyOf(read('abc'), '')).toContain('the field stays empty');
  });
});

describe('the counts of sections', () => {
  it('are read with commas, spaces or plus signs between', () => {
    expect(readCounts('14, 13,14')).toEqual([14, 13, 14]);
    expect(readCounts('14 + 13 + 14')).toEqual([14, 13, 14]);
    expect(readCounts('  ')).toBeNull();
  });

  it('are whole', () => {
    expect(readCounts('14, 13½')).toBe('unread');
    expect(readCounts('14, x')).toBe('unread');
    expect(readCounts('14, -1')).toBe('unread');
  });
});

describe('a length in a field', () => {
  it('is written so that it can be typed back', () => {
    expect(lengthShown(65, 'cm')).toBe('6.5');
    expect(lengthShown(114.3, 'in')).toBe('4½');
    expect(lengthShown(null, 'cm')).toBe('');
  });
});

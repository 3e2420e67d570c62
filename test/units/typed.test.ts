import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber, writeFraction, writeNumber } from '../../src/units';

const value = (text: string): unknown => {
  const read = readNumber(text);
  return read.ok ? read.value : read.reason;
};

describe('readNumber', () => {
  it.each([
    ['0', 0],
    ['42', 42],
    ['  42 ', 42],
    ['\u00a042\u00a0', 42],
    ['007', 7],
    ['+3', 3],
    ['5.5', 5.5],
    ['5,5', 5.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['5,', 5],
    ['22.25', 22.25],
    ['0,125', 0.125],
    ['0.125', 0.125],
    ['12.375', 12.375],
    ['1234,567', 1234.567],
    ['1,2345', 1.2345],
  ])('reads %j', (text, wanted) => {
    expect(value(text)).toBe(wanted);
  });

  it.each([
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1,234,567', 1234567],
    ['1.234.567', 1234567],
    ['1,234,567.25', 1234567.25],
    ['1\u00a0234,5', 1234.5],
    ['1\u202f234', 1234],
  ])('reads thousands apart: %j', (text, wanted) => {
    expect(value(text)).toBe(wanted);
  });

  it.each(['1,234', '12,345', '999,999', '-1,234'])('refuses %j, which may mean either', (text) => {
    expect(value(text)).toBe('ambiguous');
  });

  it.each([
    ['-3', -3],
    ['\u22123', -3],
    ['- 3,5', -3.5],
    ['\u22124½', -4.5],
    ['-1/2', -0.5],
  ])('reads a minus: %j', (text, wanted) => {
    expect(value(text)).toBe(wanted);
  });

  it('has no minus nought', () => {
    expect(Object.is(value('-0'), 0)).toBe(true);
  });

  it.each([
    ['4 1/2', 4.5],
    ['4-1/2', 4.5],
    ['4½', 4.5],
    ['4 ½', 4.5],
    ['½', 0.5],
    ['1/2', 0.5],
    ['1 / 2', 0.5],
    ['1\u20442', 0.5],
    ['4 1\u20442', 4.5],
    ['3/2', 1.5],
    ['0/4', 0],
    ['¼', 1 / 4],
    ['¾', 3 / 4],
    ['⅓', 1 / 3],
    ['⅔', 2 / 3],
    ['⅛', 1 / 8],
    ['⅜', 3 / 8],
    ['⅝', 5 / 8],
    ['12⅞', 12.875],
    ['⅚', 5 / 6],
    ['⅘', 4 / 5],
  ])('reads a fraction: %j', (text, wanted) => {
    expect(value(text)).toBe(wanted);
  });

  it.each(['', '   ', '\u00a0'])('finds nothing in %j', (text) => {
    expect(value(text)).toBe('empty');
  });

  it.each([
    'abc',
    '-',
    '+',
    '.',
    ',',
    '5 5',
    '1 234',
    '5x',
    '5..5',
    '5,,5',
    '1,23,456',
    '1.23,5',
    '1,2345.5',
    '12345,678.5',
    '1.234,567.8',
    '1/0',
    '4 1/0',
    '0/0',
    '4 5/2',
    '4 2/2',
    '1/2/3',
    '1/',
    '/2',
    '4.5 1/2',
    '4,5½',
    '½½',
    '½4',
    '--5',
    '5-',
    '1e5',
    'NaN',
    'Infinity',
    '0x10',
    '٣',
    '5%',
    '9'.repeat(400),
  ])('refuses %j', (text) => {
    expect(value(text)).toBe('not-a-number');
  });

  it('takes any text without failing, and gives finite numbers only', () => {
    const texts = fc.oneof(
      fc.string(),
      fc
        .array(fc.constantFrom(...Array.from('0123456789,.-+ /½⅔\u2044\u2212\u00a0')), { maxLength: 12 })
        .map((list) => list.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const read = readNumber(text);
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
        else expect(['empty', 'not-a-number', 'ambiguous']).toContain(read.reason);
      }),
      { numRuns: 2000 },
    );
  });

  it('reads comma and point alike unless three digits follow', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99999 }), fc.integer({ min: 0, max: 99 }), (whole, part) => {
        const decimals = String(part).padStart(2, '0');
        const wanted = whole + part / 100;
        expect(value(`${whole}.${decimals}`)).toBeCloseTo(wanted, 10);
        expect(value(`${whole},${decimals}`)).toBe(value(`${whole}.${decimals}`));
      }),
    );
  });
});

describe('writeNumber', () => {
  it('writes in the manner of a language', () => {
    expect(writeNumber(5.25, { digits: 1, language: 'en' })).toBe('5.3');
    expect(writeNumber(5.25, { digits: 2, language: 'de' })).toBe('5,25');
    expect(writeNumber(12345.6, { digits: 1, language: 'en' })).toBe('12345.6');
    expect(writeNumber(10, { digits: 2, language: 'en' })).toBe('10');
    expect(writeNumber(10, { digits: 2, language: 'en', padded: true })).toBe('10.00');
    expect(writeNumber(3.5, { digits: 0, language: 'en' })).toBe('4');
    expect(writeNumber(7.5, { digits: 1, language: 'ar-EG' })).toMatch(/^7.5$/u);
  });

  it('has no minus nought', () => {
    expect(writeNumber(-0.04, { digits: 1, language: 'en' })).toBe('0');
    expect(writeNumber(-0.06, { digits: 1, language: 'en' })).toBe('-0.1');
  });

  it('can be typed back', () => {
    const languages = fc.constantFrom('en', 'en-GB', 'de', 'fr', 'sv', 'nb', 'da', 'pl', 'ja', 'is', 'fi');
    const numbers = fc.double({ min: -99999, max: 99999, noNaN: true });
    fc.assert(
      fc.property(
        numbers,
        fc.integer({ min: 0, max: 2 }),
        languages,
        fc.boolean(),
        (number, digits, language, padded) => {
          const read = value(writeNumber(number, { digits, language, padded }));
          expect(Math.abs((read as number) - number)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
        },
      ),
    );
  });
});

describe('writeFraction', () => {
  it.each([
    [0, '0'],
    [4, '4'],
    [4.5, '4½'],
    [0.5, '½'],
    [0.25, '¼'],
    [2.125, '2⅛'],
    [2.375, '2⅜'],
    [2.625, '2⅝'],
    [2.875, '2⅞'],
    [2.75, '2¾'],
    [2.94, '3'],
    [2.93, '2⅞'],
    [0.06, '0'],
    [-4.5, '-4½'],
    [-0.01, '0'],
  ])('writes %d to the nearest eighth', (number, wanted) => {
    expect(writeFraction(number)).toBe(wanted);
  });

  it('writes other parts', () => {
    expect(writeFraction(0.1875, 16)).toBe('3/16');
    expect(writeFraction(2.1875, 16)).toBe('2 3/16');
    expect(writeFraction(2.5, 16)).toBe('2½');
    expect(writeFraction(1 / 3, 3)).toBe('⅓');
    expect(writeFraction(2.6, 1)).toBe('3');
    expect(writeFraction(3.5, 4)).toBe('3½');
  });

  it('can be typed back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 500, noNaN: true }),
        fc.constantFrom(1, 2, 3, 4, 5, 6, 8, 16, 32),
        (number, denominator) => {
          const read = value(writeFraction(number, denominator)) as number;
          expect(Math.abs(read - number)).toBeLessThanOrEqual(0.5 / denominator + 1e-9);
          expect(Math.abs(read * denominator - Math.round(read * denominator))).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

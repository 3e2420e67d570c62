import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromUnit, MM_PER_INCH, readLength, toUnit } from '../../src/units';

const mm = (text: string, unit: 'cm' | 'in' = 'cm'): unknown => {
  const read = readLength(text, unit);
  return read.ok ? read.value : read.reason;
};

describe('units of length', () => {
  // NIST Special Publication 811, appendix B.6, https://www.nist.gov/pml/special-publication-811: 1 inch = 2.54 cm exactly.
  it('knows the inch', () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(toUnit(254, 'in')).toBe(10);
    expect(toUnit(254, 'cm')).toBe(25.4);
    expect(fromUnit(4, 'in')).toBe(101.6);
    expect(fromUnit(10, 'cm')).toBe(100);
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.constantFrom('cm' as const, 'in' as const),
        (n, unit) => {
          expect(toUnit(fromUnit(n, unit), unit)).toBeCloseTo(n, 8);
        },
      ),
    );
  });
});

describe('readLength', () => {
  it('takes a bare number in the unit shown', () => {
    expect(mm('10')).toBe(100);
    expect(mm('10', 'in')).toBe(254);
    expect(mm('10,5')).toBe(105);
    expect(mm('4 1/2', 'in')).toBeCloseTo(114.3, 12);
    expect(mm(' 4½ ', 'in')).toBeCloseTo(114.3, 12);
  });

  it.each([
    ['10 cm', 100],
    ['10cm', 100],
    ['10 CM', 100],
    ['100mm', 100],
    ['100 mm', 100],
    ['1.5 m', 1500],
    ['4"', 101.6],
    ['4 "', 101.6],
    ["4''", 101.6],
    ['4″', 101.6],
    ['4”', 101.6],
    ['4 in', 101.6],
    ['4in.', 101.6],
    ['4 inch', 101.6],
    ['4 inches', 101.6],
    ['4½ in', 114.3],
    ['4 1/2"', 114.3],
    ['4-1/2 in', 114.3],
    ['-5 cm', -50],
  ])('takes its own unit: %j, whatever is shown', (text, wanted) => {
    expect(mm(text, 'cm')).toBeCloseTo(wanted, 12);
    expect(mm(text, 'in')).toBeCloseTo(wanted, 12);
  });

  it.each([
    ['', 'empty'],
    ['cm', 'empty'],
    ['"', 'empty'],
    ['ten', 'not-a-number'],
    ['10 constructor', 'unknown-unit'],
    ['10 kg', 'unknown-unit'],
    ['10 stitches', 'unknown-unit'],
    ['10 cm long', 'not-a-number'],
    ['10 cm 5', 'not-a-number'],
    ['x 10 cm', 'not-a-number'],
    ['1,234 mm', 'ambiguous'],
    ['1/0 in', 'not-a-number'],
    ['1e5 cm', 'not-a-number'],
    ["4'", 'not-a-number'],
  ])('refuses %j: %s', (text, reason) => {
    expect(mm(text)).toBe(reason);
  });

  it('takes any text without failing', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readLength(text, 'in');
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
      }),
    );
  });
});

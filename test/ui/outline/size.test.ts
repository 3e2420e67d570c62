import { describe, expect, it } from 'vitest';
import { termsFor } from '../../../src/text';
import { sizeReader } from '../../../src/ui/outline/size';

/** Reads what is typed for the stitches of a piece of 22 stitches to 10 cm. */
function read(typed: string, cellMm: number | null = 100 / 22) {
  const lengths: [typed: string, count: number, mm: number][] = [];
  const reading = sizeReader({
    kind: 'stitches',
    cellMm,
    most: 2000,
    voice: { terms: termsFor('US'), units: 'cm' },
    onlength: (...length) => lengths.push(length),
  })(typed);
  return { reading, lengths };
}

const whyOf = (typed: string, cellMm?: number | null) => {
  const { reading } = read(typed, cellMm);
  if (reading.ok) throw new Error('This was taken.');
  return reading.why('26');
};

describe('the stitches of an edge as they are typed', () => {
  it.each([
    ['26', 26],
    ['26 sts', 26],
    ['26 stitches', 26],
    ['-4', -4],
    ['−4', -4],
    ['0', 0],
  ])('%s is a count', (typed, value) => {
    const { reading, lengths } = read(typed);
    expect(reading).toEqual({ ok: true, value });
    expect(lengths).toEqual([]);
  });

  it.each([
    // 12 cm at 22 to 10 cm are 26.4 stitches, 5 in are 27.94, 25 mm 5.5: a half goes up.
    ['12 cm', 26],
    ['5 in', 28],
    ['5"', 28],
    ['25 mm', 6],
    ['-12 cm', -26],
  ])('%s is brought to the nearest stitch, and that is told', (typed, value) => {
    const { reading, lengths } = read(typed);
    expect(reading).toEqual({ ok: true, value });
    expect(lengths).toHaveLength(1);
    expect(lengths[0]!.slice(0, 2)).toEqual([typed, value]);
    expect(lengths[0]![2]).toBeCloseTo((Math.abs(value) * 100) / 22, 9);
  });

  it('is refused with the reason and what stays', () => {
    expect(whyOf('wide')).toBe('“wide” is not a number, so 26 stays.');
    expect(whyOf('12.5')).toContain('whole number');
    expect(whyOf('2001')).toContain('to 2000');
    expect(whyOf('10 m')).toContain('to 2000');
    expect(whyOf('12 cm', null)).toBe(
      "“12 cm” can't be turned into stitches on a piece without a gauge: give it one under Pieces, or type the stitches. Until then 26 stays.",
    );
  });

  it('does not tell a length that was refused', () => {
    expect(read('9100 cm').lengths).toEqual([]);
  });
});

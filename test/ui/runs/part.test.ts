import { describe, expect, it } from 'vitest';
import { placeAlong } from '../../../src/ui/runs/part';

/** A place along an edge of 20 cm of which the share up to 0.8 is free. */
const read = (typed: string, lengthMm: number | null = 200) => placeAlong(lengthMm, 'cm', [0, 0.8])(typed);
const whyOf = (typed: string, lengthMm?: number | null) => {
  const reading = read(typed, lengthMm);
  if (reading.ok) throw new Error('This was taken.');
  return reading.why('25');
};

describe('a place along an edge as it is typed', () => {
  it.each([
    ['25', 0.25],
    ['25%', 0.25],
    ['12,5 %', 0.125],
    ['5 cm', 0.25],
    ['2 in', 0.254],
    ['0', 0],
    ['80', 0.8],
  ])('%s is a share of its length', (typed, share) => {
    const reading = read(typed);
    expect(reading.ok && reading.value).toBeCloseTo(share, 12);
  });

  it('is refused where it is none, lies outside, or has nothing to go by', () => {
    expect(whyOf('half')).toBe('“half” is neither a percentage nor a length, so 25% stays.');
    expect(whyOf('81')).toBe('A place between 0% and 80% of the edge is needed, so 25% stays.');
    expect(whyOf('-1 cm')).toContain('between 0% and 80%');
    expect(whyOf('5 cm', null)).toContain('has none without a gauge');
    expect(read('50', null)).toEqual({ ok: true, value: 0.5 });
  });
});

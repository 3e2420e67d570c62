import { describe, expect, it } from 'vitest';
import { rulerOf } from '../../src/pickup/ruler';

describe('rulerOf', () => {
  const ruler = rulerOf([
    [0, 0],
    [10, 20],
    [10, 20],
    [30, 30],
  ]);

  it("reads lengths and distances between its marks, one the other's inverse", () => {
    expect([0, 5, 10, 20, 30].map((along) => ruler.lengthAt(along))).toEqual([0, 10, 20, 25, 30]);
    for (const along of [0, 3, 10, 17, 30]) expect(ruler.alongAt(ruler.lengthAt(along))).toBeCloseTo(along, 12);
  });

  it('stops at its ends', () => {
    expect([ruler.lengthAt(-4), ruler.lengthAt(99), ruler.alongAt(99)]).toEqual([0, 30, 30]);
    expect([ruler.joinMm, ruler.lengthMm]).toEqual([30, 30]);
  });
});

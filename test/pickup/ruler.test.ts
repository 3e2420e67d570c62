import { describe, expect, it } from 'vitest';
import { rulerOf } from '../../src/pickup/ruler';

describe('rulerOf', () => {
  // Along the join 0, 4, 10 and 10, 30; by the measure 0, 12, 20 and 20, 25, 30.
  const ruler = rulerOf(
    [
      { marks: [4, 10], scale: 1, end: 10 },
      { marks: [5], scale: 1, end: 20 },
    ],
    [
      { marks: [6, 10], scale: 2, end: 20 },
      { marks: [10], scale: 0.5, end: 10 },
    ],
  );

  it("reads lengths and distances between its marks, one the other's inverse", () => {
    const lengths = [0, 2, 4, 7, 10, 12.5, 15, 22.5, 30].map((along) => ruler.lengthAt(along));
    expect(lengths).toEqual([0, 6, 12, 16, 20, 22.5, 25, 27.5, 30]);
    for (const along of [0, 3, 10, 17, 30]) expect(ruler.alongAt(ruler.lengthAt(along))).toBeCloseTo(along, 12);
  });

  it('stops at its ends', () => {
    expect([ruler.lengthAt(-4), ruler.lengthAt(99), ruler.alongAt(99)]).toEqual([0, 30, 30]);
    expect([ruler.joinMm, ruler.lengthMm]).toEqual([30, 30]);
  });

  it('without stretches has no length', () => {
    const nothing = rulerOf([], []);
    expect([nothing.lengthMm, nothing.joinMm, nothing.lengthAt(3)]).toEqual([0, 0, 0]);
  });
});

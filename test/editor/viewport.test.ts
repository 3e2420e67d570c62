import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centred, keptUnder, panned, SCALE, zoomed } from '../../src/editor';

const spot = fc.tuple(fc.double({ min: -1e4, max: 1e4, noNaN: true }), fc.double({ min: -1e4, max: 1e4, noNaN: true }));

describe('zooming', () => {
  it('multiplies the scale within its limits', () => {
    expect(zoomed(0.5, 2)).toBe(1);
    expect(zoomed(SCALE.most, 2)).toBe(SCALE.most);
    expect(zoomed(SCALE.least, 0.5)).toBe(SCALE.least);
  });

  it('keeps what was under the pointer where it is on screen', () => {
    fc.assert(
      fc.property(spot, spot, spot, ([left, top], before, after) => {
        const view = { scale: 1, left, top };
        const next = keptUnder(view, 2, before, after);
        expect(next.scale).toBe(2);
        expect(after[0] - next.left).toBeCloseTo(before[0] - view.left, 6);
        expect(after[1] - next.top).toBeCloseTo(before[1] - view.top, 6);
      }),
    );
  });
});

it('panning moves the drawing with the hand', () => {
  expect(panned({ scale: 1, left: 10, top: 20 }, 3, -4)).toEqual({ scale: 1, left: 7, top: 24 });
});

it('a sheet in the middle has the same room on both sides, also where it is larger than the view', () => {
  expect(centred(1, { width: 50, height: 300 }, { width: 100, height: 100 })).toEqual({
    scale: 1,
    left: -25,
    top: 100,
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcOf, cubic, lengthOf, sizeOf, turningAlong, turningTo, type Point } from '../../src/geometry';
import { anyCubics, anyLines, parameters } from './arbitrary';
import { panelLength } from './reference';

const at = (x: number, y: number): Point => ({ x, y });

describe('arcOf', () => {
  it('lays a curve out once', () => {
    const curve = cubic(at(0, 0), at(0, 5), at(5, 5), at(5, 0));
    expect(arcOf(curve)).toBe(arcOf(curve));
    expect(arcOf({ ...curve })).not.toBe(arcOf(curve));
    expect(arcOf(curve).length).toBe(lengthOf(curve));
  });

  it('measures to every place as the rule on many panels does', () => {
    fc.assert(
      fc.property(anyCubics, fc.array(parameters, { minLength: 1, maxLength: 4 }), (curve, places) => {
        const arc = arcOf(curve);
        for (const t of places) {
          const wanted = panelLength(curve, 0, t);
          expect(Math.abs(arc.lengthTo(t) - wanted)).toBeLessThanOrEqual(1e-9 * wanted + 1e-14 * sizeOf(curve));
        }
      }),
      { numRuns: 150 },
    );
  });

  it('never shrinks from one near place to the next, across its cuts too', () => {
    // A cusp in the middle: many cuts crowd there.
    const curve = cubic(at(0, 0), at(1.001, 1), at(-0.001, 1), at(1, 0));
    const { length, lengthTo } = arcOf(curve);
    const lengths = Array.from({ length: 4001 }, (_, i) => lengthTo(i / 4000));
    expect(lengths.every((mm, i) => i === 0 || mm >= lengths[i - 1]! - 1e-12)).toBe(true);
    expect([lengths[0], lengths[4000]]).toEqual([0, length]);
  });
});

describe('turningAlong', () => {
  it('is turningTo, place by place', () => {
    fc.assert(
      fc.property(fc.oneof(anyCubics, anyLines), parameters, (seg, t) => {
        expect(turningAlong(seg)(t)).toBe(turningTo({ ...seg }, t));
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mirrorableParts } from '../../src/pickup';
import { along, plan, rectangle, type Raw } from './builders';
import { everyPlan, sum } from './plans';

const strip = (rows: number, fields: Raw) => plan(rectangle(20, rows), along(['right'], fields));
const counts = (made: ReturnType<typeof plan>) => made.sections.map((section) => section.count);

describe('sections', () => {
  it('sum to the total and differ by one at most with exact counts by length', () => {
    everyPlan((made) => {
      const wish = made.pickup.sections;
      if (!wish) {
        expect(made.sections).toEqual([]);
        return;
      }
      expect(sum(counts(made))).toBe(made.picked);
      expect(made.sections.map((section) => section.running)).toEqual(
        counts(made).map((_, i) => sum(counts(made).slice(0, i + 1))),
      );
      expect(sum(made.sections.map((section) => section.after))).toBe(made.target);
      if (wish.by !== 'length') return;
      expect(made.sections).toHaveLength(wish.parts);
      expect(Math.max(...counts(made)) - Math.min(...counts(made))).toBeLessThanOrEqual(1);
    });
  });

  it('have the points that they count, in order, each marker between two of them', () => {
    everyPlan((made) => {
      for (const { n, count, running, marker } of made.sections) {
        const used = made.points.filter((point) => point.n !== null);
        expect(used.filter((point) => point.section === n)).toHaveLength(count);
        if (running > 0) expect(used[running - 1]!.alongMm).toBeLessThanOrEqual(marker.alongMm + 1e-6);
        if (running < used.length) expect(used[running]!.alongMm).toBeGreaterThanOrEqual(marker.alongMm - 1e-6);
      }
      made.points.forEach(
        (point, i) => i > 0 && expect(point.section).toBeGreaterThanOrEqual(made.points[i - 1]!.section),
      );
    }, 40);
  });

  it('have lengths that add up to the whole', () => {
    everyPlan((made) => {
      if (made.sections.length === 0 || made.sections.some((section) => section.lengthMm === null)) return;
      const whole = sum(made.edges.map((edge) => edge.lengthMm!));
      expect(sum(made.sections.map((section) => section.lengthMm!))).toBeCloseTo(whole, 4);
      expect(made.sections.every((section) => section.lengthMm! >= -1e-9)).toBe(true);
    });
  });

  it('have the running count K * i / n at marker i, a half going up', () => {
    const made = strip(151, { sections: { by: 'length', parts: 8 } });
    expect(made.picked).toBe(108);
    expect(made.sections.map((section) => section.running)).toEqual([14, 27, 41, 54, 68, 81, 95, 108]);
  });

  it('stand near their places by length', () => {
    const made = strip(280, { sections: { by: 'length', parts: 4 } });
    made.sections.forEach((section, i) => expect(Math.abs(section.marker.alongMm - 250 * (i + 1))).toBeLessThan(5));
  });

  it('at landmarks count the points before each corner', () => {
    const made = plan(rectangle(20, 28), along(['right', 'top', 'left'], { sections: { by: 'landmarks' } }));
    expect(counts(made)).toEqual([20, 20, 20]);
    expect(made.sections.map((section) => section.marker.landmark?.edge)).toEqual(['top', 'left', undefined]);
    expect(made.sections[0]!.marker.alongMm).toBeCloseTo(100, 9);
  });

  it('at landmarks have a marker at the centre of an edge that mirrors itself', () => {
    const made = plan(
      rectangle(20, 28, {}, { symmetric: true }),
      along(['right', 'top', 'left'], { sections: { by: 'landmarks' } }),
    );
    expect(counts(made)).toEqual([20, 10, 10, 20]);
  });

  it('by both have the landmark where a marker would stand at the same count', () => {
    const made = plan(rectangle(20, 28), along(['right', 'top', 'left'], { sections: { by: 'both', parts: 3 } }));
    expect(counts(made)).toEqual([20, 20, 20]);
    expect(made.sections.filter((section) => section.marker.landmark)).toHaveLength(2);
  });
});

describe('the same count in every section', () => {
  /** 14.4 in each of 8: pick up 14 in each, 112 in all, and increase to 115 (model's own scenario). */
  it('14.4 in each of 8 picks up 14 in each and increases to 115', () => {
    const made = strip(200, { target: 115, sections: { by: 'length', parts: 8, counts: 'same' } });
    expect(counts(made)).toEqual(Array.from({ length: 8 }, () => 14));
    expect([made.firstRow.from, made.firstRow.to]).toEqual([112, 115]);
    expect(made.notes).toContainEqual({ kind: 'same-sections', each: 14, parts: 8, picked: 112, target: 115 });
    expect(sum(made.sections.map((section) => section.after))).toBe(115);
  });

  it('is equal in all, and the first row makes up the rest', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 400 }),
        fc.integer({ min: 2, max: 20 }),
        fc.integer({ min: 1, max: 6 }),
        (rows, parts, multiple) => {
          const made = strip(rows, { band: { multiple }, sections: { by: 'length', parts, counts: 'same' } });
          expect(new Set(counts(made)).size).toBe(1);
          expect(made.target - made.picked).toBe(made.target % parts);
        },
      ),
    );
  });
});

describe('mirroring', () => {
  it('is impossible with an odd remainder over an even number of sections, and said with a way out', () => {
    const made = strip(151, { target: 107, sections: { by: 'length', parts: 8 } });
    expect(made.notes).toContainEqual({ kind: 'sections-cannot-mirror', count: 107, parts: 8, better: [7, 9] });
  });

  it('is possible with the numbers offered', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 500 }), fc.integer({ min: 2, max: 64 }), (count, parts) => {
        for (const better of mirrorableParts(count, parts)) {
          // Sections c, c, … with the longer ones spread: a palindrome needs an even number of them or a middle one.
          expect(better % 2 === 1 || (count % better) % 2 === 0).toBe(true);
          expect(better >= 2 && better <= 64 && better !== parts).toBe(true);
        }
      }),
    );
  });
});

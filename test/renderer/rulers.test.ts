import { describe, expect, it } from 'vitest';
import { ticksOf } from '../../src/renderer/rulers';
import { draw, marksOf, planOf, square, textsOf } from './designs';

describe('ticks of a ruler', () => {
  it('are numbered in round steps that stand apart', () => {
    const { long, short } = ticksOf({ length: 110, sheetLength: 150, whole: true });
    expect(long).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110]);
    expect(short.every((tick) => !long.includes(tick))).toBe(true);
  });

  it('are whole for stitches and rows, however large they are drawn', () => {
    const { long, short } = ticksOf({ length: 5, sheetLength: 200, whole: true });
    expect([...long, ...short].every(Number.isInteger)).toBe(true);
    expect(long.length).toBeGreaterThan(1);
  });

  it('thin out with the scale', () => {
    const counts = [400, 200, 100, 50, 25].map(
      (sheetLength) => ticksOf({ length: 110, sheetLength, whole: true }).long.length,
    );
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
    expect(counts[4]).toBeLessThan(counts[0]!);
  });

  it('divide each numbered step evenly', () => {
    for (const sheetLength of [30, 60, 90, 120, 200, 333]) {
      const { long, short } = ticksOf({ length: 100, sheetLength, whole: true });
      const step = long[1]! - long[0]!;
      const inFirst = short.filter((tick) => tick < step).length;
      const inSecond = short.filter((tick) => tick > step && tick < 2 * step).length;
      expect(inSecond, `${sheetLength} mm`).toBe(inFirst);
    }
  });
});

describe('rulers and dimensions', () => {
  const units = (drawing: ReturnType<typeof draw>) => textsOf(drawing, 'ruler-unit').sort();

  it('measure in stitches, rows and the shown unit', () => {
    const plan = planOf(square(60, 84));
    expect(units(draw(plan))).toEqual(['cm', 'cm', 'rows', 'stitches']);
    expect(units(draw(plan, { words: { units: 'in' } }))).toEqual(['in', 'in', 'rows', 'stitches']);
    expect(textsOf(draw(plan), 'dimension-text')).toEqual(['30.0 cm · 60 sts', '30.0 cm · 84 rows']);
  });

  it('have no lengths where a piece has no gauge', () => {
    const strip = planOf(square(12, 88, {}, { gauge: undefined }));
    expect(units(draw(strip))).toEqual(['rows', 'stitches']);
    expect(textsOf(draw(strip), 'dimension-text')).toEqual(['12 sts', '88 rows']);
  });

  it('write numbers in the language of the page', () => {
    const numbers = (language: string) =>
      textsOf(draw(planOf(square(10, 12)), { scale: 4, words: { units: 'cm', language } }), 'ruler-number').join(' ');
    expect(numbers('en')).toContain('0.5');
    expect(numbers('de')).toContain('0,5');
  });

  it('can be left out', () => {
    const bare = draw(planOf(square(60, 84)), { rulers: false, dimensions: false });
    expect(marksOf(bare).filter(({ role }) => role === 'ruler' || role === 'dimension')).toEqual([]);
  });
});

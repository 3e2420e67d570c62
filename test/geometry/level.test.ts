import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, line, parametersAtX, parametersAtY, pointAt, turnsInY, type Point } from '../../src/geometry';
import { anySegments, parameters } from './arbitrary';

const at = (x: number, y: number): Point => ({ x, y });

describe('parametersAtY', () => {
  it('crosses a line once, or lies on it', () => {
    expect(parametersAtY(line(at(0, 0), at(5, 10)), 2.5)).toEqual([expect.closeTo(0.25, 14)]);
    expect(parametersAtY(line(at(0, 0), at(5, 10)), 11)).toEqual([]);
    expect(parametersAtY(line(at(0, 3), at(5, 3)), 3)).toEqual([0, 1]);
    expect(parametersAtY(line(at(0, 3), at(5, 3)), 3.1)).toEqual([]);
  });

  it('has both ends of a line', () => {
    expect(parametersAtY(line(at(0, 0), at(5, 10)), 0)).toEqual([0]);
    expect(parametersAtY(line(at(0, 0), at(5, 10)), 10)).toEqual([1]);
  });

  it('crosses an arch twice, touches its top once and misses beyond', () => {
    const arch = cubic(at(0, 0), at(0, 10), at(20, 10), at(20, 0));
    // y = 30 t (1 - t).
    const low = 0.5 - Math.sqrt(0.25 - 0.1);
    expect(parametersAtY(arch, 3)).toEqual([expect.closeTo(low, 12), expect.closeTo(1 - low, 12)]);
    expect(parametersAtY(arch, 7.5)).toEqual([expect.closeTo(0.5, 9)]);
    expect(parametersAtY(arch, 7.5001)).toEqual([]);
    expect(parametersAtY(arch, 0)).toEqual([0, 1]);
  });

  it('crosses a wave three times', () => {
    const wave = cubic(at(0, 0), at(1, 10), at(2, -10), at(3, 0));
    expect(parametersAtY(wave, 0)).toEqual([0, expect.closeTo(0.5, 12), 1]);
    expect(parametersAtY(wave, 1)).toHaveLength(2);
  });

  it('finds x as well', () => {
    expect(parametersAtX(cubic(at(0, 0), at(10, 0), at(10, 20), at(0, 20)), 3)).toHaveLength(2);
    expect(parametersAtX(line(at(2, 0), at(6, 1)), 3)).toEqual([expect.closeTo(0.25, 14)]);
  });

  it('finds every place of a height, in order, and nothing else', () => {
    fc.assert(
      fc.property(anySegments, parameters, (seg, t) => {
        const y = pointAt(seg, t).y;
        const found = parametersAtY(seg, y);
        expect(found).toEqual([...found].sort((p, q) => p - q));
        expect(new Set(found).size).toBe(found.length);
        for (const s of found) expect(Math.abs(pointAt(seg, s).y - y)).toBeLessThan(1e-10);
        const level = Math.abs(seg.from.y - seg.to.y) < 1e-6 && turnsInY(seg).length === 0;
        const beside = found.some((s) => Math.abs(pointAt(seg, s).x - pointAt(seg, t).x) < 1e-3);
        expect(level || beside || found.some((s) => Math.abs(s - t) < 1e-4)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('crosses as often as a fine polyline does', () => {
    fc.assert(
      fc.property(anySegments, fc.double({ min: -100, max: 100, noNaN: true }), (seg, y) => {
        let crossings = 0;
        for (let i = 1; i <= 2000; i++) {
          if (pointAt(seg, (i - 1) / 2000).y < y !== pointAt(seg, i / 2000).y < y) crossings += 1;
        }
        const nearTurn = [...turnsInY(seg), 0, 1].some((t) => Math.abs(pointAt(seg, t).y - y) < 1e-3);
        fc.pre(!nearTurn);
        expect(parametersAtY(seg, y)).toHaveLength(crossings);
      }),
    );
  });
});

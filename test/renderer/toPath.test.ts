import { line } from 'd3-shape';
import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { chainPath, circles, diamonds, digits, linesPath, roundedPath } from '../../src/renderer/toPath';

const place = {
  piece: 'p',
  x: 10,
  y: 20,
  scale: 2,
  cell: { width: 1, height: 1 },
  box: { x: 0, y: 0, width: 0, height: 0 },
};

describe('numbers in path data', () => {
  it('keep three decimals and nothing that says nothing', () => {
    expect([1, 1.5, 0.12345, -0.0004, 1 / 3, -2.00049, 1e-9].map(digits)).toEqual([
      '1',
      '1.5',
      '0.123',
      '0',
      '0.333',
      '-2',
      '0',
    ]);
  });

  it('are what the language writes for the nearest thousandth', () => {
    const nearest = (value: number) => String(Math.round(value * 1000) / 1000 + 0);
    fc.assert(
      fc.property(fc.double({ min: -1e7, max: 1e7, noNaN: true }), (value) => {
        expect(digits(value)).toBe(nearest(value));
      }),
    );
    fc.assert(fc.property(fc.integer({ min: -2e6, max: 2e6 }), (n) => digits(n / 1000) === nearest(n / 1000)));
  });

  it('never come out in powers of ten', () => {
    expect(digits(1.2e-7)).toBe('0');
    expect(digits(123456.789)).toBe('123456.789');
  });
});

describe('shapes, measured by an independent reader of path data', () => {
  const length = (d: string) => new svgPathProperties(d).getTotalLength();

  it('draws a circle whose circumference is 2 pi r', () => {
    expect(length(circles(0.8)(3, 4))).toBeCloseTo(2 * Math.PI * 0.8, 3);
  });

  it('draws a diamond whose corners lie at its radius', () => {
    expect(length(diamonds(1)(3, 4))).toBeCloseTo(4 * Math.SQRT2, 3);
    expect(new svgPathProperties(diamonds(1)(3, 4)).getPointAtLength(0)).toEqual({ x: 2, y: 4 });
  });

  it('draws a rectangle with round corners', () => {
    expect(length(roundedPath(0, 0, 10, 6, 2))).toBeCloseTo(2 * (6 + 2) + 2 * Math.PI * 2, 3);
  });

  it('rounds a narrow rectangle by half its height at most', () => {
    expect(length(roundedPath(0, 0, 10, 4, 9))).toBeCloseTo(2 * 6 + 2 * Math.PI * 2, 3);
  });
});

describe('lines', () => {
  it('are open or closed', () => {
    expect(
      linesPath([
        [0, 0],
        [1, 0],
      ]),
    ).toBe('M0,0L1,0');
    expect(
      linesPath(
        [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        true,
      ),
    ).toBe('M0,0L1,0L1,1Z');
    expect(linesPath([])).toBe('');
  });

  it('put a chain of fabric mm on the sheet with y turned over', () => {
    const chain = [
      { kind: 'line' as const, from: { x: 0, y: 0 }, to: { x: 5, y: 0 } },
      {
        kind: 'cubic' as const,
        from: { x: 5, y: 0 },
        c1: { x: 6, y: 1 },
        c2: { x: 6, y: 2 },
        to: { x: 5, y: 3 },
      },
    ];
    expect(chainPath(place, chain)).toBe('M10,20L20,20C22,18 22,16 20,14');
    expect(chainPath(place, chain, false)).toBe('L20,20C22,18 22,16 20,14');
  });
});

describe('the run of straight lines', () => {
  it("is that of d3-shape's line generator, the outside reference", () => {
    const place = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 2, maxLength: 20 }), (spots) => {
        expect(linesPath(spots)).toBe(line().digits(3)(spots));
      }),
    );
  });
});

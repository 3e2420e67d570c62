import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridToSheet, sheetToGrid, toFabric, toSheet, windowIn } from '../../src/renderer';
import { draw, planOf, square } from './designs';

const place = draw(planOf(square(10, 14))).places[0]!;

describe('the place of a piece on the sheet', () => {
  it('puts the corners of the grid on the corners of its box', () => {
    const { box } = place;
    const [left, bottom] = gridToSheet(place, 0, 0);
    const [right, top] = gridToSheet(place, 10, 14);
    expect([left, bottom]).toEqual([expect.closeTo(box.x, 9), expect.closeTo(box.y + box.height, 9)]);
    expect([right, top]).toEqual([expect.closeTo(box.x + box.width, 9), expect.closeTo(box.y, 9)]);
  });

  it('is half as large as the fabric at half size', () => {
    expect(place.box.width).toBeCloseTo(10 * 5 * 0.5, 9);
    expect(place.box.height).toBeCloseTo((14 * 100 * 0.5) / 28, 9);
  });

  it('leads back where it came from', () => {
    const number = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(number, number, (x, y) => {
        const [mmX, mmY] = toFabric(place, ...toSheet(place, x, y));
        const [stitches, rows] = sheetToGrid(place, ...gridToSheet(place, x, y));
        expect([mmX, mmY, stitches, rows]).toEqual([x, y, x, y].map((value) => expect.closeTo(value, 6)));
      }),
    );
  });

  it('tells which fabric lies in a part of the sheet', () => {
    const whole = windowIn(place, place.box);
    expect(whole).toEqual({
      minX: expect.closeTo(0, 9),
      minY: expect.closeTo(0, 9),
      maxX: expect.closeTo(50, 9),
      maxY: expect.closeTo(50, 9),
    });
  });
});

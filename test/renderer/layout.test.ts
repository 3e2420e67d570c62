import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/renderer';
import { draw, planOf, square } from './designs';

const two = planOf([square(10, 14), square(30, 40, {}, { id: 'second', name: 'Second' })]);

describe('where the pieces stand', () => {
  it('is side by side with room between them and on one line at the bottom', () => {
    const [a, b] = draw(two).places.map(({ box }) => box) as [Box, Box];
    expect(b.x - (a.x + a.width)).toBeGreaterThan(20);
    expect(a.y + a.height).toBeCloseTo(b.y + b.height, 9);
  });

  it('leaves room for all on a sheet', () => {
    const drawing = draw(two);
    for (const { box } of drawing.places) {
      expect(box.x).toBeGreaterThan(0);
      expect(box.y).toBeGreaterThan(0);
      expect(box.x + box.width).toBeLessThan(drawing.width);
      expect(box.y + box.height).toBeLessThan(drawing.height);
    }
  });

  it('takes less room without rulers and dimensions', () => {
    const bare = draw(two, { rulers: false, dimensions: false });
    expect(bare.width).toBeLessThan(draw(two).width);
    expect(bare.height).toBeLessThan(draw(two).height);
  });

  it('leaves out pieces that the pick-up does not touch, unless they are asked for', () => {
    const plan = planOf([square(10, 14), square(30, 40, {}, { id: 'second' })], {
      along: [{ piece: 'second', edge: 'top' }],
    });
    const ids = (options: Parameters<typeof draw>[1]) => draw(plan, options).places.map(({ piece }) => piece);
    expect(ids({})).toEqual(['second']);
    expect(ids({ pickup: null })).toEqual(['square', 'second']);
    expect(ids({ pieces: ['square', 'second'] })).toEqual(['square', 'second']);
    expect(ids({ pieces: ['square'] })).toEqual(['square']);
  });

  it('draws a piece without a gauge 3 to 4', () => {
    const strip = planOf(square(12, 88, {}, { gauge: undefined }));
    const { box, cell } = draw(strip).places[0]!;
    expect(cell.height / cell.width).toBeCloseTo(3 / 4, 9);
    expect(box.height / box.width).toBeCloseTo((88 * 3) / (12 * 4), 9);
  });

  it('is an empty sheet where no piece is drawn', () => {
    const drawing = draw(two, { pieces: [] });
    expect(drawing.places).toEqual([]);
    expect([drawing.width, drawing.height]).toEqual([0, 0]);
  });
});

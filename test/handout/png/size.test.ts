import { describe, expect, it } from 'vitest';
import { mostDots, pngSize } from '../../../src/handout';

describe('the dots of a picture', () => {
  it.each([
    [{ width: 25.4, height: 50.8 }, 300, { width: 300, height: 600 }],
    [{ width: 210, height: 297 }, 150, { width: 1240, height: 1754 }],
    [{ width: 210, height: 297 }, 600, { width: 4961, height: 7016 }],
    [{ width: 0.5, height: 25.4 }, 150, { width: 3, height: 150 }],
  ])('of %j at %d to the inch', (size, dots, wanted) => {
    expect(pngSize(size, dots)).toEqual(wanted);
  });

  it('are none where no browser draws as many: too many across, down, or in all', () => {
    expect(pngSize({ width: 700, height: 10 }, 600)).toBeNull();
    expect(pngSize({ width: 10, height: 700 }, 600)).toBeNull();
    expect(pngSize({ width: 600, height: 600 }, 600)).toBeNull();
    expect(pngSize({ width: 600, height: 60 }, 600)).not.toBeNull();
  });
});

describe('the most dots to the inch', () => {
  it.each([
    { width: 210, height: 297 },
    { width: 297, height: 210 },
    { width: 562, height: 320 },
    { width: 1200, height: 40 },
    { width: 15.4, height: 1200 },
  ])('that %j has room for are some, and one more is too many', (sheet) => {
    const most = mostDots(sheet);
    expect(pngSize(sheet, most)).not.toBeNull();
    expect(pngSize(sheet, most + 1)).toBeNull();
  });
});

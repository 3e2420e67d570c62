import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/renderer/width';

describe('the width of a line of text', () => {
  it('is the sum of its letters, by the size', () => {
    // DejaVu Serif has figures of 636 thousandths, as its own metrics say.
    expect(textWidth('108', 10)).toBeCloseTo(19.08, 9);
    expect(textWidth('', 10)).toBe(0);
    expect(textWidth('Mi', 2)).toBeCloseTo((2 * (1024 + 320)) / 1000, 9);
  });

  it('is never too small for letters beyond the table', () => {
    expect(textWidth('é', 1)).toBeGreaterThan(0.6);
    expect(textWidth('編', 1)).toBeGreaterThanOrEqual(1);
    expect(textWidth('🧶', 1)).toBeGreaterThanOrEqual(1);
  });
});

import { describe, expect, it } from 'vitest';
import { drawDiagram, scaleToFit, type DrawOptions } from '../../src/renderer';
import { planOf, square } from './designs';

const options: Omit<DrawOptions, 'scale'> = {
  pickup: null,
  detail: 'shape',
  words: { units: 'cm' },
  rulers: true,
  dimensions: true,
  fabric: 'none',
};

describe('the scale that fits', () => {
  const plan = planOf([square(60, 80), square(20, 200, {}, { id: 'second' })]);

  it.each([
    [180, 260],
    [260, 180],
    [400, 400],
    [2000, 150],
  ])('fills a room of %i by %i mm in one direction and stays inside it', (width, height) => {
    const scale = scaleToFit(plan, options, { width, height });
    const drawing = drawDiagram(plan, { ...options, scale });
    expect(drawing.width).toBeLessThanOrEqual(width + 1e-6);
    expect(drawing.height).toBeLessThanOrEqual(height + 1e-6);
    expect(Math.max(drawing.width / width, drawing.height / height)).toBeCloseTo(1, 6);
  });

  it('stays above nothing where there is no room', () => {
    expect(scaleToFit(plan, options, { width: 1, height: 1 })).toBeGreaterThan(0);
  });
});

import { describe, expect, it } from 'vitest';
import { describeDrawing, fileDrawing, fileScale, fileSvg } from '../../src/renderer';
import { around, dataOf, neckband, planOf, square, strokesIn, vFront } from './designs';

describe('the drawing in a file', () => {
  it('is large enough to tell neighbouring openings apart', () => {
    const plan = planOf(square(40, 60, {}, { gauge: { stitches: 30, rows: 42 } }), around({}, ['right']));
    const { points } = fileDrawing(plan, 0);
    const gaps = points.slice(1).map(({ x, y }, i) => Math.hypot(x - points[i]!.x, y - points[i]!.y));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(2.2 - 1e-9);
    expect(strokesIn(dataOf(fileDrawing(plan, 0), 'skipped'))).toBeGreaterThan(0);
  });

  it('is never larger than the fabric nor than a large sheet', () => {
    const coarse = planOf(square(20, 20, {}, { gauge: { stitches: 6, rows: 8 } }), around({}, ['right']));
    expect(fileScale(coarse, 0)).toBeLessThanOrEqual(1);
    const vast = planOf(square(1800, 2500), around({}, ['right']));
    expect(fileDrawing(vast, 0).height).toBeLessThanOrEqual(1200 + 1e-6);
  });

  it('shows pieces alone at half size', () => {
    expect(fileScale(planOf(square(20, 20)), null)).toBe(0.5);
  });

  it('tells what it shows to those who do not see it', () => {
    const plan = planOf(vFront(), neckband(['neck-left', 'neck-right']));
    const { picked } = plan.pickups[0]!;
    expect(describeDrawing(plan, 0)).toEqual({
      title: 'Swatch: Neckband',
      description: `Front, drawn with the right side facing. Neckband: ${picked} stitches along 2 edges.`,
    });
    expect(describeDrawing(plan, null).title).toBe('Swatch');
    expect(fileSvg(plan, 0)).toContain('<title id="title">Swatch: Neckband</title>');
  });
});

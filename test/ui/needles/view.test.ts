import { describe, expect, it } from 'vitest';
import { needlesOn, needlesStart, needleWork, type NeedlePlace } from '../../../src/pickup';
import { drawDiagram, toSheet } from '../../../src/renderer';
import { closeTo, needleLayout, progressOf } from '../../../src/ui/needles/view';
import { pickupOf, planSample } from '../../samples/sample';

const design = planSample('pullover');
const plan = pickupOf(design, 'neckband');
const front = design.measured.find(({ piece }) => piece.id === 'front')!;
const size = { width: 78, height: 52 };

const places: NeedlePlace[] = [needlesStart(plan)];
for (let i = 0; i < 12; i++) places.push(needlesOn(plan, places.at(-1)!));

describe('the close view', () => {
  it('has the whole of the present step in it, in its middle', () => {
    for (const place of places) {
      const { steps, at } = needleWork(plan, place);
      const step = steps[at];
      if (!step || plan.edges[step.edge]!.piece.id !== 'front') continue;
      const stretch = plan.points.slice(step.from, step.to);
      const { scale, left, top } = closeTo(front, stretch, size);
      const [on] = needleLayout([front], scale).places;
      const spots = stretch.map(({ x, y }) => toSheet(on!, x * on!.cell.width, y * on!.cell.height));
      for (const [x, y] of spots) {
        expect(x - left).toBeGreaterThan(10);
        expect(x - left).toBeLessThan(size.width - 10);
        expect(y - top).toBeGreaterThan(10);
        expect(y - top).toBeLessThan(size.height - 10);
      }
    }
  });

  it('changes its scale by steps alone, so that short steps have one', () => {
    const scales = places.slice(0, 4).map((place) => {
      const { steps, at } = needleWork(plan, place);
      return closeTo(front, plan.points.slice(steps[at]!.from, steps[at]!.to), size).scale;
    });
    expect(new Set(scales).size).toBeLessThanOrEqual(2);
  });
});

describe('what is done and what is to be done', () => {
  const drawing = drawDiagram(design, {
    pickup: 0,
    scale: 1,
    detail: 'shape',
    words: { units: 'cm' },
    rulers: false,
    dimensions: false,
    fabric: 'none',
  });
  const spots = (path: string) => path.match(/[ML]/g)?.length ?? 0;

  it('is a line through every stitch on the needle, a band along the step, a ring for each of its stitches', () => {
    for (const place of places) {
      const work = needleWork(plan, place);
      const step = work.steps[work.at]!;
      const { done, now, rings } = progressOf(work, drawing.points);
      expect(spots(done)).toBe(work.onNeedle);
      expect(spots(now)).toBe(step.to - step.from);
      expect([0, step.count]).toContain(rings.match(/M/g)?.length ?? 0);
    }
  });

  it('begins a new line on each edge, and ends with all on the needle', () => {
    const steps = needleWork(plan, places[0]!).steps;
    const end = needleWork(plan, { opening: plan.points.length, miscounts: [] });
    expect(end.at).toBe(steps.length);
    const { done, now, rings } = progressOf(end, drawing.points);
    expect(spots(done)).toBe(plan.picked);
    expect(done.match(/M/g)).toHaveLength(plan.edges.length);
    expect([now, rings]).toEqual(['', '']);
  });
});

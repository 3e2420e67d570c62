import { describe, expect, it } from 'vitest';
import { placeAlong } from '../../src/renderer/markers';
import { around, dataOf, draw, neckband, planOf, square, startsOf, strokesIn, textsOf, vFront } from './designs';

const plan = planOf(square(40, 60), around({ sections: { by: 'length', parts: 4, counts: 'exact' } }, ['right']));

describe('a place along a pick-up', () => {
  const pickup = plan.pickups[0]!;
  const length = pickup.edges[0]!.edgeMm!;

  it('is known exactly at every opening', () => {
    for (const point of pickup.points) {
      expect(placeAlong(pickup, point.alongMm, [length])).toEqual({
        edge: 0,
        edgeAt: expect.closeTo(point.edgeAt, 9),
      });
    }
  });

  it('is kept within the pick-up', () => {
    expect(placeAlong(pickup, -5, [length])).toEqual({ edge: 0, edgeAt: 0 });
    expect(placeAlong(pickup, 1e6, [length])).toEqual({ edge: 0, edgeAt: length });
  });

  it('passes from one edge to the next', () => {
    const two = planOf(vFront(), neckband(['neck-left', 'neck-right'])).pickups[0]!;
    const ends = two.edges.map((edge) => edge.edgeMm!);
    const half = two.points[two.edges[1]!.firstPoint]!;
    expect(placeAlong(two, half.alongMm, ends)).toEqual({ edge: 1, edgeAt: expect.closeTo(half.edgeAt, 9) });
    expect(placeAlong(two, 1, ends)!.edge).toBe(0);
  });
});

describe('markers', () => {
  it('stand between the sections with the running count, the last count being the number of the last point', () => {
    const drawing = draw(plan, { scale: 1 });
    const { sections, picked } = plan.pickups[0]!;
    expect(textsOf(drawing, 'running-number')).toEqual(sections.slice(0, -1).map(({ running }) => String(running)));
    expect(strokesIn(dataOf(drawing, 'marker'))).toBe(3);
    expect(strokesIn(dataOf(drawing, 'running'))).toBe(3);
    expect(textsOf(drawing, 'end-number')).toEqual(['1', String(picked)]);
  });

  it('are drawn between their two points, through neither', () => {
    const drawing = draw(plan, { scale: 1 });
    const { points, sections } = plan.pickups[0]!;
    const dots = drawing.points.filter(({ point }) => points[point]!.n !== null);
    startsOf(dataOf(drawing, 'marker')).forEach(([, y], i) => {
      const { running } = sections[i]!;
      expect(y).toBeLessThan(dots[running - 1]!.y);
      expect(y).toBeGreaterThan(dots[running]!.y);
    });
  });

  it('have their tags on the fabric', () => {
    const drawing = draw(plan, { scale: 1 });
    const { box } = drawing.places[0]!;
    for (const [x, y] of startsOf(dataOf(drawing, 'running'))) {
      expect(x).toBeGreaterThan(box.x);
      expect(x).toBeLessThan(box.x + box.width);
      expect(y).toBeGreaterThan(box.y);
      expect(y).toBeLessThan(box.y + box.height);
    }
  });

  it('halve the corner they stand at', () => {
    const border = planOf(
      square(40, 60),
      around({ joined: true, sections: { by: 'landmarks', parts: 2, counts: 'exact' } }),
    );
    const drawing = draw(border, { scale: 1 });
    const { box } = drawing.places[0]!;
    // Outer ends of the three lines: down right, up right and up left of their corners, as far across as up.
    const [first, second, third] = startsOf(dataOf(drawing, 'marker'));
    expect(first![0] - (box.x + box.width)).toBeCloseTo(first![1] - (box.y + box.height), 2);
    expect(second![0] - (box.x + box.width)).toBeCloseTo(box.y - second![1], 2);
    expect(box.x - third![0]).toBeCloseTo(box.y - third![1], 2);
    expect(first![0]).toBeGreaterThan(box.x + box.width);
  });

  it('take the place of the number that would say the same', () => {
    const tens = planOf(
      square(40, 60),
      around({ sections: { by: 'length', parts: 2, counts: 'exact' }, target: 40 }, ['right']),
    );
    const drawing = draw(tens, { scale: 1 });
    expect(textsOf(drawing, 'running-number')).toEqual(['20']);
    expect(textsOf(drawing, 'number')).toEqual(['10', '30']);
  });
});

import { describe, expect, it } from 'vitest';
import { planDesign } from '../../src/pickup';
import { gridToSheet } from '../../src/renderer';
import { design } from '../pickup/builders';
import {
  around,
  curvedFront,
  dataOf,
  draw,
  neckband,
  planOf,
  square,
  startsOf,
  steppedFront,
  strokesIn,
  vFront,
} from './designs';

const NECK = ['neck-left', 'neck-front', 'neck-right'];

const designs = {
  'stepped neck': planOf(steppedFront(), neckband(NECK)),
  'curved neck': planOf(curvedFront(), neckband(NECK)),
  'V neck': planOf(vFront(), neckband(['neck-left', 'neck-right'])),
  'part of an edge': planOf(square(30, 60), {
    ...around(),
    along: [{ piece: 'square', edge: 'right', part: [0.25, 0.75] }],
  }),
  'slipped edge': planOf(square(30, 60, { right: { selvage: 'slipped' } }), around({ target: 50 }, ['right'])),
  'all round': planOf(square(30, 40, { top: { finish: 'live' } }, { fabric: 'garter' }), around({ joined: true })),
};

describe.each(Object.entries(designs))('the points of a %s', (_, plan) => {
  const { points, edges } = plan.pickups[0]!;

  it.each(['shape', 'stitches'] as const)('are drawn as many as planned, used and skipped, in %s detail', (detail) => {
    const drawing = draw(plan, { scale: 1, detail });
    for (const edge of new Set(edges.map(({ stretch }) => stretch.edge))) {
      const own = points.filter((point) => edges[point.edge]!.stretch.edge === edge);
      const count = (roles: readonly ('used' | 'used-second' | 'live' | 'skipped' | 'skipped-second' | 'stem')[]) =>
        roles.reduce((sum, role) => sum + strokesIn(dataOf(drawing, role, edge)), 0);
      const used = own.filter(({ n }) => n !== null).length;
      expect(count(['used', 'used-second', 'live'])).toBe(used);
      expect(count(['stem'])).toBe(used);
      expect(count(['skipped', 'skipped-second'])).toBe(own.length - used);
      expect(count(['used-second'])).toBe(own.filter(({ n, second }) => n !== null && second).length);
    }
  });

  it('stand at their places on the grid in stitch detail', () => {
    const drawing = draw(plan, { scale: 1, detail: 'stitches' });
    const place = drawing.places[0]!;
    drawing.points.forEach(({ point, x, y }) => {
      const wanted = gridToSheet(place, points[point]!.x, points[point]!.y);
      expect([x, y]).toEqual(wanted.map((value) => expect.closeTo(value, 6)));
    });
    expect(drawing.points).toHaveLength(points.length);
  });

  it('stand inside the fabric or on its edge, never outside it, in shape detail', () => {
    const drawing = draw(plan, { scale: 1 });
    const { box } = drawing.places[0]!;
    for (const { x, y } of drawing.points) {
      expect(x).toBeGreaterThanOrEqual(box.x - 1e-6);
      expect(x).toBeLessThanOrEqual(box.x + box.width + 1e-6);
      expect(y).toBeGreaterThanOrEqual(box.y - 1e-6);
      expect(y).toBeLessThanOrEqual(box.y + box.height + 1e-6);
    }
  });
});

describe('a dot in shape detail', () => {
  it('lies one stitch inside a side edge, level with its row', () => {
    const plan = planOf(square(20, 28), around({}, ['right']));
    const drawing = draw(plan, { scale: 2 });
    const place = drawing.places[0]!;
    const { points } = plan.pickups[0]!;
    for (const { point, x, y } of drawing.points) {
      const [wantedX, wantedY] = gridToSheet(place, 19, points[point]!.row + 0.5);
      expect([x, y]).toEqual([expect.closeTo(wantedX, 6), expect.closeTo(wantedY, 6)]);
    }
  });

  it('lies one stitch inside a slope, measured square to it', () => {
    const plan = planOf(vFront(), neckband(['neck-left']));
    const scale = 1.5;
    const drawing = draw(plan, { scale });
    const trace = drawing.edges.find(({ edge }) => edge === 'neck-left')!.line as [number, number, number, number];
    const [x0, y0, x1, y1] = trace;
    const length = Math.hypot(x1 - x0, y1 - y0);
    for (const { x, y } of drawing.points) {
      const away = ((x - x0) * (y1 - y0) - (y - y0) * (x1 - x0)) / length;
      expect(Math.abs(away)).toBeCloseTo(5 * scale, 6);
    }
  });

  it('never touches the line of its edge', () => {
    const plan = planOf(square(40, 40), around({}, ['top']));
    const drawing = draw(plan, { scale: 0.25 });
    const top = drawing.places[0]!.box.y;
    const [radius] = [...dataOf(drawing, 'used').matchAll(/a([\d.]+),/g)].map(([, r]) => Number(r));
    for (const { y } of drawing.points) expect(y - radius! - 0.35 / 2).toBeGreaterThan(top);
  });
});

describe('a left-handed plan', () => {
  it('has its dots in the same places, numbered from the other end', () => {
    const pieces = [curvedFront()];
    const band = neckband(NECK);
    const [right, left] = ['right', 'left'].map((hand) => draw(planDesign(design(pieces, band, { hand }))));
    const ends = (drawing: typeof right) => drawing!.points.map(({ x, y }) => `${x.toFixed(3)} ${y.toFixed(3)}`);
    expect(ends(left).sort()).toEqual(ends(right).sort());
    expect(right!.points[0]!.x).toBeGreaterThan(left!.points[0]!.x);
  });
});

describe('a sparse scale', () => {
  const plan = planOf(square(60, 80), around({}, ['right']));
  const { points, picked } = plan.pickups[0]!;

  it('keeps every dot and stem, and drops rings before they run together', () => {
    const tiny = draw(plan, { scale: 0.08 });
    expect(strokesIn(dataOf(tiny, 'used'))).toBe(picked);
    expect(strokesIn(dataOf(tiny, 'stem'))).toBe(picked);
    expect(points.length).toBeGreaterThan(picked);
    expect(strokesIn(dataOf(tiny, 'skipped'))).toBe(0);
    expect(tiny.points).toHaveLength(points.length);
  });

  it('shrinks dots to a floor', () => {
    const radius = (scale: number) => Number(/a([\d.]+),/.exec(dataOf(draw(plan, { scale }), 'used'))![1]);
    expect(radius(0.1)).toBe(radius(0.02));
    expect(radius(0.4)).toBeGreaterThan(radius(0.1));
    expect(radius(3)).toBe(radius(6));
  });
});

describe('stems in an inner corner', () => {
  it('do not cross the middle of a V', () => {
    const plan = planOf(vFront(10, 60), neckband(['neck-left', 'neck-right']));
    const drawing = draw(plan, { scale: 0.6 });
    const place = drawing.places[0]!;
    const [middle] = gridToSheet(place, 0, 0);
    const tips = (edge: string) =>
      [...dataOf(drawing, 'stem', edge).matchAll(/L(-?[\d.]+),/g)].map(([, x]) => Number(x));
    expect(Math.min(...tips('neck-left'))).toBeGreaterThanOrEqual(middle);
    expect(Math.max(...tips('neck-right'))).toBeLessThanOrEqual(middle);
    expect(startsOf(dataOf(drawing, 'stem')).length).toBe(plan.pickups[0]!.picked);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, parametersAtY, pointAt, turnsInY, type Cubic } from '../../src/geometry';
import { curveSteps, type WorkedStep } from '../../src/shaping';

type XY = readonly [number, number];

const curve = (a: XY, b: XY, c: XY, d: XY): Cubic => {
  const [from, c1, c2, to] = [a, b, c, d].map(([x, y]) => ({ x, y }));
  return cubic(from!, c1!, c2!, to!);
};

const total = (steps: readonly WorkedStep[], of: 'across' | 'up') => steps.reduce((sum, step) => sum + step[of], 0);

/** Corners of the worked edge: each step's stitches with the rows above them, in the direction of travel. */
function corners(steps: readonly WorkedStep[], start: XY): XY[] {
  let [x, y] = start;
  return [start, ...steps.map((step): XY => [(x += step.across), (y += step.up)])];
}

/**
 * A cubic quarter of an ellipse: handles at 0.5523 of the half axes, off by 0.03% at most. L. Maisonobe, Drawing an
 * elliptical arc using polylines, quadratic or cubic Bézier curves (2003),
 * https://www.spaceroots.org/documents/ellipse/
 */
const KAPPA = 0.5522847498;
const quarter = (x0: number, x1: number, y0: number, y1: number): Cubic =>
  curve([x0, y0], [x0, y0 + KAPPA * (y1 - y0)], [x1 + KAPPA * (x0 - x1), y1], [x1, y1]);

/** Whole corners, with handles that keep the curve climbing. */
const climbing = fc
  .tuple(
    fc.integer({ min: -40, max: 40 }),
    fc.integer({ min: 2, max: 90 }),
    fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
  )
  .map(([dx, dy, [a, b, c, d]]) => {
    const [low, high] = [Math.min(b!, d!), Math.max(b!, d!)];
    return curve([0, 0], [a! * dx, low * dy], [c! * dx, high * dy], [dx, dy]);
  });

const anyCurve = fc
  .array(fc.integer({ min: -30, max: 30 }), { minLength: 8, maxLength: 8 })
  .map((n) => curve([n[0]!, n[1]!], [n[2]!, n[3]!], [n[4]!, n[5]!], [n[6]!, n[7]!]));

const mirrorOf = (c: Cubic): Cubic => {
  const [a, b, d, e] = [c.to, c.c2, c.c1, c.from].map(({ x, y }): XY => [0 - x, y]);
  return curve(a!, b!, d!, e!);
};

/** Whether a curve turns in y half-way between two stitches: such a turn has no mirror image on whole stitches. */
const turnsOnHalf = (c: Cubic): boolean =>
  turnsInY(c).some((t) => Math.abs(Math.abs(pointAt(c, t).x % 1) - 0.5) < 1e-6);

describe('curveSteps', () => {
  it('sums to the stitches and the rows between its ends', () => {
    fc.assert(
      fc.property(anyCurve, (c) => {
        const steps = curveSteps(c);
        expect(total(steps, 'across')).toBe(c.to.x - c.from.x);
        expect(total(steps, 'up')).toBe(c.to.y - c.from.y);
        expect(steps.every((step) => Number.isInteger(step.across) && Number.isInteger(step.up))).toBe(true);
      }),
    );
  });

  it('stays within a stitch and a half of the drawn line at every second row', () => {
    fc.assert(
      fc.property(climbing, (c) => {
        const steps = curveSteps(c);
        let [x, y] = [0, 0];
        for (const { across, up } of steps) {
          // The rows of a step follow its stitches, so at its foot the edge is already where the line is at its next mark.
          x += across;
          y += up;
          const t = parametersAtY(c, y)[0];
          // Half a stitch by rounding, one by tidying; even rows that were joined to a step end on a mark too.
          if (t !== undefined) expect(Math.abs(pointAt(c, t).x - x)).toBeLessThanOrEqual(1.5 + 1e-9);
        }
      }),
    );
  });

  it('shapes on every second row counted from the bottom', () => {
    fc.assert(
      fc.property(climbing, (c) => {
        const steps = curveSteps(c);
        expect(steps.slice(0, -1).every((step) => step.up % 2 === 0)).toBe(true);
      }),
    );
  });

  it('works a quarter ellipse as a round neck: large bind-offs first, never a larger one after a smaller', () => {
    // The right-hand half of a front neck from its foot up: 14 stitches over 24 rows, the fabric on the far side.
    const c = curve([0, 0], [KAPPA * 14, 0], [14, (1 - KAPPA) * 24], [14, 24]);
    const steps = curveSteps(c);
    const sizes = steps.map((step) => step.across).filter((size) => size > 0);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(14);
    // The ellipse itself: x = 14 sin, y = 24 (1 - cos); at the first mark, two rows up, x is 5.6.
    expect(steps[0]!.across).toBe(Math.round(14 * Math.sqrt(1 - (1 - 2 / 24) ** 2)));
    const rows = steps.map((step) => step.up);
    expect(rows).toEqual([...rows].sort((a, b) => a - b));
  });

  it('works the same quarter from above, falling, as the mirror image worked upwards', () => {
    const rising = curveSteps(curve([0, 0], [KAPPA * 14, 0], [14, (1 - KAPPA) * 24], [14, 24]));
    const falling = curveSteps(quarter(-14, 0, 24, 0));
    expect(falling.map(({ across, up }) => ({ across, up }))).toEqual(
      [...rising].reverse().map(({ across, up }) => ({ across, up: -up })),
    );
  });

  it('has mirrored steps on mirrored curves', () => {
    fc.assert(
      fc.property(anyCurve, (c) => {
        fc.pre(!turnsOnHalf(c));
        const there = curveSteps(c).map(({ across, up }) => [across, 0 - up]);
        const back = curveSteps(mirrorOf(c)).map(({ across, up }) => [across, up]);
        expect(back.reverse().map(([across, up]) => [across! + 0, up! + 0])).toEqual(
          there.map(([a, u]) => [a! + 0, u! + 0]),
        );
      }),
    );
  });

  it('cuts a U-shaped neck in one curve where it turns, and binds its foot off together', () => {
    // From the right shoulder down and up to the left one: 24 stitches wide, 18 rows deep (0.75 of its handles' 24).
    const steps = curveSteps(curve([12, 24], [12, 0], [-12, 0], [-12, 24]));
    const down = steps.filter((step) => step.up < 0);
    const up = steps.filter((step) => step.up > 0);
    expect(steps).toEqual([...down, ...up]);
    expect(total(down, 'up')).toBe(-18);
    expect(total(up, 'up')).toBe(18);
    expect(total(steps, 'across')).toBe(-24);
    expect(up.map(({ across, up: rows }) => [across, rows])).toEqual(
      [...down].reverse().map(({ across, up: rows }) => [across, 0 - rows]),
    );
    // The lowest stitches go together: they are the largest bind-off of either side.
    expect(Math.min(...steps.map((step) => step.across))).toBe(up[0]!.across);
    expect([down[0]!.climb, up[0]!.climb]).toEqual([0, 1]);
  });

  it('binds off together what lies within half a row at a turn', () => {
    // A bow of 0.3 rows at its highest.
    const steps = curveSteps(curve([0, 0], [10, 0.4], [20, 0.4], [30, 0]));
    expect(steps.every((step) => step.up === 0)).toBe(true);
    expect(total(steps, 'across')).toBe(30);
  });

  it('works an S curve through its bend: amounts fall towards the steep middle and grow after it', () => {
    const c = curve([0, 0], [20, 0], [0, 40], [20, 40]);
    const steps = curveSteps(c);
    const perRow = corners(steps, [0, 0]);
    expect(perRow.at(-1)).toEqual([20, 40]);
    const drawnAt = (y: number) => pointAt(c, parametersAtY(c, y)[0]!).x;
    for (const [x, y] of perRow) expect(Math.abs(drawnAt(y) - x)).toBeLessThanOrEqual(1.5);
    const middle = steps.filter((_, i) => Math.abs(perRow[i]![1] - 20) < 8);
    expect(Math.max(...middle.map((step) => step.across))).toBeLessThan(steps[0]!.across);
  });

  it('goes back where a curve goes back in x while it climbs', () => {
    const steps = curveSteps(curve([0, 0], [16, 10], [16, 20], [0, 30]));
    expect(total(steps, 'across')).toBe(0);
    expect(steps.some((step) => step.across > 0)).toBe(true);
    expect(steps.some((step) => step.across < 0)).toBe(true);
    expect(Math.max(...corners(steps, [0, 0]).map(([x]) => x))).toBe(12);
  });
});

import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { arcCurves, type Cubic } from '../../../src/handout/pdf/arc';

const whole = (min: number, max: number) => fc.integer({ min, max });

/** An arc as path data, and the same as the curves that stand for it. */
function both(rx: number, ry: number, turn: number, large: boolean, sweep: boolean, x: number, y: number) {
  const curves = arcCurves(0, 0, { rx, ry, turn, large, sweep, x, y });
  return {
    arc: `M0,0A${rx},${ry} ${turn} ${large ? 1 : 0} ${sweep ? 1 : 0} ${x},${y}`,
    curves,
    bezier: `M0,0${curves.map((curve) => `C${curve.join(' ')}`).join('')}`,
  };
}

type Place = readonly [x: number, y: number];

/** The curves in short straight steps. */
function polyline(curves: readonly Cubic[]): Place[] {
  const line: Place[] = [[0, 0]];
  for (const [x1, y1, x2, y2, x, y] of curves) {
    const [x0, y0] = line.at(-1)!;
    for (let i = 1; i <= 60; i++) {
      const [t, u] = [i / 60, 1 - i / 60];
      const on = (a: number, b: number, c: number, d: number) =>
        u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
      line.push([on(x0, x1, x2, x), on(y0, y1, y2, y)]);
    }
  }
  return line;
}

function distanceTo(line: readonly Place[], x: number, y: number): number {
  return Math.min(
    ...line.slice(1).map(([bx, by], i) => {
      const [ax, ay] = line[i]!;
      const [dx, dy] = [bx - ax, by - ay];
      const part = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(ax + part * dx - x, ay + part * dy - y);
    }),
  );
}

describe('arcCurves', () => {
  it('agrees with svg-path-properties: the same length, and through the same places', () => {
    fc.assert(
      fc.property(
        ...[whole(1, 40), whole(1, 40), whole(-180, 180), fc.boolean(), fc.boolean(), whole(-60, 60), whole(-60, 60)],
        (rx, ry, turn, large, sweep, x, y) => {
          // Ends on opposite sides of a circle, and none apart, leave the arc open to rounding.
          fc.pre(Math.hypot(x, y) > 0.5);
          const { arc, bezier, curves } = both(rx, ry, turn, large, sweep, x, y);
          const [a, b] = [new svgPathProperties(arc), new svgPathProperties(bezier)];
          const length = a.getTotalLength();
          expect(Math.abs(length - b.getTotalLength())).toBeLessThan(0.02 + 0.001 * length);
          // Its places go by the angle, not by the length: each must lie on the curves, somewhere.
          const line = polyline(curves);
          for (const part of [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1]) {
            const { x: px, y: py } = a.getPointAtLength(length * part);
            expect(distanceTo(line, px, py)).toBeLessThan(0.01);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('keeps within a thousandth of the circle, however large', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5000, noNaN: true }), fc.boolean(), (r, sweep) => {
        const curves = arcCurves(0, 0, { rx: r, ry: r, turn: 0, large: true, sweep, x: r, y: r });
        // The centre of the three quarters from the corner to the opposite one.
        const [cx, cy] = sweep ? [r, 0] : [0, r];
        let [x0, y0] = [0, 0];
        for (const [x1, y1, x2, y2, x, y] of curves) {
          for (let i = 1; i < 20; i++) {
            const [t, u] = [i / 20, 1 - i / 20];
            const on = (a: number, b: number, c: number, d: number) =>
              u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
            const distance = Math.hypot(on(x0, x1, x2, x) - cx, on(y0, y1, y2, y) - cy);
            expect(Math.abs(distance - r)).toBeLessThan(0.0011 + 1e-9 * r);
          }
          [x0, y0] = [x, y];
        }
        expect([x0, y0]).toEqual([r, r]);
      }),
    );
  });

  it('makes an ellipse that is too small just large enough', () => {
    const curves = arcCurves(0, 0, { rx: 1, ry: 1, turn: 0, large: false, sweep: true, x: 10, y: 0 });
    // Half a circle of radius 5 over the chord.
    expect(curves).toHaveLength(2 + 1);
    const top = Math.min(...curves.flatMap(([, y1, , y2]) => [y1, y2]));
    expect(top).toBeLessThan(-4.9);
  });

  it('is a straight line without a radius, and nothing from a place to itself', () => {
    expect(arcCurves(0, 0, { rx: 0, ry: 5, turn: 0, large: false, sweep: true, x: 3, y: 4 })).toEqual([
      [0, 0, 3, 4, 3, 4],
    ]);
    expect(arcCurves(2, 2, { rx: 5, ry: 5, turn: 0, large: true, sweep: true, x: 2, y: 2 })).toEqual([]);
  });
});

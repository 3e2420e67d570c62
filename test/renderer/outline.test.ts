import { describe, expect, it } from 'vitest';
import { boxOf, stairOf, stairOutline, traceOf } from '../../src/renderer/outline';
import { draw, planOf, steppedFront, vFront } from './designs';

describe('the worked edge', () => {
  const edges = planOf(steppedFront()).measured[0]!.edges;
  const stair = (id: string) => stairOf(edges.find((edge) => edge.id === id)!);

  it('takes the stitches of a step before its rows on a rising edge', () => {
    expect(stair('neck-right')).toEqual([
      [-5, 18],
      [-8, 18],
      [-8, 20],
      [-10, 20],
      [-10, 22],
      [-11, 22],
      [-11, 24],
      [-12, 24],
      [-12, 26],
      [-12, 30],
    ]);
  });

  it('is mirrored on its twin', () => {
    const mirrored = stair('neck-right').map(([x, y]) => [-x, y]);
    expect(stair('neck-left').reverse()).toEqual(mirrored);
  });

  it('closes into an outline that runs from corner to corner', () => {
    const outline = stairOutline(edges);
    for (const edge of edges) {
      const at = outline.findIndex((x, i) => i % 2 === 0 && x === edge.from[0] && outline[i + 1] === edge.from[1]);
      expect(at, edge.id).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('the trace of an edge', () => {
  it('begins and ends on its corners', () => {
    const plan = planOf(vFront());
    const { places, edges } = draw(plan, { pickup: null });
    const measured = plan.measured[0]!.edges;
    edges.forEach(({ line }, i) => {
      const { from, to } = measured[i]!;
      const { x, y, cell, scale } = places[0]!;
      const at = ([stitches, rows]: readonly [number, number]) => [
        expect.closeTo(x + stitches * cell.width * scale, 6),
        expect.closeTo(y - rows * cell.height * scale, 6),
      ];
      expect(line.slice(0, 2)).toEqual(at(from));
      expect(line.slice(-2)).toEqual(at(to));
    });
  });

  it('has a box around it', () => {
    expect(boxOf([1, 5, 3, 2, 2, 9])).toEqual({ x: 1, y: 2, width: 2, height: 7 });
  });

  it('follows a half circle of quarter curves within two hundredths of a mm', () => {
    const k = 0.5522847498;
    const quarter = {
      kind: 'cubic' as const,
      from: { x: 20, y: 0 },
      c1: { x: 20, y: 20 * k },
      c2: { x: 20 * k, y: 20 },
      to: { x: 0, y: 20 },
    };
    const place = { piece: '', x: 0, y: 0, scale: 1, cell: { width: 1, height: 1 }, box: boxOf([0, 0]) };
    const trace = traceOf(place, [quarter]);
    for (let i = 0; i + 3 < trace.length; i += 2) {
      const middle = Math.hypot((trace[i]! + trace[i + 2]!) / 2, (trace[i + 1]! + trace[i + 3]!) / 2);
      expect(Math.abs(middle - 20)).toBeLessThan(0.02);
    }
  });
});

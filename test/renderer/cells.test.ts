import { describe, expect, it } from 'vitest';
import { isInside, spansInside } from '../../src/renderer/cells';
import { smoothOutline, stairOutline } from '../../src/renderer/outline';
import { curvedFront, planOf, steppedFront } from './designs';

const everywhere = { minX: -Infinity, minY: -Infinity, maxX: Infinity, maxY: Infinity };
const count = (spans: readonly { from: number; to: number }[]) =>
  spans.reduce((sum, { from, to }) => sum + to - from, 0);

/** Area of a closed outline x0, y0, x1, y1 … by the shoelace formula. */
function area(outline: readonly number[]): number {
  let twice = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    twice += outline[i]! * outline[j + 1]! - outline[j]! * outline[i + 1]!;
  }
  return twice / 2;
}

describe('whole stitches inside an outline', () => {
  it('fill a rectangle', () => {
    const spans = spansInside([0, 0, 4, 0, 4, 3, 0, 3], everywhere, [0.5]);
    expect(spans).toEqual([0, 1, 2].map((row) => ({ row, from: 0, to: 4 })));
  });

  it('are as many as the worked outline holds, for its corners lie on the grid', () => {
    for (const piece of [steppedFront(), curvedFront()]) {
      const stair = stairOutline(planOf(piece).measured[0]!.edges);
      expect(count(spansInside(stair, everywhere, [0.5]))).toBeCloseTo(area(stair), 9);
    }
  });

  it('never stick out of a smooth outline', () => {
    const { measured } = planOf(curvedFront());
    const smooth = smoothOutline(measured[0]!.edges, { width: 1, height: 1 });
    const scaled = smoothOutline(measured[0]!.edges, { width: 100 / 18, height: 100 / 24 });
    expect(smooth.length).toBeGreaterThan(20);
    for (const { row, from, to } of spansInside(scaled, everywhere, [0.02, 0.5, 0.98])) {
      for (const x of [from, to]) {
        for (const y of [row + 0.05, row + 0.95]) {
          expect(isInside(scaled, x + (x === from ? 0.01 : -0.01), y), `${x}, ${y}`).toBe(true);
        }
      }
    }
  });

  it('are cut into two runs by a neck', () => {
    const stair = stairOutline(planOf(steppedFront()).measured[0]!.edges);
    const row = spansInside(stair, everywhere, [0.5]).filter((span) => span.row === 25);
    expect(row).toHaveLength(2);
    expect(row[0]!.from).toBe(-18);
    expect(row[1]!.to).toBe(18);
  });

  it('are left out beyond the window', () => {
    const spans = spansInside([0, 0, 40, 0, 40, 30, 0, 30], { minX: 10, minY: 5, maxX: 14, maxY: 8 }, [0.5]);
    expect(spans).toEqual([5, 6, 7].map((row) => ({ row, from: 10, to: 14 })));
  });
});

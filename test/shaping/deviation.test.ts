import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, line, type Segment } from '../../src/geometry';
import { resolveOutline, type Edge, type Piece } from '../../src/piece';
import { largestDeviation, measurePiece, type WorkedStep } from '../../src/shaping';

const point = (x: number, y: number) => ({ x, y });

function deviation(worked: readonly WorkedStep[], path: readonly Segment[], from: readonly [number, number] = [0, 0]) {
  return largestDeviation({ from, worked }, path);
}

/** The parabola x = width * t^2, y = rows * t as a cubic: its one handle, (0, rows / 2), raised by a degree. */
const parabola = (width: number, rows: number) =>
  cubic(point(0, 0), point(0, rows / 3), point(width / 3, (2 * rows) / 3), point(width, rows));

describe('the largest deviation of worked steps from a smooth line', () => {
  it('is none where the steps are a straight line cut into equal ones', () => {
    const steps = Array.from({ length: 5 }, () => ({ across: -1, up: 4 }));
    expect(deviation(steps, [line(point(0, 0), point(-5, 20))])).toEqual({ stitches: 0, row: 0 });
  });

  it('is what the faster of two rates runs ahead, on a straight line of two rates', () => {
    // 2 stitches over 10 rows: 1 in 4 and 1 in 6. After 4 rows the line has 0.8 of a stitch and the steps 1.
    const steps = [
      { across: 1, up: 4 },
      { across: 1, up: 6 },
    ];
    const found = deviation(steps, [line(point(0, 0), point(2, 10))]);
    expect(found.stitches).toBeCloseTo(0.2, 12);
    expect(found.row).toBe(4);
  });

  it('is that of a chord from its parabola: a quarter of the width in the middle', () => {
    // x = 8 (y / 20)^2 against x = 8 y / 20: 8 (u - u^2) is most at u = 1/2, and then 2.
    const found = deviation([{ across: 8, up: 20 }], [parabola(8, 20)]);
    expect(found.stitches).toBeCloseTo(2, 9);
    expect(found.row).toBe(10);
  });

  it('is taken at whole rows only, for the fabric has no others', () => {
    // Three rows: u = 1/3 and 2/3 both give 8 * 2/9, less than the 2 between them.
    expect(deviation([{ across: 8, up: 3 }], [parabola(8, 3)]).stitches).toBeCloseTo(16 / 9, 9);
  });

  it('is the same in the mirror and on an edge that falls', () => {
    const up = deviation([{ across: 8, up: 20 }], [parabola(8, 20)]);
    const mirrored = cubic(point(0, 0), point(0, 20 / 3), point(-8 / 3, 40 / 3), point(-8, 20));
    const turned = cubic(point(8, 20), point(8 / 3, 40 / 3), point(0, 20 / 3), point(0, 0));
    expect(deviation([{ across: -8, up: 20 }], [mirrored])).toEqual(up);
    const down = deviation([{ across: -8, up: -20 }], [turned], [8, 20]);
    expect(down.stitches).toBeCloseTo(up.stitches, 9);
    expect(down.row).toBe(10);
  });

  it('has its row where the piece has it, wherever that lies on the grid', () => {
    const moved = cubic(point(50, 100), point(50, 100 + 20 / 3), point(50 + 8 / 3, 100 + 40 / 3), point(58, 120));
    expect(deviation([{ across: 8, up: 20 }], [moved], [50, 100]).row).toBe(110);
  });

  it('follows a curve over its turns, stretch by stretch', () => {
    // An arch, up to the middle and down again.
    const arch = cubic(point(0, 0), point(0, 20), point(10, 20), point(10, 0));
    const edge: Edge = {
      id: 'arch',
      from: [0, 0],
      path: 'curve',
      handles: [
        [0, 20],
        [10, 20],
      ],
    };
    const base: Edge = { id: 'base', from: [10, 0], path: 'straight' };
    const piece: Piece = { id: 'p', name: 'P', fabric: 'stockinette', symmetric: false, outline: [edge, base] };
    const measured = measurePiece(piece)[0]!;
    expect(measured.worked.map(({ climb }) => climb)).toContain(1);
    const found = largestDeviation(measured, [arch]);
    // Samples are rounded to the half stitch, tidied by a stitch at most.
    expect(found.stitches).toBeGreaterThan(0);
    expect(found.stitches).toBeLessThan(2);
    // The other stretch taken for this one would lie a whole arch away.
    expect(
      largestDeviation({ ...measured, worked: measured.worked.map((s) => ({ ...s, climb: 0 })) }, [arch]).stitches,
    ).toBeGreaterThan(4);
  });

  it('is none on level and plumb edges and on one that is worked from a schedule', () => {
    const outline: Edge[] = [
      { id: 'foot', from: [0, 0], path: 'straight' },
      { id: 'side', from: [20, 0], path: 'straight' },
      {
        id: 'top',
        from: [20, 30],
        path: 'stepped',
        steps: [
          { stitches: -5, every: 2, times: 3 },
          { stitches: -5, every: 4, times: 1 },
        ],
      },
      { id: 'other', from: [0, 40], path: 'straight' },
    ];
    const piece: Piece = { id: 'p', name: 'P', fabric: 'stockinette', symmetric: false, outline };
    const paths = resolveOutline(piece).map(({ path }) => path);
    measurePiece(piece).forEach((edge, i) => expect(largestDeviation(edge, paths[i]!).stitches).toBe(0));
  });

  it('stays within a stitch and a half for any plain curve that is sampled on every second row', () => {
    const whole = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(whole, whole, fc.double({ min: 0, max: 1, noNaN: true }), (width, rows, bend) => {
        const handle = [0, rows * bend] as const;
        const curve: Edge = { id: 'c', from: [0, 0], path: 'curve', handles: [handle, [width * bend, rows]] };
        const back: Edge = { id: 'b', from: [width, rows], path: 'straight' };
        const down: Edge = { id: 'd', from: [0, rows + 1], path: 'straight' };
        const outline = [curve, back, down];
        const piece: Piece = { id: 'p', name: 'P', fabric: 'stockinette', symmetric: false, outline };
        const measured = measurePiece(piece)[0]!;
        const { stitches } = largestDeviation(measured, resolveOutline(piece)[0]!.path);
        // Between two samples the steps run straight, however the curve bends there, and no further than it goes.
        const widest = Math.max(0, ...measured.worked.map(({ across }) => Math.abs(across)));
        return stitches <= 1.5 + widest;
      }),
    );
  });
});

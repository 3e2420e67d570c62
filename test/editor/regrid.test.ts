import { describe, expect, it } from 'vitest';
import { regridded } from '../../src/editor';
import { expandSteps, type Piece } from '../../src/piece';
import { planDesign } from '../../src/pickup';
import { rowHeight, stitchWidth, type Gauge } from '../../src/units';
import { readSample } from '../samples/sample';

const { design } = readSample('pullover');
const front = design.pieces[0]!;

const GAUGES: readonly Gauge[] = [
  { stitches: 18, rows: 24, over: 100 },
  { stitches: 28, rows: 36, over: 100 },
  { stitches: 21.5, rows: 31, over: 101.6 },
];

/** Corners in mm. */
const corners = ({ outline, gauge }: Piece) =>
  outline.map(({ from: [x, y] }) => [x * stitchWidth(gauge!), y * rowHeight(gauge!)] as const);

describe.each(GAUGES)('a piece put on a grid of $stitches stitches and $rows rows', (gauge) => {
  const next = regridded(front, gauge);

  it('has the new gauge and whole corners', () => {
    expect(next.gauge).toEqual(gauge);
    for (const { from } of next.outline) expect(from.every(Number.isInteger)).toBe(true);
  });

  it('is as large as it was, to half a stitch and half a row', () => {
    const old = corners(front);
    const middleShift = stitchWidth(gauge) / 2;
    corners(next).forEach(([x, y], i) => {
      expect(Math.abs(x - old[i]![0])).toBeLessThanOrEqual(stitchWidth(gauge) / 2 + middleShift + 1e-9);
      expect(Math.abs(y - old[i]![1])).toBeLessThanOrEqual(rowHeight(gauge) / 2 + 1e-9);
    });
  });

  it('is mirrored still', () => {
    const xs = next.outline.map(({ from }) => from[0]);
    const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
    const places = next.outline.map(({ from: [x, y] }) => `${x} ${y}`).sort();
    const mirrored = next.outline.map(({ from: [x, y] }) => `${2 * middle - x} ${y}`).sort();
    expect(mirrored).toEqual(places);
  });

  it('has schedules that end where their edges do', () => {
    next.outline.forEach((edge, i) => {
      if (edge.path !== 'stepped') return;
      const to = next.outline[(i + 1) % next.outline.length]!.from;
      const rows = Math.abs(to[1] - edge.from[1]);
      // A schedule that missed its corner would be refused here.
      const singles = expandSteps(edge, edge.from, to);
      expect(singles.reduce((sum, single) => sum + single.rows, 0)).toBe(rows);
    });
  });

  it('can be planned, and its edges are as long as they were', () => {
    const pieces = design.pieces.map((piece) => regridded(piece, gauge));
    const [old, now] = [planDesign(design), planDesign({ ...design, pieces })].map((plan) => plan.pickups[0]!);
    now!.edges.forEach((edge, i) => {
      expect(Math.abs(edge.edgeMm! - old!.edges[i]!.edgeMm!)).toBeLessThan(stitchWidth(gauge) + rowHeight(gauge));
    });
  });
});

it('to its own gauge it stays where it is', () => {
  const same = regridded(front, front.gauge!);
  expect(same.outline.map(({ from }) => from)).toEqual(front.outline.map(({ from }) => from));
});

it('without a gauge keeps its stitches and rows', () => {
  const strip = readSample('strip').design.pieces[0]!;
  const gauge = { stitches: 22, rows: 30, over: 100 };
  expect(regridded(strip, gauge)).toEqual({ ...strip, gauge });
});

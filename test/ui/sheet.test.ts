import { describe, expect, it } from 'vitest';
import { Sheet, Workbench } from '../../src/ui';
import { readSample, SAMPLES, type SampleName } from '../samples/sample';

const VIEW = { width: 170, height: 180 };

function sheetOf(name: SampleName = 'pullover', size = VIEW): { bench: Workbench; sheet: Sheet } {
  const bench = new Workbench(readSample(name).design, 'test');
  const sheet = new Sheet(bench);
  sheet.resize(size);
  sheet.openView();
  return { bench, sheet };
}

/** Where the middle of a straight edge lies in the view. */
function middleOf(sheet: Sheet, piece: string, edge: string): [number, number] {
  const line = sheet.lineOf({ piece, edge })!;
  const [x0, y0, x1, y1] = [line[0]!, line[1]!, line.at(-2)!, line.at(-1)!];
  return [(x0 + x1) / 2 - sheet.view.left, (y0 + y1) / 2 - sheet.view.top];
}

describe('the first sight of a design', () => {
  it.each(SAMPLES)('shows the piece where the pick-up begins, whole: %s', (name) => {
    const { bench, sheet } = sheetOf(name);
    const first = bench.pickup!.edges[0]!.piece.id;
    const { left, top } = sheet.view;
    for (const { piece, box } of sheet.drawing.edges) {
      if (piece !== first) continue;
      expect(box.x).toBeGreaterThanOrEqual(left);
      expect(box.y).toBeGreaterThanOrEqual(top);
      expect(box.x + box.width).toBeLessThanOrEqual(left + VIEW.width);
      expect(box.y + box.height).toBeLessThanOrEqual(top + VIEW.height);
    }
  });

  it('follows the size of the view until the hand moves it', () => {
    const { sheet } = sheetOf();
    const { scale } = sheet.view;
    sheet.resize({ width: VIEW.width * 2, height: VIEW.height * 2 });
    expect(sheet.view.scale).toBeGreaterThan(scale * 1.5);
    sheet.zoom(1.25);
    const { scale: own } = sheet.view;
    sheet.resize(VIEW);
    expect(sheet.view.scale).toBe(own);
  });
});

describe('zooming', () => {
  it.each([1.25, 0.8, 3])('by %d keeps the edge under the pointer where it is', (factor) => {
    const { sheet } = sheetOf();
    const before = middleOf(sheet, 'front', 'neck-center');
    sheet.zoom(factor, before);
    const after = middleOf(sheet, 'front', 'neck-center');
    // Margins keep their size, so the sheet does not simply grow; the fabric stays under the pointer all the same.
    expect(after[0]).toBeCloseTo(before[0], 6);
    expect(after[1]).toBeCloseTo(before[1], 6);
  });

  it('goes no further than its limits', () => {
    const { sheet } = sheetOf();
    for (let i = 0; i < 60; i++) sheet.zoom(2);
    const { scale } = sheet.view;
    sheet.zoom(2);
    expect(sheet.view.scale).toBe(scale);
  });
});

describe('what is drawn', () => {
  it('is not drawn anew when nothing of it changed', () => {
    const { bench, sheet } = sheetOf();
    const before = sheet.drawing;
    sheet.pan(5, 5);
    bench.select({ piece: 'front', edge: 'neck-center' });
    expect(sheet.drawing).toBe(before);
    expect(bench.change({ kind: 'rename', name: 'Another name' }).ok).toBe(true);
    expect(sheet.drawing).toBe(before);
  });

  it('is drawn anew when a count, the units or the hand change', () => {
    const { bench, sheet } = sheetOf();
    const drawings = new Set([sheet.drawing]);
    const edge = { piece: 'front', edge: 'neck-center' };
    bench.change({ kind: 'rate', pickup: 'neckband', edge, rate: { kind: 'count', count: 10 } });
    drawings.add(sheet.drawing);
    bench.change({ kind: 'units', units: 'in' });
    drawings.add(sheet.drawing);
    bench.change({ kind: 'hand', hand: 'left' });
    drawings.add(sheet.drawing);
    expect(drawings.size).toBe(4);
  });

  it('shows stitches once they can be told apart, and builds them only round the view', () => {
    const { sheet } = sheetOf();
    expect(sheet.detail).toBe('shape');
    sheet.fitEdges();
    for (let i = 0; i < 4; i++) sheet.zoom(1.5);
    expect(sheet.detail).toBe('stitches');
    const drawn = sheet.drawing;
    sheet.pan(-1, -1);
    sheet.pan(1, 1);
    expect(sheet.drawing).toBe(drawn);
  });
});

describe('finding', () => {
  it('tells the edge and the opening under a spot, and nothing where there is nothing', () => {
    const { bench, sheet } = sheetOf();
    expect(sheet.edgeUnder(middleOf(sheet, 'front', 'side-left'))).toEqual({ piece: 'front', edge: 'side-left' });
    const { left, top } = sheet.view;
    for (const { point, x, y } of sheet.drawing.points) {
      expect(sheet.pointUnder([x - left, y - top])).toBe(point);
      expect(bench.pickup!.points[point]).toBeDefined();
    }
    expect(sheet.edgeUnder([-500, -500])).toBeNull();
    expect(sheet.pointUnder([-500, -500])).toBeNull();
  });

  it('brings an edge into view that was out of it', () => {
    const { sheet } = sheetOf();
    sheet.fitEdges();
    sheet.zoom(4);
    const at = { piece: 'front', edge: 'cast-on' };
    sheet.show(at);
    const [x, y] = middleOf(sheet, at.piece, at.edge);
    expect(x >= 0 && x <= VIEW.width && y >= 0 && y <= VIEW.height).toBe(true);
  });
});

it('a drawing can not be pushed out of sight', () => {
  const { sheet } = sheetOf();
  for (const [dx, dy] of [
    [1e4, 0],
    [-1e4, 0],
    [0, 1e4],
    [0, -1e4],
  ] as const) {
    sheet.pan(dx, dy);
    const { left, top } = sheet.view;
    const { width, height } = sheet.drawing;
    expect(left).toBeLessThan(width);
    expect(left + VIEW.width).toBeGreaterThan(0);
    expect(top).toBeLessThan(height);
    expect(top + VIEW.height).toBeGreaterThan(0);
  }
});

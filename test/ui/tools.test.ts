import { beforeAll, describe, expect, it } from 'vitest';
import type { Piece } from '../../src/piece';
import { loadEditing, Sheet, Tools, Workbench } from '../../src/ui';
import { DraftingTool } from '../../src/ui/drafting';
import { OutlineTool } from '../../src/ui/outline';
import { readSample } from '../samples/sample';

const MOUSE = { touch: false, shift: false };

// Outlines are judged as strictly as in a file.
beforeAll(loadEditing);

function benchOf() {
  const bench = new Workbench(readSample('pullover').design, 'test');
  const sheet = new Sheet(bench);
  sheet.resize({ width: 170, height: 180 });
  sheet.openView();
  return { bench, sheet };
}

function shaping() {
  const { bench, sheet } = benchOf();
  const tool = new OutlineTool(bench, sheet);
  const spotOf = (edge: string, kind: 'corner' | 'middle' = 'corner') => {
    const { at } = tool.grips.find(({ grip }) => grip.kind === kind && grip.edge === edge && grip.piece === 'front')!;
    const [x, y] = tool.spotOf('front', at)!;
    return [x - sheet.view.left, y - sheet.view.top] as const;
  };
  const rows = (count: number) => count * sheet.view.scale * (100 / 30);
  return { bench, sheet, tool, spotOf, rows };
}

describe('the tools', () => {
  it('are taken up one at a time, and put down by taking them up again', async () => {
    const { bench, sheet } = benchOf();
    const tools = new Tools(bench, sheet);
    await tools.toggle('outline');
    expect(tools.inUse?.kind).toBe('outline');
    await tools.toggle('choosing');
    expect(tools.inUse?.kind).toBe('choosing');
    await tools.toggle('choosing');
    expect(tools.tool).toBeNull();
  });

  it('put back what they hold when they are put down', async () => {
    const { bench, sheet } = benchOf();
    const { design } = bench;
    const tools = new Tools(bench, sheet);
    await tools.toggle('outline');
    const { tool } = tools.inUse as { tool: OutlineTool };
    const { at } = tool.grips.find(({ grip }) => grip.edge === 'neck-center')!;
    const [x, y] = tool.spotOf('front', at)!;
    const [left, top] = [x - sheet.view.left, y - sheet.view.top];
    tool.press([left, top], MOUSE);
    tool.move([left, top + 12]);
    expect(bench.tried).not.toBe(design);
    tools.putDown();
    expect(bench.tried).toBe(design);
    expect(bench.steps).toBe(0);
    expect(bench.breakOff).toBeNull();
  });
});

describe('the outline’s tool', () => {
  it('shows a movement while it lasts and makes one step of it when the hand lets go', () => {
    const { bench, tool, spotOf, rows } = shaping();
    const [x, y] = spotOf('neck-center');
    tool.press([x, y], MOUSE);
    tool.move([x, y + rows(6)]);
    tool.move([x, y + rows(10)]);
    expect(tool.moved).toEqual([0, -10]);
    expect(bench.pickupNow!.target).not.toBe(84);
    expect(bench.steps).toBe(0);
    tool.lift([x, y + rows(10)]);
    expect(bench.steps).toBe(1);
    expect(tool.holds).toBe(false);
    bench.undo();
    expect(bench.pickup!.target).toBe(84);
  });

  it('makes nothing of a movement that comes back, of a tremble, or of one that crosses', () => {
    const { bench, tool, spotOf, rows } = shaping();
    const { design } = bench;
    const [x, y] = spotOf('neck-center');
    tool.press([x, y], MOUSE);
    tool.move([x, y + rows(10)]);
    tool.move([x, y]);
    tool.lift([x, y]);
    tool.press([x, y], MOUSE);
    tool.move([x + 0.5, y]);
    tool.lift([x + 0.5, y]);
    expect(bench.steps).toBe(0);
    tool.press([x, y], MOUSE);
    tool.move([x, y + rows(150)]);
    expect(bench.trouble).toContain('meets itself');
    expect(bench.plan.pickups[0]!.target).toBe(84);
    tool.lift([x, y + rows(150)]);
    expect(tool.refusal).toContain('meets itself');
    expect(bench.design).toBe(design);
    expect(bench.steps).toBe(0);
    expect(bench.trouble).toBeNull();
  });

  it('lets go of what is held before anything else is done to the design', () => {
    const { bench, tool, spotOf, rows } = shaping();
    const [x, y] = spotOf('neck-center');
    tool.press([x, y], MOUSE);
    tool.move([x, y + rows(10)]);
    bench.change({ kind: 'rename', name: 'Another' });
    expect(tool.holds).toBe(false);
    tool.move([x, y + rows(20)]);
    tool.lift([x, y + rows(20)]);
    expect(bench.steps).toBe(1);
    expect(bench.design.pieces).toEqual(readSample('pullover').design.pieces);
  });

  it('keeps of what is chosen only what is there', () => {
    const { bench, tool } = shaping();
    tool.choose({ kind: 'corner', piece: 'front', edge: 'neck-curve-left' });
    tool.removeCorners();
    expect(bench.steps).toBe(1);
    expect(tool.chosen).toBeNull();
  });

  it('tells at once by the keys where a corner has come to', () => {
    const { bench, tool } = shaping();
    tool.choose({ kind: 'corner', piece: 'front', edge: 'neck-center' });
    tool.nudge(0, -10);
    expect(bench.announcement).toContain('now 45 stitches from the left, 94 rows up');
    tool.choose({ kind: 'middle', piece: 'front', edge: 'neck-center' });
    tool.nudge(0, 2);
    expect(bench.announcement).toContain('center neck: 12 sts, 5.5 cm');
  });
});

it('a draft that crosses itself is refused by the bench, and its corners stay', () => {
  const { bench, sheet } = benchOf();
  const whole = (piece: Piece) => bench.open({ ...bench.design, pieces: [piece], pickups: [] }, 'drawn');
  const tool = new DraftingTool(bench, sheet, whole);
  for (const at of [
    [0, 0],
    [20, 20],
    [20, 0],
    [0, 20],
  ] as const) {
    tool.put(at);
  }
  tool.close();
  expect(tool.refusal).toContain('meets itself');
  expect(tool.corners).toHaveLength(4);
  expect(bench.origin).toBe('test');
  tool.takeBack();
  tool.close();
  expect(tool.refusal).toBe('');
  expect(bench.origin).toBe('drawn');
  expect(bench.steps).toBe(1);
});

import { describe, expect, it } from 'vitest';
import { Workbench } from '../../src/ui';
import { readSample } from '../samples/sample';

const edge = { piece: 'front', edge: 'neck-curve-left' };
const benchOf = () => new Workbench(readSample('pullover').design, 'sample');

describe('the workbench', () => {
  it('makes one step of a change and tells the new count', () => {
    const bench = benchOf();
    bench.change({ kind: 'rate', pickup: 'neckband', edge, rate: { kind: 'count', count: 18 } });
    expect(bench.steps).toBe(1);
    expect(bench.pickup!.target).toBe(88);
    expect(bench.announcement).toContain('88 stitches');
    bench.undo();
    expect(bench.pickup!.target).toBe(84);
    expect(bench.announcement).toContain('Undone.');
    bench.redo();
    expect(bench.pickup!.target).toBe(88);
  });

  it('makes no step of a change to what already is', () => {
    const bench = benchOf();
    bench.change({ kind: 'units', units: 'cm' });
    expect(bench.canUndo).toBe(false);
  });

  it('keeps the very plan of a pick-up that a change does not touch', () => {
    const bench = benchOf();
    const before = bench.pickup;
    bench.change({ kind: 'rename', name: 'Another' });
    bench.change({ kind: 'units', units: 'in' });
    expect(bench.pickup).toBe(before);
  });

  it('keeps the last good plan where none can be made, with the reason, and comes back with undo', () => {
    const bench = benchOf();
    const good = bench.plan;
    bench.change({ kind: 'pickup', pickup: 'neckband', fields: { target: 400 } });
    expect(bench.plan).toBe(good);
    expect(bench.trouble).toContain("can't be increased to 400");
    expect(bench.design.pickups[0]!.target).toBe(400);
    bench.undo();
    expect(bench.trouble).toBeNull();
  });

  it('takes another design as one step', () => {
    const bench = benchOf();
    bench.open(readSample('blanket').design, 'other');
    expect([bench.origin, bench.pickup!.pickup.name]).toEqual(['other', 'Border all round']);
    bench.undo();
    expect([bench.origin, bench.pickup!.pickup.name]).toEqual(['sample', 'Neckband']);
  });

  it('shows a pick-up that is there, however many the next design has', () => {
    const bench = new Workbench(readSample('vest').design, 'vest');
    const last = bench.plan.pickups.length - 1;
    bench.showPickup(last);
    expect(bench.pickupIndex).toBe(last);
    bench.open(readSample('pullover').design, 'sample');
    bench.undo();
    expect(bench.pickup).not.toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { allRound, changed, newPickup } from '../../src/editor';
import type { Stretch } from '../../src/piece';
import { done, pieceOf, sample } from './outline/sample';

const blanket = sample('blanket');
const border = blanket.pickups[0]!;
const names = (along: readonly Stretch[]) => along.map(({ edge, backwards }) => (backwards ? `-${edge}` : edge));

describe('pick-ups', () => {
  it('are added last, duplicated behind what they come from, and removed', () => {
    const added = done(blanket, { kind: 'add-pickup', pickup: { ...border, name: 'Second' } });
    expect(added.pickups.map(({ id, name }) => [id, name])).toEqual([
      ['border', 'Border all round'],
      ['border-2', 'Second'],
    ]);
    expect(added.pickups[0]).toBe(border);
    const twice = done(added, { kind: 'duplicate-pickup', pickup: 'border', name: 'Third' });
    expect(twice.pickups.map(({ id }) => id)).toEqual(['border', 'border-3', 'border-2']);
    const removed = done(twice, { kind: 'remove-pickup', pickup: 'border' });
    expect(removed.pickups).toEqual(twice.pickups.slice(1));
    expect(removed.pieces).toBe(blanket.pieces);
  });

  it('that are not there change nothing', () => {
    expect(changed(blanket, { kind: 'remove-pickup', pickup: 'none' })).toBe(blanket);
    expect(changed(blanket, { kind: 'duplicate-pickup', pickup: 'none', name: 'x' })).toBe(blanket);
    expect(changed(blanket, { kind: 'turn-run', pickup: 'none' })).toBe(blanket);
  });
});

describe('the run of a pick-up', () => {
  it('is another one, and nothing is said any more of edges that it leaves', () => {
    const side = { piece: 'blanket', edge: 'side-left' };
    const stated = done(blanket, { kind: 'stated', pickup: 'border', edge: side, count: 130 });
    const kept = done(stated, { kind: 'along', pickup: 'border', along: border.along.slice(1), joined: false });
    expect(kept.pickups[0]).toMatchObject({ joined: false, stated: [{ ...side, count: 130 }] });
    const lost = done(stated, { kind: 'along', pickup: 'border', along: border.along.slice(2) });
    expect(lost.pickups[0]).toMatchObject({ joined: true, stated: [] });
    expect(changed(blanket, { kind: 'along', pickup: 'border', along: border.along })).toBe(blanket);
  });

  it('begins at another stretch where it is worked in the round', () => {
    const next = done(blanket, { kind: 'start-at', pickup: 'border', stretch: 2 });
    expect(names(next.pickups[0]!.along)).toEqual(['cast-on', 'side-right', 'bound-off', 'side-left']);
    expect(changed(blanket, { kind: 'start-at', pickup: 'border', stretch: 0 })).toBe(blanket);
    expect(changed(blanket, { kind: 'start-at', pickup: 'border', stretch: 4 })).toBe(blanket);
    const flat = done(blanket, { kind: 'pickup', pickup: 'border', fields: { joined: false } });
    expect(changed(flat, { kind: 'start-at', pickup: 'border', stretch: 2 })).toBe(flat);
  });

  it('is worked the other way, and back', () => {
    const next = done(blanket, { kind: 'turn-run', pickup: 'border' });
    expect(names(next.pickups[0]!.along)).toEqual(['-side-right', '-cast-on', '-side-left', '-bound-off']);
    expect(done(next, { kind: 'turn-run', pickup: 'border' })).toEqual(blanket);
  });

  it('takes part of an edge', () => {
    const next = done(blanket, { kind: 'part', pickup: 'border', stretch: 1, part: [0.25, 0.5] });
    expect(next.pickups[0]!.along[1]!.part).toEqual([0.25, 0.5]);
    expect(next.pickups[0]!.along[0]).toBe(border.along[0]);
    expect(changed(blanket, { kind: 'part', pickup: 'border', stretch: 1, part: [0, 1] })).toBe(blanket);
    expect(changed(blanket, { kind: 'part', pickup: 'border', stretch: 9, part: [0, 0.5] })).toBe(blanket);
  });
});

it('a new pick-up can be planned at once', () => {
  const pickup = newPickup(blanket, allRound(pieceOf(blanket, 'blanket')), 'Edging');
  const next = done(blanket, { kind: 'add-pickup', pickup });
  expect(next.pickups[1]).toBe(pickup);
});

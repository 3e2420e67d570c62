import { describe, expect, it } from 'vitest';
import { allRound, newPickup, nextTo, runBetween } from '../../src/editor';
import { readDesign, type Stretch } from '../../src/piece';
import { pieceOf, sample } from './outline/sample';

const pullover = sample('pullover');
const front = pieceOf(pullover, 'front');
const edges = (along: readonly Stretch[]) => along.map(({ edge }) => edge);

describe('from one edge to another', () => {
  it('goes in the direction of the outline, over the end of the list too', () => {
    const neck = ['neck-straight-left', 'neck-curve-left', 'neck-center', 'neck-curve-right', 'neck-straight-right'];
    expect(edges(runBetween(front, neck[0]!, neck[4]!))).toEqual(neck);
    expect(edges(runBetween(front, 'side-right', 'side-left'))).toEqual(['side-right', 'cast-on', 'side-left']);
    expect(edges(runBetween(front, 'cast-on', 'cast-on'))).toEqual(['cast-on']);
    expect(runBetween(front, neck[4]!, neck[3]!)).toHaveLength(front.outline.length);
  });

  it('is nothing where an edge is not there', () => {
    expect(runBetween(front, 'none', 'cast-on')).toEqual([]);
    expect(runBetween(front, 'cast-on', 'none')).toEqual([]);
  });
});

it('all round is every edge once, whole and forwards', () => {
  expect(edges(allRound(front))).toEqual(front.outline.map(({ id }) => id));
  expect(allRound(front).every(({ backwards, part }) => !backwards && part[0] === 0 && part[1] === 1)).toBe(true);
});

describe('what follows a run', () => {
  const run = runBetween(front, 'neck-curve-left', 'neck-center');

  it('is the next edge at its end and the one before at its start', () => {
    expect(nextTo(pullover, run, 'end')).toEqual(runBetween(front, 'neck-curve-right', 'neck-curve-right')[0]);
    expect(nextTo(pullover, run, 'start')!.edge).toBe('neck-straight-left');
  });

  it('is the other way where it is worked backwards', () => {
    const back = [...run].reverse().map((stretch) => ({ ...stretch, backwards: true }));
    expect(nextTo(pullover, back, 'end')).toMatchObject({ edge: 'neck-straight-left', backwards: true });
    expect(nextTo(pullover, back, 'start')).toMatchObject({ edge: 'neck-curve-right', backwards: true });
  });

  it('is the rest of an edge of which a part is taken', () => {
    const part: Stretch = { ...run[0]!, part: [0.25, 0.5] };
    expect(nextTo(pullover, [part], 'end')).toEqual({ ...part, part: [0.5, 1] });
    expect(nextTo(pullover, [part], 'start')).toEqual({ ...part, part: [0, 0.25] });
    const back = { ...part, backwards: true };
    expect(nextTo(pullover, [back], 'end')).toEqual({ ...back, part: [0, 0.25] });
  });

  it('leads all round, and then to nothing', () => {
    let along: Stretch[] = [run[0]!];
    for (let next = nextTo(pullover, along, 'end'); next; next = nextTo(pullover, along, 'end'))
      along = [...along, next];
    expect(along).toHaveLength(front.outline.length);
    expect(nextTo(pullover, along, 'start')).toBeNull();
  });

  it('is nothing of nothing', () => {
    expect(nextTo(pullover, [], 'end')).toBeNull();
    expect(nextTo(pullover, [{ ...run[0]!, piece: 'none' }], 'end')).toBeNull();
  });
});

describe('a new pick-up', () => {
  it('is what a file gives that says no more', () => {
    const along = runBetween(front, 'neck-curve-left', 'neck-center');
    const made = newPickup(pullover, along, 'Collar');
    const raw = { id: 'collar', name: 'Collar', along: along.map(({ piece, edge }) => ({ piece, edge })) };
    expect(made).toEqual(readDesign(JSON.stringify({ ...pullover, pickups: [raw] })).design.pickups[0]);
  });

  it('has an id of its own', () => {
    expect(newPickup(pullover, allRound(front), 'Neckband').id).toBe('neckband-2');
    expect(newPickup(pullover, allRound(front), '†').id).toBe('pick-up');
  });

  it('is worked in the round where it goes all round one piece, either way', () => {
    const round = allRound(front);
    const back = [...round].reverse().map((stretch) => ({ ...stretch, backwards: true }));
    const cases: readonly (readonly [boolean, Stretch[]])[] = [
      [true, round],
      [true, [...round.slice(3), ...round.slice(0, 3)]],
      [true, back],
      [false, round.slice(1)],
      [false, [round[1]!, round[0]!, ...round.slice(2)]],
      [false, [{ ...round[0]!, part: [0, 0.5] }, ...round.slice(1)]],
      [false, []],
    ];
    for (const [joined, along] of cases) expect(newPickup(pullover, along, 'Band').joined).toBe(joined);
  });
});

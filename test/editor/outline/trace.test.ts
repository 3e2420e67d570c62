import { describe, expect, it } from 'vitest';
import { changed, newPickup, type Change } from '../../../src/editor';
import type { Design, Pickup, Rate, Stretch } from '../../../src/piece';
import { designOf, done, straightPiece } from './sample';

const piece = straightPiece([
  [0, 0],
  [20, 0],
  [20, 40],
  [0, 40],
]);
const bare = designOf(piece);
const stretch = (edge: string, fields: Partial<Stretch> = {}): Stretch => ({
  piece: 'piece',
  edge,
  backwards: false,
  part: [0, 1],
  ...fields,
});

function withRun(along: readonly Stretch[], fields: Partial<Pickup> = {}): Design {
  return { ...bare, pickups: [{ ...newPickup(bare, along, 'Band'), joined: false, ...fields }] };
}

/** The side of 40 rows is split into 10 and 30. */
const split = { kind: 'insert-corner', piece: 'piece', edge: 'e1', at: [20, 10] } as const satisfies Change;
const ref = { piece: 'piece', edge: 'e1' };
const other = { piece: 'piece', edge: 'e1-2' };

function runOf(design: Design) {
  return design.pickups[0]!.along.map(({ edge, backwards, part }) => [edge, backwards, ...part]);
}

describe('a run along an edge that is split', () => {
  it('goes along both parts in working order', () => {
    expect(runOf(done(withRun([stretch('e0'), stretch('e1'), stretch('e2')]), split))).toEqual([
      ['e0', false, 0, 1],
      ['e1', false, 0, 1],
      ['e1-2', false, 0, 1],
      ['e2', false, 0, 1],
    ]);
    expect(runOf(done(withRun([stretch('e1', { backwards: true })]), split))).toEqual([
      ['e1-2', true, 0, 1],
      ['e1', true, 0, 1],
    ]);
  });

  it('keeps its part of the fabric', () => {
    expect(runOf(done(withRun([stretch('e1', { part: [0.125, 0.625] })]), split))).toEqual([
      ['e1', false, 0.5, 1],
      ['e1-2', false, 0, 0.5],
    ]);
    expect(runOf(done(withRun([stretch('e1', { part: [0.25, 1] })]), split))).toEqual([['e1-2', false, 0, 1]]);
  });

  it('in the round still begins where it began', () => {
    const [e0, e2, e3] = [stretch('e0'), stretch('e2'), stretch('e3')];
    const round = [stretch('e1', { part: [0.5, 1] }), e2, e3, e0, stretch('e1', { part: [0, 0.5] })];
    const run = runOf(done(withRun(round, { joined: true }), split));
    expect(run[0]).toEqual(['e1-2', false, expect.closeTo(1 / 3, 12), 1]);
    expect(run.at(-1)).toEqual(['e1-2', false, 0, expect.closeTo(1 / 3, 12)]);
    expect(run).toHaveLength(6);
  });

  it('leaves other stretches that touch as they are', () => {
    const halves = [stretch('e0', { part: [0, 0.5] }), stretch('e0', { part: [0.5, 1] }), stretch('e1')];
    expect(runOf(done(withRun(halves), split))).toHaveLength(4);
  });

  it('shares out a number over all that lies on each part', () => {
    const twice = [stretch('e1', { part: [0.5, 1] }), stretch('e1', { part: [0, 0.5] })];
    const rates = [{ ...ref, rate: { kind: 'count', count: 40 } as const }];
    const next = done(withRun(twice, { rates }), split).pickups[0]!;
    const counts = next.rates.map(({ edge, rate }) => [edge, rate.kind === 'count' ? rate.count : null]);
    expect(Object.fromEntries(counts)).toEqual({ e1: 10, 'e1-2': 30 });
  });

  it('has the rate on both parts, and a number of stitches shared out', () => {
    const rated = (rate: Rate) =>
      done(withRun([stretch('e1')], { rates: [{ ...ref, rate }] }), split).pickups[0]!.rates;
    const ratio = { kind: 'ratio', pick: 3, of: 4 } as const;
    expect(rated(ratio)).toEqual([
      { ...ref, rate: ratio },
      { ...other, rate: ratio },
    ]);
    expect(rated({ kind: 'count', count: 30 })).toEqual([
      { ...ref, rate: { kind: 'count', count: 8 } },
      { ...other, rate: { kind: 'count', count: 22 } },
    ]);
  });

  it('keeps the ratio that a pattern states on both parts', () => {
    const ratio = { pick: 3, of: 4 };
    const next = done(withRun([stretch('e1')], { statedRatios: [{ ...ref, ...ratio }] }), split).pickups[0]!;
    expect(next.statedRatios).toEqual([
      { ...ref, ...ratio },
      { ...other, ...ratio },
    ]);
  });

  it('loses what was measured or stated of the whole', () => {
    const said = { measured: [{ ...ref, mm: 140 }], stated: [{ ...ref, count: 30 }] };
    const next = done(withRun([stretch('e1')], said), split).pickups[0]!;
    expect([next.measured, next.stated]).toEqual([[], []]);
  });

  it('keeps what was stated where all of it lies on one part', () => {
    const said = { measured: [{ ...ref, mm: 140 }], stated: [{ ...ref, count: 30 }] };
    const next = done(withRun([stretch('e1', { part: [0.5, 1] })], said), split).pickups[0]!;
    expect(next.stated).toEqual([{ ...other, count: 30 }]);
    expect(next.rates).toEqual([]);
  });

  it('is the same pick-up where it does not go along it', () => {
    const design = withRun([stretch('e0')]);
    expect(done(design, split).pickups).toBe(design.pickups);
  });
});

describe('a run along edges that become one', () => {
  const parted = designOf(
    straightPiece([
      [0, 0],
      [20, 0],
      [20, 10],
      [20, 40],
      [0, 40],
    ]),
  );
  const merge = { kind: 'remove-corners', piece: 'piece', corners: ['e2'] } as const satisfies Change;
  const merged = (along: readonly Stretch[], fields: Partial<Pickup> = {}) =>
    done({ ...parted, pickups: [{ ...newPickup(parted, along, 'Band'), joined: false, ...fields }] }, merge);
  const [first, second] = [
    { piece: 'piece', edge: 'e1' },
    { piece: 'piece', edge: 'e2' },
  ];

  it('goes along the one once', () => {
    expect(runOf(merged([stretch('e1'), stretch('e2'), stretch('e3')]))).toEqual([
      ['e1', false, 0, 1],
      ['e3', false, 0, 1],
    ]);
    expect(runOf(merged([stretch('e2', { backwards: true }), stretch('e1', { backwards: true })]))).toEqual([
      ['e1', true, 0, 1],
    ]);
  });

  it('goes along it once all round, wherever it began', () => {
    const round = [stretch('e2'), stretch('e3'), stretch('e4'), stretch('e0'), stretch('e1')];
    expect(runOf(merged(round, { joined: true }))).toEqual([
      ['e1', false, 0, 1],
      ['e3', false, 0, 1],
      ['e4', false, 0, 1],
      ['e0', false, 0, 1],
    ]);
  });

  it('goes along its part of the fabric where it went along one of them', () => {
    expect(runOf(merged([stretch('e2')]))).toEqual([['e1', false, 0.25, 1]]);
  });

  it('has the sum of what was counted, measured and stated of both', () => {
    const next = merged([stretch('e1'), stretch('e2')], {
      rates: [
        { ...first, rate: { kind: 'count', count: 7 } },
        { ...second, rate: { kind: 'count', count: 21 } },
      ],
      measured: [
        { ...first, mm: 35 },
        { ...second, mm: 104 },
      ],
      stated: [
        { ...first, count: 8 },
        { ...second, count: 20 },
      ],
    }).pickups[0]!;
    expect(next.rates).toEqual([{ ...first, rate: { kind: 'count', count: 28 } }]);
    expect(next.measured).toEqual([{ ...first, mm: 139 }]);
    expect(next.stated).toEqual([{ ...first, count: 28 }]);
  });

  it('loses what was said of one of them only, and rates that differ', () => {
    const next = merged([stretch('e1'), stretch('e2')], {
      rates: [
        { ...first, rate: { kind: 'each' } },
        { ...second, rate: { kind: 'length' } },
      ],
      measured: [{ ...second, mm: 104 }],
      stated: [{ ...first, count: 8 }],
    }).pickups[0]!;
    expect([next.rates, next.measured, next.stated]).toEqual([[], [], []]);
  });
});

describe('a pick-up along what is gone', () => {
  it('goes along the rest, and says nothing more of it', () => {
    const outline = piece.outline.map((edge) => (edge.id === 'e1' ? { ...edge, id: 'new' } : edge));
    const design = withRun([stretch('e0'), stretch('e1')], { stated: [{ ...ref, count: 3 }] });
    const next = done(design, { kind: 'outline', piece: 'piece', outline });
    expect(runOf(next)).toEqual([['e0', false, 0, 1]]);
    expect(next.pickups[0]!.stated).toEqual([]);
  });

  it('is removed where there is no rest', () => {
    const next = changed(withRun([stretch('e0')]), { kind: 'remove-piece', piece: 'piece' });
    expect(next.pickups).toEqual([]);
  });
});

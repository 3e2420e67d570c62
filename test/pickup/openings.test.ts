import { describe, expect, it } from 'vitest';
import type { NeedleChoice } from '../../src/pickup';
import { cellOf, measurePiece } from '../../src/shaping';
import { design, piece, recorded, rectangle, type EdgeOpening, type Raw } from './builders';

const USUAL: NeedleChoice = { inset: 1, garterAt: 'bump', stepHoles: false, halfLoop: false };

/** Openings of an edge of a piece, whole stitches in unless said otherwise. */
function openings(raw: Raw, id: string, choice: Partial<NeedleChoice> = {}): readonly EdgeOpening[] {
  const one = design(raw).pieces[0]!;
  const edge = measurePiece(one).find((candidate) => candidate.id === id)!;
  return recorded(edge, cellOf(one), { ...USUAL, ...choice }).all;
}

const kinds = (list: readonly EdgeOpening[]) => [...new Set(list.map((opening) => opening.kind))];
const firsts = (list: readonly EdgeOpening[]) => list.filter((opening) => !opening.second);
const seconds = (list: readonly EdgeOpening[]) => list.filter((opening) => opening.second);
const grid = (list: readonly EdgeOpening[]) => list.map(({ x, y }) => [x, y]);

/** Row by row of the table of openings. */
describe('a horizontal edge', () => {
  it('bound off has one to a stitch, in the middle of the stitch just inside the bind-off', () => {
    const made = openings(rectangle(16, 20), 'top');
    expect(made).toHaveLength(16);
    expect(kinds(made)).toEqual(['stitch']);
    // The outline runs leftwards along the top.
    expect(made[0]).toMatchObject({ x: 15.5, y: 19.5, column: 15, row: 19, edgeAt: 2.5, joinAt: 2.5 });
    expect(made[15]).toMatchObject({ x: 0.5, y: 19.5, column: 0, row: 19, edgeAt: 77.5 });
  });

  it('cast on has one to a stitch, in the first row', () => {
    const made = openings(rectangle(16, 20), 'bottom');
    expect(grid(made)).toEqual(Array.from({ length: 16 }, (_, i) => [i + 0.5, 0.5]));
    expect(made.every((opening) => opening.row === 0 && opening.column === Math.floor(opening.x))).toBe(true);
  });

  it('live has one to a stitch, on the needle', () => {
    const made = openings(rectangle(16, 20, { top: { finish: 'live' } }), 'top');
    expect(made).toHaveLength(16);
    expect(kinds(made)).toEqual(['live']);
    expect(made.every((opening) => opening.y === 20)).toBe(true);
  });

  /**
   * Worked the other way n stitches are n - 1 loops and two half loops: TECHknitter on provisional cast-ons,
   * https://techknitting.blogspot.com (January 2007), from notes.
   */
  it('cast on provisionally has n - 1, between the stitches; a caught half loop keeps n', () => {
    const raw = rectangle(16, 20, { bottom: { finish: 'provisional' } });
    expect(grid(openings(raw, 'bottom'))).toEqual(Array.from({ length: 15 }, (_, i) => [i + 1, 0]));
    expect(kinds(openings(raw, 'bottom'))).toEqual(['live']);
    expect(openings(raw, 'bottom', { halfLoop: true })).toHaveLength(16);
    expect(openings(rectangle(1, 20, { bottom: { finish: 'provisional' } }), 'bottom')).toHaveLength(0);
  });
});

describe('a plain selvage', () => {
  it('has one to a row, a stitch inside the edge: xMm is column times stitch width', () => {
    const right = openings(rectangle(16, 20), 'right');
    expect(right).toHaveLength(20);
    expect(kinds(right)).toEqual(['row']);
    expect(grid(right)).toEqual(Array.from({ length: 20 }, (_, i) => [15, i + 0.5]));
    expect(right.every((opening) => opening.column === opening.x && opening.row === Math.floor(opening.y))).toBe(true);
    // The left edge falls.
    expect(grid(openings(rectangle(16, 20), 'left'))).toEqual(Array.from({ length: 20 }, (_, i) => [1, 19.5 - i]));
  });

  it('has them half a stitch inside, or at the very edge, for who works so', () => {
    expect(openings(rectangle(16, 20), 'right', { inset: 0.5 })[0]).toMatchObject({ x: 15.5, column: 15 });
    expect(openings(rectangle(16, 20), 'right', { inset: 0 })[0]).toMatchObject({ x: 16 });
    expect(openings(rectangle(16, 20), 'left', { inset: 0.5 })[0]).toMatchObject({ x: 0.5, column: 0 });
  });

  it('has one to a row on a gentle slope, inside the decreases', () => {
    const raw = piece([{ from: [0, 0] }, { id: 'slope', from: [40, 0] }, { from: [35, 20] }, { from: [0, 20] }]);
    const made = openings(raw, 'slope');
    expect(made).toHaveLength(20);
    // Five decreases, one every fourth row: each is worked at the foot of its rows.
    expect(made.map((opening) => opening.x)).toEqual(Array.from({ length: 20 }, (_, i) => 38 - Math.floor(i / 4)));
  });
});

describe('a slipped selvage', () => {
  /** A chain stands for two rows: Osborn Fiber, Picking up gusset stitches, http://osbornfiber.com (2010/06/27), from notes. */
  it.each([
    [20, 10],
    [21, 10],
    [2, 1],
    [1, 1],
  ])('of %i rows has %i chains', (rows, chains) => {
    const made = openings(rectangle(16, rows, { right: { selvage: 'slipped' } }), 'right');
    expect(firsts(made)).toHaveLength(chains);
    expect(kinds(made)).toEqual(['chain']);
  });

  it('has a gap beside each chain as a second place', () => {
    const made = openings(rectangle(16, 6, { right: { selvage: 'slipped' } }), 'right');
    expect(made.map(({ second, x, y }) => [second, x, y])).toEqual([
      [false, 15.5, 1],
      [true, 15.5, 2],
      [false, 15.5, 3],
      [true, 15.5, 4],
      [false, 15.5, 5],
      [true, 15.5, 5.75],
    ]);
    expect(seconds(openings(rectangle(16, 1, { right: { selvage: 'slipped' } }), 'right'))).toHaveLength(0);
  });

  it('is the same seen from the other side', () => {
    const raw = rectangle(16, 7, { right: { selvage: 'slipped' }, left: { selvage: 'slipped' } });
    const mirrored = [...openings(raw, 'left')].reverse().map(({ second, x, y }) => [second, 16 - x, y]);
    expect(mirrored).toEqual(openings(raw, 'right').map(({ second, x, y }) => [second, x, y]));
  });
});

describe('a garter edge', () => {
  it('has one to a ridge, at the bump, and the hollows as second places', () => {
    const made = openings(rectangle(16, 8, {}, { fabric: 'garter' }), 'right');
    expect(kinds(made)).toEqual(['ridge']);
    expect(firsts(made).map((opening) => opening.y)).toEqual([1, 3, 5, 7]);
    expect(seconds(made).map((opening) => opening.y)).toEqual([2, 4, 6, 7.75]);
    expect(made.every((opening) => opening.x === 15.75)).toBe(true);
  });

  it('may be worked between the selvage and its neighbour', () => {
    const made = openings(rectangle(16, 8, {}, { fabric: 'garter' }), 'left', { garterAt: 'inside' });
    expect(made.every((opening) => opening.x === 1)).toBe(true);
  });
});

describe('bound-off steps', () => {
  const steps = [
    { stitches: -5, every: 2, times: 1 },
    { stitches: -3, every: 2, times: 1 },
    { stitches: -1, every: 2, times: 2 },
    { stitches: 0, every: 4, times: 1 },
  ];
  const raw = piece([
    { from: [0, 0] },
    { from: [30, 0] },
    { id: 'steps', from: [30, 10], path: 'stepped', steps },
    { from: [20, 22] },
    { from: [0, 22] },
  ]);

  it('have one to a stitch on the tread and one to a row on the riser', () => {
    const made = openings(raw, 'steps');
    expect(made.map((opening) => opening.kind).join('')).toBe(
      ['stitch'.repeat(5), 'row'.repeat(2), 'stitch'.repeat(3), 'row'.repeat(2), 'row'.repeat(8)].join(''),
    );
    expect(grid(made.slice(0, 9))).toEqual([
      [29.5, 9.5],
      [28.5, 9.5],
      [27.5, 9.5],
      [26.5, 9.5],
      [25.5, 9.5],
      [24, 10.5],
      [24, 11.5],
      [24.5, 11.5],
      [23.5, 11.5],
    ]);
  });

  it('pass over the hole at the foot of a step, unless it is wanted', () => {
    expect(openings(raw, 'steps').some((opening) => opening.hole)).toBe(false);
    const holes = openings(raw, 'steps', { stepHoles: true }).filter((opening) => opening.hole);
    expect(grid(holes)).toEqual([
      [25, 10],
      [22, 12],
    ]);
  });

  it('have no hole where stitches are cast on', () => {
    const out = [
      { stitches: 4, every: 2, times: 2 },
      { stitches: 0, every: 6, times: 1 },
    ];
    const wider = piece([
      { from: [0, 0] },
      { id: 'out', from: [20, 0], path: 'stepped', steps: out },
      { from: [28, 10] },
      { from: [0, 10] },
    ]);
    const made = openings(wider, 'out', { stepHoles: true });
    expect(made.some((opening) => opening.hole)).toBe(false);
    expect(grid(made.slice(0, 6))).toEqual([
      [20.5, 0.5],
      [21.5, 0.5],
      [22.5, 0.5],
      [23.5, 0.5],
      [23, 0.5],
      [23, 1.5],
    ]);
  });
});

describe('a decrease on every row', () => {
  it('has two places to a row: the row and the decrease itself', () => {
    const raw = piece([{ from: [0, 0] }, { id: 'steep', from: [40, 0] }, { from: [25, 15] }, { from: [0, 15] }]);
    const made = openings(raw, 'steep');
    expect(made).toHaveLength(30);
    expect(made.map((opening) => opening.kind)).toEqual(Array.from({ length: 15 }, () => ['stitch', 'row']).flat());
    // More than the 1.23 per row that such a slope wants at 20 stitches by 28 rows.
    expect(made.length / 15).toBeGreaterThan(Math.hypot(1 / 20, 1 / 28) / (1 / 20));
  });

  it('is an opening beside chains and ridges too, never in the same place', () => {
    for (const selvage of ['slipped', 'garter']) {
      const raw = piece([
        { from: [0, 0] },
        { id: 'steep', from: [40, 0], selvage },
        { from: [26, 14] },
        { from: [0, 14] },
      ]);
      const made = openings(raw, 'steep');
      expect(
        firsts(made)
          .map((opening) => opening.kind)
          .filter((kind) => kind === 'stitch'),
      ).toHaveLength(14);
      const at = made.map((opening) => opening.edgeAt);
      expect(new Set(at.map((mm) => mm.toFixed(6))).size).toBe(made.length);
    }
  });
});

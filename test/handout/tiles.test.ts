import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds, type Frame } from '../../src/handout/clip';
import { MARGIN, paperSize, roomOn } from '../../src/handout/paper';
import { OVERLAP, tilePage, tilesOf, type Tile } from '../../src/handout/tiles';
import type { DrawnElement } from '../../src/renderer';
import { beyond, lengthOf } from './onPage';

const A4 = paperSize({ paper: 'A4', orientation: 'portrait' });
const LETTER = paperSize({ paper: 'Letter', orientation: 'landscape' });

const wholes: fc.Arbitrary<Frame> = fc.record({
  x: fc.double({ min: -50, max: 50, noNaN: true }),
  y: fc.double({ min: -50, max: 50, noNaN: true }),
  width: fc.oneof(fc.double({ min: 20, max: 1500, noNaN: true }), fc.constantFrom(178, 178.001, 344)),
  height: fc.oneof(fc.double({ min: 20, max: 1500, noNaN: true }), fc.constantFrom(259, 259.001)),
});
const cases = fc.tuple(
  wholes,
  fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
    minLength: 1,
    maxLength: 30,
  }),
  fc.constantFrom(A4, LETTER),
);

/** Points within a frame by their shares of it; what is picked up has some room round it on every side. */
const within = ({ x, y, width, height }: Frame, shares: readonly (readonly [number, number])[]) =>
  shares.map(([u, v]) => ({ x: x + 4 + (width - 8) * u, y: y + 4 + (height - 8) * v }));

const grid = (whole: Frame) =>
  within(
    whole,
    Array.from({ length: 900 }, (_, i): [number, number] => [(i % 30) / 29, Math.floor(i / 30) / 29]),
  );

const nameOf = (tiles: readonly Tile[]) => tiles.map(({ name }) => name);

describe('the parts of a drawing in true size', () => {
  it('show every point that is picked up, and hold at least one each', () => {
    fc.assert(
      fc.property(cases, ([whole, shares, size]) => {
        const points = within(whole, shares);
        const tiles = tilesOf(whole, points, size);
        const on = (frame: Frame) => points.filter(({ x, y }) => holds(frame, [x, y]));
        expect(points.filter(({ x, y }) => !tiles.some(({ frame }) => holds(frame, [x, y])))).toEqual([]);
        expect(tiles.filter(({ frame }) => on(frame).length === 0)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('leave out no part that holds a point', () => {
    fc.assert(
      fc.property(cases, ([whole, shares, size]) => {
        const points = within(whole, shares);
        const every = tilesOf(whole, [...grid(whole), ...points], size);
        const needed = every.filter(({ frame }) => points.some(({ x, y }) => holds(frame, [x, y])));
        expect(nameOf(tilesOf(whole, points, size))).toEqual(nameOf(needed));
      }),
      { numRuns: 100 },
    );
  });

  it('fit the page, cover all of the drawing, and share the same with every neighbour', () => {
    fc.assert(
      fc.property(wholes, fc.constantFrom(A4, LETTER), (whole, size) => {
        const tiles = tilesOf(whole, grid(whole), size);
        const room = roomOn(size);
        for (const { frame } of tiles) {
          expect(frame.width).toBeLessThanOrEqual(room.width + 1e-9);
          expect(frame.height).toBeLessThanOrEqual(room.height - 8 + 1e-9);
        }
        const at = (column: number, row: number) =>
          tiles.find((tile) => tile.column === column && tile.row === row)?.frame;
        for (const { column, row, frame } of tiles) {
          const [right, below] = [at(column + 1, row), at(column, row + 1)];
          if (right) expect(frame.x + frame.width - right.x).toBeCloseTo(OVERLAP, 9);
          if (below) expect(frame.y + frame.height - below.y).toBeCloseTo(OVERLAP, 9);
        }
        const reach = (ends: readonly number[]) => [Math.min(...ends), Math.max(...ends)];
        const [left, right] = reach(tiles.flatMap(({ frame }) => [frame.x, frame.x + frame.width]));
        const [upper, lower] = reach(tiles.flatMap(({ frame }) => [frame.y, frame.y + frame.height]));
        expect(left).toBeCloseTo(whole.x, 9);
        expect(upper).toBeCloseTo(whole.y, 9);
        expect(right).toBeCloseTo(whole.x + whole.width, 6);
        expect(lower).toBeCloseTo(whole.y + whole.height, 6);
      }),
      { numRuns: 100 },
    );
  });

  it('are as few as can be', () => {
    const whole = (width: number, height: number): Frame => ({ x: 0, y: 0, width, height });
    // A4 has 178 × 267 mm between its margins, 8 of them for the name; every further page brings 12 less.
    expect(tilesOf(whole(178, 259), grid(whole(178, 259)), A4)).toHaveLength(1);
    expect(tilesOf(whole(178.1, 259), grid(whole(178.1, 259)), A4)).toHaveLength(2);
    expect(tilesOf(whole(344, 506), grid(whole(344, 506)), A4)).toHaveLength(4);
    expect(tilesOf(whole(344.1, 506), grid(whole(344.1, 506)), A4)).toHaveLength(6);
  });

  it('are named by row and place, also after Z', () => {
    const whole: Frame = { x: 0, y: 0, width: 340, height: 259 + 247 * 27 };
    const names = nameOf(tilesOf(whole, grid(whole), A4));
    expect(names).toHaveLength(56);
    expect(names.slice(0, 4)).toEqual(['A1', 'A2', 'B1', 'B2']);
    expect(names.slice(-4)).toEqual(['AA1', 'AA2', 'AB1', 'AB2']);
    expect(new Set(names).size).toBe(56);
  });
});

describe('a part on its page', () => {
  const whole: Frame = { x: 5, y: 7, width: 340, height: 500 };
  const tiles = tilesOf(whole, grid(whole), A4);
  const pageOf = (tile: Tile, all: readonly Tile[] = tiles, inner: readonly DrawnElement[] = []) =>
    tilePage(tile, all, 'Front', inner);

  it('says what it is and where it goes on', () => {
    expect(tiles.map((tile) => pageOf(tile)[0]!.text)).toEqual([
      'Front in true size, part A1: goes on in A2 and B1, cross on cross.',
      'Front in true size, part A2: goes on in A1 and B2, cross on cross.',
      'Front in true size, part B1: goes on in B2 and A1, cross on cross.',
      'Front in true size, part B2: goes on in B1 and A2, cross on cross.',
    ]);
    expect(pageOf(tiles[0]!, [tiles[0]!])[0]!.text).toBe('Front in true size.');
  });

  /** Middles of the crosses, in mm of the drawing. */
  function crosses(tile: Tile): string[] {
    const [, , cross] = pageOf(tile);
    const middles = [...cross!.attributes.d!.matchAll(/M([\d.]+),([\d.]+)h([\d.]+)/g)].map(([, x, y, h]) => [
      Number(x) + Number(h) / 2 - MARGIN.side + tile.frame.x,
      Number(y) - MARGIN.top - 8 + tile.frame.y,
    ]);
    return middles.map((at) => at.map((one) => one.toFixed(1)).join(' '));
  }

  it('has crosses where its neighbours have them, so that they come to lie on one another', () => {
    const [a1, a2, b1, b2] = tiles.map(crosses);
    const shared = (one: readonly string[], other: readonly string[]) => one.filter((at) => other.includes(at));
    expect(a1).toHaveLength(3);
    for (const [one, other] of [
      [a1, a2],
      [b1, b2],
      [a1, b1],
      [a2, b2],
    ]) {
      expect(shared(one!, other!)).toHaveLength(2);
    }
  });

  it('is drawn in true size and stays on the page', () => {
    for (const tile of tiles) {
      const { x, y, width, height } = tile.frame;
      const line: DrawnElement = {
        name: 'path',
        attributes: {
          d: `M${x},${y}L${x + width},${y + height}`,
          fill: 'none',
          stroke: '#000000',
          'stroke-width': '0.3',
        },
        children: [],
      };
      const elements = pageOf(tile, tiles, [line]);
      expect(beyond({ ...A4, elements })).toEqual([]);
      const frame = elements[1]!.attributes.d!;
      expect(lengthOf(frame)).toBeCloseTo(2 * (width + height), 1);
      expect(elements.at(-1)!.attributes.transform).not.toContain('scale');
    }
  });
});

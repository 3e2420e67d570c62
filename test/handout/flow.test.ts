import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box } from '../../src/handout/elements';
import { flow } from '../../src/handout/flow';
import { columnsOf, GUTTER, MARGIN, paperSize, roomOn, type Size } from '../../src/handout/paper';
import { heading, paragraph, type Strip } from '../../src/handout/strip';
import { table } from '../../src/handout/table';
import type { DrawnElement } from '../../src/renderer';

const UPRIGHT = paperSize({ paper: 'A4', orientation: 'portrait' });
const LYING = paperSize({ paper: 'Letter', orientation: 'landscape' });

interface Laid {
  readonly id: string;
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A strip that draws its own box with its name on it. */
function strip(id: string, height: number, width: number, fields: Partial<Strip> = {}): Strip {
  return {
    gap: 0,
    height,
    ...fields,
    draw: (x, y) => [
      { ...box(x, y, width, height, 0.1), attributes: { id, x: `${x}`, y: `${y}`, w: `${width}`, h: `${height}` } },
    ],
  };
}

function laid(pages: readonly (readonly DrawnElement[])[]): Laid[] {
  return pages.flatMap((elements, page) =>
    elements.map(({ attributes: { id = '', x, y, w, h } }) => ({
      id,
      page,
      x: Number(x),
      y: Number(y),
      width: Number(w),
      height: Number(h),
    })),
  );
}

/** Which column a box begins in. */
const columnOf = ({ x }: Laid, size: Size) => Math.round((x - MARGIN.side) / (columnsOf(size).width + GUTTER));

interface Kind {
  readonly height: number;
  readonly gap: number;
  readonly withNext: boolean;
  readonly across: boolean;
  readonly rows: number;
}

/** Anything from a line to a picture, and now and then a table. */
const kinds: fc.Arbitrary<Kind[]> = fc.array(
  fc.record({
    height: fc.oneof(fc.double({ min: 1, max: 12, noNaN: true }), fc.double({ min: 12, max: 120, noNaN: true })),
    gap: fc.double({ min: 0, max: 8, noNaN: true }),
    withNext: fc.integer({ min: 0, max: 3 }).map((one) => one === 0),
    across: fc.integer({ min: 0, max: 7 }).map((one) => one === 0),
    rows: fc.integer({ min: 0, max: 80 }).map((one) => (one > 60 ? one - 55 : 0)),
  }),
  { minLength: 1, maxLength: 40 },
);

function stripsOf(all: readonly Kind[], size: Size): Strip[] {
  const { width } = columnsOf(size);
  return all.flatMap(({ height, gap, across, rows, ...kind }, i): Strip[] => {
    // What goes over all columns belongs to nothing in one of them.
    const withNext = kind.withNext && across === (rows === 0 && all[i + 1]?.across === true);
    const flags = { gap, ...(withNext ? { withNext } : {}), ...(across ? { across } : {}) };
    const own = strip(`strip-${i}`, height, across ? roomOn(size).width : width, flags);
    if (rows === 0) return [own];
    const head = strip(`head-${i}`, 5, width, { gap });
    return [
      own,
      { ...head, withNext: true },
      ...Array.from({ length: rows }, (_, n) => strip(`row-${i}-${n}`, 6, width, { again: head })),
    ];
  });
}

const sizes = fc.constantFrom(UPRIGHT, LYING);

function everyFlow(check: (boxes: readonly Laid[], strips: readonly Strip[], size: Size) => void): void {
  fc.assert(
    fc.property(kinds, sizes, (all, size) => {
      const strips = stripsOf(all, size);
      check(laid(flow(strips, size)), strips, size);
    }),
    { numRuns: 200 },
  );
}

const idOf = (one: Strip): string => one.draw(0, 0)[0]!.attributes.id!;

describe('laying strips down pages', () => {
  it('draws every strip once, in their order, but for heads of tables', () => {
    everyFlow((boxes, strips) => {
      const heads = (id: string) => id.startsWith('head-');
      expect(boxes.map(({ id }) => id).filter((id) => !heads(id))).toEqual(strips.map(idOf).filter((id) => !heads(id)));
      expect([...new Set(boxes.map(({ id }) => id))]).toEqual(strips.map(idOf));
    });
  });

  it('lets none leave the margins nor lie on another', () => {
    everyFlow((boxes, _, size) => {
      const slack = 1e-5;
      const within = ({ x, y, width, height }: Laid) =>
        x >= MARGIN.side - slack &&
        x + width <= size.width - MARGIN.side + slack &&
        y >= MARGIN.top - slack &&
        y + height <= size.height - MARGIN.foot + slack;
      expect(boxes.filter((one) => !within(one))).toEqual([]);
      const apart = (a: Laid, b: Laid) =>
        a.page !== b.page ||
        a.x + a.width <= b.x + slack ||
        b.x + b.width <= a.x + slack ||
        a.y + a.height <= b.y + slack ||
        b.y + b.height <= a.y + slack;
      const on = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .filter((b) => !apart(a, b))
          .map((b) => `${a.id} on ${b.id}`),
      );
      expect(on).toEqual([]);
    });
  });

  it('keeps the rows of a table under a head of theirs, in every column that they reach', () => {
    everyFlow((boxes, _, size) => {
      boxes.forEach((one, i) => {
        const of = /^row-(\d+)-/.exec(one.id)?.[1];
        const before = boxes[i - 1];
        if (of === undefined || (before?.page === one.page && columnOf(before, size) === columnOf(one, size))) return;
        expect.fail(`${one.id} stands first in its column`);
      });
      // Once in every column that the rows reach, and right over them.
      const heads = boxes.filter(({ id }) => id.startsWith('head-'));
      const places = heads.map((one) => `${one.id} ${one.page} ${columnOf(one, size)}`);
      expect(places).toEqual([...new Set(places)]);
      const reached = boxes.flatMap((one) => {
        const of = /^row-(\d+)-/.exec(one.id)?.[1];
        return of === undefined ? [] : [`head-${of} ${one.page} ${columnOf(one, size)}`];
      });
      expect(places).toEqual([...new Set(reached)]);
    });
  });

  it('never leaves what belongs to the next at the foot of a column, where a column can hold both', () => {
    everyFlow((boxes, strips, size) => {
      const room = roomOn(size).height;
      strips.forEach((one, i) => {
        if (one.withNext !== true || i + 1 >= strips.length) return;
        // A chain that is higher than a column has to be parted somewhere.
        let from = i;
        while (strips[from - 1]?.withNext === true) from -= 1;
        let to = i + 1;
        while (strips[to]?.withNext === true && to + 1 < strips.length) to += 1;
        const chain = strips.slice(from, to + 1);
        if (chain.reduce((sum, { gap, height }) => sum + gap + height, 0) > room) return;
        const [a, b] = [idOf(one), idOf(strips[i + 1]!)].map((id) => boxes.find((box) => box.id === id)!);
        expect([b!.page, columnOf(b!, size)], `${a!.id}, ${b!.id}`).toEqual([a!.page, columnOf(a!, size)]);
      });
    });
  });

  it('begins a page no sooner than it has to: no page is empty, and few strips take one', () => {
    everyFlow((boxes) => {
      const pages = new Set(boxes.map(({ page }) => page));
      expect(pages.size).toBe(Math.max(...pages) + 1);
    });
    expect(flow([strip('a', 100, 50), strip('b', 100, 50)], UPRIGHT)).toHaveLength(1);
    expect(flow([], UPRIGHT)).toEqual([[]]);
  });

  it('fills one column after the other of a page on its side', () => {
    const boxes = laid(
      flow(
        Array.from({ length: 6 }, (_, i) => strip(`${i}`, 80, 100)),
        LYING,
      ),
    );
    expect(boxes.map((one) => [one.page, columnOf(one, LYING)])).toEqual([
      [0, 0],
      [0, 0],
      [0, 1],
      [0, 1],
      [1, 0],
      [1, 0],
    ]);
  });

  it('leaves the gap over a strip away at the top of a column only', () => {
    const boxes = laid(flow([strip('a', 10, 50, { gap: 7 }), strip('b', 10, 50, { gap: 7 })], UPRIGHT));
    expect(boxes.map(({ y }) => y)).toEqual([MARGIN.top, MARGIN.top + 17]);
  });

  it('comes a little closer together where that saves a page, and not otherwise', () => {
    const { height } = roomOn(UPRIGHT);
    const three = (rest: number) =>
      laid(
        flow(
          ['a', 'b', 'c'].map((id) => strip(id, (height - rest) / 3, 50, { gap: 10 })),
          UPRIGHT,
        ),
      );
    const roomsOf = (boxes: readonly Laid[]) => boxes.slice(1).map(({ y }, i) => y - boxes[i]!.y - boxes[i]!.height);
    // Two gaps of 10 mm have 20, then 15, then 13 mm.
    expect(roomsOf(three(20))).toEqual([expect.closeTo(10), expect.closeTo(10)]);
    expect(roomsOf(three(15))).toEqual([expect.closeTo(7), expect.closeTo(7)]);
    const parted = three(13);
    expect(parted.map(({ page }) => page)).toEqual([0, 0, 1]);
    expect(parted[1]!.y - parted[0]!.y - parted[0]!.height).toBeCloseTo(10);
  });

  it('never leaves the first row of a table, nor the last, often a sum, alone on a page', () => {
    const rows = table([{ head: 'edge', align: 'left' }], [['one'], ['two'], ['three'], ['in all']], 100);
    for (let fill = 215; fill < 267; fill += 0.5) {
      const [first, second] = flow([strip('fill', fill, 100), ...rows], UPRIGHT);
      if (second === undefined) continue;
      const saidOn = (page: readonly DrawnElement[]) => page.flatMap(({ text }) => (text === undefined ? [] : [text]));
      expect(saidOn(second).slice(-2), `under ${fill} mm`).toEqual(['three', 'in all']);
      expect(saidOn(first!).length, `under ${fill} mm`).not.toBe(2);
    }
  });

  it('goes on under what goes over both columns', () => {
    const strips = [
      strip('left', 20, 50),
      strip('wide', 30, roomOn(LYING).width, { across: true }),
      strip('under', 10, 50),
    ];
    const [left, wide, under] = laid(flow(strips, LYING));
    expect(wide!.y).toBeGreaterThanOrEqual(left!.y + left!.height);
    expect(under!.y).toBeGreaterThan(wide!.y + wide!.height);
    expect([wide!.page, under!.page]).toEqual([0, 0]);
  });

  it.each([UPRIGHT, LYING])('refuses a strip higher than the page', (size) => {
    const { height } = roomOn(size);
    expect(flow([strip('a', height, 50)], size)).toHaveLength(1);
    expect(() => flow([strip('a', height + 0.01, 50)], size)).toThrow(RangeError);
    expect(() => flow([strip('b', 5, 50), strip('a', height + 0.01, 50, { across: true })], size)).toThrow(RangeError);
  });
});

describe('a heading', () => {
  const { width } = columnsOf(UPRIGHT);

  it('never ends a page, however far down it comes', () => {
    const rows = table([{ head: 'edge', align: 'left' }], [['one'], ['two'], ['three']], width);
    const bodies = { rows, words: paragraph('Pick up and knit along the edge from the right. '.repeat(8), width) };
    for (const body of Object.values(bodies)) {
      for (let fill = 200; fill < 267; fill += 0.5) {
        const pages = flow([strip('fill', fill, width), ...heading('Edge by edge', width), ...body], UPRIGHT);
        const last = pages[0]!.filter(({ name }) => name === 'text').at(-1);
        expect(last?.text, `under ${fill} mm`).not.toBe('Edge by edge');
        expect(pages.flat().filter(({ text }) => text === 'Edge by edge')).toHaveLength(1);
      }
    }
  });
});

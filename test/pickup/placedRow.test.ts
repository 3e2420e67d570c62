import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnOf, countOut, firstRow, PlanError, placedRow, ribOf, type Rib, type RowGroup } from '../../src/pickup';

/** A row stitch by stitch, worked out group by group: `.` plain, `i` and `I` increase, `d` and `D` decrease; large ones purled. */
function spelled(groups: readonly RowGroup[]): string {
  const signs = { plain: '.', increase: 'i', decrease: 'd' };
  return groups
    .map(({ times, works }) =>
      works
        .map(({ work, count, as }) => (as === 'purl' ? signs[work].toUpperCase() : signs[work]).repeat(count))
        .join('')
        .repeat(times),
    )
    .join('');
}

/** How many stitches were worked off the left needle before each change. */
function placesIn(row: string): number[] {
  let used = 0;
  return Array.from(row).flatMap((sign) => {
    const before = used;
    used += sign === '.' ? 1 : sign.toLowerCase() === 'd' ? 2 : 0;
    return sign === '.' ? [] : [before];
  });
}

const none = { marks: [], clear: false, rib: null, parts: null };
const K2P2: Rib = { knit: 2, purl: 2 };
const ribs = fc.constantFrom<Rib>({ knit: 1, purl: 1 }, { knit: 2, purl: 1 }, K2P2, { knit: 3, purl: 3 });

const rows = fc.integer({ min: 20, max: 240 }).chain((from) =>
  fc.record({
    from: fc.constant(from),
    to: fc.integer({ min: Math.ceil(from * 0.7), max: Math.floor(from * 1.3) }),
    joined: fc.boolean(),
    marks: fc.uniqueArray(fc.integer({ min: 1, max: from - 1 }), { maxLength: 8 }),
    clear: fc.boolean(),
    rib: fc.option(ribs),
  }),
);

describe('a first row that is placed', () => {
  it('uses all stitches and leaves the target, whatever is wished', () => {
    fc.assert(
      fc.property(rows, ({ from, to, joined, ...wish }) => {
        const row = placedRow(from, to, joined, { ...wish, parts: null });
        fc.pre(from !== to);
        expect(countOut(row.groups)).toEqual({ uses: from, leaves: to });
        expect(spelled(row.groups)).toHaveLength(to);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps clear of markers and seams where it says so: no increase at one, no decrease across one', () => {
    let kept = 0;
    fc.assert(
      fc.property(rows, ({ from, to, joined, ...wish }) => {
        const row = placedRow(from, to, joined, { ...wish, clear: true, parts: null });
        if (!row.keptClear) return;
        kept += 1;
        for (const before of placesIn(spelled(row.groups))) {
          expect(wish.marks).not.toContain(to > from ? before : before + 1);
        }
      }),
      { numRuns: 300 },
    );
    expect(kept).toBeGreaterThan(150);
  });

  it('keeps the rib where it says so: increases become purl columns, and every change is worked as its column', () => {
    let kept = 0;
    fc.assert(
      fc.property(rows, ribs, ({ from, to, joined, marks, clear }, rib) => {
        const row = placedRow(from, to, joined, { marks, clear, rib, parts: null });
        if (!row.keptRib || from === to) return;
        kept += 1;
        Array.from(spelled(row.groups)).forEach((sign, i) => {
          if (sign === '.') return;
          const column = columnOf(rib, joined ? i : to - 1 - i, to, joined);
          if (to > from) expect(column).toBe('purl');
          // Flat, the first row is a wrong-side row: what is purled there shows as a knit stitch on the right side.
          const purled = sign !== sign.toLowerCase();
          expect(purled).toBe(joined ? column === 'purl' : column === 'knit');
        });
      }),
      { numRuns: 300 },
    );
    expect(kept).toBeGreaterThan(200);
  });

  it('moves as little as can be: the least sum of squares, found by trying everything on small rows', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 16 }),
        fc.integer({ min: 1, max: 3 }),
        fc.uniqueArray(fc.integer({ min: 1, max: 15 }), { maxLength: 4 }),
        fc.boolean(),
        (from, more, marks, joined) => {
          const even = placesIn(spelled(firstRow(from, from + more, joined).groups));
          const free = Array.from({ length: from }, (_, i) => i + 1).filter(
            (place) => !marks.includes(place) && !(joined && place === from),
          );
          const least = Math.min(...choices(free, more).map((places) => squares(places, even)));
          const row = placedRow(from, from + more, joined, { marks, clear: true, rib: null, parts: null });
          expect(row.keptClear).toBe(true);
          expect(squares(placesIn(spelled(row.groups)), even)).toBe(least);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('stays as it is spaced evenly where nothing stands in its way', () => {
    fc.assert(
      fc.property(rows, ({ from, to, joined }) => {
        const even = placesIn(spelled(firstRow(from, to, joined).groups));
        expect(placesIn(spelled(placedRow(from, to, joined, none).groups))).toEqual(even);
      }),
      { numRuns: 100 },
    );
  });

  it('lets go of what there is no room for, and says so', () => {
    const marks = Array.from({ length: 19 }, (_, i) => i + 1);
    const row = placedRow(20, 24, false, { marks, clear: true, rib: null, parts: null });
    expect(row.keptClear).toBe(false);
    expect(countOut(row.groups)).toEqual({ uses: 20, leaves: 24 });
    // Every stitch increased: there are not purl columns enough for all of them.
    expect(placedRow(20, 40, true, { marks: [], clear: false, rib: K2P2, parts: null }).keptRib).toBe(false);
  });

  it('puts every section right by itself', () => {
    const parts = [
      { from: 14, to: 15 },
      { from: 14, to: 14 },
      { from: 14, to: 15 },
    ];
    const row = placedRow(42, 44, true, { marks: [14, 28], clear: true, rib: null, parts });
    expect(row.parts.map(({ from, to }) => [from, to])).toEqual([
      [14, 15],
      [14, 14],
      [14, 15],
    ]);
    expect(countOut(row.parts[0]!.groups)).toEqual({ uses: 14, leaves: 15 });
    expect(row.parts[1]!.groups).toEqual([]);
    expect(countOut(row.groups)).toEqual({ uses: 42, leaves: 44 });
    expect(placesIn(spelled(row.groups))).toEqual([7, 35]);
  });

  it('puts sections right that change in both directions', () => {
    const parts = [
      { from: 10, to: 11 },
      { from: 12, to: 11 },
    ];
    const row = placedRow(22, 22, false, { marks: [10], clear: true, rib: null, parts });
    expect(row.parts.map(({ groups }) => countOut(groups))).toEqual([
      { uses: 10, leaves: 11 },
      { uses: 12, leaves: 11 },
    ]);
    const three = placedRow(32, 32, false, {
      marks: [10, 20],
      clear: true,
      rib: null,
      parts: [parts[0]!, { from: 10, to: 10 }, parts[1]!],
    });
    expect(countOut(three.groups)).toEqual({ uses: 32, leaves: 32 });
    expect(placedRow(20, 20, false, { ...none, parts: [{ from: 20, to: 20 }] }).groups).toEqual([]);
  });

  it('refuses what no row can do', () => {
    expect(() => placedRow(10, 21, true, none)).toThrow(PlanError);
    expect(() => placedRow(10, 4, true, none)).toThrow(PlanError);
  });
});

function squares(places: readonly number[], even: readonly number[]): number {
  return places.reduce((sum, place, i) => sum + (place - even[i]!) ** 2, 0);
}

/** Every way to choose `count` of these, in order. */
function choices(from: readonly number[], count: number): number[][] {
  if (count === 0) return [[]];
  return from.flatMap((one, i) => choices(from.slice(i + 1), count - 1).map((rest) => [one, ...rest]));
}

describe('the columns of a rib', () => {
  const spelledOut = (rib: Rib, count: number, joined: boolean) =>
    Array.from({ length: count }, (_, i) => columnOf(rib, i, count, joined)[0]).join('');

  // Multiples in the round and flat with matching ends: 2n and 2n+1, 4n and 4n+2, 3n and 3n+2; or 4n with a selvage
  // stitch at each end (common practice).
  it('begin with knit columns in the round, and match at both ends flat', () => {
    expect(spelledOut(K2P2, 8, true)).toBe('kkppkkpp');
    expect(spelledOut(K2P2, 10, false)).toBe('kkppkkppkk');
    expect(spelledOut({ knit: 1, purl: 1 }, 5, false)).toBe('kpkpk');
    expect(spelledOut({ knit: 2, purl: 1 }, 8, false)).toBe('kkpkkpkk');
    expect(spelledOut(K2P2, 12, false)).toBe('kkkppkkppkkk');
  });

  it('are known for the multiples that stand for one rib, in rib alone', () => {
    expect(ribOf({ fabric: 'rib', multiple: 4 })).toEqual(K2P2);
    expect(ribOf({ fabric: 'rib', multiple: 2 })).toEqual({ knit: 1, purl: 1 });
    expect(ribOf({ fabric: 'garter', multiple: 4 })).toBeNull();
    expect(ribOf({ fabric: 'rib', multiple: 5 })).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closingRow, countOut, firstRow, PlanError, type RowGroup } from '../../src/pickup';

const changes = fc
  .integer({ min: 1, max: 300 })
  .chain((from) => fc.tuple(fc.constant(from), fc.integer({ min: Math.ceil(from / 2), max: 2 * from }), fc.boolean()));

/** A row stitch by stitch, worked out group by group: p plain, i increase, d decrease. */
function spelled(groups: readonly RowGroup[]): string {
  const sign = { plain: 'p', increase: 'i', decrease: 'd' };
  return groups
    .map(({ times, works }) =>
      works
        .map(({ work, count }) => sign[work].repeat(count))
        .join('')
        .repeat(times),
    )
    .join('');
}

describe('firstRow', () => {
  it('changes nothing where nothing is wrong', () => {
    expect(firstRow(108, 108, true)).toEqual({ from: 108, to: 108, joined: true, groups: [] });
  });

  it('uses all stitches and leaves as many as it says, counted out by its own words', () => {
    fc.assert(
      fc.property(changes, ([from, to, joined]) => {
        fc.pre(from !== to);
        const { groups } = firstRow(from, to, joined);
        expect(countOut(groups)).toEqual({ uses: from, leaves: to });
        // Counted again, stitch by stitch.
        const row = spelled(groups);
        const times = (sign: string) => row.split(sign).length - 1;
        expect(times('p') + 2 * times('d')).toBe(from);
        expect(row).toHaveLength(to);
      }),
      { numRuns: 300 },
    );
  });

  it('has gaps that differ by one at most, the two ends of a flat row together making one', () => {
    fc.assert(
      fc.property(changes, ([from, to, joined]) => {
        fc.pre(from !== to);
        const pieces = spelled(firstRow(from, to, joined).groups)
          .split(/[id]/)
          .map((gap) => gap.length);
        const [first, last] = [pieces[0]!, pieces.at(-1)!];
        const gaps = [...pieces.slice(1, -1), first + last];
        expect(gaps).toHaveLength(Math.abs(to - from));
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
        if (joined) expect(last).toBe(0);
        else expect(Math.abs(first - last)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 300 },
    );
  });

  it('can be kept in the head: few groups, however many changes', () => {
    fc.assert(
      fc.property(changes, ([from, to, joined]) => {
        expect(firstRow(from, to, joined).groups.length).toBeLessThanOrEqual(6);
      }),
    );
  });

  it('refuses more increases than stitches, and fewer than two stitches to a decrease', () => {
    const problem = (from: number, to: number) => {
      try {
        return firstRow(from, to, false).groups.length;
      } catch (error) {
        return error instanceof PlanError ? error.problem : error;
      }
    };
    expect(problem(10, 21)).toEqual({ kind: 'too-many-increases', from: 10, to: 21 });
    expect(problem(10, 4)).toEqual({ kind: 'too-many-decreases', from: 10, to: 4 });
    expect(problem(10, 20)).toBeGreaterThan(0);
    expect(problem(10, 5)).toBeGreaterThan(0);
  });
});

describe('closingRow', () => {
  it('works each hole with the stitch before it', () => {
    const row = closingRow(10, [3, 7], false);
    expect(spelled(row!.groups)).toBe('pdppdppp');
    expect(row).toMatchObject({ from: 10, to: 8 });
  });

  it('takes the stitch after a hole that comes first', () => {
    expect(spelled(closingRow(4, [1], false)!.groups)).toBe('dpp');
  });

  it('is none without holes, or where holes crowd out the stitches between them', () => {
    expect(closingRow(5, [], false)).toBe(null);
    expect(closingRow(5, [2, 3, 4], false)).toBe(null);
    expect(closingRow(1, [1], false)).toBe(null);
  });

  it('counts out wherever there is one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { maxLength: 12 }),
        (from, list) => {
          const holes = list.filter((hole) => hole <= from).sort((a, b) => a - b);
          const row = closingRow(from, holes, true);
          if (row) expect(countOut(row.groups)).toEqual({ uses: from, leaves: from - holes.length });
          else expect(holes.every((hole, i) => hole - (holes[i - 1] ?? 0) > 1) && holes.length > 0).toBe(false);
        },
      ),
    );
  });
});

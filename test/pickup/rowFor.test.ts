import { describe, expect, it } from 'vitest';
import { columnOf, countOut } from '../../src/pickup';
import { along, plan, rate, rectangle, type Raw } from './builders';

/** Twenty from each of two sides and thirty along the top, and a target above them. */
function made(firstRow: Raw | undefined, fields: Raw = {}) {
  const rates = ['right', 'left'].map((edge) => rate(edge, { kind: 'count', count: 20 }));
  return plan(rectangle(30, 28), along(['right', 'top', 'left'], { rates, target: 76, firstRow, ...fields }));
}

const clear = { clear: true };
const corners = { sections: { by: 'landmarks', parts: 2 } };

/** How many stitches lie before each change of the row, in the order it is worked. */
function places(groups: ReturnType<typeof made>['firstRow']['groups']): number[] {
  let used = 0;
  return groups.flatMap(({ times, works }) =>
    Array.from({ length: times }, () => works).flatMap((row) =>
      row.flatMap(({ work, count }) => {
        const before = used;
        used += work === 'plain' ? count : work === 'decrease' ? 2 * count : 0;
        return work === 'plain' ? [] : [before];
      }),
    ),
  );
}

describe('the first row of a plan', () => {
  it('is spaced evenly where nothing is asked of it', () => {
    expect(made(undefined).firstRow).toEqual({ ...made({}).firstRow, groups: made(undefined).firstRow.groups });
    expect(places(made({}).firstRow.groups)).toEqual(places(made(undefined).firstRow.groups));
  });

  it('keeps clear of the markers, counted from the end where it is worked back, flat', () => {
    const { firstRow, sections, picked } = made(clear, corners);
    const running = sections.slice(0, -1).map((section) => section.running);
    expect(running).toContain(20);
    for (const before of places(firstRow.groups)) expect(running).not.toContain(picked - before);
    expect(countOut(firstRow.groups)).toEqual({ uses: 70, leaves: 76 });
  });

  it('keeps clear of the markers of a round, and of its beginning', () => {
    const { firstRow, sections, picked } = made(clear, { ...corners, joined: true });
    const running = sections.map((section) => section.running);
    for (const before of places(firstRow.groups)) expect([0, picked, ...running]).not.toContain(before);
  });

  it('keeps clear of seams between pieces, markers or none', () => {
    const other = rectangle(30, 28, {}, { id: 'other' });
    const stretches = [{ edge: 'top' }, { piece: 'other', edge: 'top' }];
    const even = plan([rectangle(30, 28), other], along(stretches, { target: 61, joined: true }));
    // Two of thirty: one increase of a round would stand after all sixty, at its beginning.
    expect(places(even.firstRow.groups)).toEqual([60]);
    const moved = plan([rectangle(30, 28), other], along(stretches, { target: 61, joined: true, firstRow: clear }));
    expect(places(moved.firstRow.groups)).toEqual([59]);
    const three = plan([rectangle(30, 28), other], along(stretches, { target: 64, joined: true, firstRow: clear }));
    expect(places(three.firstRow.groups)).not.toContain(30);
    expect(places(three.firstRow.groups)).not.toContain(60);
  });

  it('goes section by section, from the end where it is worked back, each as its section says', () => {
    const { firstRow, sections, notes } = made({ by: 'sections' }, { sections: { by: 'length', parts: 4 } });
    expect(firstRow.parts!.map(({ section }) => section)).toEqual([4, 3, 2, 1]);
    for (const { section, from, to, groups } of firstRow.parts!) {
      expect([from, to]).toEqual([sections[section - 1]!.count, sections[section - 1]!.after]);
      if (from !== to) expect(countOut(groups)).toEqual({ uses: from, leaves: to });
    }
    expect(countOut(firstRow.groups)).toEqual({ uses: 70, leaves: 76 });
    expect(notes.map(({ kind }) => kind)).not.toContain('row-not-clear');
  });

  it('keeps the rib of the band: in the round every increase becomes a purl column', () => {
    const { firstRow } = made({ rib: true }, { joined: true, band: { fabric: 'rib', multiple: 4 } });
    let left = 0;
    for (const { times, works } of firstRow.groups) {
      for (let i = 0; i < times; i++) {
        for (const { work, count, as } of works) {
          if (work === 'increase') {
            expect(columnOf({ knit: 2, purl: 2 }, left, 76, true)).toBe('purl');
            expect(as).toBe('purl');
          }
          left += count;
        }
      }
    }
    expect(left).toBe(76);
  });

  it('says what it could not keep', () => {
    const kinds = (plan: ReturnType<typeof made>) => plan.notes.map(({ kind }) => kind);
    expect(made({ rib: true }).notes).toContainEqual({ kind: 'row-not-in-rib', why: 'no-rib' });
    const all = { target: 140, joined: true, band: { fabric: 'rib', multiple: 4 } };
    expect(made({ rib: true }, all).notes).toContainEqual({ kind: 'row-not-in-rib', why: 'no-room' });
    expect(kinds(made(clear, { target: 140, joined: true }))).toContain('row-not-clear');
    expect(kinds(made({ clear: true, rib: true }, { target: 70 }))).not.toContain('row-not-in-rib');
  });
});

import { describe, expect, it } from 'vitest';
import { columnOf, countOut, replan, replanned, type RowGroup } from '../../src/pickup';
import { along, plan, rate, rectangle, type Raw } from './builders';

/** Forty along two pieces each and a target above them, so that the first row has something to put right. */
function made(fields: Raw) {
  const pieces = [rectangle(40, 28), rectangle(40, 28, {}, { id: 'other' })];
  const stretches = [{ edge: 'top' }, { piece: 'other', edge: 'top' }];
  return plan(pieces, along(stretches, { target: 88, sections: { by: 'length', parts: 4 }, joined: true, ...fields }));
}

/** How many stitches lie before each change of a row, in the order it is worked. */
function places(groups: readonly RowGroup[]): number[] {
  let used = 0;
  return groups
    .flatMap(({ times, works }) => Array.from({ length: times }, () => works).flat())
    .flatMap(({ work, count }) => {
      const before = used;
      used += work === 'plain' ? count : work === 'decrease' ? 2 * count : 0;
      return work === 'plain' ? [] : [before];
    });
}

const COUNTS = [3, 17, 19, 20, 21, 24, 38];

describe('the first row of a rest planned again', () => {
  it('keeps clear of the markers where they now stand, of the seam, and of the beginning of the round', () => {
    for (const onNeedle of COUNTS) {
      for (const way of ['next', 'rest'] as const) {
        const plan = made({ firstRow: { clear: true } });
        const again = replan(plan, 1, onNeedle, way);
        const now = replanned(plan, again);
        const marks = [0, ...now.sections.map(({ running }) => running)];
        expect(countOut(again.firstRow.groups)).toEqual({ uses: again.picked, leaves: 88 });
        expect(again.notes).toEqual([]);
        for (const before of places(again.firstRow.groups)) expect(marks).not.toContain(before);
        // Half of each piece lies behind the second marker, which stands at the seam.
        expect(now.edges[0]!.numbers?.at(-1) ?? now.edges[0]!.count).toBe(now.sections[1]!.running);
      }
    }
  });

  it('keeps the rib, or says that it cannot', () => {
    const band = { fabric: 'rib', multiple: 4 };
    const plan = made({ band, firstRow: { rib: true } });
    const again = replan(plan, 2, 37, 'next');
    const works = again.firstRow.groups.flatMap((group) => group.works);
    expect(works.filter(({ work }) => work === 'increase').every(({ as }) => as === 'purl')).toBe(true);
    places(again.firstRow.groups).forEach((before, j) =>
      expect(columnOf({ knit: 2, purl: 2 }, before + j, 88, true)).toBe('purl'),
    );
    expect(again.notes).toEqual([]);
    const short = replan(plan, 3, 25, 'next');
    expect(short.picked).toBeLessThan(88);
    expect(short.notes).toEqual([{ kind: 'row-not-in-rib', why: 'no-room' }]);
    expect(replanned(plan, short).notes).toContainEqual({ kind: 'row-not-in-rib', why: 'no-room' });
  });

  it('puts every section right by itself, all of them one way', () => {
    const plan = made({ firstRow: { by: 'sections' } });
    for (const onNeedle of COUNTS) {
      const again = replan(plan, 1, onNeedle, 'next');
      const { sections } = replanned(plan, again);
      expect(sections.reduce((sum, { count }) => sum + count, 0)).toBe(again.picked);
      expect(sections.reduce((sum, { after }) => sum + after, 0)).toBe(88);
      const parts = again.firstRow.parts;
      if (!parts) {
        expect(again.notes).toEqual([{ kind: 'row-not-by-sections' }]);
        expect(onNeedle).toBeLessThan(11);
        continue;
      }
      expect(parts.map(({ from, to }) => [from, to])).toEqual(sections.map(({ count, after }) => [count, after]));
      for (const { from, to } of parts) expect(Math.sign(to - from)).toBeGreaterThanOrEqual(0);
      for (const { from, to, groups } of parts) {
        if (groups.length > 0) expect(countOut(groups)).toEqual({ uses: from, leaves: to });
      }
    }
  });

  it('is the row of the plan itself where all is as planned, the holes at the steps among it', () => {
    const asked = made({ firstRow: { clear: true, by: 'sections' } });
    const marker = asked.sections[1]!;
    expect(replan(asked, 2, marker.running, 'rest').firstRow).toEqual(asked.firstRow);
    const steps = [{ stitches: -6, every: 2, times: 2 }];
    const stepped = [
      { id: 'bottom', from: [0, 0], path: 'straight' },
      { id: 'right', from: [30, 0], path: 'straight' },
      { id: 'steps', from: [30, 20], path: 'stepped', steps },
      { id: 'top', from: [18, 24], path: 'straight' },
      { id: 'left', from: [0, 24], path: 'straight' },
    ];
    const holed = plan(
      rectangle(30, 28, {}, { outline: stepped }),
      along(['steps'], { stepHoles: true, rates: [rate('steps', { kind: 'count', count: 12 })] }),
    );
    expect(holed.picked).toBeGreaterThan(holed.target);
    expect(replan(holed, 0, 0, 'rest').firstRow).toEqual(holed.firstRow);
  });
});

import { describe, expect, it } from 'vitest';
import { comparePlans, planDesign } from '../../src/pickup';
import { alsoMovedText, changeRows, edgeNames, grownText, notLengthenedText } from '../../src/text';
import { along, design, rectangle } from '../pickup/builders';

const whole = (rows: number, fields = {}) =>
  design(rectangle(40, rows, {}, { name: 'Front' }), along(['right', 'top'], { id: 'band', ...fields }));
const changed = (fields = {}) => comparePlans(planDesign(whole(112, fields)), planDesign(whole(126, fields)));
const names = edgeNames(whole(112));
const ROW = 100 / 28;

describe('how much longer an edge is', () => {
  it('is said in rows and in length, and how the one came from the other', () => {
    expect(grownText({ rows: 14, exactRows: 14 }, ROW, 'cm')).toBe('14 rows more, 5.0 cm.');
    expect(grownText({ rows: -1, exactRows: -1 }, null, 'cm')).toBe('1 row fewer.');
    expect(grownText({ rows: 15, exactRows: 14.56 }, ROW, 'cm')).toBe('5.2 cm is 14.6 rows, so 15 rows more, 5.4 cm.');
    expect(grownText({ rows: -15, exactRows: -14.56 }, ROW, 'in')).toBe('2 in is 14.6 rows, so 15 rows fewer, 2⅛ in.');
  });

  it('has the other edges that change with it', () => {
    expect(alsoMovedText(changed().moved.slice(1), names, 'cm')).toBe('With it change: Front, left, 112 to 126 rows.');
    expect(alsoMovedText([], names, 'cm')).toBe('No other edge changes.');
    const slope = {
      edge: { piece: 'piece', edge: 'top' },
      rows: { before: 4, after: 4 },
      stitches: { before: 10, after: 12 },
      lengthMm: { before: 52, after: 62 },
    };
    expect(alsoMovedText([slope], names, 'cm')).toBe('With it change: Front, top, 5.2 cm to 6.2 cm.');
  });

  it('can be refused for a reason', () => {
    const said = (['no-edge', 'no-rows', 'no-gauge', 'no-row'] as const).map((why) =>
      notLengthenedText({ why }, { gauge: 'tension' }),
    );
    expect(new Set(said).size).toBe(4);
    expect(said[2]).toContain('no tension');
    expect(notLengthenedText({ why: 'too-short', most: 17 }, { gauge: 'gauge' })).toContain('At most 17 rows');
  });
});

describe('the counts before and after', () => {
  it('are those of the edges, of the pattern, in all, and what follows', () => {
    const fields = {
      stated: [{ piece: 'piece', edge: 'right', count: 84 }],
      statedTotal: 126,
      target: null,
      sections: { parts: 4 },
      buttonholes: { holes: 3 },
    };
    expect(changeRows(changed(fields).pickups[0]!, names)).toEqual([
      { label: 'Front, right', before: '80 on 112 rows (80.0 wanted)', after: '90 on 126 rows (90.0 wanted)' },
      { label: 'Front, right, by the pattern', before: '84', after: '94.5, so 94 or 95' },
      { label: 'In all', before: '120', after: '130' },
      { label: 'In all, by the pattern', before: '126', after: '136.5, so 136 or 137' },
      { label: 'Sections', before: '4 of 30', after: '2 of 33 and 2 of 32' },
      {
        label: 'Buttonholes',
        before: '3, 54 stitches between the holes',
        after: '3, 59 stitches between the holes',
      },
    ]);
  });

  it('leave out what stays', () => {
    expect(changeRows(changed().pickups[0]!, names).map(({ label }) => label)).toEqual(['Front, right', 'In all']);
  });

  it('have the first row where it corrects the count', () => {
    const half = { piece: 'piece', edge: 'right', rate: { kind: 'ratio', pick: 1, of: 2 } };
    const [band] = changed({ target: 120, rates: [half, { ...half, edge: 'top', rate: { kind: 'each' } }] }).pickups;
    const last = changeRows(band!, names).at(-1)!;
    expect(last.label).toBe('First row');
    expect([last.before, last.after].map((text) => text.split(':')[0])).toEqual(['96 to 120', '103 to 120']);
  });
});

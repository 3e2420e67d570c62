import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Buttonholes } from '../../src/piece';
import { buttonholeRow, buttonholesText, gapsText, instructions, TERMS, voiceOf } from '../../src/text';
import { along, design, plan, rectangle } from '../pickup/builders';
import { countOutHoles } from './buttonholeReader';

const planned = (buttonholes: Partial<Buttonholes>, fields = {}) =>
  plan(rectangle(20, 112), along(['right'], { buttonholes, target: 108, ...fields }));

describe('a row of buttonholes', () => {
  it('is written with its repeats in brackets', () => {
    const made = planned({ holes: 6, stitches: 2, from: 4, to: 3 }, { target: 104 });
    expect(buttonholeRow(made.holes!)).toBe('work 4, buttonhole over 2, (work 17, buttonhole) 5 times, work 3');
    expect(buttonholeRow(planned({ holes: 1, stitches: 2, from: 4, to: 3 }).holes!)).toBe(
      'work 4, buttonhole over 2, work 102',
    );
  });

  it('counted out by its own words is the band, with the holes where the plan has them', () => {
    fc.assert(
      fc.property(
        fc.record({
          holes: fc.integer({ min: 1, max: 12 }),
          stitches: fc.integer({ min: 1, max: 4 }),
          from: fc.integer({ min: 1, max: 8 }),
          to: fc.integer({ min: 1, max: 8 }),
        }),
        (wish) => {
          const row = planned(wish).holes!;
          expect(countOutHoles(buttonholeRow(row))).toEqual({
            total: 108,
            firsts: row.holes.map(({ first }) => first),
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  it('says how far apart they are', () => {
    expect(gapsText({ gaps: [17, 17] })).toBe('17 stitches between the holes');
    expect(gapsText({ gaps: [11, 10] })).toBe('10 or 11 stitches between the holes');
    expect(gapsText({ gaps: [] })).toBe('');
  });
});

describe('the paragraph on buttonholes', () => {
  it('says in a rib where the holes lie, and how a small one is made there', () => {
    const us = { terms: TERMS.US, form: 'long' } as const;
    const said = (multiple: number, plus: number) => {
      const wish = { holes: 5, stitches: 2, from: 3, to: 3, rib: true };
      const made = planned(wish, { target: 110, band: { fabric: 'rib', multiple, plus } });
      const text = buttonholesText(made, us);
      const row = /: (work .*) \(110 in all\)/.exec(text)![1]!;
      expect(countOutHoles(row)).toEqual({ total: 110, firsts: made.holes!.holes.map(({ first }) => first) });
      return text;
    };
    expect(said(4, 2)).toMatch(
      /near the middle of the band, each with its middle in a purl column of the rib: .* or work yo, p2tog\. /,
    );
    expect(said(2, 0)).toContain('or work a yo where its purl was and decrease with the knit stitch on top');
  });

  it('has the row, its proof, how a hole is made and where its button goes', () => {
    const made = planned({ holes: 3, stitches: 2, from: 4, to: 4 });
    const us = { terms: TERMS.US, form: 'long' } as const;
    expect(buttonholesText(made, us)).toBe(
      '3 buttonholes, on a right-side row near the middle of the band: work 4, buttonhole over 2, (work 47, ' +
        'buttonhole) twice, work 4 (108 in all). For each buttonhole bind off 2 and cast on 2 over the gap on the next ' +
        'row, or work yo, k2tog. Mark the middle of each for its button: after 5, 54 and 103 stitches.',
    );
    const uk = buttonholesText(made, { ...us, terms: TERMS.UK });
    expect(uk).toContain('cast off 2 and cast on 2');
    expect(uk).toContain('yfwd, k2tog');
  });

  it('names the stitch where a hole has a middle one', () => {
    const made = planned({ holes: 3, stitches: 3, from: 4, to: 4 });
    expect(buttonholesText(made, { terms: TERMS.US, form: 'short' })).toBe(
      'Buttonholes: 4, hole over 3, 46, hole, 45, hole, 4. Markers in stitches 6, 55 and 103.',
    );
  });

  it('stands in the instructions, after the first row and before the band', () => {
    const whole = design(rectangle(20, 112), along(['right'], { band: { rows: 8 } }));
    const made = planned({ holes: 3 }, { band: { rows: 8 } });
    const work = (form: 'long' | 'short') =>
      instructions(made, voiceOf(whole, { form })).filter((one) => !one.startsWith('Abbreviations'));
    const text = work('long');
    expect(text.at(-2)).toMatch(/^3 buttonholes, /);
    expect(text.at(-1)).toMatch(/^Work 8 rows/);
    expect(work('short').at(-1)).toMatch(/^Buttonholes: 3, hole over 2/);
    const plain = plan(rectangle(20, 112), along(['right']));
    expect(instructions(plain, voiceOf(whole)).join()).not.toMatch(/buttonhole/i);
  });
});

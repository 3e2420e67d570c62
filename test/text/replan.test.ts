import { describe, expect, test } from 'vitest';
import { replan } from '../../src/pickup';
import { replanText, TERMS } from '../../src/text';
import { along, plan, rectangle } from '../pickup/builders';
import { countFirstRow } from './firstRowReader';
import { readRhythm } from './rhythmReader';

const voice = { terms: TERMS.US, form: 'long' } as const;
const made = plan(rectangle(30, 88), along(['right'], { target: 71, sections: { parts: 4 } }));

describe('replanText', () => {
  test('says how far off the needle is and the new rhythm of the next section', () => {
    const again = replan(made, 2, 34, 'next');
    const [head, ...rest] = replanText(made, again, voice);
    expect(head).toBe('At marker 2 you have 34 where 36 are planned: 2 too few.');
    expect(rest).toHaveLength(again.sections.length + 1);
    again.sections.forEach((section, i) => {
      const [, n, count, running, rhythm] =
        /^Section (\d+), (\d+) stitch(?:es)? to make (\d+)\. Piece, right: (.*)\.$/.exec(rest[i]!)!;
      expect([n, count, running].map(Number)).toEqual([section.n, section.count, section.running]);
      expect(readRhythm(rhythm!).filter(Boolean)).toHaveLength(section.count);
    });
    expect(rest.at(-1)).toBe('That makes 71 in all, and the first row changes nothing.');
  });

  test('leaves to the first row what the openings cannot take', () => {
    const again = replan(made, 3, 45, 'next');
    const end = replanText(made, again, voice).at(-1)!;
    const [, picked, words] = /^That makes (\d+) in all\. First row: (.*) \(uses \d+ stitches, leaves 71\)\.$/.exec(
      end,
    )!;
    expect(countFirstRow(words!)).toEqual({ uses: Number(picked), leaves: 71 });
  });

  test('says how the first row is placed, and what of that it cannot keep', () => {
    const band = { fabric: 'rib', multiple: 2 };
    const told = (firstRow: object, onNeedle: number) => {
      const asked = plan(rectangle(40, 28), along(['top'], { target: 44, sections: { parts: 4 }, band, firstRow }));
      return replanText(asked, replan(asked, 1, onNeedle, 'next'), voice).slice(4);
    };
    expect(told({ rib: true }, 9)).toEqual([
      expect.stringMatching(/^That makes 39 in all\. First row, in the rib: rib \d+, m1k?, /),
    ]);
    const [row, why] = told({ by: 'sections' }, 3);
    expect(row).toMatch(/^That makes 33 in all\. First row, spaced evenly: /);
    expect(why).toMatch(/^A section has too few stitches to be put right by itself/);
  });

  test('says that all is as planned, and too many', () => {
    expect(replanText(made, replan(made, 1, 18, 'rest'), voice)[0]).toBe('At marker 1 you have 18, as planned.');
    expect(replanText(made, replan(made, 1, 19, 'rest'), voice)[0]).toContain('1 too many.');
  });
});

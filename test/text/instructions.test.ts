import { describe, expect, test } from 'vitest';
import { planDesign } from '../../src/pickup';
import { edgeLine, instructions, TERMS, voiceOf, type Voice } from '../../src/text';
import { along, design, plan, rectangle } from '../pickup/builders';
import { planSample, SAMPLES } from '../samples/sample';
import { countFirstRow } from './firstRowReader';
import { readRhythm } from './rhythmReader';

const long: Voice = { terms: TERMS.US, units: 'cm', hand: 'right', form: 'long' };
const short: Voice = { ...long, form: 'short' };

/** The openings that an edge's line describes, in either form. */
function described(line: string, openings: number): boolean[] {
  const every = /: (?:pick up and knit (\d+), one from every|knit the (\d+) )/.exec(line);
  if (every) return Array.from({ length: Number(every[1] ?? every[2]) }, () => true);
  const none = line.includes(': nothing from');
  if (none) return Array.from({ length: openings }, () => false);
  return readRhythm(/: [^:]*: (.*)\.$/.exec(line)![1]!);
}

describe('instructions', () => {
  test('tell a border from the first stitch to the last row', () => {
    const band = { gauge: { stitches: 21, rows: 28 }, fabric: 'rib', multiple: 4, plus: 2, rows: 10 };
    const made = plan(rectangle(30, 42), along(['right'], { name: 'Front band', band, sections: { parts: 2 } }));
    expect(instructions(made, long)).toEqual([
      "Front band. With the right side facing and a needle that gives the band's gauge (21 stitches and 28 rows to 10 cm), beginning at the bottom of Piece, right, pick up and knit 30 stitches along Piece, right, working from right to left. Work the band flat, in rows.",
      'Where the needle goes. Rows: between the selvage stitch and the one beside it, a whole stitch in.',
      'Piece, right: pick up and knit 30 from 42 rows: pick up 2, skip 1; pick up 3, skip 1; pick up 2, skip 1, twice; pick up 3, skip 1; pick up 2, skip 1, 3 times; pick up 3, skip 1; pick up 2, skip 1, twice; pick up 3, skip 1; then pick up 2.',
      '30 stitches in all: 7 × 4 + 2, a multiple of 4 plus 2.',
      'Place a marker after 15 stitches: 2 sections of 15 each.',
      "First row: the count is right, so work all 30 stitches in the band's pattern.",
      'Work 10 rows of rib on 30 stitches, then bind off.',
    ]);
  });

  test('say in brief what they say at length', () => {
    const made = plan(rectangle(30, 28), along(['right', 'top'], { name: 'Edging', target: 60, joined: true }));
    expect(instructions(made, short)).toEqual([
      'Edging, in the round: pu&k 58 stitches.',
      'Piece, right: 28 from 28 rows: all 28.',
      'Piece, top: 30 from 30 bound-off stitches: all 30.',
      expect.stringMatching(/^First round: .* \(uses 58 stitches, leaves 60\)\.$/),
      expect.stringMatching(/^Abbreviations\. k: .*; m1: .*; pu&k: pick up and knit\.$/),
    ]);
  });

  test.each(SAMPLES)('long, short and drawn points agree: %s', (name) => {
    for (const made of planSample(name).pickups) {
      for (const edge of made.edges) {
        const drawn = made.points.slice(edge.firstPoint, edge.pointsEnd).map((point) => point.n !== null);
        for (const voice of [long, short]) {
          const line = edgeLine(made, edge, voice);
          expect(described(line, drawn.length), line).toEqual(drawn);
        }
      }
    }
  });

  test('prove a first row that changes the count', () => {
    const made = plan(rectangle(30, 40), along(['right'], { target: 47, band: { rows: 4 } }));
    expect(made.picked).toBe(40);
    const row = instructions(made, long).find((text) => text.startsWith('First row'))!;
    const [, changes, words] =
      /^First row, with (\d+) increases spaced evenly: (.*) \(uses 40 stitches, leaves 47\)\. /.exec(row)!;
    expect(changes).toBe('7');
    expect(countFirstRow(words!)).toEqual({ uses: 40, leaves: 47 });
    // What follows is worked on the new count.
    expect(instructions(made, long).at(-2)).toBe('Work 4 rows of stockinette on 47 stitches, then bind off.');
  });

  test('say how a first row is placed, as far as that could be kept', () => {
    const row = (firstRow: object, fields: object = {}) => {
      const band = { fabric: 'rib', multiple: 2, plus: 1 };
      const made = plan(rectangle(30, 40), along(['right'], { target: 47, band, firstRow, ...fields }));
      return /^First (?:row|round).*?, with (?<said>.*?): /.exec(
        instructions(made, long).find((text) => text.startsWith('First r'))!,
      )!.groups!.said;
    };
    const sections = { sections: { parts: 2 } };
    expect(row({})).toBe('7 increases spaced evenly');
    expect(row({ clear: true }, sections)).toBe('7 increases clear of markers and seams');
    expect(row({ rib: true, clear: true })).toBe('7 increases in the rib and clear of markers and seams');
    expect(row({ by: 'sections' }, sections)).toBe('7 increases section by section');
    // One section has nothing to be told apart from, and a band of another fabric has no rib to be kept.
    expect(row({ by: 'sections' })).toBe('7 increases spaced evenly');
    expect(row({ rib: true }, { band: {} })).toBe('7 increases spaced evenly');
  });

  test('turn for a left-handed knitter', () => {
    const whole = design(rectangle(30, 42), along(['right', 'top']), { hand: 'left' });
    const [made] = planDesign(whole).pickups;
    const [head] = instructions(made!, voiceOf(whole));
    expect(head).toContain('beginning at the left end of Piece, top,');
    expect(head).toContain('working from left to right');
  });

  test('say where on an edge a part of it lies', () => {
    const made = plan(rectangle(30, 42), along([{ edge: 'right', part: [0, 0.5] }]));
    expect(edgeLine(made, made.edges[0]!, long)).toMatch(/^Piece, right \(from 0% to 50% of its length\): /);
  });

  test('tell held stitches from picked up ones', () => {
    const held = rectangle(30, 42, { top: { finish: 'live' } });
    const made = plan(held, along(['top']));
    expect(edgeLine(made, made.edges[0]!, long)).toBe('Piece, top: knit the 30 held stitches.');
    expect(instructions(made, long)[1]).toBe(
      'Where the needle goes. Held stitches: slip them to the needle and knit them, nothing is picked up.',
    );
  });
});

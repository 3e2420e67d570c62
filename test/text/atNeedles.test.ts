import { describe, expect, it } from 'vitest';
import {
  needlesCorrected,
  needlesOn,
  needlesReplan,
  needlesStart,
  needleSteps,
  needleWork,
  type NeedlePlace,
  type PickupPlan,
} from '../../src/pickup';
import {
  needleCorner,
  needleMarker,
  needleNext,
  needleOff,
  needleReach,
  needleRow,
  needleSaid,
  needleVerb,
  needleWay,
  needleWayText,
  needleWords,
  resumedText,
  TERMS,
} from '../../src/text';
import { along, plan, rectangle } from '../pickup/builders';
import { everyPlan } from '../pickup/plans';
import { planSample } from '../samples/sample';
import { countFirstRow } from './firstRowReader';

/** Reads one line of a step as a knitter does: numbers, skips, so many times. */
function readLine(words: string): boolean[] {
  const whole = /^(\d+), skip none$/.exec(words);
  if (whole) return Array.from({ length: Number(whole[1]) }, () => true);
  return words.split('; then ').flatMap((run) => {
    const [, pick = '0', skip = '0', again] =
      /^(?:(\d+)(?:, |$))?(?:skip (\d+)(?:, |$))?(twice|\d+ times)?$/.exec(run) ?? [];
    if (pick === '0' && skip === '0') throw new Error(`No run in "${run}" of "${words}"`);
    const times = again === undefined ? 1 : again === 'twice' ? 2 : parseInt(again, 10);
    const once = [
      ...Array.from({ length: Number(pick) }, () => true),
      ...Array.from({ length: Number(skip) }, () => false),
    ];
    return Array.from({ length: times }, () => once).flat();
  });
}

const strip = plan(rectangle(30, 88), along(['right'], { target: 71, sections: { parts: 4 } }));
const at = (steps: number): NeedlePlace => {
  let place = needlesStart(strip);
  for (let i = 0; i < steps; i++) place = needlesOn(strip, place);
  return place;
};
const last = needleSteps(strip).length;

describe('the line of a step', () => {
  it('counted by its words gives exactly the points drawn, on any design', () => {
    everyPlan((made) => {
      for (const step of needleSteps(made)) {
        const drawn = made.points.slice(step.from, step.to).map(({ n }) => n !== null);
        expect(readLine(needleWords(made, step)), needleWords(made, step)).toEqual(drawn);
      }
    }, 40);
  });

  it('is what is said at the needles', () => {
    const [first, second] = needleSteps(strip);
    expect(needleWords(strip, first!)).toBe('4, skip 1, 4 times; then 2');
    expect(needleWords(strip, second!)).toBe('2, skip 1; then 4, skip 1, 3 times');
    expect([needleVerb(strip, first!, TERMS.US), needleVerb(strip, first!, TERMS.UK)]).toEqual(['Pick up', 'Knit up']);
    expect(needleReach(strip, first!, TERMS.US)).toBe('18 stitches from 22 rows');
  });

  it('says none where nothing is skipped, and knits held stitches', () => {
    const flat = plan(rectangle(12, 20), along(['top']));
    const [step] = needleSteps(flat);
    expect(needleWords(flat, step!)).toBe('12, skip none');
    expect(needleReach(flat, step!, TERMS.US)).toBe('One from every bound-off stitch');
    const live = plan(rectangle(12, 20, { top: { finish: 'live' } }), along(['top']));
    const [knit] = needleSteps(live);
    expect([needleVerb(live, knit!, TERMS.UK), needleWords(live, knit!)]).toEqual(['Knit', '12']);
    expect(needleReach(live, knit!, TERMS.US)).toBe('12 held stitches');
  });
});

describe('what is round the line', () => {
  it('says which marker comes, and what comes after', () => {
    const work = (steps: number) => needleWork(strip, at(steps));
    expect(needleMarker(work(0))).toBe('Place marker 1 after this, at 18');
    expect(needleMarker(work(1))).toBe('Marker 2 comes at 36');
    expect(needleMarker(work(last - 1))).toBe('The end comes at 71');
    expect(needleNext(work(0))).toBe('2, skip 1; then 4, skip 1, 3 times');
    expect(needleNext(work(last - 1))).toBe('the first row');
    expect([needleMarker(work(last)), needleNext(work(last)), needleNext(work(last + 1))]).toEqual(['', '', '']);
  });

  it('is told whole to a screen reader', () => {
    expect(needleSaid(needleWork(strip, at(0)), TERMS.US)).toBe(
      'Pick up 4, skip 1, 4 times; then 2. Piece, right, Section 1 of 4. 18 on the needle then. Place marker 1 after this, at 18.',
    );
    expect(needleSaid(needleWork(strip, at(last)), TERMS.US)).toBe('First row: 71 is right: work them all.');
    expect(needleSaid(needleWork(strip, at(last + 1)), TERMS.US)).toMatch(/^All picked up\. 71 stitches on the needle/);
  });
});

describe('the corners of a band', () => {
  /** What is marked at each step of a pick-up, from a place on it. */
  const marked = (made: PickupPlan, { miscounts }: Pick<NeedlePlace, 'miscounts'> = needlesStart(made)) => {
    const { plan: standing, steps } = needleWork(made, { opening: 0, miscounts });
    return steps.map((_, i) => needleCorner({ plan: standing, steps, at: i, onNeedle: 0 }));
  };
  const numbersIn = (said: readonly string[]) => said.flatMap((words) => (words.match(/\d+/g) ?? []).map(Number));
  const openingsOf = ({ points }: PickupPlan, numbers: readonly number[]) =>
    numbers.map((stitch) => points.findIndex(({ n }) => n === stitch));

  it('are marked at the step that makes their stitches, each once', () => {
    const [border] = planSample('blanket').pickups;
    const said = marked(border!);
    expect(numbersIn(said)).toEqual([1, 112, 249, 360]);
    expect(said.find((words) => words !== '')).toBe('Mark stitch 1, at a corner');
    const [neck] = planSample('vest').pickups;
    expect(marked(neck!).filter((words) => words !== '')).toEqual([
      'Mark stitch 39, at the point of the V',
      'Mark stitch 40, at the point of the V',
    ]);
    const { steps } = needleWork(neck!, needlesStart(neck!));
    const at = steps.findIndex(({ running }) => running >= 39);
    expect(needleSaid({ plan: neck!, steps, at, onNeedle: 0 }, TERMS.US)).toMatch(
      / Mark stitch 39, at the point of the V\.$/,
    );
  });

  it('stay where they are when more or fewer are picked up before them', () => {
    const [border] = planSample('blanket').pickups;
    const { to, running } = needleWork(border!, needlesStart(border!)).steps[0]!;
    for (const off of [-2, 1]) {
      const place = needlesCorrected(border!, needlesOn(border!, needlesStart(border!)), running + off, 'rest');
      const { plan: standing } = needleWork(border!, place);
      expect(to).toBeLessThan(standing.points.length);
      const now = numbersIn(marked(border!, place));
      expect(now).toHaveLength(4);
      const moved = openingsOf(standing, now).map((at, i) =>
        Math.abs(at - openingsOf(border!, [1, 112, 249, 360])[i]!),
      );
      expect(Math.max(...moved)).toBeLessThanOrEqual(1);
      expect(now[3]).not.toBe(360);
    }
  });

  it('are not told of where there are none, nor where nothing is worked on the stitches', () => {
    expect(marked(strip).join('')).toBe('');
    const [border] = planSample('blanket').pickups;
    expect(marked({ ...border!, bandEdge: null }).join('')).toBe('');
  });
});

describe('a miscount', () => {
  const there = at(1);

  it('is told as so many too few or too many', () => {
    expect([needleOff(16, 18), needleOff(19, 18), needleOff(18, 18)]).toEqual([
      '2 too few: 18 are planned here.',
      '1 too many: 18 are planned here.',
      'As planned.',
    ]);
  });

  it('has two ways to be put right, each with what it changes', () => {
    const next = needlesReplan(strip, there, 16, 'next');
    const rest = needlesReplan(strip, there, 16, 'rest');
    expect([needleWay(next), needleWay(rest)]).toEqual(['In the next section', 'Over all that is left']);
    expect(needleWay(needlesReplan(strip, at(2), 30, 'next'))).toBe('In the rest of this section');
    expect(needleWayText(strip, next)).toEqual(['Section 2: 20 instead of 18.', '71 in all, as it should be.']);
    const lines = needleWayText(strip, rest);
    const more = lines.slice(0, -1).map((line) => /^Section \d: (\d+) instead of (\d+)\.$/.exec(line)!);
    expect(more.reduce((sum, [, now, was]) => sum + Number(now) - Number(was), 0)).toBe(2);
  });

  it('says what the first row must do, in words that count out', () => {
    const end = needlesCorrected(strip, at(last), 69, 'rest');
    const again = needlesReplan(strip, at(last), 69, 'rest');
    const [none, line] = needleWayText(strip, again);
    expect(none).toBe('No section can change.');
    const [, picked, words] = /^(\d+) in all\. First row: (.*), to 71\.$/.exec(line!)!;
    expect(countFirstRow(words!)).toEqual({ uses: Number(picked), leaves: 71 });
    const [, row] = /^(.*) \(uses 69 stitches, leaves 71\)$/.exec(needleRow(needleWork(strip, end).plan))!;
    expect(countFirstRow(row!)).toEqual({ uses: 69, leaves: 71 });
  });
});

describe('a place that is not where it was left', () => {
  it('is told in plain words, and nothing where it is', () => {
    expect(resumedText({ kind: 'as-left' })).toBe('');
    expect(resumedText({ kind: 'rest-changed' })).toMatch(/still fits/);
    expect(resumedText({ kind: 'from-marker', marker: 3, onNeedle: 41, planned: 41 })).toMatch(
      /at marker 3 with 41\.$/,
    );
    expect(resumedText({ kind: 'from-marker', marker: 3, onNeedle: 41, planned: 42 })).toMatch(
      /where 42 are planned now/,
    );
    expect(resumedText({ kind: 'lost', marker: 3, onNeedle: 44 })).toMatch(
      /44 on the needle, past marker 3; .* begins at the start/,
    );
    expect(resumedText({ kind: 'lost', marker: 0, onNeedle: 5 })).toContain('5 on the needle; that');
  });
});

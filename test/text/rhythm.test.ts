import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rhythmOf, spreadEvenly, type Run } from '../../src/pickup';
import { rhythmText, TERMS, type Voice } from '../../src/text';
import { readRhythm } from './rhythmReader';

const voices = (['US', 'UK'] as const).flatMap((name) =>
  (['long', 'short'] as const).map((form): Pick<Voice, 'terms' | 'form'> => ({ terms: TERMS[name], form })),
);
const [long, short, longUK] = voices as [Voice, Voice, Voice];

describe('rhythmText', () => {
  test('says runs of one length and what is left over', () => {
    const runs = [
      { pick: 4, skip: 1, times: 17 },
      { pick: 3, skip: 0, times: 1 },
    ];
    expect(rhythmText(runs, 'row', long)).toBe('pick up 4, skip 1, 17 times; then pick up 3');
    expect(rhythmText(runs, 'row', short)).toBe('(4, skip 1) ×17, 3');
    expect(rhythmText(runs, 'row', longUK)).toBe('knit up 4, skip 1, 17 times; then knit up 3');
  });

  test('says that every opening is used, and how many there are', () => {
    const runs = [{ pick: 16, skip: 0, times: 1 }];
    expect(rhythmText(runs, 'stitch', long)).toBe('pick up every stitch (16)');
    expect(rhythmText(runs, 'chain', long)).toBe('pick up every chain (16)');
    expect(rhythmText(runs, 'live', long)).toBe('knit every held stitch (16)');
    expect(rhythmText(runs, 'stitch', short)).toBe('all 16');
  });

  test('stars what comes again and again', () => {
    const group: Run[] = [
      { pick: 4, skip: 1, times: 2 },
      { pick: 3, skip: 1, times: 1 },
    ];
    const runs = [...Array.from({ length: 6 }, () => group).flat(), { pick: 4, skip: 0, times: 1 }];
    expect(rhythmText(runs, 'row', long)).toBe(
      '*(pick up 4, skip 1) twice, pick up 3, skip 1; repeat from * 5 more times; then pick up 4',
    );
    expect(rhythmText(runs, 'row', short)).toBe('[(4, skip 1) ×2, 3, skip 1] ×6, 4');
  });

  test('begins and ends with skips where there is a single stitch', () => {
    const runs = [
      { pick: 0, skip: 5, times: 1 },
      { pick: 1, skip: 4, times: 1 },
    ];
    expect(rhythmText(runs, 'row', long)).toBe('skip 5; then pick up 1, skip 4');
  });

  test('has no words for an edge without openings', () => {
    expect(rhythmText([], 'row', long)).toBe('');
  });

  test('repeats nothing where saying it twice is shorter', () => {
    const runs = [
      { pick: 2, skip: 1, times: 1 },
      { pick: 3, skip: 1, times: 1 },
      { pick: 2, skip: 0, times: 1 },
    ];
    expect(rhythmText(runs, 'row', long)).toBe('pick up 2, skip 1; pick up 3, skip 1; then pick up 2');
  });

  test('agrees with any openings, used and skipped, in every voice', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 90 }), fc.nat(3), (used, which) => {
        fc.pre(used.includes(true));
        expect(readRhythm(rhythmText(rhythmOf(used), 'row', voices[which]!))).toEqual(used);
      }),
      { numRuns: 600 },
    );
  });

  test('agrees with evenly spread picks, long edges among them', () => {
    const sizes = fc
      .integer({ min: 1, max: 900 })
      .chain((openings) => fc.tuple(fc.constant(openings), fc.nat(openings)));
    fc.assert(
      fc.property(
        sizes,
        fc.constantFrom('even' as const, 'grouped' as const),
        fc.nat(3),
        ([all, picks], spread, which) => {
          fc.pre(picks > 0);
          const used = spreadEvenly(all, picks, spread);
          expect(readRhythm(rhythmText(rhythmOf(used), 'row', voices[which]!))).toEqual(used);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('agrees with patterns made of repeats within repeats', () => {
    const run = fc.record({ pick: fc.integer({ min: 1, max: 4 }), skip: fc.integer({ min: 1, max: 2 }) });
    const block = fc.record({
      runs: fc.array(run, { minLength: 1, maxLength: 4 }),
      times: fc.integer({ min: 1, max: 7 }),
    });
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 4 }), fc.nat(3), (blocks, which) => {
        const units = blocks.flatMap(({ runs, times }) => Array.from({ length: times }, () => runs).flat());
        const used = units.flatMap(({ pick, skip }) => [
          ...Array.from({ length: pick }, () => true),
          ...Array.from({ length: skip }, () => false),
        ]);
        expect(readRhythm(rhythmText(rhythmOf(used), 'row', voices[which]!))).toEqual(used);
      }),
      { numRuns: 400 },
    );
  });

  test('the reader does notice a rhythm that is off by one', () => {
    expect(readRhythm('pick up 4, skip 1, 2 times; then pick up 3')).toHaveLength(13);
    expect(readRhythm('pick up 4, skip 1, 2 times; then pick up 3')).not.toEqual(
      readRhythm('pick up 4, skip 1, twice'),
    );
    expect(() => readRhythm('*pick up 4, skip 1; repeat from ** 2 more times')).toThrow(/another star/);
    expect(() => readRhythm('pick up four')).toThrow(/No run/);
  });
});

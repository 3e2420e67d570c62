import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BOUNDS } from '../../src/piece';
import { readSchedule, scheduleText, TERMS, type ReadScheduleOptions } from '../../src/text';
import { MOST_ROWS, MOST_STITCHES } from '../../src/text/readScheduleFaults';

/** Steps in short: `-3/2 -2/2x2` is 3 in over 2 rows, then 2 in over 2 rows twice. */
function read(text: string, way: ReadScheduleOptions['way'] = 'in', terms: 'US' | 'UK' = 'US'): string {
  const result = readSchedule(text, { way, terms: TERMS[terms] });
  if (!result.ok)
    return `${text.slice(0, result.at.start)}[${text.slice(result.at.start, result.at.end)}]: ${result.why}`;
  return result.steps
    .map(({ stitches, every, times }) => `${stitches}/${every}${times === 1 ? '' : `x${times}`}`)
    .join(' ');
}

describe('what is understood', () => {
  test.each([
    // Bind-offs.
    ['bo 3, 2, 2', '-3/2 -2/2x2'],
    ['BO 3,2,2', '-3/2 -2/2x2'],
    ['Bind off 3, 2 and 2 sts.', '-3/2 -2/2x2'],
    ['cast off 3, 2, 2 at neck edge every 2nd row', '-3/2 -2/2x2'],
    ['bind off 3 sts at the beginning of the next row', '-3/2'],
    ['Bind off 3 sts at beg of next row; work 1 row even', '-3/2'],
    ['bind off three stitches at the start of the next RS row, work 7 rows even', '-3/2 0/6'],
    ['BO 5 sts at beg of next 2 rows', '-5/2'],
    ['cast off 3 sts at beg of next 4 rows', '-3/2x2'],
    ['cast off 3 sts at beg of next and foll 2 alt rows', '-3/2x3'],
    ['cast off 3 sts at beg of next row and foll alt row', '-3/2x2'],
    ['bind off 3 sts once, 2 sts twice, then dec 1 st every RS row 4 times', '-3/2 -2/2x2 -1/2x4'],
    ['bind off at each neck edge 3 sts once, 2 sts 2 times', '-3/2 -2/2x2'],
    ['bind off at the beg of every RS row 3, 2, 2', '-3/2 -2/2x2'],
    ['bind off 6 at the right edge on every second row 3 times (at the start of right-side rows)', '-6/2x3'],
    ['bind off 3, 2 (5 times) on every third row', '-3/3 -2/3x5'],
    ['bo 3 x 2', '-3/2x2'],
    ['bo 3 ×2, 2 x3', '-3/2x2 -2/2x3'],
    ['bo 3 sts. dec 1 st. every 2 rows 4 times', '-3/2 -1/2x4'],
    ['bo 3, 2, then 1 every 4 rows 3 times', '-3/2 -2/2 -1/4x3'],
    ['bind-off 3\nbind-off 2 twice\n', '-3/2 -2/2x2'],
    // Decreases.
    ['dec 1 every 2 rows 4 times', '-1/2x4'],
    ['dec 1 st every other row 4 times', '-1/2x4'],
    ['decrease 1 every 4th row twice', '-1/4x2'],
    ['dec 1 every RS row 4 times', '-1/2x4'],
    ['dec 1 every other RS row 4 times', '-1/4x4'],
    ['dec 1 st at neck edge on RS rows 4 times', '-1/2x4'],
    ['dec every fourth row 3 times', '-1/4x3'],
    ['dec 1 st at each end of every 6th row 7 times', '-1/6x7'],
    ['dec 1st at neck edge every row 5 times', '-1/1x5'],
    ['Dec. 1 st. every alt. row 4 times.', '-1/2x4'],
    ['dec 2 every 4 rows thrice', '-2/4x3'],
    ['every 4 rows dec 1 3 times', '-1/4x3'],
    ['dec 1 st every 4 rows, 3 times', '-1/4x3'],
    ['dec 1 at neck edge, every 2 rows 4 times', '-1/2x4'],
    ['dec 1 every 2 rows 4 times, every 4 rows 3 times', '-1/2x4 -1/4x3'],
    ['dec 1 every 2nd row twice and every 4th row 3x', '-1/2x2 -1/4x3'],
    ['decrease 1 on the next row; work 1 row even', '-1/2'],
    ['dec 1 st at neck edge on next 3 rows, then on foll 2 alt rows', '-1/1x3 -1/2x2'],
    ['dec 1 st at neck edge on next and every foll 4th row 5 times', '-1/4x6'],
    ['dec 1 st on next and 4 foll alt rows', '-1/2x5'],
    ['decrease one stitch each side on next RS row, then every 4 rows 5 more times', '-1/4x6'],
    ['dec 1 EOR 4 times', '-1/2x4'],
    ['at neck edge on every other row bind off 3 sts once, 2 sts twice, 1 st 3 times', '-3/2 -2/2x2 -1/2x3'],
    ['dec 1 st on foll 4th row', '-1/4'],
    ['dec 1 st at beg of next 4 rows', '-1/2x2'],
    ['dec 1 st twice more', '-1/2x2'],
    ['dec 1 every 2 rows 3 more times', '-1/2x3'],
    // Increases and cast-ons.
    ['inc 1 every 6 rows 7 times', '1/6x7'],
    ['Inc 1 st each side every 6th row 7 times', '1/6x7'],
    ['increase one stitch at each end of next and 5 foll 6th rows', '1/6x6'],
    ['cast on 3, 2', '3/2 2/2'],
    ['CO 4 at beg of next 2 rows', '4/2'],
    // Even.
    ['work 6 rows even', '0/6'],
    ['work even for 6 rows', '0/6'],
    ['work 6 rows straight', '0/6'],
    ['knit 6 rows plain', '0/6'],
    ['k 6 rows', '0/6'],
    ['cont straight for 6 rows', '0/6'],
    ['Work six rows in patt without further shaping', '0/6'],
    ['6 rows even, 4 more rows even', '0/10'],
    ['work 1 row', '0/1'],
    // Tables.
    ['3 every 2 rows once, then 2 twice, 1 every 4 rows 3 times', '-3/2 -2/2x2 -1/4x3'],
    ['3\n2\n2', '-3/2 -2/2x2'],
    ['3 every 4 rows once; 2 twice', '-3/4 -2/4x2'],
    ['1 every 4', '-1/4'],
    ['1 alt rows 3 times', '-1/2x3'],
    // Together.
    ['bo 3, 2, 2; dec 1 every 2 rows 4 times; work 6 rows even', '-3/2 -2/2x2 -1/2x4 0/6'],
    ['dec 1 every 4 rows 3 times; bo 5, 5', '-1/4x3 -5/2x2'],
    ['inc 1 every 6 rows 3 times then work 10 rows even then cast on 4, 4', '1/6x3 0/10 4/2x2'],
    ['bo 3 dec 1 every 2 rows 4 times work 6 rows even', '-3/2 -1/2x4 0/6'],
  ])('%s', (text, steps) => {
    expect(read(text)).toBe(steps);
  });

  test('bare numbers go the way of the edge', () => {
    expect(read('3, 2', 'out')).toBe('3/2 2/2');
    expect(read('dec 1 every row 2 times', 'out')).toBe('-1/1x2');
  });

  test('cast off is as good as bind off to anybody, CO is cast on to those who bind off', () => {
    expect(read('cast off 3', 'in', 'US')).toBe(read('bind off 3', 'in', 'UK'));
    expect(read('co 3', 'in', 'US')).toBe('3/2');
  });

  test('the text for knitters, with its bind-offs on their sides', () => {
    const step = fc.record({ across: fc.integer({ min: -6, max: 6 }), up: fc.integer({ min: 2, max: 24 }) });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), fc.boolean(), fc.boolean(), (worked, uk, left) => {
        const terms = uk ? TERMS.UK : TERMS.US;
        const edge = {
          shape: 'curved',
          side: 'right',
          finish: 'bound-off',
          stitches: 0,
          worked,
          from: [0, 0],
        } as const;
        const result = readSchedule(scheduleText(edge, { terms, hand: left ? 'left' : 'right' }), {
          way: 'either',
          terms,
        });
        if (!result.ok) throw new Error(result.why);
        const sum = (of: (one: { stitches: number; every: number; times: number }) => number) =>
          result.steps.reduce((all, one) => all + one.times * of(one), 0);
        expect(sum(({ stitches }) => stitches)).toBe(worked.reduce((all, { across }) => all + across, 0));
        expect(sum(({ every }) => every)).toBe(worked.reduce((all, { up }) => all + up, 0));
      }),
      { numRuns: 400 },
    );
  });
});

describe('what is refused, with its place', () => {
  test.each([
    ['', '[]', 'Nothing is written'],
    ['   ', '[   ]', 'Nothing is written'],
    ['dec 1 every 2 rows until 20 sts remain', 'dec 1 every 2 rows [until]', 'not understood'],
    ['frog 3, 2', '[frog]', 'not understood'],
    ['bo 3, 2.5', 'bo 3, [2.5]', 'write 2 or 3'],
    ['dec 1 every 2-4 rows 3 times', 'dec 1 every 2[-]', 'one number'],
    ['bo 3-2-2', 'bo 3[-]', 'one number'],
    ['-3 every 2 rows', '[-]', 'not understood'],
    ['bo 3 2 2', 'bo 3 [2]', 'a comma between'],
    ['bo 0', 'bo [0]', 'work 6 rows even'],
    ['bo', '[bo]', 'how many stitches'],
    ['cast off at neck edge every 2nd row', '[cast off at neck edge every 2nd row]', 'how many stitches'],
    ['dec 1 every 2 rows', '[dec 1 every 2 rows]', 'how often'],
    ['dec 1 every 4 times', 'dec 1 every 4 [times]', 'on which rows'],
    ['dec 1 every 4th 3 times', 'dec 1 every 4th [3]', 'on which rows'],
    ['dec 1 every', 'dec 1 [every]', 'on which rows'],
    ['dec 1 every 0 rows twice', '[dec 1 every 0 rows twice]', 'on which rows'],
    ['dec 1 every 2 rows 0 times', '[dec 1 every 2 rows 0 times]', 'how often'],
    ['work even', '[work even]', 'how many rows'],
    ['work 6', '[work 6]', 'how many rows'],
    ['6 rows', '[6 rows]', 'how many rows'],
    ['work even until it measures 10 cm', 'work even [until]', 'not understood'],
    ['k2tog every 2 rows', 'k2[tog]', 'not understood'],
    ['bo 3 at beg of next 3 rows', '[bo 3 at beg of next 3 rows]', 'even number of rows'],
    ['bo 3, 2, 2 every 2 rows twice', 'bo 3, 2, [2 every 2 rows twice]', 'of all the numbers'],
    ['bo 3, 2 at beg of next 4 rows', 'bo 3, [2 at beg of next 4 rows]', 'of all the numbers'],
    ['twice', '[twice]', 'nothing before it'],
    ['every 2 rows 4 times', '[every 2 rows 4 times]', 'nothing before it'],
    ['at neck edge', '[at neck edge]', 'nothing before it'],
    ['dec 1 twice 3 times', 'dec 1 twice [3]', 'a second time'],
    ['dec 1 every 2 rows every 4 rows twice', 'dec 1 every 2 rows [every 4 rows]', 'a second time'],
    ['bo 3 (twice', '[bo 3 (twice]', 'bracket'],
    ['bo 3) twice', 'bo 3[)]', 'bracket'],
    ['bo 2001', '[bo 2001]', '2000 at most'],
    ['work 5001 rows even', '[work 5001 rows even]', '5000 rows'],
    ['dec 1 every 50 rows 101 times', '[dec 1 every 50 rows 101 times]', '5000 rows'],
    ['bo 3 ; repeat last row', 'bo 3 ; [repeat]', 'not understood'],
    ['3 Maschen abketten', '3 [Maschen]', 'not understood'],
  ])('%s', (text, marked, why) => {
    const said = read(text);
    expect(said.slice(0, marked.length + 2)).toBe(`${marked}: `);
    expect(said).toContain(why);
    // One sentence on one line.
    expect(said.slice(marked.length + 2)).toMatch(/^\S.*\.$/);
  });

  test('bare numbers, where it can not be told what they do', () => {
    expect(read('3, 2', 'either')).toMatch(/^\[3\]: It is not clear whether "3" takes stitches in/);
  });

  test('CO, to those who may cast off by it', () => {
    expect(read('bo 3; CO 2', 'in', 'UK')).toMatch(/^bo 3; \[CO\]: "CO" may stand for cast on or for cast off/);
  });

  test('examples are in the words of the country, and understood themselves', () => {
    for (const terms of ['US', 'UK'] as const) {
      const result = readSchedule('', { way: 'either', terms: TERMS[terms] });
      const example = result.ok ? '' : /"(.*)"/.exec(result.why)![1]!;
      expect(example).toContain(TERMS[terms].bindOff);
      expect(read(example, 'either', terms)).toBe('-3/2 -2/2x2 -1/2x4 0/6');
    }
  });

  test('never throws, and marks a place inside the text', () => {
    const words = fc.constantFrom(
      ...'bo 3 2 , ; . ( ) then and every each next foll alt row rows RS times x twice once dec inc work even for at neck edge beg of the 4th 1st two 0 - cast on off until'.split(
        ' ',
      ),
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 14 }), (list) => {
        const text = list.join(' ');
        const result = readSchedule(text, { way: 'in', terms: TERMS.US });
        if (result.ok) {
          expect(result.steps.every(({ every, times }) => every >= 1 && times >= 1)).toBe(true);
        } else {
          expect(result.at.start).toBeGreaterThanOrEqual(0);
          expect(result.at.end).toBeGreaterThanOrEqual(result.at.start);
          expect(result.at.end).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('knows the bounds of a piece', () => {
    expect([MOST_STITCHES, MOST_ROWS]).toEqual([BOUNDS.pieceStitches, BOUNDS.pieceRows]);
  });
});

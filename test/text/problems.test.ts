import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DesignError, readDesign, type Notice, type Problem } from '../../src/piece';
import { noticeSentence } from '../../src/text/notices';
import { problemSentence } from '../../src/text/problems';
import { BAD_FILES } from '../piece/badFiles';
import { GOOD } from '../piece/good';

function sentenceOf(text: string): string {
  try {
    readDesign(text);
  } catch (error) {
    if (error instanceof DesignError) return problemSentence(error.problem);
    throw error;
  }
  throw new Error('the text was taken for a design');
}

/** What mends a file is asked for by one of these words. */
const MEND =
  /\b(add|allow|choose|close|correct|draw|give|get|put|look|leave|make|move|open|set|split|take|update|use|write|did you mean)\b/;

/** One line, one full stop or question mark, at its end. */
function expectOneSentence(sentence: string): void {
  expect(sentence).toMatch(/^[^\n\r\u2028\u2029]+[.?]$/);
  expect(sentence).not.toMatch(/\b(undefined|NaN|\[object)/);
  expect(sentence).not.toMatch(/[.?!] [A-Z]/);
}

describe('problemSentence', () => {
  it.each(BAD_FILES)('says what, where and how to mend: $title', ({ text, at, says }) => {
    const sentence = sentenceOf(text);
    expectOneSentence(sentence);
    expect(sentence.startsWith(at === '' ? '' : `${at}: `)).toBe(true);
    for (const words of says) expect(sentence).toContain(words);
    expect(sentence.slice(sentence.lastIndexOf(';'))).toMatch(MEND);
  });

  it('keeps to one line whatever ids and values a file holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 120 }), (odd) => {
        const document = structuredClone(GOOD);
        document.pieces[0]!.id = `x${odd}`;
        expectOneLine(sentenceOf(JSON.stringify(document)));
        expectOneLine(sentenceOf(JSON.stringify({ ...GOOD, units: odd })));
      }),
      { numRuns: 40 },
    );
  });

  it('cuts a long value short', () => {
    const sentence = sentenceOf(JSON.stringify({ ...GOOD, hand: 'left'.repeat(1000) }));
    expect(sentence.length).toBeLessThan(200);
    expect(sentence).toContain('…');
  });

  it('says of a changed outline that has come to run clockwise how to turn it', () => {
    const problem: Problem = { kind: 'clockwise', at: 'pieces[0] "front"', piece: 'front' };
    expect(problemSentence(problem)).toMatch(/^pieces\[0\] "front": the outline of piece "front" .* clockwise.*; move/);
  });
});

function expectOneLine(sentence: string): void {
  expect(sentence).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
}

describe('noticeSentence', () => {
  it('names fields that are not known, with what they may have meant', () => {
    const { notices } = readDesign(JSON.stringify({ ...GOOD, name: undefined, nmae: 'x', colour: 'red' }));
    expect(notices.map(noticeSentence)).toEqual([
      'Fields that are not known here were kept and have no effect: nmae (did you mean "name"?) and colour.',
    ]);
  });

  it('names the first five of many', () => {
    const fields = Array.from({ length: 8 }, (_, i) => ({ at: `x${i}`, nearest: i === 0 ? 'xo' : null }));
    expect(noticeSentence({ kind: 'unknown-fields', fields })).toBe(
      'Fields that are not known here were kept and have no effect: x0 (did you mean "xo"?), x1, x2, x3, x4 and 3 others.',
    );
  });

  it.each<[Notice, string]>([
    [
      { kind: 'turned-round', at: 'pieces[1] "back"', piece: 'back' },
      'pieces[1] "back": the outline of piece "back" ran clockwise and was turned round, so that its edges run as a right-handed knitter works them.',
    ],
    [{ kind: 'migrated', from: 1, to: 2 }, 'The file was in version 1 of the format; it is saved in version 2.'],
  ])('says it in one sentence: %o', (notice, sentence) => {
    expect(noticeSentence(notice)).toBe(sentence);
  });
});

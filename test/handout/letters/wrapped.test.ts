import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../../src/handout/letters/face';
import { fits, graphemes } from '../../../src/handout/letters/fitted';
import { textWidth } from '../../../src/handout/letters/width';
import { wrapped } from '../../../src/handout/letters/wrapped';

const SIZE = 3;
const inLines = (text: string, longest: string): string[] =>
  wrapped(text, textWidth(longest, SIZE, 'regular'), SIZE, 'regular');

describe('wrapped', () => {
  it('ends lines at spaces, as late as it can', () => {
    expect(inLines('pick up two and skip one', 'pick up two')).toEqual(['pick up two', 'and skip', 'one']);
  });

  it('ends lines after hyphens, slashes and dashes', () => {
    expect(inLines('right-handed', 'handed.')).toEqual(['right-', 'handed']);
    expect(inLines('stitches/rows', 'stitches/')).toEqual(['stitches/', 'rows']);
    expect(inLines('neck–armhole', 'armhole')).toEqual(['neck–', 'armhole']);
  });

  it('keeps a minus with its number', () => {
    expect(inLines('draw in by -12', 'draw in by -')).toEqual(['draw in by', '-12']);
  });

  it('breaks a word that is wider than the line', () => {
    expect(inLines('a stitchmarker', 'stitch')).toEqual(['a', 'stitch', 'mark', 'er']);
    expect(inLines('mmmiii', 'mm')).toEqual(['mm', 'mii', 'i']);
  });

  it('breaks Japanese between any two letters, but begins no line with a full stop nor ends one with a bracket', () => {
    expect(inLines('編み目を拾う', '編み目')).toEqual(['編み目', 'を拾う']);
    expect(inLines('拾う。編む', '拾う')).toEqual(['拾', 'う。', '編む']);
    expect(inLines('目「編む', '編む')).toEqual(['目', '「編', 'む']);
  });

  it('keeps line breaks that are there', () => {
    expect(inLines('one\ntwo', 'one two three')).toEqual(['one', 'two']);
    expect(wrapped('', 10, SIZE, 'regular')).toEqual([]);
  });

  const text = fc.array(
    fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.constantFrom(
        ' ',
        ' ',
        '  ',
        '-',
        '/',
        '–',
        '編み物。',
        '「拾う」',
        'stitch',
        'right-handed',
        '½',
        '👩‍👧',
        'e\u0301',
      ),
    ),
    { maxLength: 14 },
  );
  const cases = [text.map((parts) => parts.join('')), fc.double({ min: 0, max: 50, noNaN: true })] as const;

  it('loses no letter and adds none', () => {
    const letters = (some: string) => some.replace(/[ \t\r\n\u2028\u2029]/g, '');
    fc.assert(
      fc.property(...cases, (whole, width) => {
        expect(letters(wrapped(whole, width, SIZE, 'regular').join(''))).toBe(letters(whole));
      }),
    );
  });

  it('makes lines that fit, but for a single letter, and none that is empty', () => {
    fc.assert(
      fc.property(...cases, fc.constantFrom(...FACES), (whole, width, face) => {
        for (const line of wrapped(whole, width, SIZE, face)) {
          expect(line).not.toBe('');
          expect(fits(line, width, SIZE, face) || graphemes(line).length === 1).toBe(true);
        }
      }),
    );
  });

  it('leaves each line as it is when wrapped again', () => {
    fc.assert(
      fc.property(...cases, (whole, width) => {
        for (const line of wrapped(whole, width, SIZE, 'bold')) {
          expect(wrapped(line, width, SIZE, 'bold')).toEqual([line]);
        }
      }),
    );
  });
});

import { parse } from 'opentype.js';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../../src/handout/letters/face';
import { readFontFile } from '../../../src/handout/pdf/fontFile';
import { subsetFont } from '../../../src/handout/pdf/subset';
import { faceBytes } from '../letters/fonts';

// Composed letters (their accents are glyphs of their own), fractions, Greek, Cyrillic, an empty outline.
const LETTERS = Array.from('A Ǻéő½⅜ΐЖё→×–fiµμ');

describe('subsetFont', () => {
  it.each(FACES)('draws each letter of the %s face as the whole font does, by an independent reader', (face) => {
    const bytes = faceBytes(face);
    const font = readFontFile(bytes);
    const small = subsetFont(
      font,
      LETTERS.map((letter) => letter.codePointAt(0)!),
      'Small',
    );
    const [before, after] = [parse(bytes.buffer), parse(small.bytes.slice().buffer)];
    for (const letter of LETTERS) {
      const [old, now] = [before.charToGlyph(letter), after.charToGlyph(letter)];
      const { glyph, advance } = small.letters.get(letter.codePointAt(0)!)!;
      expect(now.index).toBe(glyph);
      expect(now.advanceWidth).toBe(old.advanceWidth);
      expect(advance).toBeCloseTo((old.advanceWidth! * 1000) / 2048, 9);
      expect(now.getPath(0, 0, 2048).toPathData(3)).toBe(old.getPath(0, 0, 2048).toPathData(3));
    }
    expect(small.bytes.length).toBeLessThan(bytes.length / 20);
    expect(after.charToGlyph('B').index).toBe(0);
  });

  it('leaves out what the font lacks, and gives letters that look alike a glyph each', () => {
    const { letters } = subsetFont(readFontFile(faceBytes('regular')), [0x7f16, 0xb5, 0x3bc, 0xb5], 'Small');
    expect([...letters.keys()]).toEqual([0xb5, 0x3bc]);
    expect(new Set([...letters.values()].map(({ glyph }) => glyph)).size).toBe(2);
  });
});

it('readFontFile refuses what is no font', () => {
  expect(() => readFontFile(new Uint8Array(20))).toThrow(RangeError);
});

import fc from 'fast-check';
import { parse } from 'opentype.js';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../../src/handout/letters/face';
import { drawnText, foreignLetters, textWidth } from '../../../src/handout/letters/width';
import { LETTERS, UNITS } from '../../../src/handout/letters/widths';
import { faceBytes } from './fonts';

const codes = LETTERS.split(' ').flatMap((range) => {
  const [from = 0, to = from] = range.split('-').map((hex) => parseInt(hex, 16));
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
});

describe('the table of widths', () => {
  // opentype.js is a reader of font files by others.
  it.each(FACES)('is what an independent reader finds in the %s face', (face) => {
    const font = parse(faceBytes(face).buffer);
    expect(font.unitsPerEm).toBe(UNITS);
    const wrong = codes.filter((code) => {
      const letter = String.fromCodePoint(code);
      // Some signs are the same letter twice in Unicode, and are written as the other one.
      const glyph = font.charToGlyph(letter.normalize('NFC'));
      return glyph.index === 0 || Math.abs(textWidth(letter, UNITS, face) - glyph.advanceWidth!) > 1e-9;
    });
    expect(wrong.map((code) => code.toString(16))).toEqual([]);
  });

  it('has the letters that a handout is written with', () => {
    const alphabets =
      'AaZz09 ÀÿĀžŐőȘșȚț ΑΩαωάώΐΰϊ АЯаяЁёҐґЇїЄє ĂăƠơƯưỆệ ½¼¾⅓⅔⅛⅜⅝⅞ ⁰¹²³⁴₀₁₂₃ –—‘’“”„«»…·•‰′″ ←↑→↓↔↕ ×÷±−≈≠≤≥√∞ €£¥№™©®°µ □■○●◇◆';
    expect(foreignLetters(alphabets)).toEqual([]);
  });
});

describe('textWidth', () => {
  it('adds the advances up, in the unit of the size', () => {
    // 108 in the regular face: three figures of 1303 units of 2048.
    expect(textWidth('108', 3, 'regular')).toBeCloseTo((3 * 3 * 1303) / 2048, 12);
    expect(textWidth('', 3, 'regular')).toBe(0);
  });

  it('is the same for a letter and for its parts', () => {
    expect(textWidth('e\u0301', 3, 'italic')).toBe(textWidth('é', 3, 'italic'));
  });

  it('is the sum of its parts, and grows with the size', () => {
    const letters = fc.string({ unit: fc.constantFrom(...Array.from('abcXYZ 0189½éЖω語🧶')) });
    fc.assert(
      fc.property(letters, letters, fc.constantFrom(...FACES), (a, b, face) => {
        const sum = textWidth(a, 3, face) + textWidth(b, 3, face);
        expect(textWidth(a + b, 3, face)).toBeCloseTo(sum, 9);
        expect(textWidth(a, 6, face)).toBeCloseTo(2 * textWidth(a, 3, face), 9);
      }),
    );
  });

  it('leaves more than a square for letters that fill one', () => {
    expect(textWidth('編み物', 4, 'regular')).toBeGreaterThanOrEqual(12);
    expect(textWidth('🧶', 4, 'regular')).toBeGreaterThan(5);
  });

  it('gives no room to what is not seen', () => {
    expect(textWidth('a\u200d\u00adb', 4, 'regular')).toBe(textWidth('ab', 4, 'regular'));
  });
});

describe('foreignLetters', () => {
  it('names each letter once, in the order of the text', () => {
    expect(foreignLetters('編み物 and 編み')).toEqual(['編', 'み', '物']);
    expect(foreignLetters('wool 🧶🧶')).toEqual(['🧶']);
  });

  it('has nothing against accents that join their letters, spaces and unseen signs', () => {
    expect(foreignLetters('re\u0301pe\u0301ter\t\n\u00a0\u200b\u00ad')).toEqual([]);
  });

  it('names a mark that joins no letter, for nothing places it', () => {
    expect(foreignLetters('x\u0301')).toEqual(['\u0301']);
  });
});

describe('drawnText', () => {
  it('is what a page shows of a text', () => {
    expect(drawnText('  two\t\tspaces \n and re\u0301pe\u00adter ')).toBe('two spaces and répeter');
    expect(drawnText('a \u200b b\u0001\u3000c\ud800')).toBe('a b c');
  });

  it('holds nothing but letters of the faces and those that are named as foreign', () => {
    const known = new Set(codes);
    const odd = fc.constantFrom(
      '\u0000',
      '\u0085',
      '\u1680',
      '\u2028',
      '\u3000',
      '\ufeff',
      '\ud83e',
      '\u0301',
      ' ',
      'é',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.string({ unit: 'binary' }), odd)), (parts) => {
        const text = parts.join('');
        const foreign = new Set(foreignLetters(text));
        for (const letter of drawnText(text)) {
          expect(known.has(letter.codePointAt(0)!) || foreign.has(letter)).toBe(true);
        }
      }),
    );
  });
});

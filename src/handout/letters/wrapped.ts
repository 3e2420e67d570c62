import type { Face } from './face';
import { fits, graphemes } from './fitted';

/** Scripts that are written without spaces and broken between any two letters. */
const SQUARE = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u;
/** Marks that don't begin a line, and brackets that don't end one, as in the Japanese rules of line breaking. */
const NOT_FIRST = /^[\p{Pe}\p{Pf}、。，．・：；？！ー々〻ゝゞヽヾぁぃぅぇぉっゃゅょァィゥェォッャュョ]/u;
const NOT_LAST = /[\p{Ps}\p{Pi}]$/u;
/** A hyphen or a slash, after which a word may be broken where another letter follows. Not a minus before a figure. */
const PARTING = /(?<=[\p{L}\p{N}][-‐/])(?=[\p{L}\p{N}])|(?<=\/)(?=[\p{L}\p{N}])|(?<=[–—])(?=\p{L})/u;

/**
 * A text broken into lines that fit into `width` (in the unit of `size`), each as full as it can be. Lines end at
 * spaces and line breaks (which are dropped there), after hyphens and slashes, and between any two letters of scripts
 * that fill a square; a word that is wider than a line is broken between its letters. Every other letter is kept. A
 * single letter wider than the line stands on a line alone. No text makes no line.
 */
export function wrapped(text: string, width: number, size: number, face: Face): string[] {
  return text.split(/\r\n|[\n\r\u2028\u2029]/).flatMap((line) => wrappedLine(line, width, size, face));
}

function wrappedLine(text: string, width: number, size: number, face: Face): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t]+/).filter((part) => part !== '')) {
    let gap = line === '' ? '' : ' ';
    for (const piece of pieces(word)) {
      if (fits(line + gap + piece, width, size, face)) {
        line += gap + piece;
      } else {
        if (line !== '') lines.push(line);
        const broken = fits(piece, width, size, face) ? [piece] : brokenWord(piece, width, size, face);
        lines.push(...broken.slice(0, -1));
        line = broken.at(-1)!;
      }
      gap = '';
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** The parts of a word between which a line may end. */
function pieces(word: string): string[] {
  return word.split(PARTING).flatMap((part) => (SQUARE.test(part) ? squares(part) : [part]));
}

/** A part with letters that fill a square, cut beside each of them. */
function squares(part: string): string[] {
  const cut: string[] = [];
  for (const letter of graphemes(part)) {
    const last = cut.at(-1);
    const joined = last !== undefined && (NOT_FIRST.test(letter) || NOT_LAST.test(last));
    const apart = last === undefined || SQUARE.test(letter) || SQUARE.test(graphemes(last).at(-1)!);
    cut.push(joined || !apart ? (cut.pop() ?? '') + letter : letter);
  }
  return cut;
}

/** A word wider than a line, broken between its letters. */
function brokenWord(word: string, width: number, size: number, face: Face): string[] {
  const lines: string[] = [];
  let line = '';
  for (const letter of graphemes(word)) {
    if (line !== '' && !fits(line + letter, width, size, face)) {
      lines.push(line);
      line = '';
    }
    line += letter;
  }
  return [...lines, line];
}

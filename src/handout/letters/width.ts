import type { Face } from './face';
import { LETTERS, UNITS, WIDTHS } from './widths';

/** Widths of letters that the faces lack, as parts of the type size, rather too wide than too narrow. */
const OTHER = 0.9;
const SQUARE = 1.05;
const PICTURE = 1.4;
/** Far Eastern scripts, whose letters fill a square, begin here; pictures begin in the planes above. */
const FIRST_SQUARE = 0x2e80;
const FIRST_PICTURE = 0x1f000;

/** Signs that draw nothing: joiners, directions, soft hyphens, controls, halves of letters. */
const NOTHING = /^[\p{Cf}\p{Cc}\p{Cs}]$/u;
/** Marks over and under other letters. */
const MARK = /^[\p{Mn}\p{Me}]$/u;
/** Spaces that are drawn as plain ones: what a page runs together, and those that the faces lack. */
const SPACES = /[ \t\n\v\f\r\u0085\u1680\u2028\u2029\u3000]+/gu;

/** Advance widths by code point, in font units. */
type Widths = ReadonlyMap<number, number>;

const read = new Map<Face, Widths>();

function widthsOf(face: Face): Widths {
  const known = read.get(face);
  if (known) return known;
  const codes = LETTERS.split(' ').flatMap((range) => {
    const [from = 0, to = from] = range.split('-').map((hex) => parseInt(hex, 16));
    return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  });
  const advances = WIDTHS[face].split(' ').flatMap((run) => {
    const [advance = 0, count = 1] = run.split('*').map(Number);
    return Array.from({ length: count }, () => advance);
  });
  const widths = new Map(codes.map((code, i) => [code, advances[i]!]));
  read.set(face, widths);
  return widths;
}

/**
 * How wide a line of text is, in the unit of `size` (mm on the handout). Letters stand side by side without kerning or
 * ligatures; a letter and its accent count as the one letter that they make. For letters that the face lacks it is an
 * estimate, rather too wide.
 */
export function textWidth(text: string, size: number, face: Face): number {
  const widths = widthsOf(face);
  let units = 0;
  let guessed = 0;
  for (const letter of text.normalize('NFC')) {
    const code = letter.codePointAt(0)!;
    const known = widths.get(code);
    if (known !== undefined) units += known;
    else guessed += guess(letter, code, widths);
  }
  return (units / UNITS + guessed) * size;
}

function guess(letter: string, code: number, widths: Widths): number {
  // Tabs and line breaks are drawn as spaces.
  if (/^\s$/u.test(letter)) return widths.get(0x20)! / UNITS;
  if (MARK.test(letter) || NOTHING.test(letter)) return 0;
  return code < FIRST_SQUARE ? OTHER : code < FIRST_PICTURE ? SQUARE : PICTURE;
}

/** The letters of a text that the handout's faces lack, each once, in the order in which they first come. */
export function foreignLetters(text: string): string[] {
  const widths = widthsOf('regular');
  const foreign = new Set<string>();
  for (const letter of text.normalize('NFC')) {
    if (widths.has(letter.codePointAt(0)!) || /^\s$/u.test(letter) || NOTHING.test(letter)) continue;
    foreign.add(letter);
  }
  return [...foreign];
}

/**
 * A text as it is drawn: accents joined to their letters, spaces, tabs and line breaks in a row as one space, none at
 * the ends, and without the signs that draw nothing.
 */
export function drawnText(text: string): string {
  return text
    .normalize('NFC')
    .replace(SPACES, ' ')
    .replace(/[\p{Cf}\p{Cc}\p{Cs}]/gu, '')
    .replace(/ +/g, ' ')
    .replace(/^ | $/g, '');
}

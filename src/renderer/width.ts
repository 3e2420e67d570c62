/**
 * Widths of letters in thousandths of the type size, so that labels can be laid out without a browser, alike on
 * screen, on paper and in Node. They are the advance widths of DejaVu Serif, the widest face of the drawing's serif
 * stack, so that whichever face is there, no label takes more room than it was given.
 */
const FROM_SPACE =
  '318 402 460 838 636 950 890 275 390 390 500 838 318 338 318 337 636 636 636 636 636 636 636 636 636 636 337 337 ' +
  '838 838 838 536 1000 722 735 765 802 730 694 799 872 395 401 747 664 1024 875 820 673 820 753 685 667 843 722 ' +
  '1028 712 660 695 390 337 390 838 500 500 596 640 560 640 592 370 640 644 320 310 606 320 948 644 602 640 640 478 ' +
  '513 402 644 565 856 564 565 527 636 337 636 838';

const WIDTHS = FROM_SPACE.split(' ').map(Number);
const FIRST = 32;

/** Letters outside the table: the width of a wide Latin letter, and a full square for scripts that fill one. */
const OTHER = 875;
const SQUARE = 1028;
const FIRST_SQUARE = 0x2e80;

/** Width of a line of text, in the unit of `size`. */
export function textWidth(text: string, size: number): number {
  let sum = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? FIRST;
    sum += WIDTHS[code - FIRST] ?? (code < FIRST_SQUARE ? OTHER : SQUARE);
  }
  return (sum * size) / 1000;
}

/** How far capitals and figures rise above the baseline, and how far tails hang below it, as parts of the size. */
export const ASCENT = 0.76;
export const DESCENT = 0.24;

/** From the middle of a line of figures down to its baseline, as a part of the size. */
export const MIDDLE = 0.36;

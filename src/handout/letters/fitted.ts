import type { Face } from './face';
import { textWidth } from './width';

const ELLIPSIS = '…';
/** Widths that differ by less than this part are the same: sums of the same letters, made in another order. */
const SLACK = 1e-9;

let segmenter: Intl.Segmenter | undefined;

/** The letters of a text as its reader counts them: an accent or a joined sign belongs to its letter. */
export function graphemes(text: string): string[] {
  segmenter ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  return Array.from(segmenter.segment(text), ({ segment }) => segment);
}

/** Whether a text fits into a width; both in the unit of `size`. */
export function fits(text: string, width: number, size: number, face: Face): boolean {
  return textWidth(text, size, face) <= width * (1 + SLACK);
}

/**
 * A text that fits into `width` (in the unit of `size`): itself, or as many of its first letters as fit with an
 * ellipsis. Where not even the ellipsis fits, nothing is left.
 */
export function fitted(text: string, width: number, size: number, face: Face): string {
  if (fits(text, width, size, face)) return text;
  const letters = graphemes(text);
  const shortened = (count: number) => letters.slice(0, count).join('').trimEnd() + ELLIPSIS;
  // The most letters that fit, by halving: more letters are never narrower.
  let [least, most] = [0, letters.length];
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (fits(shortened(middle), width, size, face)) least = middle;
    else most = middle - 1;
  }
  return fits(shortened(least), width, size, face) ? shortened(least) : '';
}

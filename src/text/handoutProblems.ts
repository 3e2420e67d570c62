import { counted, listed, quoted } from './words';

/** More letters than this are not named one by one. */
const NAMED = 8;

/** Begins and mends the sentence as the page says it, and the command of a document or a picture. */
const SAID = {
  page: { whose: "The PDF's", mend: 'use print instead', end: '.' },
  pdf: { whose: "the PDF's", mend: 'print from the page instead', end: '' },
  png: { whose: "the picture's", mend: 'save or print it from the page instead', end: '' },
} as const;

/** Says that a PDF or a picture can't hold some letters of a text, and what to do instead. */
export function foreignLettersText(
  { letters, texts }: { readonly letters: readonly string[]; readonly texts: readonly string[] },
  by: keyof typeof SAID = 'page',
): string {
  const { whose, mend, end } = SAID[by];
  const named = letters.slice(0, NAMED).map(quoted);
  const more = letters.length - named.length;
  const all = listed(more > 0 ? [...named, `${more} more`] : named);
  const [first = '', ...others] = texts;
  const where = quoted(first) + (others.length > 0 ? ` and ${counted(others.length, 'other text')}` : '');
  return `${whose} letters lack ${all}, needed for ${where}; ${mend}, or write it in Latin, Greek or Cyrillic letters${end}`;
}

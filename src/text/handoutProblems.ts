import { counted, listed, quoted } from './words';

/** More letters than this are not named one by one. */
const NAMED = 8;

/** Begins and mends the sentence as the page or the command says it. */
const SAID = {
  page: { the: 'The', mend: 'use print instead', end: '.' },
  command: { the: 'the', mend: 'print from the page instead', end: '' },
} as const;

/** Says that a PDF can't hold some letters of a text, and what to do instead. */
export function foreignLettersText(
  { letters, texts }: { readonly letters: readonly string[]; readonly texts: readonly string[] },
  by: keyof typeof SAID = 'page',
): string {
  const { the, mend, end } = SAID[by];
  const named = letters.slice(0, NAMED).map(quoted);
  const more = letters.length - named.length;
  const all = listed(more > 0 ? [...named, `${more} more`] : named);
  const [first = '', ...others] = texts;
  const where = quoted(first) + (others.length > 0 ? ` and ${counted(others.length, 'other text')}` : '');
  return `${the} PDF's letters lack ${all}, needed for ${where}; ${mend}, or write it in Latin, Greek or Cyrillic letters${end}`;
}

import { counted, listed, quoted } from './words';

/** More letters than this are not named one by one. */
const NAMED = 8;

/** Says that a PDF can't hold some letters of a text, and what to do instead. */
export function foreignLettersText({
  letters,
  texts,
}: {
  readonly letters: readonly string[];
  readonly texts: readonly string[];
}): string {
  const named = letters.slice(0, NAMED).map(quoted);
  const more = letters.length - named.length;
  const all = listed(more > 0 ? [...named, `${more} more`] : named);
  const [first = '', ...others] = texts;
  const where = quoted(first) + (others.length > 0 ? ` and ${counted(others.length, 'other text')}` : '');
  return `The PDF's letters lack ${all}, needed for ${where}; use print instead, or write it in Latin, Greek or Cyrillic letters.`;
}

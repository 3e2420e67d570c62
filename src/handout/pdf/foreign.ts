import { foreignLetters } from '../letters/width';

/** Texts that the handout's letters can't write. */
export interface ForeignLetters {
  readonly kind: 'foreign-letters';
  /** Each letter once, in the order in which they come. */
  readonly letters: readonly string[];
  /** The texts that they stand in, each once. */
  readonly texts: readonly string[];
}

export class ForeignLettersError extends Error {
  readonly problem: ForeignLetters;

  constructor(problem: ForeignLetters) {
    super(problem.kind);
    this.name = 'ForeignLettersError';
    this.problem = problem;
  }
}

/** @throws ForeignLettersError when a text has a letter that the faces lack */
export function refuseForeign(texts: readonly string[]): void {
  const all = [...new Set(texts)];
  const letters = foreignLetters(all.join(' '));
  if (letters.length === 0) return;
  throw new ForeignLettersError({
    kind: 'foreign-letters',
    letters,
    texts: all.filter((text) => foreignLetters(text).length > 0),
  });
}

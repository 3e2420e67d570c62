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

/** What takes stitches away or adds them: several at once on a row of their own edge, or singly inside the edge. */
export interface Verb {
  readonly sign: -1 | 1;
  readonly together: boolean;
}

/** A word for shaping, as patterns of both countries write and shorten it (the trade's abbreviations: BO, CO, dec, inc). */
export const VERB = /^(?:bindoff|castoff|bo|caston|co|dec|decs|decreases?|decreasing|inc|incs|increases?|increasing)$/;
const IN = /^(?:bindoff|castoff|bo|dec)/;
const TOGETHER = /^(?:bindoff|castoff|bo|caston|co)$/;

/** What a word that matches `VERB` does. */
export function verbOf(word: string): Verb {
  return { sign: IN.test(word) ? -1 : 1, together: TOGETHER.test(word) };
}

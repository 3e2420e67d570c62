/** Two numbers with a word or a sign between: `3 of 4`, `3 of every 4`, `3/4`, `3:4`, `3 in 4`, `3 from 4`. */
const RATIO = /^(\d{1,6})\s*(?:of(?:\s+every)?|from(?:\s+every)?|in|to|\/|:)\s*(\d{1,6})$/iu;

/** A ratio as typed; null for none, `unread` for what is no ratio of two whole numbers from 1 on. */
export function readRatio(typed: string): { readonly pick: number; readonly of: number } | null | 'unread' {
  if (typed.trim() === '') return null;
  const [, first, second] = RATIO.exec(typed.trim()) ?? [];
  const [pick, of] = [Number(first), Number(second)];
  return pick >= 1 && of >= 1 ? { pick, of } : 'unread';
}

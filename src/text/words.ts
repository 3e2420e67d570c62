const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** `second`, `tenth`, `12th`: which one of a row of things. */
export function ordinal(n: number): string {
  return ORDINALS[n - 1] ?? `${n}${ordinalEnding(n)}`;
}

function ordinalEnding(n: number): string {
  const tens = n % 100;
  if (tens >= 11 && tens <= 13) return 'th';
  return { 1: 'st', 2: 'nd', 3: 'rd' }[n % 10] ?? 'th';
}

/** `every row`, `every second row`. */
export function everyNth(n: number, noun: string): string {
  return n === 1 ? `every ${noun}` : `every ${ordinal(n)} ${noun}`;
}

/** `once`, `twice`, `17 times`. */
export function times(n: number): string {
  return n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`;
}

/** `once more`, `5 more times`. */
export function timesMore(n: number): string {
  return n === 1 ? 'once more' : `${n} more times`;
}

/** `1 stitch`, `2 stitches`. */
export function counted(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

export function stitchesText(n: number): string {
  return counted(n, 'stitch', 'stitches');
}

export function rowsText(n: number): string {
  return counted(n, 'row');
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(items: readonly (string | number)[], join = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${join} ${items.at(-1) ?? ''}`;
}

/** With its first letter large, to begin a sentence. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Longest text out of a file that is written out in a sentence. */
const LONGEST = 60;

/** What breaks a line though JSON leaves it as it is. */
const LINE_BREAKS = /[\u007f-\u009f\u2028\u2029]/g;

/** A text out of a file in double quotes, on one line, cut short with an ellipsis. */
export function quoted(text: string): string {
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return JSON.stringify(short).replace(LINE_BREAKS, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

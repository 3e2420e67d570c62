/** A piece of typed text with its place: from `start` up to `end`, counted in characters from 0. */
interface Place {
  readonly start: number;
  readonly end: number;
}

/**
 * What a schedule is read from. Words are in small letters and without hyphens; `text` is what was typed. An ordinal
 * knows whether it was written as in 1st, which may as well mean one stitch.
 */
export type Token = Place & { readonly text: string } & (
    | { readonly kind: 'number'; readonly value: number }
    | { readonly kind: 'ordinal'; readonly value: number; readonly maybeStitches: boolean }
    | { readonly kind: 'word'; readonly word: string }
    | { readonly kind: 'comma' | 'break' | 'open' | 'close' }
    | { readonly kind: 'decimal' | 'other' }
  );

const NUMBERS: readonly string[] = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const ORDINALS: readonly string[] = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
];

/** Words typed in two that are one. */
const PAIRS: readonly (readonly [RegExp, string])[] = [
  [/^(?:bind|bound|binding)[\s-]+off$/, 'bindoff'],
  [/^(?:cast|casting)[\s-]+off$/, 'castoff'],
  [/^(?:cast|casting)[\s-]+on$/, 'caston'],
  [/^right[\s-]+side$/, 'rs'],
  [/^wrong[\s-]+side$/, 'ws'],
];

/** Shortened words behind which a full stop belongs to the word. */
const SHORTENED = /^(?:dec|inc|beg|foll|alt|cont|patt|rem)$/;
/** The same, where the stop may also end a sentence: it does unless the sentence goes on. */
const STITCHES = /^sts?$/;
const GOES_ON = /^\s*(?:every|each|at|on|of|in|from|once|twice|alt|foll|next|rs|ws|x|×)\b/i;

const TOKEN =
  /(?<decimal>\d+\.\d+)|(?<ordinal>\d+(?:st|nd|rd|th)(?!\p{L}))|(?<number>\d+)|(?<pair>(?:bind|bound|binding|cast|casting)[ \t-]+(?:off|on)(?!\p{L})|(?:right|wrong)[ \t-]+side(?=[ \t-]+(?:facing[ \t]+)?rows?(?!\p{L})))|(?<word>\p{L}+(?:[-'’]\p{L}+)*|×)|(?<mark>[^\s])|(?<line>\n)/giu;

function wordToken(text: string, place: Place): Token {
  const word = text.toLowerCase();
  const number = NUMBERS.indexOf(word);
  if (number >= 0) return { ...place, text, kind: 'number', value: number + 1 };
  const ordinal = ORDINALS.indexOf(word);
  if (ordinal >= 0) return { ...place, text, kind: 'ordinal', value: ordinal + 1, maybeStitches: false };
  const pair = PAIRS.find(([pattern]) => pattern.test(word))?.[1];
  return { ...place, text, kind: 'word', word: pair ?? (word === '×' ? 'x' : word) };
}

const MARKS: Readonly<Record<string, 'comma' | 'break' | 'open' | 'close'>> = {
  ',': 'comma',
  ';': 'break',
  '.': 'break',
  '(': 'open',
  ')': 'close',
};

/** Whether a full stop at `end` belongs to the shortened word before it. */
function belongsToWord(before: Token | undefined, end: number, text: string): boolean {
  if (before?.kind !== 'word' || before.end !== end - 1) return false;
  return SHORTENED.test(before.word) || (STITCHES.test(before.word) && GOES_ON.test(text.slice(end)));
}

/** Every token of a typed schedule; nothing but spaces is left out. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (const match of text.matchAll(TOKEN)) {
    const found = match[0];
    const place = { start: match.index, end: match.index + found.length };
    const { decimal, ordinal, number, pair, word, line } = match.groups ?? {};
    if (decimal !== undefined) tokens.push({ ...place, text: found, kind: 'decimal' });
    else if (ordinal !== undefined) {
      const maybeStitches = /st$/i.test(found);
      tokens.push({ ...place, text: found, kind: 'ordinal', value: parseInt(found, 10), maybeStitches });
    } else if (number !== undefined) tokens.push({ ...place, text: found, kind: 'number', value: Number(found) });
    else if (pair !== undefined || word !== undefined) tokens.push(wordToken(found, place));
    else if (line !== undefined) tokens.push({ ...place, text: found, kind: 'break' });
    else if (found === '.' && belongsToWord(tokens.at(-1), place.end, text)) continue;
    else tokens.push({ ...place, text: found, kind: MARKS[found] ?? 'other' });
  }
  return tokens;
}

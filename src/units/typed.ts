/** Why typed text is no number. */
export type NumberFault = 'empty' | 'not-a-number' | 'ambiguous';

export type NumberRead =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: NumberFault };

/** Fractions with a character of their own. */
const VULGAR: Readonly<Record<string, readonly [above: number, below: number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

const SIGN = /^([-+\u2212])?\s*(.*)$/su;
/** A whole number, if any, and a fraction written out: 1/2, 4 1/2, 4-1/2, with a plain or a fraction slash. */
const WRITTEN = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*[/\u2044]\s*(\d+)$/u;
/** A whole number, if any, and a fraction of one character: ½, 4½, 4 ½. */
const ONE_CHARACTER = /^(\d+)?\s*([¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])$/u;
/** Spaces that part thousands: no-break, thin and narrow no-break ones, never one from the space bar. */
const THOUSANDS_SPACE = /(\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d))/gu;

/**
 * The number that someone typed, whatever their language: comma and point are both decimal signs ("5,5", "5.5"), a
 * minus may be a hyphen or U+2212, and fractions are read ("4 1/2", "4½", "1/2").
 *
 * Where both signs occur, the last one is decimal and the other parts thousands ("1.234,5", "1,234.5"); a sign that
 * occurs more than once parts thousands ("1,234,567"). One comma before exactly three digits, after one to three that do
 * not start with 0, may mean either ("1,234"): it is refused as ambiguous. A point in the same place is decimal
 * ("12.375"), for that is how inches are written, and nothing here is ever counted in thousands by a point alone.
 * Anything else is refused as not a number, division by 0 among it.
 */
export function readNumber(text: string): NumberRead {
  const [, sign, rest] = SIGN.exec(text.trim()) ?? [];
  const bare = (rest ?? '').trim();
  if (bare === '') return { ok: false, reason: sign === undefined ? 'empty' : 'not-a-number' };
  const size = fraction(bare) ?? decimal(bare);
  if (size === 'ambiguous') return { ok: false, reason: 'ambiguous' };
  if (size === null || !Number.isFinite(size)) return { ok: false, reason: 'not-a-number' };
  return { ok: true, value: sign === undefined || sign === '+' || size === 0 ? size : -size };
}

/** A fraction, or null if the text is written as none. NaN where it is one, but no proper one. */
function fraction(text: string): number | null {
  const written = WRITTEN.exec(text);
  if (written !== null) {
    const [, whole, above, below] = written;
    // "4 5/2" is a slip of the finger rather than six and a half.
    if (Number(below) === 0 || (whole !== undefined && Number(above) >= Number(below))) return NaN;
    return Number(whole ?? 0) + Number(above) / Number(below);
  }
  const [, whole, character] = ONE_CHARACTER.exec(text) ?? [];
  const parts = character === undefined ? undefined : VULGAR[character];
  return parts === undefined ? null : Number(whole ?? 0) + parts[0] / parts[1];
}

function decimal(text: string): number | 'ambiguous' | null {
  const closed = text.replace(THOUSANDS_SPACE, '$1');
  if (!/^[\d.,]*\d[\d.,]*$/u.test(closed)) return null;
  const last = Math.max(closed.lastIndexOf(','), closed.lastIndexOf('.'));
  if (last < 0) return Number(closed);
  const mark = closed[last]!;
  const other = mark === ',' ? '.' : ',';
  const repeated = closed.indexOf(mark) !== last;
  if (repeated) return closed.includes(other) ? null : grouped(closed, mark);
  if (/^[1-9]\d{0,2},\d{3}$/u.test(closed)) return 'ambiguous';
  const whole = grouped(closed.slice(0, last) || '0', other);
  return whole === null ? null : Number(`${whole}.${closed.slice(last + 1) || '0'}`);
}

/** A whole number whose thousands may be parted by a mark: 1,234,567. */
function grouped(text: string, mark: string): number | null {
  const [first, ...groups] = text.split(mark);
  const sound = groups.length === 0 || (/^\d{1,3}$/u.test(first!) && groups.every((g) => /^\d{3}$/u.test(g)));
  return sound ? Number([first, ...groups].join('')) : null;
}

export interface NumberStyle {
  /** Decimals at most. */
  readonly digits: number;
  /** A language tag, for the decimal sign: "en", "de". */
  readonly language: string;
  /** Write all the decimals, closing noughts too, so that a column lines up. */
  readonly padded?: boolean;
}

/**
 * A number in the manner of a language, rounded here and nowhere earlier (a half goes away from 0). Thousands are not
 * parted and the digits are always 0 to 9, so that what is written can be typed back.
 */
export function writeNumber(value: number, { digits, language, padded = false }: NumberStyle): string {
  const key = `${language} ${digits} ${padded}`;
  let format = formats.get(key);
  if (!format) {
    format = new Intl.NumberFormat(language, {
      maximumFractionDigits: digits,
      minimumFractionDigits: padded ? digits : 0,
      useGrouping: false,
      numberingSystem: 'latn',
      signDisplay: 'negative',
    });
    formats.set(key, format);
  }
  return format.format(value);
}

/** Making one takes a hundred times as long as using it, and a drawing writes hundreds of numbers. */
const formats = new Map<string, Intl.NumberFormat>();

/**
 * A number to the nearest part, as inches are written: 4.5 is "4½", 0.1875 in sixteenths is "3/16", 2.1875 "2 3/16".
 * `denominator` is a whole number above 0; a half goes away from 0.
 */
export function writeFraction(value: number, denominator = 8): string {
  const parts = Math.round(Math.abs(value) * denominator);
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  const sign = value < 0 && parts > 0 ? '-' : '';
  if (rest === 0) return `${sign}${whole}`;
  const shared = greatestDivisor(rest, denominator);
  const [above, below] = [rest / shared, denominator / shared];
  const character = Object.keys(VULGAR).find((key) => VULGAR[key]![0] === above && VULGAR[key]![1] === below);
  if (character !== undefined) return `${sign}${whole === 0 ? '' : whole}${character}`;
  return `${sign}${whole === 0 ? '' : `${whole} `}${above}/${below}`;
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}

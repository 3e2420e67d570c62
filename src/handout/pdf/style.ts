import type { Face } from '../letters/face';

/** How an element is drawn: the presentation attributes of SVG with what it inherits. Lengths in the page's own unit. */
export interface Style {
  /** "#rrggbb", or null for none. */
  readonly fill: string | null;
  readonly stroke: string | null;
  readonly evenOdd: boolean;
  readonly weight: number;
  readonly cap: 'butt' | 'round' | 'square';
  readonly join: 'miter' | 'round' | 'bevel';
  readonly miterLimit: number;
  readonly dash: readonly number[];
  readonly dashFrom: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly italic: boolean;
  readonly bold: boolean;
}

/** What SVG draws with where nothing is said (SVG 1.1, appendix M.2); the type size is a browser's. */
export const PLAIN: Style = {
  fill: '#000000',
  stroke: null,
  evenOdd: false,
  weight: 1,
  cap: 'butt',
  join: 'miter',
  miterLimit: 4,
  dash: [],
  dashFrom: 0,
  size: 16,
  anchor: 'start',
  italic: false,
  bold: false,
};

type Reader = (value: string) => Partial<Style>;

const READERS: Readonly<Record<string, Reader>> = {
  fill: (value) => ({ fill: colour(value) }),
  stroke: (value) => ({ stroke: colour(value) }),
  'fill-rule': (value) => ({ evenOdd: value === 'evenodd' }),
  'stroke-width': (value) => ({ weight: length(value) }),
  'stroke-linecap': (value) => ({ cap: oneOf(value, ['butt', 'round', 'square']) }),
  'stroke-linejoin': (value) => ({ join: oneOf(value, ['miter', 'round', 'bevel']) }),
  'stroke-miterlimit': (value) => ({ miterLimit: length(value) }),
  'stroke-dasharray': (value) => ({ dash: dashes(value) }),
  'stroke-dashoffset': (value) => ({ dashFrom: length(value) }),
  'font-size': (value) => ({ size: length(value) }),
  'text-anchor': (value) => ({ anchor: oneOf(value, ['start', 'middle', 'end']) }),
  'font-style': (value) => ({ italic: oneOf(value, ['normal', 'italic']) === 'italic' }),
  'font-weight': (value) => ({
    bold: oneOf(value, ['normal', 'bold', '400', '700']).startsWith('b') || value === '700',
  }),
};

/** What a page must not hold, for it would be drawn in the page and lost on the way here. */
const UNKNOWN = ['opacity', 'fill-opacity', 'stroke-opacity', 'clip-path', 'mask', 'filter', 'style', 'letter-spacing'];

/**
 * An element's style from that of its group and its own attributes.
 *
 * @throws RangeError for a value that is not drawn, such as a pattern or an opacity
 */
export function styleOf(group: Style, attributes: Readonly<Record<string, string>>): Style {
  let style = group;
  for (const [name, value] of Object.entries(attributes)) {
    const reader = READERS[name];
    if (reader) style = { ...style, ...reader(value) };
    else if (UNKNOWN.includes(name)) throw new RangeError(`The attribute ${name}="${value}" is not drawn.`);
  }
  return style;
}

/** The face that a style's text is set in; what is bold and italic is set in bold. */
export function faceOf({ bold, italic }: Style): Face {
  return bold ? 'bold' : italic ? 'italic' : 'regular';
}

function colour(value: string): string | null {
  if (value === 'none') return null;
  if (/^#[0-9a-f]{6}$/i.test(value)) return value.toLowerCase();
  if (/^#[0-9a-f]{3}$/i.test(value)) return `#${Array.from(value.slice(1).toLowerCase(), (one) => one + one).join('')}`;
  if (value === 'black') return '#000000';
  if (value === 'white') return '#ffffff';
  throw new RangeError(`The colour "${value}" is not drawn.`);
}

function length(value: string): number {
  const number = Number(value);
  if (value.trim() === '' || !Number.isFinite(number)) throw new RangeError(`The length "${value}" is not drawn.`);
  return number;
}

/** An odd number of lengths is gone through twice, as in SVG; lengths that are all nought are no dashes. */
function dashes(value: string): number[] {
  if (value === 'none') return [];
  const lengths = value
    .trim()
    .split(/[\s,]+/)
    .map(length);
  if (lengths.every((one) => one === 0)) return [];
  return lengths.length % 2 === 1 ? [...lengths, ...lengths] : lengths;
}

function oneOf<const Word extends string>(value: string, words: readonly Word[]): Word {
  const word = words.find((one) => one === value);
  if (word === undefined) throw new RangeError(`The value "${value}" is not drawn.`);
  return word;
}

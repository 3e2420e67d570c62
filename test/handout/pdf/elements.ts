import type { DrawnElement } from '../../../src/renderer';
import type { Page } from '../../../src/handout/pdf/page';

type Attributes = Readonly<Record<string, string | number>>;

const written = (attributes: Attributes): Record<string, string> =>
  Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, String(value)]));

export const group = (attributes: Attributes, ...children: DrawnElement[]): DrawnElement => ({
  name: 'g',
  attributes: written(attributes),
  children,
});

export const path = (d: string, attributes: Attributes = {}): DrawnElement => ({
  name: 'path',
  attributes: { d, ...written(attributes) },
  children: [],
});

export const text = (words: string, x: number, y: number, attributes: Attributes = {}): DrawnElement => ({
  name: 'text',
  attributes: { x: String(x), y: String(y), 'font-size': '4', ...written(attributes) },
  children: [],
  text: words,
});

/** A page of A4, upright. */
export const a4 = (...elements: DrawnElement[]): Page => ({ width: 210, height: 297, elements });

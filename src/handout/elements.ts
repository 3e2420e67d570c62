import { digits, LIGHT, type DrawnElement } from '../renderer';
import type { Face } from './letters/face';
import { drawnText } from './letters/width';

/** What the handout's letters are called in style sheets: a name of its own, so that no other face takes their place. */
export const FAMILY = "'Edgewise Serif', 'DejaVu Serif', serif";

interface TextLook {
  readonly size: number;
  readonly face?: Face;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly fill?: string;
}

/** A line of text in mm; y is its base line. */
export function textAt(text: string, x: number, y: number, look: TextLook): DrawnElement {
  const { size, face = 'regular', anchor = 'start', fill = LIGHT.ink } = look;
  return {
    name: 'text',
    attributes: {
      x: digits(x),
      y: digits(y),
      'font-size': digits(size),
      fill,
      ...(anchor === 'start' ? {} : { 'text-anchor': anchor }),
      ...(face === 'bold' ? { 'font-weight': 'bold' } : {}),
      ...(face === 'italic' ? { 'font-style': 'italic' } : {}),
    },
    children: [],
    text: drawnText(text),
  };
}

/** A line or an outline in ink, of a weight in mm. */
export function stroked(d: string, weight: number, dash?: string): DrawnElement {
  return {
    name: 'path',
    attributes: {
      d,
      fill: 'none',
      stroke: LIGHT.ink,
      'stroke-width': digits(weight),
      ...(dash === undefined ? {} : { 'stroke-dasharray': dash }),
    },
    children: [],
  };
}

/** A shape filled with ink. */
export function filled(d: string): DrawnElement {
  return { name: 'path', attributes: { d, fill: LIGHT.ink }, children: [] };
}

export function rule(x: number, y: number, width: number, weight: number): DrawnElement {
  return stroked(`M${digits(x)},${digits(y)}h${digits(width)}`, weight);
}

/** An empty box to write into. */
export function box(x: number, y: number, width: number, height: number, weight: number): DrawnElement {
  return stroked(`M${digits(x)},${digits(y)}h${digits(width)}v${digits(height)}h${digits(-width)}z`, weight);
}

/** Elements moved to a place, and drawn larger or smaller. */
export function placedAt(children: readonly DrawnElement[], x: number, y: number, scale = 1): DrawnElement {
  const move = `translate(${digits(x)} ${digits(y)})`;
  const transform = scale === 1 ? move : `${move} scale(${scale})`;
  return { name: 'g', attributes: { transform }, children };
}

/** A group with a name that says what it holds. */
export function named(name: string, children: readonly DrawnElement[]): DrawnElement {
  return { name: 'g', attributes: { class: name }, children };
}

/**
 * The same drawing in the handout's letters. Its outermost group is named otherwise than on the page, whose style sheet
 * gives a drawing the colours of the screen: paper is white in the dark too.
 */
export function inFamily(element: DrawnElement): DrawnElement {
  const { attributes } = element;
  return {
    ...element,
    attributes: {
      ...attributes,
      ...(attributes.class === 'drawing' ? { class: 'printed-drawing' } : {}),
      ...('font-family' in attributes ? { 'font-family': FAMILY } : {}),
    },
    children: element.children.map(inFamily),
  };
}

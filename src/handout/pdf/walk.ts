import type { DrawnElement } from '../../renderer';
import { drawnText } from '../letters/width';
import { IDENTITY, readTransform, times, type Matrix } from './matrix';
import { PLAIN, styleOf, type Style } from './style';

/** A path or a line of text with all that its groups say: how it is drawn, and how it comes to lie on the page. */
export type Item =
  | { readonly kind: 'path'; readonly d: string; readonly style: Style; readonly matrix: Matrix }
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly x: number;
      readonly y: number;
      readonly style: Style;
      readonly matrix: Matrix;
    };

/**
 * The paths and texts of some elements in the order of drawing, the groups worked into them. What draws nothing is left
 * out.
 *
 * @throws RangeError for an element or an attribute that is not drawn
 */
export function* itemsOf(
  elements: readonly DrawnElement[],
  group: Style = PLAIN,
  outer: Matrix = IDENTITY,
): Generator<Item> {
  for (const { name, attributes, children, text = '' } of elements) {
    if (name === 'title' || name === 'desc') continue;
    if (name === 'defs' && children.length === 0) continue;
    const style = styleOf(group, attributes);
    const { transform } = attributes;
    const matrix = transform === undefined ? outer : times(outer, readTransform(transform));
    switch (name) {
      case 'g':
        yield* itemsOf(children, style, matrix);
        break;
      case 'path': {
        const { d = '' } = attributes;
        if (d !== '' && (style.fill !== null || isStroked(style))) yield { kind: 'path', d, style, matrix };
        break;
      }
      case 'text': {
        const drawn = drawnText(text);
        const [x, y] = [Number(attributes.x ?? 0), Number(attributes.y ?? 0)];
        if (drawn !== '' && style.fill !== null) yield { kind: 'text', text: drawn, x, y, style, matrix };
        break;
      }
      default:
        throw new RangeError(`The element ${name} is not drawn.`);
    }
  }
}

export function isStroked({ stroke, weight }: Style): boolean {
  return stroke !== null && weight > 0;
}

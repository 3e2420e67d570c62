import { digits, writeElement, type DrawnElement } from '../../renderer';
import { drawnText } from '../letters/width';
import { refuseForeign } from '../pdf/foreign';
import type { Page } from '../pdf/page';
import { itemsOf } from '../pdf/walk';
import type { PictureSize } from './size';

/**
 * A page (mm) as an SVG of exactly so many dots, for what draws pictures with the handout's own letters.
 *
 * @throws ForeignLettersError when a text has letters that the handout's faces lack
 * @throws RangeError when there is an element that is not drawn (see pdf/style.ts and pdf/walk.ts)
 */
export function pictureSvg({ width, height, elements }: Page, size: PictureSize): string {
  refuseForeign([...itemsOf(elements)].flatMap((item) => (item.kind === 'text' ? [item.text] : [])));
  return writeElement({
    name: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: String(size.width),
      height: String(size.height),
      viewBox: `0 0 ${digits(width)} ${digits(height)}`,
      // Whole dots may be a hair off the sheet's shape: the sheet fills them all the same.
      preserveAspectRatio: 'none',
    },
    children: elements.map(asDrawn),
  });
}

function asDrawn(element: DrawnElement): DrawnElement {
  const { children, text } = element;
  return { ...element, children: children.map(asDrawn), ...(text === undefined ? {} : { text: drawnText(text) }) };
}

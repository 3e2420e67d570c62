import { digits, writeElement } from '../renderer';
import { pageTitle } from '../text';
import type { Page } from './pdf/page';

/** A page as an SVG of its own, in true size: strict XML that stands alone. */
export function pageSvg({ width, height, elements }: Page, index: number, pages: number): string {
  const [wide, high] = [digits(width), digits(height)];
  return writeElement({
    name: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${wide}mm`,
      height: `${high}mm`,
      viewBox: `0 0 ${wide} ${high}`,
      role: 'img',
      'aria-label': pageTitle(index + 1, pages),
    },
    children: [{ name: 'title', attributes: {}, children: [], text: pageTitle(index + 1, pages) }, ...elements],
  });
}

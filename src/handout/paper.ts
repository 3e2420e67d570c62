import type { Handout } from '../piece';

/** A size in mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A4 by ISO 216, Letter by ANSI/ASME Y14.1, mm, upright. */
const UPRIGHT: Readonly<Record<Handout['paper'], Size>> = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
};

/** Clear round the page, mm: wide enough for the printers that can't print nearer to the border. */
export const MARGIN = { side: 16, top: 15, foot: 15 } as const;

/** Between two columns of a page that lies on its side, mm. */
export const GUTTER = 11;

/** The size of a sheet of paper as it is printed on, mm. */
export function paperSize({ paper, orientation }: Pick<Handout, 'paper' | 'orientation'>): Size {
  const { width, height } = UPRIGHT[paper];
  return orientation === 'portrait' ? { width, height } : { width: height, height: width };
}

/** The room between the margins, mm; the line at the foot of the page lies outside it. */
export function roomOn(size: Size): Size {
  return { width: size.width - 2 * MARGIN.side, height: size.height - MARGIN.top - MARGIN.foot };
}

/** How many columns the text of a page has, and how wide each is, mm. */
export function columnsOf(size: Size): { readonly count: 1 | 2; readonly width: number } {
  const { width } = roomOn(size);
  return size.width > size.height ? { count: 2, width: (width - GUTTER) / 2 } : { count: 1, width };
}

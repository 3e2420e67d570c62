import { FACES, mostDots, pictureSvg, pngSize, withDots, type Page } from '../handout';
import type { DesignPlan } from '../pickup';
import { writingText } from '../text';
import { drawnPages, inWords } from './drawnPages';
import { readLetters } from './letters';
import { loadPainter } from './painter';
import type { PagesWish } from './pagesWords';
import { CommandError } from './problem';
import type { Progress } from './progress';

/**
 * A pick-up as PNG pictures with so many dots to the inch: its drawing alone, or with `pages` each page of its handout.
 *
 * @throws CommandError where what draws is not there, the letters do not hold all that is written, or the dots are too
 *   many
 */
export async function planPng(
  plan: DesignPlan,
  pickup: number,
  { pages, dots }: { readonly pages: PagesWish | null; readonly dots: number },
  progress: Progress,
): Promise<Uint8Array[]> {
  const fonts = readLetters();
  const paint = await loadPainter(FACES.map((face) => fonts[face]));
  // All are looked through before the first is drawn, which may take a while.
  const sheets = drawnPages(plan, pickup, pages).map((page) => sheetOf(page, dots));
  try {
    return sheets.map((svg, i) => {
      const png = paint(svg, () => progress.step(writingText(i, sheets.length)));
      return withDots(png, dots);
    });
  } finally {
    progress.end();
  }
}

function sheetOf(page: Page, dots: number): string {
  const size = pngSize(page, dots);
  if (size === null) throw new CommandError({ kind: 'too-many-dots', dots, most: mostDots(page) });
  try {
    return pictureSvg(page, size);
  } catch (error) {
    throw inWords(error, 'png');
  }
}

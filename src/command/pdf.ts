import type { DesignPlan } from '../pickup';
import { describeDrawing } from '../renderer';
import { writingText } from '../text';
import { drawnPages, inWords } from './drawnPages';
import { readLetters } from './letters';
import type { PagesWish } from './pagesWords';
import type { Progress } from './progress';

/**
 * A pick-up as a PDF document: its drawing alone on a page of that size, or with `pages` its handout.
 *
 * @throws CommandError where the letters are not there, or do not hold all that is written
 */
export async function planPdf(
  plan: DesignPlan,
  pickup: number,
  pages: PagesWish | null,
  progress: Progress,
): Promise<Uint8Array> {
  const fonts = readLetters();
  const { writePdf } = await import('../handout/pdf/writePdf');
  const { title } = describeDrawing(plan, pickup);
  try {
    return await writePdf(drawnPages(plan, pickup, pages), {
      title,
      language: 'en',
      fonts,
      onPage: (done, all) => progress.step(writingText(done, all)),
    });
  } catch (error) {
    throw inWords(error, 'pdf');
  } finally {
    progress.end();
  }
}

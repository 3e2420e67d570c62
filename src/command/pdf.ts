import { handoutWork } from '../editor';
import { ForeignLettersError, handoutPages, type Page } from '../handout';
import type { DesignPlan } from '../pickup';
import { DEFAULT_HANDOUT } from '../piece';
import { bodyElements, describeDrawing, fileDrawing } from '../renderer';
import { handoutWorkWords, writingText } from '../text';
import { readLetters } from './letters';
import type { PagesWish } from './pagesWords';
import { CommandError } from './problem';
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
  const drawn = pages === null ? [drawingPage(plan, pickup)] : handout(plan, pickup, pages);
  const { title } = describeDrawing(plan, pickup);
  try {
    return await writePdf(drawn, {
      title,
      language: 'en',
      fonts,
      onPage: (done, all) => progress.step(writingText(done, all)),
    });
  } catch (error) {
    if (error instanceof ForeignLettersError) throw new CommandError({ ...error.problem, kind: 'foreign' });
    throw error;
  } finally {
    progress.end();
  }
}

function drawingPage(plan: DesignPlan, pickup: number): Page {
  const drawing = fileDrawing(plan, pickup);
  return { width: drawing.width, height: drawing.height, elements: bodyElements(drawing) };
}

function handout(plan: DesignPlan, pickup: number, wish: PagesWish): Page[] {
  const { design } = plan;
  const wanted = { ...DEFAULT_HANDOUT, ...design.handout, ...wish };
  return handoutPages(handoutWork(plan, pickup, wanted, handoutWorkWords(design)));
}

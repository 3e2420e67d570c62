import { handoutWork } from '../editor';
import { ForeignLettersError, handoutPages, type Page } from '../handout';
import type { DesignPlan } from '../pickup';
import { DEFAULT_HANDOUT } from '../piece';
import { bodyElements, fileDrawing } from '../renderer';
import { handoutWorkWords } from '../text';
import type { PagesWish } from './pagesWords';
import { CommandError } from './problem';

/** What of a pick-up is drawn: its drawing alone on a page of that size, or with `wish` the pages of its handout. */
export function drawnPages(plan: DesignPlan, pickup: number, wish: PagesWish | null): Page[] {
  if (wish === null) {
    const drawing = fileDrawing(plan, pickup);
    return [{ width: drawing.width, height: drawing.height, elements: bodyElements(drawing) }];
  }
  const { design } = plan;
  const wanted = { ...DEFAULT_HANDOUT, ...design.handout, ...wish };
  return handoutPages(handoutWork(plan, pickup, wanted, handoutWorkWords(design)));
}

/** The same error in the command's words where it is about letters that are not there; any other as it is. */
export function inWords(error: unknown, form: 'pdf' | 'png'): unknown {
  return error instanceof ForeignLettersError ? new CommandError({ ...error.problem, kind: 'foreign', form }) : error;
}

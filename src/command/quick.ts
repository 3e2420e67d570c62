import { answerPlace, answerRow, type PlaceAnswer } from '../pickup';
import type { PlaceQuestion, QuickFault, RowQuestion } from '../piece';
import { fileSvg } from '../renderer';
import { placeReport, planCsv, planDocument, quickWords, rowReport } from '../text';
import { CommandError } from './problem';
import type { QuickWish } from './quickWords';

/**
 * The answer to a question in the form that is asked for.
 *
 * @throws CommandError where it has no answer, naming what to change
 */
export function quickText(wish: QuickWish): string {
  const { question } = wish;
  return question.kind === 'place' ? placeText(wish, question) : rowText(wish, question);
}

function placeText(wish: QuickWish, question: PlaceQuestion): string {
  const answer = answered(answerPlace(question, wordsFor(wish)), wish);
  if (wish.form === 'text') return placeReport(answer, otherWay(wish, question));
  if (!answer.hasOpenings) throw new CommandError({ kind: 'no-openings', form: wish.form });
  switch (wish.form) {
    case 'json':
      return json(planDocument(answer.plan));
    case 'csv':
      return planCsv(planDocument(answer.plan));
    case 'svg':
      return fileSvg(answer.plan, 0);
  }
}

function rowText(wish: QuickWish, question: RowQuestion): string {
  const answer = answered(answerRow(question, wordsFor(wish)), wish);
  return wish.form === 'json' ? json(planDocument(answer.plan)) : rowReport(answer);
}

/** The same stitches with the skips laid the other way, to be told beside the answer. */
function otherWay(wish: QuickWish, question: PlaceQuestion): PlaceAnswer | null {
  const spread = question.spread === 'even' ? 'grouped' : 'even';
  const answer = answerPlace({ ...question, spread }, wordsFor(wish));
  return answer.ok ? answer : null;
}

function wordsFor({ question, units }: QuickWish) {
  return quickWords(question, { units, terms: 'US', hand: 'right' });
}

function answered<Answer extends { readonly ok: true }>(answer: Answer | QuickFault, wish: QuickWish): Answer {
  if (answer.ok) return answer;
  const command = wish.question.kind === 'place' ? 'place' : wish.question.change;
  throw new CommandError({ kind: 'unanswered', command, fault: answer, units: wish.units });
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

import { answerPlace, answerRow, type PlaceAnswer, type RowAnswer } from '../../pickup';
import type { QuickField } from '../../piece';
import {
  placeReport,
  placeSentence,
  placeUse,
  quickFaultText,
  quickUnits,
  quickWords,
  readPlace,
  readRow,
  rowProof,
  rowReport,
  rowSentence,
  type PlaceTyped,
  type QuickVoice,
  type RowTyped,
} from '../../text';

/** Why what is typed has no answer, and beside which field that is to be said. */
export interface Unanswered {
  readonly ok: false;
  readonly field: QuickField;
  readonly why: string;
}

export interface Answered {
  readonly ok: true;
  readonly answer: PlaceAnswer | RowAnswer;
  /** The answer to be heard: the sentence and how the places are used. */
  readonly heard: string;
  /** The whole of it in plain text; made when it is asked for. */
  readonly report: () => string;
}

/** The answer to what is typed in the dialog, in the terms and units of the design that is open. */
export function ask(typed: PlaceTyped | RowTyped, shown: QuickVoice): Answered | Unanswered {
  return 'have' in typed ? askRow(typed, shown) : askPlace(typed, shown);
}

function askPlace(typed: PlaceTyped, shown: QuickVoice): Answered | Unanswered {
  const voice = { ...shown, units: quickUnits(typed.measure, shown.units) };
  const read = readPlace(typed, shown.units);
  if (!read.ok) return { ok: false, field: read.field, why: quickFaultText(read, voice.units) };
  const { question } = read;
  const words = quickWords(question, voice);
  const answer = answerPlace(question, words);
  if (!answer.ok) return { ok: false, field: answer.field, why: quickFaultText(answer, voice.units) };
  const report = (): string => {
    const other = answerPlace({ ...question, spread: question.spread === 'even' ? 'grouped' : 'even' }, words);
    return placeReport(answer, other.ok ? other : null);
  };
  return { ok: true, answer, heard: `${placeSentence(answer)}. ${placeUse(answer)}`, report };
}

function askRow(typed: RowTyped, shown: QuickVoice): Answered | Unanswered {
  const read = readRow(typed);
  if (!read.ok) return { ok: false, field: read.field, why: quickFaultText(read, shown.units) };
  const answer = answerRow(read.question, quickWords(read.question, shown));
  if (!answer.ok) return { ok: false, field: answer.field, why: quickFaultText(answer, shown.units) };
  return { ok: true, answer, heard: `${rowSentence(answer)}. ${rowProof(answer)}`, report: () => rowReport(answer) };
}

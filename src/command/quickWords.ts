import { quickMeasure, readPlace, readRow, type PlaceTyped, type RowTyped } from '../text';
import type { PlaceQuestion, RowQuestion, Units } from '../piece';
import { CommandError } from './problem';
import type { Form } from './words';

/** Commands that answer a question typed in their own words, without a file. */
export type QuickTask = 'place' | 'increase' | 'decrease';

/** A question with the unit that its lengths are told in. */
export interface QuickWish {
  readonly kind: 'quick';
  readonly question: PlaceQuestion | RowQuestion;
  readonly units: Units;
  readonly form: Form;
  readonly out: string | null;
}

export const QUICK_FORMS: Readonly<Record<QuickTask, readonly Form[]>> = {
  place: ['text', 'json', 'csv', 'svg'],
  increase: ['text', 'json'],
  decrease: ['text', 'json'],
};

export const QUICK_OPTIONS: Readonly<Record<QuickTask, readonly string[]>> = {
  place: ['--sections', '--grouped', '--gauge', '--as', '--out', '--help'],
  increase: ['--round', '--as', '--out', '--help'],
  decrease: ['--round', '--as', '--out', '--help'],
};

export function isQuickTask(word: string): word is QuickTask {
  return Object.hasOwn(QUICK_FORMS, word);
}

/**
 * The question that the words after the command ask: `71 over 88 rows`, `40 over 10 in`, `39 over 131`, `to 92 over 131`.
 *
 * @throws CommandError where the words make no question or hold no number
 */
export function quickWish(
  task: QuickTask,
  words: readonly string[],
  values: ReadonlyMap<string, string>,
  rest: { readonly form: Form; readonly out: string | null },
): QuickWish {
  const [before = '', after = '', ...more] = words.join(' ').split(/\s+over\s+/u);
  const sides = before !== '' && after !== '' && more.length === 0;
  if (!sides) throw new CommandError({ kind: 'no-question', command: task, words: words.join(' ') });
  return task === 'place' ? placeWish(before, after, values, rest) : rowWish(task, before, after, values, rest);
}

/** A number and what it counts: `88 rows`, `10in`. */
const COUNTED = /^(.*?)\s*(\p{L}+\.?|["″”])$/u;

function placeWish(
  place: string,
  after: string,
  values: ReadonlyMap<string, string>,
  rest: Pick<QuickWish, 'form' | 'out'>,
): QuickWish {
  const [, over = after, word = ''] = COUNTED.exec(after) ?? [];
  const measure = word === '' ? 'row' : quickMeasure(word);
  if (!measure) throw new CommandError({ kind: 'unknown-measure', word });
  const typed: PlaceTyped = {
    place,
    over,
    measure,
    sections: values.get('--sections') ?? '',
    gauge: values.get('--gauge') ?? '',
    spread: values.has('--grouped') ? 'grouped' : 'even',
  };
  const units = measure === 'in' ? 'in' : 'cm';
  const read = readPlace(typed, units);
  if (!read.ok) throw new CommandError({ kind: 'unanswered', command: 'place', fault: read, units });
  return { kind: 'quick', question: read.question, units, ...rest };
}

function rowWish(
  change: RowTyped['change'],
  before: string,
  have: string,
  values: ReadonlyMap<string, string>,
  rest: Pick<QuickWish, 'form' | 'out'>,
): QuickWish {
  const [, to, amount = before] = /^(?:(to|by)\s+)?(.*)$/su.exec(before) ?? [];
  const typed: RowTyped = {
    have: have.replace(/\s*(?:stitch(?:es)?|sts?)$/u, ''),
    change,
    amount,
    amountIs: to === 'to' ? 'to' : 'by',
    round: values.has('--round'),
  };
  const read = readRow(typed);
  if (!read.ok) throw new CommandError({ kind: 'unanswered', command: change, fault: read, units: 'cm' });
  return { kind: 'quick', question: read.question, units: 'cm', ...rest };
}

import { PAGES_FLAGS, PAGES_OPTIONS, pagesWish, type PagesWish } from './pagesWords';
import { dotsWish } from './pictureWords';
import { CommandError } from './problem';
import { isQuickTask, QUICK_FORMS, QUICK_OPTIONS, quickWish, type QuickTask, type QuickWish } from './quickWords';

export type Task = 'measure' | 'plan' | 'check';
export type Form = 'text' | 'json' | 'csv' | 'svg';
/** The forms of a plan: PDF and PNG are those that are no text. */
export type PlanForm = Form | 'html' | 'pdf' | 'png';

/** What the words of the command line ask for. */
export type Wish =
  | { readonly kind: 'help' }
  | QuickWish
  | {
      readonly kind: 'do';
      readonly task: Task;
      readonly file: string;
      readonly form: PlanForm;
      readonly pickup: string | null;
      /** The handout's pages instead of the drawing alone, and how they differ from what the file says. */
      readonly pages: PagesWish | null;
      /** How many dots of a picture go to the inch. */
      readonly dots: number;
      readonly out: string | null;
    };

const FORMS: Readonly<Record<Task, readonly PlanForm[]>> & Readonly<Record<QuickTask, readonly Form[]>> = {
  measure: ['text', 'json'],
  plan: ['text', 'html', 'json', 'csv', 'svg', 'pdf', 'png'],
  check: ['text', 'json'],
  ...QUICK_FORMS,
};

const OPTIONS: Readonly<Record<Task | QuickTask, readonly string[]>> = {
  measure: ['--as', '--out', '--help'],
  plan: ['--as', '--pickup', ...PAGES_OPTIONS, '--resolution', '--out', '--help'],
  check: ['--as', '--out', '--help'],
  ...QUICK_OPTIONS,
};

/** Options that stand alone: to name them is to ask for them. */
const FLAGS: readonly string[] = ['--grouped', '--round', ...PAGES_FLAGS];

function isTask(word: string): word is Task | QuickTask {
  return Object.hasOwn(FORMS, word);
}

/**
 * Reads the words after `edgewise`. An option's value follows it or stands behind `=`; after `--` all are files.
 *
 * @throws CommandError naming the word that is wrong
 */
export function readWords(words: readonly string[]): Wish {
  if (words.includes('--help') || words.includes('-h')) return { kind: 'help' };
  const [command, ...rest] = words;
  if (command === undefined) throw new CommandError({ kind: 'no-command' });
  if (!isTask(command)) {
    throw new CommandError({ kind: 'unknown-command', word: command, known: Object.keys(FORMS) });
  }
  const values = new Map<string, string>();
  const files: string[] = [];
  for (let i = 0; i < rest.length; i++) {
    const word = rest[i] ?? '';
    if (word === '--') {
      files.push(...rest.slice(i + 1));
      break;
    }
    // A question may hold a number below nothing, which gets a better answer than an option that is not known.
    if (!word.startsWith('-') || word === '-' || (isQuickTask(command) && /^-\d/u.test(word))) {
      files.push(word);
      continue;
    }
    const [option, inline] = splitOption(word);
    if (!OPTIONS[command].includes(option)) {
      throw new CommandError({ kind: 'unknown-option', word: option, command, known: OPTIONS[command] });
    }
    if (values.has(option)) throw new CommandError({ kind: 'twice', option });
    if (FLAGS.includes(option)) {
      if (inline !== undefined) throw new CommandError({ kind: 'no-value-wanted', option });
      values.set(option, '');
      continue;
    }
    const value = inline ?? rest[(i += 1)];
    if (value === undefined || value === '') throw new CommandError({ kind: 'no-value', option });
    values.set(option, value);
  }
  const asked = values.get('--as') ?? 'text';
  const out = values.get('--out') ?? null;
  if (isQuickTask(command)) return quickWish(command, files, values, { form: formOf(FORMS[command], asked), out });
  const form = formOf(FORMS[command], asked);
  const [file, extra] = files;
  if (file === undefined) throw new CommandError({ kind: 'no-file', command });
  if (extra !== undefined) throw new CommandError({ kind: 'too-many-files', word: extra });
  const [pages, dots] = [pagesWish(form, values), dotsWish(form, values)];
  return { kind: 'do', task: command, file, form, pickup: values.get('--pickup') ?? null, pages, dots, out };
}

function formOf<F extends PlanForm>(known: readonly F[], asked: string): F {
  const form = known.find((one) => one === asked);
  if (!form) throw new CommandError({ kind: 'unknown-form', word: asked, known });
  return form;
}

function splitOption(word: string): [string, string | undefined] {
  const at = word.indexOf('=');
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}

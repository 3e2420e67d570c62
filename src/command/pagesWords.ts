import type { Handout } from '../piece';
import { CommandError } from './problem';

/** What of the file's handout is printed in another way. */
export type PagesWish = Partial<Pick<Handout, 'paper' | 'orientation' | 'version'>>;

export const PAGES_FLAGS = ['--pages', '--exercise', '--answers'] as const;
export const PAGES_OPTIONS = [...PAGES_FLAGS, '--paper', '--orientation'] as const;

const PAPERS = ['A4', 'Letter'] as const;
const ORIENTATIONS = ['portrait', 'landscape'] as const;

/**
 * What is asked of the handout's pages; null where they are not asked for.
 *
 * @throws CommandError where the form holds no pages, they need files and have no name, or an option says nothing
 *   without them
 */
export function pagesWish(form: string, values: ReadonlyMap<string, string>): PagesWish | null {
  if (!values.has('--pages')) {
    const stray = PAGES_OPTIONS.find((option) => values.has(option));
    if (stray !== undefined) throw new CommandError({ kind: 'only-pages', option: stray });
    return null;
  }
  if (form !== 'pdf' && form !== 'png') throw new CommandError({ kind: 'pages-form', form });
  if (form === 'png' && !values.has('--out')) throw new CommandError({ kind: 'pages-out', form });
  const [exercise, answers] = [values.has('--exercise'), values.has('--answers')];
  if (exercise && answers) throw new CommandError({ kind: 'not-both', options: ['--exercise', '--answers'] });
  const paper = chosen('--paper', values, PAPERS);
  const orientation = chosen('--orientation', values, ORIENTATIONS);
  return {
    ...(paper ? { paper } : {}),
    ...(orientation ? { orientation } : {}),
    ...(exercise ? { version: 'exercise' } : answers ? { version: 'answers' } : {}),
  };
}

function chosen<T extends string>(option: string, values: ReadonlyMap<string, string>, known: readonly T[]): T | null {
  const word = values.get(option);
  if (word === undefined) return null;
  const found = known.find((one) => one.toLowerCase() === word.toLowerCase());
  if (!found) throw new CommandError({ kind: 'unknown-value', option, word, known });
  return found;
}

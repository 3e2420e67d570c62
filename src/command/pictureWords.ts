import { CommandError } from './problem';

/** Dots to the inch where nothing is said, and the least and the most that may be. */
const USUAL = 300;
const LEAST = 36;
const MOST = 1200;

/**
 * How many dots of a picture go to the inch.
 *
 * @throws CommandError where the word is no number within reach, or the form has no dots
 */
export function dotsWish(form: string, values: ReadonlyMap<string, string>): number {
  const word = values.get('--resolution');
  if (word === undefined) return USUAL;
  if (form !== 'png') throw new CommandError({ kind: 'only-picture', option: '--resolution' });
  const dots = /^\d{1,9}$/u.test(word) ? Number(word) : NaN;
  if (!(dots >= LEAST && dots <= MOST)) {
    throw new CommandError({ kind: 'unknown-resolution', word, least: LEAST, most: MOST });
  }
  return dots;
}

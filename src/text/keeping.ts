/** Sentences about what is kept in the browser, and about files. */
import { shownName } from './edgeName';

/** What stands under the toolbar for as long as it is so, and what can be done about it. */
export const LASTING = {
  follows: 'This design is open in another tab. This tab shows what is done there, and nothing can be changed here.',
  full: 'Your last changes are not kept: the room that this browser gives the page is full. Save the design to a file, or delete designs that you no longer need.',
  refused:
    'Your changes are not kept: this browser does not let the page store anything. Save the design to a file before you leave.',
  copy: 'Work on a copy',
  here: 'Work here instead',
  save: 'Save to a file',
} as const;

export const KEEPING = {
  locked: 'This design is open in another tab, so it can’t be changed here: choose “Work here instead” at the top.',
  unread: 'The work that was kept from your last visit could not be read, so a sample is shown.',
  unreadWork: 'This design could not be read, so it was not opened.',
  noWork: 'This design is no longer there: it was deleted in another tab.',
  noSample:
    'The sample could not be fetched: check the connection and load the page again, or open a file of your own.',
  designFile: 'Edgewise design',
  theFile: 'The file',
  unreadable: 'The browser could not read it: it may have been moved or locked.',
  beside: 'A design was changed in two places at once: both are kept, side by side in your designs.',
} as const;

export function openedText(name: string): string {
  return `${shownName(name)} is open.`;
}

export function savedText(file: string): string {
  return `${file} is saved.`;
}

export function notSavedText(file: string): string {
  return `${file} was not saved: the browser or the disk refused it. Save it again and choose another place.`;
}

/** A file that was not opened: its name, the reason in a sentence, and that nothing was lost. */
export function notOpenedText(file: string, why: string): string {
  return `${file} was not opened. ${why} Your work is as it was.`;
}

/** Changes that met a newer version: both are kept. */
export function forkedText(name: string): string {
  return `This design was changed in another tab too. What you did here is kept beside it, as ${shownName(name)}.`;
}

/** A name for a copy that no other design has: `Vest, copy`, then `Vest, copy 2`. */
export function copyTitle(name: string, taken: Iterable<string>): string {
  const all = new Set(taken);
  const first = `${name.replace(/, copy( \d+)?$/, '')}, copy`;
  let next = first;
  for (let n = 2; all.has(next); n++) next = `${first} ${n}`;
  return next;
}

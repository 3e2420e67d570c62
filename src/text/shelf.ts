/** Words of the shelf, where all designs stand. */
import { shownName } from './edgeName';

export const SHELF = {
  title: 'Your designs',
  search: 'Search by name',
  samples: 'Samples',
  rename: 'Rename',
  duplicate: 'Duplicate',
  remove: 'Delete',
  undo: 'Undo',
  close: 'Close',
  newName: 'New name',
  here: 'open now',
  elsewhere: 'open in another tab',
  empty:
    'Nothing of your own stands here yet. Open a sample and change what you like, or open a design file: it is kept here as you work, in this browser alone.',
  refused: 'This browser does not let the page keep designs, so there is nothing to show here. Save yours to files.',
  busy: 'It is open in another tab: close it there first.',
} as const;

/** The samples that come with the page: the file and what it shows. The first one opens the page. */
export const SAMPLES = [
  { file: 'pullover', title: 'Round-neck pullover', about: "a child's, neckband in the round" },
  { file: 'vest', title: 'V-neck vest', about: 'V neckband and armhole bands' },
  { file: 'cardigan-front', title: 'Cardigan front', about: 'a band for buttonholes' },
  { file: 'blanket', title: 'Garter blanket', about: 'a border all round' },
  { file: 'heel-flap', title: 'Heel flap', about: 'slipped edges, two gussets' },
  { file: 'strip', title: 'Bare strip', about: '71 stitches over 88 rows, no gauge' },
] as const;

/** When a design was last changed: `3 Nov, 14:05`, with the year where it is another one. */
export function whenText(at: number, now = Date.now()): string {
  const sameYear = new Date(at).getFullYear() === new Date(now).getFullYear();
  return new Intl.DateTimeFormat('en-GB', {
    day: 'numeric',
    month: 'short',
    ...(sameYear ? { hour: '2-digit', minute: '2-digit' } : { year: 'numeric' }),
  }).format(at);
}

/** What can be done with one design, as it is said without seeing it: `Rename Harbour pullover`. */
export function onWork(action: string, name: string): string {
  return `${action} ${shownName(name)}`;
}

export function removedText(name: string): string {
  return `${shownName(name)} is deleted.`;
}

export function restoredText(name: string): string {
  return `${shownName(name)} is back.`;
}

export function renamedText(name: string): string {
  return `It is now called ${shownName(name)}.`;
}

export function duplicatedText(name: string): string {
  return `${shownName(name)} stands beside it.`;
}

/** How many are left of what was searched for. */
export function foundText(count: number, search: string): string {
  if (count === 0) return `No design has “${search}” in its name.`;
  return count === 1 ? '1 design' : `${count} designs`;
}

/** A name as it is searched: without accents and capitals. */
export function searchable(name: string): string {
  return name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('ø', 'o').replaceAll('ß', 'ss');
}

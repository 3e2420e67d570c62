import type { Notice, UnknownField } from '../piece';
import { counted, listed, quoted } from './words';

/** How many unknown fields a notice names; the others are counted. */
const NAMED = 5;

function fieldText({ at, nearest }: UnknownField): string {
  return nearest === null ? at : `${at} (did you mean ${quoted(nearest)}?)`;
}

/** One sentence on one line about something worth knowing of a document that was read. */
export function noticeSentence(notice: Notice): string {
  switch (notice.kind) {
    case 'unknown-fields': {
      const named = notice.fields.slice(0, NAMED).map(fieldText);
      const others = notice.fields.length - named.length;
      const all = others > 0 ? [...named, counted(others, 'other')] : named;
      return `Fields that are not known here were kept and have no effect: ${listed(all)}.`;
    }
    case 'turned-round':
      return `${notice.at}: the outline of piece ${quoted(notice.piece)} ran clockwise and was turned round, so that its edges run as a right-handed knitter works them.`;
    case 'migrated':
      return `The file was in version ${notice.from} of the format; it is saved in version ${notice.to}.`;
  }
}

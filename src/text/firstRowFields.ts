import type { Note, PickupPlan, RowNote } from '../pickup';
import { rowNoteText } from './notes';
import { rowOrRound } from './rowOrRound';

/** The words of the panel that places the first row. */
export const FIRST_ROW = {
  clear: 'Keep clear of markers and seams',
  rib: 'Keep the rib',
  by: 'Put right',
  ways: { whole: 'over all of it', sections: 'section by section' },
  section: 'Section',
  uses: 'Uses',
  work: 'Work',
  leaves: 'Leaves',
  unchanged: 'no change',
} as const;

/** Where nothing is to be put right. */
export function rowRightText(plan: Pick<PickupPlan, 'pickup'>): string {
  return `The count is right as it is picked up: the first ${rowOrRound(plan)} changes nothing.`;
}

/** What a first row could not keep of how it was asked to be placed, a sentence or two each. */
export function rowNotes({ notes, pickup }: Pick<PickupPlan, 'notes' | 'pickup'>): string[] {
  return notes.flatMap((note) => (isRowNote(note) ? [rowNoteText(note, rowOrRound({ pickup }))] : []));
}

function isRowNote(note: Note): note is RowNote {
  return note.kind === 'row-not-clear' || note.kind === 'row-not-in-rib' || note.kind === 'row-not-by-sections';
}

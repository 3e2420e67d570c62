import type { PlaceTyped, RowTyped } from '../../text';

interface Remembered {
  kind: 'place' | 'row';
  place: PlaceTyped;
  row: RowTyped;
}

/** What the first question of a visit holds, so that an answer is there to be read before anything is typed. */
export const EXAMPLE: Remembered = {
  kind: 'place',
  place: { place: '71', over: '88', measure: 'row', sections: '4', gauge: '', spread: 'grouped' },
  row: { have: '131', change: 'decrease', amount: '39', amountIs: 'by', round: false },
};

/** The questions as they were last typed: they stand there again when the dialog is opened again. */
export const remembered: Remembered = $state({ ...EXAMPLE });

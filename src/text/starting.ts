/** The words of the dialog that begins a new design. */
import type { PickupPlan } from '../pickup';
import { shownName } from './edgeName';
import { stitchesText } from './words';

export const STARTING = {
  title: 'A new design',
  lead: 'Choose what it is. It is drawn to your measures and gauge, and stays an ordinary outline that you can shape by hand.',
  leadUK:
    'Choose what it is. It is drawn to your measures and tension, and stays an ordinary outline that you can shape by hand.',
  kinds: 'What it is',
  measures: 'Measures',
  begin: 'Begin',
  addTo: 'Add it to this design',
  fromNothing: 'From nothing',
  fromNothingLine: 'Press the corners of the piece, one after the other.',
  back: 'Choose another',
  close: 'Close',
  stitches: 'sts',
  rows: 'rows',
} as const;

/** Under the picture, as the numbers change: `Neckband: 84 stitches`. */
export function startedCount({ pickup, target }: PickupPlan): string {
  return `${shownName(pickup.name)}: ${stitchesText(target)}`;
}

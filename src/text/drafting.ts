/** The words for drawing a piece from nothing. */
import type { Units } from '../piece';
import type { Mm } from '../units';
import { drawnEdgeSize } from './drawing';
import { lengthText } from './numbers';
import { counted } from './words';

export const DRAFTING = {
  bar: 'A piece from nothing',
  marks: 'Corners of the new piece',
  piece: 'Piece',
  hint: 'Press where a corner comes, counterclockwise from the cast-on; press the first one again to close the outline. By the keys: arrows, then Enter.',
  back: 'Take back',
  close: 'Close the outline',
  leave: 'Leave it',
} as const;

/** Where a corner would come: `12 from the start, row 20`. */
export function draftPlace([x, y]: readonly [number, number]): string {
  const across = x === 0 ? 'at the start' : `${counted(Math.abs(x), 'stitch', 'stitches')} ${x < 0 ? 'left' : 'right'}`;
  const up = y === 0 ? 'at the foot' : `${counted(Math.abs(y), 'row')} ${y < 0 ? 'down' : 'up'}`;
  return `${across}, ${up}`;
}

/** The next corner to those who don't see it. */
export function draftLabel(place: string, corners: number): string {
  return `Next corner: ${place}. ${counted(corners, 'corner')} so far. Enter puts one here.`;
}

/** The edge from the last corner to the next: `24 sts × 30 rows, 14.8 cm`. */
export function draftSize(stitches: number, rows: number, mm: Mm, units: Units): string {
  return `${drawnEdgeSize(stitches, rows)}, ${lengthText(mm, units)}`;
}

import type { DrawnElement } from '../renderer';
import { textAt } from './elements';
import type { Face } from './letters/face';
import { wrapped } from './letters/wrapped';
import { LEADING, RISE, ROOM, TYPE } from './type';

/** Something that is as wide as a column and is never cut: a line of text, a row of a table, a picture. */
export interface Strip {
  /** Room above it where something stands above it, mm. */
  readonly gap: number;
  readonly height: number;
  /** It does not stand at the foot of a column without the one that follows it. */
  readonly withNext?: boolean;
  /** It goes over all columns. */
  readonly across?: boolean;
  /** Stands at the head of a column again where what follows it goes on there: the head of a table. */
  readonly again?: Strip;
  /** Draws it with its upper left corner at a place on the page. */
  readonly draw: (x: number, y: number) => readonly DrawnElement[];
}

interface LineLook {
  readonly size?: number;
  readonly face?: Face;
  /** Room over the first line, mm. */
  readonly gap?: number;
  /** How far the lines after the first are set in, mm. */
  readonly hanging?: number;
  readonly withNext?: boolean;
}

/** A paragraph as strips, one a line, so that it can go on in the next column; never one line alone on either side. */
export function paragraph(text: string, width: number, look: LineLook = {}): Strip[] {
  const { size = TYPE.text, face = 'regular', gap = ROOM.paragraph, hanging = 0, withNext = false } = look;
  const lines = hanging === 0 ? wrapped(text, width, size, face) : hung(text, width, size, face, hanging);
  const height = size * LEADING;
  return lines.map((line, i): Strip => {
    const last = i === lines.length - 1;
    const alone = lines.length > 1 && (i === 0 || i === lines.length - 2);
    return {
      gap: i === 0 ? gap : 0,
      height,
      ...((last ? withNext : alone) ? { withNext: true } : {}),
      draw: (x, y) => [textAt(line, x + (i === 0 ? 0 : hanging), y + baseOf(size, height), { size, face })],
    };
  });
}

/** The first line full, those after it set in. */
function hung(text: string, width: number, size: number, face: Face, hanging: number): string[] {
  const [first = '', ...rest] = wrapped(text, width, size, face);
  return rest.length === 0 ? [first] : [first, ...wrapped(rest.join(' '), width - hanging, size, face)];
}

/** From the top of a line of some height down to the base of letters that stand in its middle. */
export function baseOf(size: number, height: number): number {
  return (height + size * RISE) / 2 - size * 0.03;
}

/** The heading of a block. */
export function heading(text: string, width: number): Strip[] {
  return paragraph(text, width, { size: TYPE.heading, face: 'bold', gap: ROOM.block, withNext: true }).map((strip) => ({
    ...strip,
    withNext: true,
  }));
}

import type { DrawnElement } from '../renderer';
import { box, rule, textAt } from './elements';
import type { Face } from './letters/face';
import { textWidth } from './letters/width';
import { wrapped } from './letters/wrapped';
import { baseOf, type Strip } from './strip';
import { LEADING, LINE, ROOM, TYPE } from './type';

/** An empty box to write a figure into. */
export const BLANK = Symbol('a box to write into');
/** A small box to tick off. */
export const TICK = Symbol('a box to tick');

export type Cell = string | typeof BLANK | typeof TICK;

export interface TableColumn {
  readonly head: string;
  readonly align: 'left' | 'right';
  readonly face?: Face;
}

/** Between two columns, mm. */
const GAP = 4;
/** No column is narrower than this, mm, or its words would stand letter by letter. */
const NARROWEST = 12;
const BLANK_SIZE = { width: 13, height: 6 } as const;
const TICK_SIZE = 3.2;
/** So often a width is halved until it is exact to a millionth of a mm. */
const HALVINGS = 32;
/** Room over and under the text of a row. */
const PADDING = 0.7;

/**
 * A table as strips, a row each, under a head that stands at the top of every column of the page that it reaches. All
 * columns are as wide as what is in them; where that is more than `width` (mm) the words are wrapped, the widest first.
 */
export function table(columns: readonly TableColumn[], rows: readonly (readonly Cell[])[], width: number): Strip[] {
  const widths = widthsFor(columns, rows, width);
  const head: Strip = {
    ...row(
      columns,
      columns.map(({ head: text }) => text),
      widths,
      true,
    ),
    gap: ROOM.heading,
  };
  // Neither the first row nor the last, often a sum, stands alone on a page.
  const body = rows.map((cells, i): Strip => ({
    ...row(columns, cells, widths, false),
    again: head,
    ...(i !== rows.length - 1 && (i === 0 || i === rows.length - 2) ? { withNext: true } : {}),
  }));
  return [{ ...head, withNext: true }, ...body];
}

function widthsFor(columns: readonly TableColumn[], rows: readonly (readonly Cell[])[], width: number): number[] {
  const natural = columns.map(({ head, face }, i) =>
    Math.max(textWidth(head, TYPE.small, 'italic'), ...rows.map((cells) => cellWidth(cells[i] ?? '', face))),
  );
  // A box to write into is as wide as it is.
  const least = natural.map((one, i) =>
    Math.min(one, rows.some((cells) => cells[i] === BLANK) ? BLANK_SIZE.width : NARROWEST),
  );
  const room = width - GAP * (columns.length - 1);
  const upTo = (limit: number) => natural.map((one, i) => Math.max(least[i]!, Math.min(one, limit)));
  const fit = (widths: readonly number[]) => widths.reduce((sum, one) => sum + one, 0) <= room;
  if (fit(natural)) return natural;
  // The widest give way to one limit, which is found by halving.
  let [low, high] = [0, Math.max(...natural)];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (fit(upTo(middle))) low = middle;
    else high = middle;
  }
  return upTo(low);
}

function cellWidth(cell: Cell, face: Face = 'regular'): number {
  if (cell === BLANK) return BLANK_SIZE.width;
  return cell === TICK ? TICK_SIZE : textWidth(cell, TYPE.text, face);
}

function row(
  columns: readonly TableColumn[],
  cells: readonly Cell[],
  widths: readonly number[],
  isHead: boolean,
): Strip {
  const size = isHead ? TYPE.small : TYPE.text;
  const faceOf = (i: number): Face => (isHead ? 'italic' : (columns[i]?.face ?? 'regular'));
  const lines = columns.map((_, i) => {
    const cell = cells[i] ?? '';
    return typeof cell === 'string' ? wrapped(cell, widths[i]!, size, faceOf(i)) : [];
  });
  const step = size * LEADING;
  const boxed = cells.includes(BLANK) ? BLANK_SIZE.height : 0;
  const inner = Math.max(step * Math.max(1, ...lines.map(({ length }) => length)), boxed);
  const height = inner + 2 * PADDING;
  const lefts = widths.map((_, i) => widths.slice(0, i).reduce((sum, one) => sum + one + GAP, 0));
  const across = lefts.at(-1)! + widths.at(-1)!;
  const draw = (x: number, y: number): DrawnElement[] => {
    const drawn: DrawnElement[] = columns.flatMap(({ align }, i): DrawnElement[] => {
      const [left, wide] = [x + lefts[i]!, widths[i]!];
      const cell = cells[i] ?? '';
      if (cell === BLANK) {
        const from = align === 'right' ? left + wide - BLANK_SIZE.width : left;
        return [box(from, y + PADDING, BLANK_SIZE.width, BLANK_SIZE.height, LINE.box)];
      }
      if (cell === TICK) return [box(left, y + (height - TICK_SIZE) / 2, TICK_SIZE, TICK_SIZE, LINE.box)];
      // Where a box stands in the row the words stand in its middle.
      const first = lines[i]!.length === 1 ? y + (height - step) / 2 : y + PADDING;
      return lines[i]!.map((line, n) =>
        textAt(line, align === 'right' ? left + wide : left, first + n * step + baseOf(size, step), {
          size,
          face: faceOf(i),
          anchor: align === 'right' ? 'end' : 'start',
        }),
      );
    });
    return [...drawn, rule(x, y + height, across, LINE.rule)];
  };
  return { gap: 0, height, draw };
}

import { digits, type DrawnElement } from '../renderer';
import { tileText } from '../text';
import { holds, type Frame } from './clip';
import { placedAt, stroked, textAt } from './elements';
import { MARGIN, roomOn, type Size } from './paper';
import { LINE, TYPE } from './type';

/** Neighbouring parts both show this much, mm, so that they can be laid cross on cross. */
export const OVERLAP = 12;
/** Room over a part for its name, mm. */
const NAME = 8;
/** Half the length of a cross's arms, mm. */
const CROSS = 3;
const DASH = '2 1.4';

/** A part of a drawing in true size, to stand on a page of its own. */
export interface Tile {
  /** A letter for its row and a number for its place in it: `B2`. */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** What it shows, in mm of the drawing. */
  readonly frame: Frame;
}

/**
 * A part of a drawing in true size, cut over pages of a size: evenly, so that no page holds a narrow rest. A page on
 * which nothing is picked up is left out.
 *
 * @param points what is picked up, in mm of the drawing
 */
export function tilesOf(
  whole: Frame,
  points: readonly { readonly x: number; readonly y: number }[],
  size: Size,
): Tile[] {
  const room = roomOn(size);
  const count = (length: number, page: number) =>
    length <= page ? 1 : Math.ceil((length - OVERLAP) / (page - OVERLAP));
  const [columns, rows] = [count(whole.width, room.width), count(whole.height, room.height - NAME)];
  const [dx, dy] = [(whole.width - OVERLAP) / columns, (whole.height - OVERLAP) / rows];
  const frameAt = (column: number, row: number): Frame => ({
    x: whole.x + column * dx,
    y: whole.y + row * dy,
    width: columns === 1 ? whole.width : dx + OVERLAP,
    height: rows === 1 ? whole.height : dy + OVERLAP,
  });
  const held = new Set(
    points.flatMap(({ x, y }) => {
      const [column, row] = [Math.floor((x - whole.x) / dx), Math.floor((y - whole.y) / dy)];
      // A place in the room that two parts share lies in both.
      return [column - 1, column].flatMap((c) => [row - 1, row].map((r) => r * columns + c));
    }),
  );
  return Array.from({ length: rows * columns }, (_, i) => i)
    .filter((i) => held.has(i))
    .map((i): Tile => {
      const [column, row] = [i % columns, Math.floor(i / columns)];
      return { name: `${letters(row)}${column + 1}`, column, row, frame: frameAt(column, row) };
    })
    .filter(({ frame }) => points.some(({ x, y }) => holds(frame, [x, y])));
}

function letters(row: number): string {
  const before = Math.floor(row / 26);
  return (before === 0 ? '' : letters(before - 1)) + String.fromCharCode(65 + (row % 26));
}

/**
 * A part as it stands on its page: what it is, the cut line round it, a cross at every corner where another part joins.
 *
 * @param all every part of the same drawing
 * @param of what is drawn, such as the name of its piece
 */
export function tilePage(
  { frame, ...tile }: Tile,
  all: readonly Tile[],
  of: string,
  elements: readonly DrawnElement[],
): DrawnElement[] {
  const [left, upper] = [MARGIN.side, MARGIN.top + NAME];
  const beside = (dx: number, dy: number) =>
    all.find(({ column, row }) => column === tile.column + dx && row === tile.row + dy);
  const next = [beside(-1, 0), beside(1, 0), beside(0, -1), beside(0, 1)];
  const [toLeft, toRight, above, below] = next;
  const half = OVERLAP / 2;
  const crosses = [
    { joins: toLeft ?? above, x: half, y: half },
    { joins: toRight ?? above, x: frame.width - half, y: half },
    { joins: toLeft ?? below, x: half, y: frame.height - half },
    { joins: toRight ?? below, x: frame.width - half, y: frame.height - half },
  ];
  const d = crosses
    .filter(({ joins }) => joins !== undefined)
    .map(({ x, y }) => {
      const [cx, cy] = [left + x, upper + y];
      return `M${digits(cx - CROSS)},${digits(cy)}h${2 * CROSS}M${digits(cx)},${digits(cy - CROSS)}v${2 * CROSS}`;
    })
    .join('');
  const [width, height] = [digits(frame.width), digits(frame.height)];
  const names = next.flatMap((one) => (one ? [one.name] : []));
  const said = tileText(of, all.length > 1 ? tile.name : '', names);
  return [
    textAt(said, left, MARGIN.top + TYPE.text, { size: TYPE.text }),
    stroked(`M${digits(left)},${digits(upper)}h${width}v${height}h-${width}z`, LINE.rule, DASH),
    ...(d === '' ? [] : [stroked(d, LINE.bar)]),
    placedAt(elements, left - frame.x, upper - frame.y),
  ];
}

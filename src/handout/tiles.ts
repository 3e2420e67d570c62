import { digits, type DrawnElement, type Drawing } from '../renderer';
import { tileText } from '../text';
import { clippedPath, holds, type Frame } from './clip';
import { placedAt, stroked, textAt } from './elements';
import { textWidth } from './letters/width';
import { MARGIN, roomOn, type Size } from './paper';
import { LINE, TYPE } from './type';

/** Neighbouring parts both show this much, mm, so that they can be laid cross on cross. */
export const OVERLAP = 12;
/** Room over a part for its name, mm. */
const NAME = 8;
/** Arms of a cross, mm. */
const CROSS = 3;
/** Room from a cut line to its scissors-free end, and its dashes, mm. */
const DASH = '2 1.4';

/** A part of a drawing in true size, on a page of its own. */
export interface Tile {
  /** A letter for its row and a number for its place in it: `B2`. */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** What it shows of the drawing, in mm of the drawing. */
  readonly frame: Frame;
  readonly elements: readonly DrawnElement[];
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly frame: (column: number, row: number) => Frame;
}

/** How a drawing is cut over pages of a size: evenly, so that no part is a narrow rest. */
export function gridOf(drawing: Pick<Drawing, 'width' | 'height'>, size: Size): Grid {
  const room = roomOn(size);
  const [across, down] = [room.width, room.height - NAME];
  const count = (whole: number, part: number) => (whole <= part ? 1 : Math.ceil((whole - OVERLAP) / (part - OVERLAP)));
  const [columns, rows] = [count(drawing.width, across), count(drawing.height, down)];
  const step = (whole: number, parts: number) => (whole - OVERLAP) / parts;
  const [dx, dy] = [step(drawing.width, columns), step(drawing.height, rows)];
  return {
    columns,
    rows,
    frame: (column, row) => ({ x: column * dx, y: row * dy, width: dx + OVERLAP, height: dy + OVERLAP }),
  };
}

/**
 * A drawing in true size cut into the parts that pages can hold. A part in which nothing is picked up is left out. Each
 * text stands in one part, moved in where it would reach beyond it.
 *
 * @param body the drawing's own elements
 */
export function tilesOf(drawing: Drawing, body: readonly DrawnElement[], size: Size): Tile[] {
  const grid = gridOf(drawing, size);
  const tiles: Tile[] = [];
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const frame = grid.frame(column, row);
      if (!drawing.points.some(({ x, y }) => holds(frame, [x, y]))) continue;
      // Half of the room that two parts share belongs to each.
      const own = ownOf(frame, column, row, grid);
      const elements = body.flatMap((element) => clipped(element, frame, own, 'start', TYPE.text));
      tiles.push({ name: `${letters(row)}${column + 1}`, column, row, frame, elements });
    }
  }
  return tiles;
}

function ownOf({ x, y, width, height }: Frame, column: number, row: number, { columns, rows }: Grid): Frame {
  const half = OVERLAP / 2;
  const [left, upper] = [column === 0 ? 0 : half, row === 0 ? 0 : half];
  const [right, lower] = [column === columns - 1 ? 0 : half, row === rows - 1 ? 0 : half];
  return { x: x + left, y: y + upper, width: width - left - right, height: height - upper - lower };
}

function letters(row: number): string {
  const rest = Math.floor(row / 26);
  return (rest === 0 ? '' : letters(rest - 1)) + String.fromCharCode(65 + (row % 26));
}

function clipped(element: DrawnElement, frame: Frame, own: Frame, anchor: string, size: number): DrawnElement[] {
  const { name, attributes, children, text = '' } = element;
  switch (name) {
    case 'g': {
      const inner = children.flatMap((child) => clipped(child, frame, own, anchor, size));
      return inner.length === 0 ? [] : [{ ...element, children: inner }];
    }
    case 'path': {
      const d = clippedPath(attributes.d ?? '', frame);
      return d === '' ? [] : [{ ...element, attributes: { ...attributes, d } }];
    }
    case 'text': {
      const [x, y] = [Number(attributes.x), Number(attributes.y)];
      if (!holds(own, [x, y])) return [];
      if (attributes.transform !== undefined) return [element];
      const width = textWidth(text, Number(attributes['font-size'] ?? size), 'regular');
      const share = { start: 0, middle: 0.5, end: 1 }[attributes['text-anchor'] ?? anchor] ?? 0;
      const least = frame.x + width * share;
      const most = frame.x + frame.width - width * (1 - share);
      return [{ ...element, attributes: { ...attributes, x: digits(Math.max(least, Math.min(most, x))) } }];
    }
    default:
      return [];
  }
}

/** A part as it stands on its page: its name, the cut lines round it, and a cross at every corner that it shares. */
export function tilePage(tile: Tile, all: readonly Tile[]): DrawnElement[] {
  const { frame } = tile;
  const [left, upper] = [MARGIN.side, MARGIN.top + NAME];
  const beside = (dx: number, dy: number) =>
    all.find(({ column, row }) => column === tile.column + dx && row === tile.row + dy);
  const next = [beside(-1, 0), beside(1, 0), beside(0, -1), beside(0, 1)];
  const [toLeft, toRight, above, below] = next.map((one) => one !== undefined);
  const crosses = [
    [toLeft || above, OVERLAP / 2, OVERLAP / 2],
    [toRight || above, frame.width - OVERLAP / 2, OVERLAP / 2],
    [toLeft || below, OVERLAP / 2, frame.height - OVERLAP / 2],
    [toRight || below, frame.width - OVERLAP / 2, frame.height - OVERLAP / 2],
  ] as const;
  const d = crosses
    .filter(([is]) => is)
    .map(([, x, y]) => {
      const [cx, cy] = [left + x, upper + y];
      return `M${digits(cx - CROSS)},${digits(cy)}h${2 * CROSS}M${digits(cx)},${digits(cy - CROSS)}v${2 * CROSS}`;
    })
    .join('');
  const border = `M${digits(left)},${digits(upper)}h${digits(frame.width)}v${digits(frame.height)}h${digits(-frame.width)}z`;
  return [
    textAt(
      tileText(
        tile.name,
        next.flatMap((one) => (one ? [one.name] : [])),
      ),
      left,
      MARGIN.top + TYPE.text,
      { size: TYPE.text },
    ),
    stroked(border, LINE.rule, DASH),
    ...(d === '' ? [] : [stroked(d, LINE.bar)]),
    placedAt(tile.elements, left - frame.x, upper - frame.y),
  ];
}

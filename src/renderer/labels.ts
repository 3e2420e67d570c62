import { CLEAR } from './sizes';
import type { Box } from './marks';

/** Side of the squares that boxes and lines are filed under, in sheet mm. */
const SQUARE = 6;

/** More rows of squares than any sheet has, so that every square has a key of its own. */
const MOST_ROWS = 1 << 20;

/**
 * The room on a sheet. Labels are placed one after the other, the most important first; each takes the first of its
 * candidate boxes that meets no label and no line, or is left out.
 */
export class LabelBoard {
  readonly #sheet: Box;
  readonly #boxes = new Map<number, Box[]>();
  /** Ends of lines, four numbers each. */
  readonly #lines = new Map<number, number[]>();
  readonly placed: Box[] = [];

  /** @param sheet no label leaves it */
  constructor(sheet: Box) {
    this.#sheet = sheet;
  }

  /** Keeps labels off a straight line. Long ones are filed in pieces. */
  block(x0: number, y0: number, x1: number, y1: number): void {
    const pieces = Math.max(1, Math.ceil(Math.max(Math.abs(x1 - x0), Math.abs(y1 - y0)) / SQUARE));
    const [dx, dy] = [(x1 - x0) / pieces, (y1 - y0) / pieces];
    for (let i = 0; i < pieces; i++) this.#fileLine(x0 + dx * i, y0 + dy * i, x0 + dx * (i + 1), y0 + dy * (i + 1));
  }

  #fileLine(x0: number, y0: number, x1: number, y1: number): void {
    const lastColumn = Math.floor(Math.max(x0, x1) / SQUARE);
    const lastRow = Math.floor(Math.max(y0, y1) / SQUARE);
    for (let column = Math.floor(Math.min(x0, x1) / SQUARE); column <= lastColumn; column++) {
      for (let row = Math.floor(Math.min(y0, y1) / SQUARE); row <= lastRow; row++) {
        const known = this.#lines.get(keyOf(column, row));
        if (known) known.push(x0, y0, x1, y1);
        else this.#lines.set(keyOf(column, row), [x0, y0, x1, y1]);
      }
    }
  }

  blockTrace(trace: readonly number[]): void {
    for (let i = 0; i + 3 < trace.length; i += 2) {
      this.block(trace[i]!, trace[i + 1]!, trace[i + 2]!, trace[i + 3]!);
    }
  }

  /** Whether a box with clear room round it meets nothing. */
  isFree({ x, y, width, height }: Box, off: 'labels' | 'labels and lines' = 'labels and lines'): boolean {
    const { x: left, y: top, width: across, height: down } = this.#sheet;
    if (x < left || y < top || x + width > left + across || y + height > top + down) return false;
    const box = { x: x - CLEAR, y: y - CLEAR, width: width + 2 * CLEAR, height: height + 2 * CLEAR };
    for (const key of squares(box.x, box.y, box.x + box.width, box.y + box.height)) {
      if (this.#boxes.get(key)?.some((other) => overlap(box, other))) return false;
      if (off === 'labels') continue;
      const lines = this.#lines.get(key) ?? [];
      for (let i = 0; i < lines.length; i += 4) {
        if (crosses(box, lines[i]!, lines[i + 1]!, lines[i + 2]!, lines[i + 3]!)) return false;
      }
    }
    return true;
  }

  /** The first free candidate, whose room is then taken; null when none is free. */
  place(candidates: Iterable<Box>, off?: 'labels' | 'labels and lines'): Box | null {
    for (const box of candidates) {
      if (!this.isFree(box, off)) continue;
      this.#take(box);
      return box;
    }
    return null;
  }

  #take(box: Box): void {
    this.placed.push(box);
    this.reserve(box);
  }

  /** Keeps all later labels off a box, free or not. */
  reserve(box: Box): void {
    for (const key of squares(box.x, box.y, box.x + box.width, box.y + box.height)) {
      const known = this.#boxes.get(key);
      if (known) known.push(box);
      else this.#boxes.set(key, [box]);
    }
  }
}

/** Boxes that only touch do not overlap. */
export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export function boxAround(x: number, y: number, width: number, height: number): Box {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

function keyOf(column: number, row: number): number {
  return column * MOST_ROWS + row;
}

/** The keys of all squares that a rectangle touches. */
function squares(left: number, top: number, right: number, bottom: number): number[] {
  const keys: number[] = [];
  const [firstRow, lastRow] = [Math.floor(top / SQUARE), Math.floor(bottom / SQUARE)];
  for (let column = Math.floor(left / SQUARE); column <= Math.floor(right / SQUARE); column++) {
    for (let row = firstRow; row <= lastRow; row++) keys.push(keyOf(column, row));
  }
  return keys;
}

/** Whether a straight line enters a box, by clipping it against the four sides (Liang and Barsky, 1984). */
function crosses(box: Box, x0: number, y0: number, x1: number, y1: number): boolean {
  const dx = x1 - x0;
  const dy = y1 - y0;
  let enter = 0;
  let leave = 1;
  const sides = [
    [-dx, x0 - box.x],
    [dx, box.x + box.width - x0],
    [-dy, y0 - box.y],
    [dy, box.y + box.height - y0],
  ] as const;
  for (const [across, room] of sides) {
    if (across === 0) {
      if (room < 0) return false;
    } else if (across < 0) enter = Math.max(enter, room / across);
    else leave = Math.min(leave, room / across);
  }
  return enter <= leave;
}

/** Which whole stitches of the grid lie inside an outline. */

/** A run of whole stitches in one row: columns `from` to `to - 1`. */
export interface Span {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

export interface Window {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** How far a stitch may stick out of an outline by the error of its numbers. */
const SLACK = 1e-6;

/**
 * The whole stitches inside a closed outline, row by row from the bottom. A row is cut at the heights of `cuts` (parts
 * of a row): one in the middle for the worked outline, whose corners all lie on the grid; near both its sides for a
 * smooth one.
 *
 * @param outline x0, y0, x1, y1 … in stitches and rows, closed by its first corner
 * @param window in stitches and rows; rows and stitches outside it are left out
 */
export function spansInside(outline: readonly number[], window: Window, cuts: readonly number[]): Span[] {
  const spans: Span[] = [];
  const first = Math.max(Math.floor(window.minY), Math.floor(lowest(outline)));
  const last = Math.min(Math.ceil(window.maxY), Math.ceil(highest(outline)));
  for (let row = first; row < last; row++) {
    let runs: [number, number][] | null = null;
    for (const cut of cuts) {
      const crossed = crossings(outline, row + cut);
      runs = runs === null ? crossed : common(runs, crossed);
    }
    for (const [left, right] of runs ?? []) {
      // Plus 0: there is no column -0.
      const from = Math.max(Math.ceil(left - SLACK), Math.floor(window.minX)) + 0;
      const to = Math.min(Math.floor(right + SLACK), Math.ceil(window.maxX));
      if (to > from) spans.push({ row, from, to });
    }
  }
  return spans;
}

/** Whether a place lies inside a closed outline: an odd number of its sides pass to the left of the place. */
export function isInside(outline: readonly number[], x: number, y: number): boolean {
  let inside = false;
  let [x0, y0] = [outline.at(-2)!, outline.at(-1)!];
  for (let i = 0; i + 1 < outline.length; i += 2) {
    const x1 = outline[i]!;
    const y1 = outline[i + 1]!;
    if (y0 > y !== y1 > y && x0 + ((y - y0) / (y1 - y0)) * (x1 - x0) <= x) inside = !inside;
    x0 = x1;
    y0 = y1;
  }
  return inside;
}

function crossings(outline: readonly number[], y: number): [number, number][] {
  const at: number[] = [];
  const n = outline.length;
  for (let i = 0; i < n; i += 2) {
    const y0 = outline[i + 1]!;
    const y1 = outline[(i + 3) % n]!;
    const [x0, x1] = [outline[i]!, outline[(i + 2) % n]!];
    if (y0 > y !== y1 > y) at.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
  }
  at.sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (let i = 0; i + 1 < at.length; i += 2) runs.push([at[i]!, at[i + 1]!]);
  return runs;
}

function common(a: readonly [number, number][], b: readonly [number, number][]): [number, number][] {
  return a.flatMap(([left, right]) =>
    b.flatMap(([otherLeft, otherRight]): [number, number][] => {
      const run: [number, number] = [Math.max(left, otherLeft), Math.min(right, otherRight)];
      return run[1] > run[0] ? [run] : [];
    }),
  );
}

function lowest(outline: readonly number[]): number {
  return outline.reduce((low, value, i) => (i % 2 === 1 && value < low ? value : low), Infinity);
}

function highest(outline: readonly number[]): number {
  return outline.reduce((high, value, i) => (i % 2 === 1 && value > high ? value : high), -Infinity);
}

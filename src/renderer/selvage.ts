import type { MeasuredEdge } from '../shaping';

/** A stitch by its column and row. */
export type Cell = readonly [column: number, row: number];

/** Stitches along the edges that look unlike the fabric inside them. */
export interface EdgeStitches {
  /** Lower of the two rows of each slipped chain stitch. */
  readonly chains: readonly Cell[];
  /** Ridges' bumps along a garter selvage. */
  readonly bumps: readonly Cell[];
  /** Stitches with a bind-off chain along their top, a cast-on along their bottom, or an open loop over them. Loops that are picked up are drawn as points instead. */
  readonly boundOff: readonly Cell[];
  readonly castOn: readonly Cell[];
  readonly open: readonly Cell[];
  /** Stitches with an open loop under them. */
  readonly hanging: readonly Cell[];
  /** Keys of the stitches that are drawn here and so not with the fabric. */
  readonly taken: ReadonlySet<string>;
}

export function cellKey(column: number, row: number): string {
  return `${column} ${row}`;
}

export function edgeStitches(edges: readonly MeasuredEdge[], picked: readonly MeasuredEdge[]): EdgeStitches {
  const chains: Cell[] = [];
  const bumps: Cell[] = [];
  const boundOff: Cell[] = [];
  const castOn: Cell[] = [];
  const open: Cell[] = [];
  const hanging: Cell[] = [];
  const taken = new Set<string>();
  const take = (cell: Cell) => taken.add(cellKey(...cell));
  for (const edge of edges) {
    if (edge.shape === 'horizontal') {
      const cells = treadCells(edge.from[0], edge.from[1], edge.to[0] - edge.from[0]);
      if (edge.finish === 'bound-off') boundOff.push(...cells);
      else if (edge.finish === 'cast-on') castOn.push(...cells);
      else if (!picked.includes(edge)) (edge.side === 'top' ? open : hanging).push(...cells);
      continue;
    }
    for (const cell of treads(edge)) (cell.top ? boundOff : castOn).push(cell.at);
    if (edge.selvage === 'plain') continue;
    const rows = selvageCells(edge);
    for (let i = 0; i + 1 < rows.length; i += 2) {
      const [lower, upper] = [rows[i]!, rows[i + 1]!];
      if (edge.selvage === 'slipped' && lower[0] === upper[0]) {
        chains.push(lower);
        take(lower);
        take(upper);
      } else if (edge.selvage === 'garter') {
        bumps.push(upper);
        take(upper);
      }
    }
  }
  return { chains, bumps, boundOff, castOn, open, hanging, taken };
}

/** The stitches inside a level stretch of `across` stitches from (x, y); travelled leftwards it is a top edge. */
function treadCells(x: number, y: number, across: number): Cell[] {
  const row = across < 0 ? y - 1 : y;
  const left = Math.min(x, x + across);
  return Array.from({ length: Math.abs(across) }, (_, i) => [left + i, row] as const);
}

/** Stitches bound off or cast on together along an edge that climbs; single ones are decreased or increased instead. */
function treads(edge: MeasuredEdge): { at: Cell; top: boolean }[] {
  const found: { at: Cell; top: boolean }[] = [];
  let [x, y] = edge.from;
  for (const { across, up, rowsFirst = false } of edge.worked) {
    const level = up < 0 !== rowsFirst ? y + up : y;
    if (Math.abs(across) > 1) {
      for (const at of treadCells(x, level, across)) found.push({ at, top: across < 0 });
    }
    x += across;
    y += up;
  }
  return found;
}

/** The edge stitch of every row along an edge, from the bottom up. */
function selvageCells(edge: MeasuredEdge): Cell[] {
  const cells: Cell[] = [];
  let [x, y] = edge.from;
  for (const { across, up, rowsFirst = false } of edge.worked) {
    const at = up < 0 !== rowsFirst ? x : x + across;
    if (up > 0) {
      for (let i = 0; i < up; i++) cells.push([at - 1, y + i]);
    } else {
      for (let i = 1; i <= -up; i++) cells.push([at, y - i]);
    }
    x += across;
    y += up;
  }
  return cells.sort((a, b) => a[1] - b[1]);
}

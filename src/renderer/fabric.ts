import type { MeasuredPiece } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import type { Gauge } from '../units';
import { rowHeight, shelf, stitchWidth } from '../units';
import { chainPath, linesPath } from './toPath';
import { gridToSheet } from './place';
import type { DrawOptions } from './options';
import { smoothOutline, stairOutline } from './outline';
import { spansInside, type Span, type Window } from './cells';
import { cellKey, edgeStitches, type Cell } from './selvage';
import { WEIGHT } from './sizes';
import { lookOf, stitchPath, stitchShapes } from './stitches';
import type { PathMark, PathRole, Place, StitchPattern } from './marks';

export type FabricStyle = 'pattern' | 'near-edge' | 'none';

export interface DrawnFabric {
  readonly marks: readonly PathMark[];
  readonly pattern: StitchPattern | null;
}

/** A stitch this wide and high on the sheet, mm, shows where the needle goes. */
const LEGIBLE = { width: 2.2, height: 1.6 } as const;

/** Below this width on the sheet a texture is only noise: the fabric is a plain tint. */
const TEXTURED = 0.8;

/** Weight of a stitch's line as a part of its width, as long as it is less than the usual one. */
const FINE = 0.055;

/** Near an edge means within this many sheet mm of it, and at least this many stitches. */
const NEAR = { mm: 9, stitches: 3 } as const;

/** Whether single stitches can be told apart at this scale (sheet mm to fabric mm): when to draw them. */
export function stitchesLegible(scale: number, gauge: Gauge): boolean {
  return stitchWidth(gauge) * scale >= LEGIBLE.width && rowHeight(gauge) * scale >= LEGIBLE.height;
}

const kept = shelf<MeasuredPiece['edges'], DrawnFabric>(2);

/**
 * The fabric of a piece as the options want it; kept while nothing changes that it is drawn from.
 * @param picked ids of the edges that are picked up from
 */
export function drawFabric(
  place: Place,
  measured: MeasuredPiece,
  picked: ReadonlySet<string>,
  { detail, fabric, windows }: DrawOptions,
  patternId: string,
): DrawnFabric {
  const { x, y, scale, cell } = place;
  const { piece, edges } = measured;
  const nothing = { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const window = windows ? (windows[piece.id] ?? nothing) : null;
  const seen = window ? [window.minX, window.minY, window.maxX, window.maxY] : [];
  const stand = [x, y, scale, cell.width, cell.height, piece.fabric, detail, fabric, patternId, ...seen];
  return kept(edges, [...stand, ...picked], () => {
    const along = edges.filter((edge) => picked.has(edge.id));
    if (detail === 'stitches') return drawStitchFabric(place, measured, along, window);
    return drawShapeFabric(place, measured, along, fabric, patternId);
  });
}

/** The fabric as a whole: a tint, and on screen a texture of stitches in their true size. */
function drawShapeFabric(
  place: Place,
  measured: MeasuredPiece,
  picked: readonly MeasuredEdge[],
  style: FabricStyle,
  patternId: string,
): DrawnFabric {
  if (style === 'none') return { marks: [], pattern: null };
  const d = measured.edges.map((edge, i) => chainPath(place, edge.line, i === 0)).join('') + 'Z';
  const tint: PathMark = { kind: 'path', role: 'fabric', d, count: 1 };
  if (place.cell.width * place.scale < TEXTURED) return { marks: [tint], pattern: null };
  if (style === 'near-edge') return { marks: [tint, ...nearEdges(place, measured, picked)], pattern: null };
  const textured: PathMark = { ...tint, pattern: patternId };
  return { marks: [tint, textured], pattern: patternOf(place, measured, patternId) };
}

/** Two stitches by two rows hold every one of the fabrics. */
function patternOf(place: Place, { piece }: MeasuredPiece, id: string): StitchPattern {
  const cells: Cell[] = [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
  ];
  const { width, height } = sheetCell(place);
  const still: Place = { ...place, x: 0, y: 2 * height };
  return {
    id,
    x: place.x,
    y: place.y - 2 * height,
    width: 2 * width,
    height: 2 * height,
    marks: fabricPaths(still, piece.fabric, cells),
  };
}

/** The stitches of a stretch of the fabric, each whole one inside the worked outline, with those along its edges. */
function drawStitchFabric(
  place: Place,
  measured: MeasuredPiece,
  picked: readonly MeasuredEdge[],
  window: Window | null,
): DrawnFabric {
  const stair = stairOutline(measured.edges);
  const { width, height } = place.cell;
  const seen: Window = window
    ? { minX: window.minX / width, minY: window.minY / height, maxX: window.maxX / width, maxY: window.maxY / height }
    : { minX: -Infinity, minY: -Infinity, maxX: Infinity, maxY: Infinity };
  const d = linesPath(
    pairs(stair).map(([x, y]) => gridToSheet(place, x, y)),
    true,
  );
  const along = edgeStitches(measured.edges, picked);
  const inWindow = ([column, row]: Cell) =>
    column + 1 > seen.minX && column < seen.maxX && row + 2 > seen.minY && row < seen.maxY;
  const cells = cellsOf(spansInside(stair, seen, [0.5])).filter(
    ([column, row]) => !along.taken.has(cellKey(column, row)),
  );
  const shapes = stitchShapes(width * place.scale, height * place.scale);
  const edge = (role: PathRole, shape: string, all: readonly Cell[]): PathMark[] => {
    const list = all.filter(inWindow);
    return list.length === 0 ? [] : [{ kind: 'path', role, d: stitchPath(place, shape, list), count: list.length }];
  };
  return {
    marks: [
      { kind: 'path', role: 'fabric', d, count: 1 },
      ...fabricPaths(place, measured.piece.fabric, cells),
      ...edge('selvage', shapes.chain, along.chains),
      ...edge('selvage', shapes.purl, along.bumps),
      ...edge('selvage', shapes.castOn, along.castOn),
      ...edge('selvage', shapes.link, along.boundOff),
      ...edge('open', shapes.open, along.open),
      ...edge('open', shapes.hanging, along.hanging),
    ],
    pattern: null,
  };
}

/** For files: whole stitches within a little distance of the edges that are picked up from, as plain paths. */
function nearEdges(place: Place, measured: MeasuredPiece, picked: readonly MeasuredEdge[]): PathMark[] {
  const { width, height } = sheetCell(place);
  const [reachX, reachY] = [Math.max(NEAR.mm / width, NEAR.stitches), Math.max(NEAR.mm / height, NEAR.stitches)];
  const near = new Set<string>();
  const outline = smoothOutline(measured.edges, place.cell);
  for (const edge of picked) {
    const trace = smoothOutline([edge], place.cell);
    trace.push(...edge.to);
    for (const [x, y] of densely(pairs(trace))) {
      for (let column = Math.floor(x - reachX); column < x + reachX; column++) {
        for (let row = Math.floor(y - reachY); row < y + reachY; row++) {
          const apart = ((column + 0.5 - x) / reachX) ** 2 + ((row + 0.5 - y) / reachY) ** 2;
          if (apart <= 1) near.add(cellKey(column, row));
        }
      }
    }
  }
  const everywhere: Window = { minX: -Infinity, minY: -Infinity, maxX: Infinity, maxY: Infinity };
  const cells = cellsOf(spansInside(outline, everywhere, [0.02, 0.5, 0.98]));
  return fabricPaths(
    place,
    measured.piece.fabric,
    cells.filter(([column, row]) => near.has(cellKey(column, row))),
  );
}

function fabricPaths(place: Place, fabric: MeasuredPiece['piece']['fabric'], cells: readonly Cell[]): PathMark[] {
  const { width, height } = sheetCell(place);
  const shapes = stitchShapes(width, height);
  // Small stitches have finer lines, or the fabric would turn grey.
  const weight = Math.min(WEIGHT.stitch, width * FINE);
  return (['knit', 'purl'] as const).flatMap((look): PathMark[] => {
    const list = cells.filter(([column, row]) => lookOf(fabric, column, row) === look);
    return list.length === 0
      ? []
      : [{ kind: 'path', role: look, d: stitchPath(place, shapes[look], list), count: list.length, weight }];
  });
}

function sheetCell(place: Place): { readonly width: number; readonly height: number } {
  return { width: place.cell.width * place.scale, height: place.cell.height * place.scale };
}

function cellsOf(spans: readonly Span[]): Cell[] {
  return spans.flatMap(({ row, from, to }) => Array.from({ length: to - from }, (_, i) => [from + i, row] as const));
}

function pairs(flat: readonly number[]): [number, number][] {
  return Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i]!, flat[2 * i + 1]!]);
}

/** Places along a line of straight pieces, at most one stitch or row apart. */
function* densely(line: readonly (readonly [number, number])[]): Generator<readonly [number, number]> {
  for (const [i, [x1, y1]] of line.entries()) {
    const [x0, y0] = line[i - 1] ?? [x1, y1];
    const steps = Math.max(1, Math.ceil(Math.max(Math.abs(x1 - x0), Math.abs(y1 - y0))));
    for (let k = 1; k <= steps; k++) yield [x0 + ((x1 - x0) * k) / steps, y0 + ((y1 - y0) * k) / steps];
  }
}

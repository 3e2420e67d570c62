import type { MeasuredPiece } from '../pickup';
import { boundsOfAll, type Bounds } from '../geometry';
import { shelf } from '../units';
import { DIMENSION, MARGIN, PIECE_GAP, RULER, TYPE } from './sizes';
import { textWidth } from './width';
import type { Place } from './marks';

export interface LayoutOptions {
  readonly scale: number;
  readonly rulers: boolean;
  readonly dimensions: boolean;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly places: readonly Place[];
}

/** Room on each side of a piece's fabric, sheet mm. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A piece without a gauge has no rulers in cm or inches, so it needs room for half as many. */
export function marginsOf(hasGauge: boolean, { rulers, dimensions }: LayoutOptions): Margins {
  const ruled = rulers ? RULER * (hasGauge ? 2 : 1) : 0;
  const measured = dimensions ? DIMENSION : 0;
  return { left: MARGIN + ruled, right: MARGIN + measured, top: MARGIN, bottom: MARGIN + ruled + measured };
}

const keptBounds = shelf<MeasuredPiece['edges'], Bounds>(1);

function boundsOfPiece({ edges }: MeasuredPiece): Bounds {
  return keptBounds(edges, [], () => boundsOfAll(edges.flatMap((edge) => edge.line)));
}

/** The pieces where they stand already, whatever their size is now; on a sheet of the same size. */
export function standing(pieces: readonly MeasuredPiece[], layout: Layout): Layout {
  const places = layout.places.map((place): Place => {
    const measured = pieces.find(({ piece }) => piece.id === place.piece);
    if (!measured) return place;
    const { minX, maxX, minY, maxY } = boundsOfPiece(measured);
    const { x, y, scale } = place;
    const [width, height] = [(maxX - minX) * scale, (maxY - minY) * scale];
    return { ...place, box: { x: x + minX * scale, y: y - maxY * scale, width, height } };
  });
  return { ...layout, places };
}

/**
 * Where the pieces stand: side by side in their own order, their lowest edges on one line, with room round each for
 * numbers, rulers and dimensions.
 */
export function layOut(pieces: readonly MeasuredPiece[], options: LayoutOptions): Layout {
  const boxes = pieces.map((measured) => {
    const { piece, edges } = measured;
    const bounds = boundsOfPiece(measured);
    const margins = marginsOf(piece.gauge !== undefined, options);
    const width = (bounds.maxX - bounds.minX) * options.scale;
    const height = (bounds.maxY - bounds.minY) * options.scale;
    // A narrow strip still has its name under it.
    const spare = Math.max(0, textWidth(piece.name, TYPE.piece) - width - margins.left - margins.right) / 2;
    return { piece, edges, bounds, margins, width, height, spare };
  });
  const above = Math.max(0, ...boxes.map(({ height, margins }) => height + margins.top));
  const below = Math.max(0, ...boxes.map(({ margins }) => margins.bottom));
  let left = 0;
  const places = boxes.map(({ piece, edges, bounds, margins, width, height, spare }, i) => {
    if (i > 0) left += PIECE_GAP;
    const x = left + spare + margins.left;
    left = x + width + margins.right + spare;
    return {
      piece: piece.id,
      x: x - bounds.minX * options.scale,
      y: above + bounds.minY * options.scale,
      scale: options.scale,
      cell: cellOf(edges),
      box: { x, y: above - height, width, height },
    };
  });
  return { width: left, height: above + below, places };
}

/** The width of a stitch and the height of a row, read off the measured edges: a closed outline has both. */
export function cellOf(edges: MeasuredPiece['edges']): Place['cell'] {
  const across = edges.find((edge) => edge.stitches > 0);
  const up = edges.find((edge) => edge.rows > 0);
  const span = (edge: MeasuredPiece['edges'][number], axis: 'x' | 'y') =>
    Math.abs(edge.line.at(-1)!.to[axis] - edge.line[0]!.from[axis]);
  return {
    width: across ? span(across, 'x') / across.stitches : 1,
    height: up ? span(up, 'y') / up.rows : 1,
  };
}

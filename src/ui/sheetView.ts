import { zoomed, type Size, type Spot, type Viewport } from '../editor';
import type { Bounds } from '../geometry';
import {
  toSheet,
  windowIn,
  type Box,
  type DrawOptions,
  type Layout,
  type Place,
  type PointTrace,
  type Window,
} from '../renderer';

/** Room that the buttons at the foot of the view take, mm; below a width, mm, they stand in two lines. */
const FOOT = { wide: 9, narrow: 22 };
const NARROW = 130;
/** How far inside the view a point must lie that is gone to, mm. */
const WITHIN = 6;
/** Room round the picked edges for numbers and markers, mm. */
const AROUND = 14;
/** Stitches are built in blocks of this part of the view, so that a small move builds nothing. */
const BLOCK = 0.5;

/** The view with at least a corner of the sheet in it: a drawing can't be lost. */
export function keptInSight(view: Viewport, sheet: Size, size: Size): Viewport {
  const keep = { x: Math.min(size.width, sheet.width) / 3, y: Math.min(size.height, sheet.height) / 3 };
  return {
    scale: view.scale,
    left: Math.min(sheet.width - keep.x, Math.max(keep.x - size.width, view.left)),
    top: Math.min(sheet.height - keep.y, Math.max(keep.y - size.height, view.top)),
  };
}

/** The part of the sheet for which stitches are built: a little more than is in view, the same over small moves. */
export function blockOf(view: Viewport, size: Size): Box {
  const step = { x: size.width * BLOCK, y: size.height * BLOCK };
  const from = (value: number, one: number) => (Math.floor(value / one) - 1) * one;
  return {
    x: from(view.left, step.x),
    y: from(view.top, step.y),
    width: size.width + 3 * step.x,
    height: size.height + 3 * step.y,
  };
}

/**
 * A part of a piece as large as it will go, in the middle of the view.
 *
 * @param bounds in fabric mm
 * @param layoutAt lays the sheet out at a scale
 */
export function closeView(piece: string, bounds: Bounds, size: Size, layoutAt: (scale: number) => Layout): Viewport {
  const scale = zoomed(
    Math.min(
      (size.width - 2 * AROUND) / Math.max(bounds.maxX - bounds.minX, 1),
      (size.height - 2 * AROUND) / Math.max(bounds.maxY - bounds.minY, 1),
    ),
    1,
  );
  const place = layoutAt(scale).places.find((one) => one.piece === piece)!;
  const [x, y] = toSheet(place, (bounds.minX + bounds.maxX) / 2, (bounds.minY + bounds.maxY) / 2);
  return { scale, left: x - size.width / 2, top: y - size.height / 2 };
}

/** How a pick-up and these pieces are drawn on a screen. */
export function onScreen(
  pickup: number | null,
  pieces: readonly string[],
  detail: DrawOptions['detail'],
  units: DrawOptions['words']['units'],
  rulers: boolean,
): Omit<DrawOptions, 'scale'> {
  return { pickup, pieces, detail, words: { units }, rulers, dimensions: rulers, fabric: 'pattern' };
}

/** What of each piece lies in a block that was written as text; nothing where there is none. */
export function windowsIn(block: string, places: readonly Place[]): { windows?: Readonly<Record<string, Window>> } {
  if (block === '') return {};
  const box = JSON.parse(block) as Box;
  return { windows: Object.fromEntries(places.map((place) => [place.piece, windowIn(place, box)])) };
}

/** The point that lies nearest to the middle of the view, as a spot of it; null where none is as near as a corner. */
export function nearestPoint(
  points: readonly PointTrace[],
  { left, top }: Pick<Viewport, 'left' | 'top'>,
  middle: Spot,
): Spot | null {
  let best: Spot | null = null;
  let least = Math.hypot(...middle);
  for (const { x, y } of points) {
    const away = Math.hypot(x - left - middle[0], y - top - middle[1]);
    if (best ? away >= least : away > least) continue;
    [best, least] = [[x - left, y - top], away];
  }
  return best;
}

/** How far the view must move, mm, so that a spot of the sheet lies well within it; null where it does. */
export function wayIntoView({ left, top }: Viewport, { width, height }: Size, [x, y]: Spot): Spot | null {
  const free = height - (width < NARROW ? FOOT.narrow : FOOT.wide);
  const [right, down] = [x - left, y - top];
  const isIn = right > WITHIN && right < width - WITHIN && down > WITHIN && down < free - WITHIN;
  return isIn ? null : [width / 2 - right, free / 2 - down];
}

import type { Window } from './cells';
import type { Box, Place } from './marks';

/** Where fabric mm (y up) lie on the sheet (y down). */
export function toSheet(place: Place, xMm: number, yMm: number): [x: number, y: number] {
  return [place.x + xMm * place.scale, place.y - yMm * place.scale];
}

/** Where a place on the stitch grid lies on the sheet. */
export function gridToSheet(place: Place, stitches: number, rows: number): [x: number, y: number] {
  return toSheet(place, stitches * place.cell.width, rows * place.cell.height);
}

/** The fabric mm (y up) under a place on the sheet. */
export function toFabric(place: Place, x: number, y: number): [xMm: number, yMm: number] {
  return [(x - place.x) / place.scale, (place.y - y) / place.scale];
}

/** The place on the stitch grid, in stitches and rows, under a place on the sheet. */
export function sheetToGrid(place: Place, x: number, y: number): [stitches: number, rows: number] {
  const [xMm, yMm] = toFabric(place, x, y);
  return [xMm / place.cell.width, yMm / place.cell.height];
}

/** What of a piece, in fabric mm, lies in a part of the sheet: the window that stitch detail asks for. */
export function windowIn(place: Place, part: Box): Window {
  const [minX, maxY] = toFabric(place, part.x, part.y);
  const [maxX, minY] = toFabric(place, part.x + part.width, part.y + part.height);
  return { minX, minY, maxX, maxY };
}

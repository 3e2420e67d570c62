import { bodyElements, drawDiagram, scaleToFit, type Drawing, type DrawOptions } from '../../renderer';
import { EXERCISE, scaleText, tooManyTiles } from '../../text';
import { inFamily, placedAt } from '../elements';
import { roomOn } from '../paper';
import { paragraph, type Strip } from '../strip';
import { gridOf, tilesOf, type Tile } from '../tiles';
import { ROOM, TYPE } from '../type';
import type { Sheet } from '../work';

/** No drawing is larger than this, as a part of the fabric: dots would lie far apart and say no more. */
const LARGEST = 1.6;
/** How much of an upright page a drawing takes at most, and what it leaves of a page on its side for the title, mm. */
const SHARE = 0.58;
const UNDER_TITLE = 42;
/** A drawing this many times as wide as high goes over both columns. */
const WIDE = 1.7;
/** Pages of a diagram in true size: more than that nobody lays out on a table. */
export const MOST_TILES = 40;

function optionsOf(sheet: Sheet, fabric: DrawOptions['fabric']): Omit<DrawOptions, 'scale'> {
  const { plan, pickup, handout } = sheet;
  return {
    pickup,
    detail: 'shape',
    words: { units: plan.design.units },
    rulers: false,
    dimensions: true,
    fabric,
    ...(handout.version === 'exercise' ? { blank: true } : {}),
  };
}

/** The diagram as large as there is room for it, and how large that is. */
export function diagramBlock(sheet: Sheet): Strip[] {
  const { plan, size, handout, width } = sheet;
  const room = roomOn(size);
  const isWide = size.width > size.height;
  const high = isWide ? room.height - UNDER_TITLE : room.height * SHARE;
  const options = optionsOf(sheet, 'near-edge');
  const own = scaleToFit(plan, options, { width, height: high });
  const drawnAt = (scale: number) => drawDiagram(plan, { ...options, scale: Math.min(scale, LARGEST) });
  const first = drawnAt(own);
  const across = isWide && first.width > WIDE * first.height;
  const scale = across ? scaleToFit(plan, options, { width: room.width, height: high }) : own;
  const drawing = across ? drawnAt(scale) : first;
  const parts = handout.diagram === 'true-size' ? tileCount(sheet) : 0;
  const said = [
    ...(handout.version === 'exercise' ? [EXERCISE.diagram] : []),
    ...(parts > MOST_TILES ? [tooManyTiles(parts, MOST_TILES)] : []),
    scaleText(Math.min(scale, LARGEST)),
  ].join(' ');
  const wide = across ? room.width : width;
  return [
    pictureOf(drawing, wide, across),
    ...paragraph(said, wide, { size: TYPE.small, gap: 1 }).map((strip) => (across ? { ...strip, across } : strip)),
  ];
}

function pictureOf(drawing: Drawing, width: number, across: boolean): Strip {
  return {
    gap: ROOM.block,
    height: drawing.height,
    withNext: true,
    ...(across ? { across } : {}),
    draw: (x, y) => [
      placedAt(bodyElements(drawing, { idPrefix: 'diagram-' }).map(inFamily), x + (width - drawing.width) / 2, y),
    ],
  };
}

/** The diagram in true size, as it is cut over pages; nothing where that would be too many. */
export function diagramTiles(sheet: Sheet): Tile[] {
  const drawing = inTrueSize(sheet);
  const { columns, rows } = gridOf(drawing, sheet.size);
  // The outermost parts alone may be more than are printed: then none is cut.
  if (columns + rows > 4 * MOST_TILES) return [];
  const tiles = tilesOf(drawing, bodyElements(drawing, { idPrefix: 'true-size-' }).map(inFamily), sheet.size);
  return tiles.length > MOST_TILES ? [] : tiles;
}

function tileCount(sheet: Sheet): number {
  const drawing = inTrueSize(sheet);
  const { columns, rows, frame } = gridOf(drawing, sheet.size);
  let count = 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const { x, y, width, height } = frame(column, row);
      if (drawing.points.some((at) => at.x >= x && at.x < x + width && at.y >= y && at.y < y + height)) count += 1;
    }
  }
  return count;
}

function inTrueSize(sheet: Sheet): Drawing {
  return drawDiagram(sheet.plan, { ...optionsOf(sheet, 'none'), scale: 1 });
}

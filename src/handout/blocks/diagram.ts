import {
  bodyElements,
  drawDiagram,
  scaleToFit,
  type DrawnElement,
  type Drawing,
  type DrawOptions,
} from '../../renderer';
import { closerText, EXERCISE, scaleText, shownName, tooManyTiles } from '../../text';
import type { Frame } from '../clip';
import { croppedTo, pickedFrame } from '../crop';
import { inFamily, placedAt } from '../elements';
import { roomOn } from '../paper';
import { paragraph, type Strip } from '../strip';
import { tilePage, tilesOf, type Tile } from '../tiles';
import { ROOM, TYPE } from '../type';
import type { Sheet } from '../work';

/** No drawing is larger than this, as a part of the fabric: dots would lie far apart and say no more. */
const LARGEST = 1.6;
/** How much of a page's height a drawing takes at most: the pieces alone, those with a closer look, a closer look. */
const SHARE = { whole: 0.58, small: 0.27, closer: 0.4 } as const;
/** What a page on its side leaves for the title, mm. */
const UNDER_TITLE = 42;
/** A drawing this many times as wide as high goes over both columns. */
const WIDE = 1.7;
/** A closer look has to be closer by this. */
const CLOSER = 1.35;
/** Openings that stand at least this far apart on the sheet, mm, need no closer look. */
const READABLE = 2.4;
/** Pages of a diagram in true size: more than that nobody lays out on a table. */
const MOST_TILES = 40;
/** A frame that is drawn at another scale has other labels round it: after so many tries it is near enough. */
const TRIES = 6;

interface Picture {
  readonly drawing: Drawing;
  readonly frame: Frame;
  readonly scale: number;
}

function optionsOf({ plan, pickup, handout }: Sheet, fabric: DrawOptions['fabric']): Omit<DrawOptions, 'scale'> {
  return {
    pickup,
    detail: 'shape',
    words: { units: plan.design.units },
    rulers: false,
    dimensions: fabric !== 'none',
    fabric,
    ...(handout.version === 'exercise' ? { blank: true } : {}),
  };
}

/**
 * The pieces as large as there is room for; where the openings would stand too close on them, small, with a closer look
 * at the edges of each piece under them.
 */
export function diagramBlock(sheet: Sheet): Strip[] {
  const { plan, size, handout, width } = sheet;
  const room = roomOn(size);
  const isWide = size.width > size.height;
  const high = isWide ? room.height - UNDER_TITLE : room.height * SHARE.whole;
  const options = optionsOf(sheet, 'near-edge');
  const fitted = (wide: number, most: number): Picture => {
    const scale = Math.min(LARGEST, scaleToFit(plan, options, { width: wide, height: most }));
    const drawing = drawDiagram(plan, { ...options, scale });
    return { drawing, scale, frame: { x: 0, y: 0, width: drawing.width, height: drawing.height } };
  };
  const narrow = fitted(width, high);
  const across = isWide && narrow.drawing.width > WIDE * narrow.drawing.height;
  const wide = across ? room.width : width;
  const whole = across ? fitted(wide, high) : narrow;
  const closer = spacingOf(sheet, whole.scale) < READABLE ? closerLooks(sheet, wide, high) : [];
  const isCloser = closer.some(({ scale }) => scale > whole.scale * CLOSER);
  const first = isCloser && !isWide ? fitted(wide, room.height * SHARE.small) : whole;
  const tiles = handout.diagram === 'true-size' ? tileCount(sheet) : 0;
  const said = [
    ...(handout.version === 'exercise' ? [EXERCISE.diagram] : []),
    ...(tiles > MOST_TILES ? [tooManyTiles(tiles, MOST_TILES)] : []),
    scaleText(first.scale),
    ...(isCloser ? [closerText(closer[0]!.scale)] : []),
  ].join(' ');
  const strips = [
    pictureStrip('diagram-', first, wide),
    ...paragraph(said, wide, { size: TYPE.small, gap: 1 }),
    ...(isCloser ? closer.map((one, i) => pictureStrip(`closer-${i}-`, one, wide)) : []),
  ];
  return across ? strips.map((strip) => ({ ...strip, across })) : strips;
}

/** Mean distance of neighbouring openings on a sheet of this scale, mm; without end where there are none. */
function spacingOf({ chosen: { points } }: Sheet, scale: number): number {
  const last = points.at(-1);
  return last && points.length > 1 ? (last.alongMm * scale) / (points.length - 1) : Infinity;
}

/** The pieces that the pick-up runs along, each by itself. */
function pickedPieces({ chosen }: Sheet): { readonly id: string; readonly name: string }[] {
  const ids = new Map(chosen.edges.map(({ piece }) => [piece.id, shownName(piece.name)]));
  return [...ids].map(([id, name]) => ({ id, name }));
}

/** The edges of each piece as large as there is room for, all at one scale. */
function closerLooks(sheet: Sheet, width: number, high: number): Picture[] {
  const pieces = pickedPieces(sheet);
  const most = Math.min(high, roomOn(sheet.size).height * SHARE.closer);
  let scale: number = LARGEST;
  for (let i = 0; i < TRIES; i++) {
    const frames = pieces.map(({ id }) => framed(sheet, id, scale, 'near-edge').frame);
    const over = Math.max(...frames.map((frame) => Math.max(frame.width / width, frame.height / most)));
    if (over <= 1) break;
    // What does not grow with the scale makes this a little too small rather than too large.
    scale /= over;
  }
  return pieces.map(({ id }) => framed(sheet, id, scale, 'near-edge'));
}

/** A piece at a scale, and the part of it where something is picked up, with its labels inside that part. */
function framed(sheet: Sheet, piece: string, scale: number, fabric: DrawOptions['fabric']): Picture {
  const options = { ...optionsOf(sheet, fabric), dimensions: false, pieces: [piece], scale };
  const frame = pickedFrame(drawDiagram(sheet.plan, { ...options, names: false }));
  return { drawing: drawDiagram(sheet.plan, { ...options, within: frame }), frame, scale };
}

function bodyOf(drawing: Drawing, idPrefix: string): DrawnElement[] {
  return bodyElements(drawing, { idPrefix }).map(inFamily);
}

function pictureStrip(idPrefix: string, { drawing, frame }: Picture, width: number): Strip {
  const isWhole = frame.width === drawing.width && frame.height === drawing.height;
  return {
    gap: isWhole ? ROOM.block : ROOM.paragraph,
    height: frame.height,
    ...(isWhole ? { withNext: true } : {}),
    draw: (x, y) => {
      const body = bodyOf(drawing, idPrefix);
      const shown = isWhole ? body : croppedTo(body, frame);
      return [placedAt(shown, x + (width - frame.width) / 2 - frame.x, y - frame.y)];
    },
  };
}

/** Every page of the diagram in true size, a piece after the other; none where that would be too many. */
export function diagramTiles(sheet: Sheet): DrawnElement[][] {
  if (tileCount(sheet) > MOST_TILES) return [];
  return pickedPieces(sheet).flatMap(({ id, name }, i) => {
    const all = trueSize(sheet, id);
    const options = { ...optionsOf(sheet, 'none'), pieces: [id], scale: 1 };
    return all.map((tile) => {
      // Labels are placed on every part anew, so that none is cut.
      const drawing = drawDiagram(sheet.plan, { ...options, within: tile.frame });
      const body = bodyOf(drawing, `true-size-${i}-${tile.name}-`);
      return tilePage(tile, all, name, croppedTo(body, tile.frame));
    });
  });
}

function trueSize(sheet: Sheet, piece: string): Tile[] {
  const { drawing, frame } = framed(sheet, piece, 1, 'none');
  return tilesOf(frame, drawing.points, sheet.size);
}

function tileCount(sheet: Sheet): number {
  return pickedPieces(sheet).reduce((sum, { id }) => sum + trueSize(sheet, id).length, 0);
}

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
import { heightOf } from '../flow';
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
/** On a page that lies on its side a drawing goes under what comes before it where that leaves it so much of the page. */
const ENOUGH = 0.6;
/** Room over what is said under a drawing, mm. */
const SAYING = 1;
/** Room under it, before what is shown closer, mm. */
const UNDER_WORDS = 4;
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
/** A long upright edge is cut into this many parts at most. They stand this far apart, and share so much of it, mm. */
const MOST_PARTS = 4;
const BESIDE = 9;
const SHARED = 6;
/** Another part has to make the edge larger by this much. */
const WORTH = 0.85;

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
    // In black, words could not be read over the lines of stitches.
    fabric: handout.ink === 'black' ? 'none' : fabric,
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
  const high = isWide ? highOnItsSide(sheet) : room.height * SHARE.whole;
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
  const [closest] = closer.flat();
  const isCloser = closest !== undefined && closest.scale > whole.scale * CLOSER;
  const first = isCloser && !isWide ? fitted(wide, room.height * SHARE.small) : whole;
  const tiles = handout.diagram === 'true-size' ? countOf(trueSize(sheet)) : 0;
  const said = (picture: Picture): Strip[] => {
    const text = [
      ...(handout.version === 'exercise' ? [EXERCISE.diagram] : []),
      ...(tiles > MOST_TILES ? [tooManyTiles(tiles, MOST_TILES)] : []),
      scaleText(picture.scale),
      ...(isCloser ? [closerText(closest.scale, Math.max(...closer.map(({ length }) => length)))] : []),
    ].join(' ');
    return paragraph(text, wide, { size: TYPE.small, gap: SAYING });
  };
  // What is said needs its lines of the room under it.
  const over = first.frame.height + SAYING + heightOf(said(first)) - high;
  const shown = isWide && over > 0 ? fitted(wide, first.frame.height - over) : first;
  const strips = [
    pictureStrip('diagram-', shown, wide),
    ...said(shown),
    ...(isCloser
      ? closer.map((parts, i) => partsStrip(`closer-${i}-`, parts, wide, i === 0 ? UNDER_WORDS : ROOM.paragraph))
      : []),
  ];
  return across ? strips.map((strip) => ({ ...strip, across })) : strips;
}

/** The room for a drawing and what is said under it on a page that lies on its side, mm. */
function highOnItsSide({ size, above }: Sheet): number {
  const { height } = roomOn(size);
  const left = above === 0 ? height : height - above - ROOM.block;
  return left < height * ENOUGH ? height : left;
}

/** Mean distance of neighbouring openings on a sheet of this scale, mm; without end where there are none. */
function spacingOf({ chosen: { points } }: Sheet, scale: number): number {
  const last = points.at(-1);
  return last && points.length > 1 ? (last.alongMm * scale) / (points.length - 1) : Infinity;
}

/** The pieces on which the pick-up has a place, each by itself. */
function pickedPieces({ chosen }: Sheet): { readonly id: string; readonly name: string }[] {
  const along = chosen.edges.filter(({ openings }) => openings > 0);
  const ids = new Map(along.map(({ piece }) => [piece.id, shownName(piece.name)]));
  return [...ids].map(([id, name]) => ({ id, name }));
}

/**
 * The edges of each piece as large as there is room for, all at one scale. A long upright edge is cut into parts that
 * stand side by side, from the top down.
 */
function closerLooks(sheet: Sheet, width: number, high: number): Picture[][] {
  const pieces = pickedPieces(sheet);
  const most = Math.min(high, roomOn(sheet.size).height * SHARE.closer);
  const framesAt = (scale: number) => pieces.map(({ id }) => framed(sheet, id, scale).frame);
  let scale: number = LARGEST;
  for (let i = 0; i < TRIES; i++) {
    const over = Math.max(...framesAt(scale).map((frame) => bestCut(frame, width, most).over));
    if (over <= 1) break;
    // What does not grow with the scale makes this a little too small rather than too large.
    scale /= over;
  }
  const frames = framesAt(scale);
  return pieces.map(({ id }, i) =>
    partsOf(frames[i]!, bestCut(frames[i]!, width, most).parts).map((within) => ({
      drawing: drawnPiece(sheet, id, scale, 'near-edge', within),
      frame: within,
      scale,
    })),
  );
}

/** How many parts a frame is best cut into, and how many times too large those are for the room, in mm. */
function bestCut(frame: Frame, width: number, high: number): { readonly parts: number; readonly over: number } {
  const cuts = Array.from({ length: MOST_PARTS }, (_, i) => {
    const parts = i + 1;
    const across = parts * frame.width + (parts - 1) * BESIDE;
    const down = (frame.height + (parts - 1) * SHARED) / parts;
    return { parts, over: Math.max(across / width, down / high) };
  });
  // One more part has to be worth it.
  return cuts.reduce((best, one) => (one.over < best.over * WORTH ? one : best));
}

/** A frame cut across into parts that share a little, from the top down. */
function partsOf(frame: Frame, parts: number): Frame[] {
  const height = (frame.height + (parts - 1) * SHARED) / parts;
  return Array.from({ length: parts }, (_, i) => ({ ...frame, y: frame.y + i * (height - SHARED), height }));
}

/** A piece at a scale without its names, and the part of it where something is picked up. */
function framed(sheet: Sheet, piece: string, scale: number): Pick<Picture, 'drawing' | 'frame'> {
  const options = { ...optionsOf(sheet, 'none'), pieces: [piece], scale };
  const drawing = drawDiagram(sheet.plan, { ...options, names: false });
  return { drawing, frame: pickedFrame(drawing) };
}

/** A piece at a scale, with its labels within what is shown of it. */
function drawnPiece(sheet: Sheet, piece: string, scale: number, fabric: DrawOptions['fabric'], within: Frame): Drawing {
  return drawDiagram(sheet.plan, { ...optionsOf(sheet, fabric), dimensions: false, pieces: [piece], scale, within });
}

function bodyOf(drawing: Drawing, idPrefix: string): DrawnElement[] {
  return bodyElements(drawing, { idPrefix }).map(inFamily);
}

function pictureStrip(idPrefix: string, { drawing, frame }: Picture, width: number): Strip {
  return {
    gap: ROOM.block,
    height: frame.height,
    withNext: true,
    draw: (x, y) => [placedAt(bodyOf(drawing, idPrefix), x + (width - frame.width) / 2, y)],
  };
}

/** The parts of an edge side by side, in the middle of the room. */
function partsStrip(idPrefix: string, parts: readonly Picture[], width: number, gap: number): Strip {
  const wide = parts.reduce((sum, { frame }) => sum + frame.width + BESIDE, -BESIDE);
  return {
    gap,
    height: Math.max(...parts.map(({ frame }) => frame.height)),
    draw: (x, y) => {
      let left = x + (width - wide) / 2;
      return parts.map(({ drawing, frame }, i) => {
        const at = left - frame.x;
        left += frame.width + BESIDE;
        return placedAt(croppedTo(bodyOf(drawing, `${idPrefix}${i}-`), frame), at, y - frame.y);
      });
    },
  };
}

/** Every page of the diagram in true size, a piece after the other; none where that would be too many. */
export function diagramTiles(sheet: Sheet): DrawnElement[][] {
  const parts = trueSize(sheet);
  if (countOf(parts) > MOST_TILES) return [];
  return parts.flatMap(({ id, name, tiles }, i) =>
    tiles.map((tile) => {
      // Labels are placed on every part anew, so that none is cut.
      const drawing = drawnPiece(sheet, id, 1, 'none', tile.frame);
      const body = bodyOf(drawing, `true-size-${i}-${tile.name}-`);
      return tilePage(tile, tiles, name, croppedTo(body, tile.frame));
    }),
  );
}

interface PieceInParts {
  readonly id: string;
  readonly name: string;
  readonly tiles: readonly Tile[];
}

/** How each piece is cut over pages in true size. */
function trueSize(sheet: Sheet): PieceInParts[] {
  return pickedPieces(sheet).map((piece) => {
    const { drawing, frame } = framed(sheet, piece.id, 1);
    return { ...piece, tiles: tilesOf(frame, drawing.points, sheet.size) };
  });
}

function countOf(pieces: readonly PieceInParts[]): number {
  return pieces.reduce((sum, { tiles }) => sum + tiles.length, 0);
}

import { LIGHT, type DrawnElement } from '../renderer';

/** Stitches drawn in black stand behind what is picked up: their lines are as thin as copiers print, mm. */
const STITCH_LINE = '0.07';
const WHITE = new Set<string>([LIGHT.onMarker, '#ffffff', 'none']);

/**
 * The same drawing in black on white: no tint, no grey, no colour, so that a copy in one bit loses nothing. What colour
 * said is said by shape already.
 */
export function inBlack(element: DrawnElement): DrawnElement {
  const { fill, stroke } = element.attributes;
  const isTint = fill === LIGHT.fabric || fill === LIGHT.stitch;
  const isStitch = stroke === LIGHT.stitchLine;
  return {
    ...element,
    attributes: {
      ...element.attributes,
      ...(fill === undefined ? {} : { fill: isTint ? 'none' : WHITE.has(fill) ? fill : LIGHT.ink }),
      ...(stroke === undefined ? {} : { stroke: WHITE.has(stroke) ? stroke : LIGHT.ink }),
      ...(isStitch ? { 'stroke-width': STITCH_LINE } : {}),
    },
    children: element.children.map(inBlack),
  };
}

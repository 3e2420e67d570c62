import type { DrawnElement, Drawing } from '../renderer';
import { clippedArea, clippedPath, holds, type Frame } from './clip';

/** How much of the fabric is shown round what is picked up, sheet mm. */
const ROUND = 13;

/** What of a drawing shows all that is picked up, with some room round it, in mm of the drawing; never beyond it. */
export function pickedFrame({ points, width, height }: Drawing): Frame {
  const xs = points.flatMap(({ x, over }) => [x, over[0]]);
  const ys = points.flatMap(({ y, over }) => [y, over[1]]);
  const [left, upper] = [Math.max(0, Math.min(...xs) - ROUND), Math.max(0, Math.min(...ys) - ROUND)];
  const [right, lower] = [Math.min(width, Math.max(...xs) + ROUND), Math.min(height, Math.max(...ys) + ROUND)];
  return { x: left, y: upper, width: right - left, height: lower - upper };
}

/** What of some elements shows in a frame: lines and areas are cut at its border, texts are kept or left out whole. */
export function croppedTo(elements: readonly DrawnElement[], frame: Frame): DrawnElement[] {
  return elements.flatMap((element) => cropped(element, frame));
}

function cropped(element: DrawnElement, frame: Frame): DrawnElement[] {
  const { name, attributes, children } = element;
  switch (name) {
    case 'g': {
      const inner = croppedTo(children, frame);
      return inner.length === 0 ? [] : [{ ...element, children: inner }];
    }
    case 'path': {
      const isArea = attributes.fill !== undefined && attributes.fill !== 'none' && attributes.stroke === undefined;
      const d = (isArea ? clippedArea : clippedPath)(attributes.d ?? '', frame);
      return d === '' ? [] : [{ ...element, attributes: { ...attributes, d } }];
    }
    case 'text':
      return holds(frame, [Number(attributes.x), Number(attributes.y)]) ? [element] : [];
    default:
      return [];
  }
}

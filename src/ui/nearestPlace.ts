import type { Spot } from '../editor';
import type { Place } from '../renderer';

/** The piece that stands nearest to a spot on the sheet; undefined where there is none. */
export function nearestPlace(places: readonly Place[], [x, y]: Spot): Place | undefined {
  const away = ({ box }: Place) =>
    Math.hypot(Math.max(box.x - x, 0, x - box.x - box.width), Math.max(box.y - y, 0, y - box.y - box.height));
  return [...places].sort((a, b) => away(a) - away(b))[0];
}

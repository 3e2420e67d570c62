import { needle } from './needle';
import { newYarn } from './newYarn';
import type { Spot } from './scene';
import type { Strand } from './strand';

/** A right-handed knitter's needle comes from below right. */
const ANGLE = (-110 * Math.PI) / 180;

/** Where its point shows over the edge, mm from the top, unless the edge lies lower. */
const TIP = 5.5;
const BOTTOM = 44.4;

/** The needle through an opening, from the bottom of the picture to its point over the edge. */
export function needleThrough(hole: Spot, tip = TIP): Strand {
  const steep = -Math.sin(ANGLE);
  return needle(hole, ANGLE, (BOTTOM - hole.y) / steep, (hole.y - tip) / steep);
}

/** The new yarn round the point of a needle. */
export function newYarnFor(through: Strand): Strand {
  return newYarn(through.places.at(-1)!, ANGLE);
}

import { BEHIND } from './needle';
import { WIDTH, type Spot } from './scene';
import type { Strand } from './strand';
import { NEW_YARN } from './view';

/**
 * The new yarn behind the fabric, laid round the needle's point and ready to be drawn through: from the short end under
 * the needle to its far side, over it, and on to the ball.
 *
 * @param tip the needle's point
 * @param angle of the needle on the sheet, radians, y down
 */
export function newYarn(tip: Spot, angle: number): Strand {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  /** So far back from the tip along the needle, and so far to its right. */
  const at = (back: number, right: number, z: number) => ({
    x: tip.x - dx * back - dy * right,
    y: tip.y - dy * back + dx * right,
    z: BEHIND + z,
  });
  const path = [
    at(8.4, 11, -2),
    at(7.8, 8, -2),
    at(7.2, 5, -2),
    at(6.9, 2.4, -2),
    at(6.7, 0, -2),
    at(6.3, -1.6, -1.2),
    at(5.3, -2.4, 0),
    at(4.2, -1.7, 1.2),
    at(3.6, 0, 2),
    at(3.3, 2.4, 2),
    at(3.4, 5, 2),
    at(4, 9, 2),
    at(5.2, 14, 2),
    at(6, 19, 2),
  ];
  const places = path.filter(({ x }) => x < WIDTH - 2);
  return { kind: 'new', places, widths: places.map(() => NEW_YARN) };
}

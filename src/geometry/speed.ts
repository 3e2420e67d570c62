import type { Cubic } from './segment';

/**
 * The derivative of a cubic in powers of t, (ax, ay) t² + (bx, by) t + (cx, cy), and the two complex parameters
 * (rootX + i rootY) at which it vanishes, read as the complex number x + i y. A root at infinity is not finite.
 */
export interface Speed {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
  readonly root1X: number;
  readonly root1Y: number;
  readonly root2X: number;
  readonly root2Y: number;
}

/**
 * The derivative of a cubic and where it vanishes: the quadratic formula in complex numbers, the root of larger size
 * from the sum that cancels nothing and the other from their product (Press et al., Numerical Recipes, 5.6).
 */
export function speedOf({ from, c1, c2, to }: Cubic): Speed {
  const ax = 3 * (to.x - from.x - 3 * (c2.x - c1.x));
  const ay = 3 * (to.y - from.y - 3 * (c2.y - c1.y));
  const bx = 6 * (c2.x - 2 * c1.x + from.x);
  const by = 6 * (c2.y - 2 * c1.y + from.y);
  const cx = 3 * (c1.x - from.x);
  const cy = 3 * (c1.y - from.y);
  // The complex square root of b² - 4 a c, on the side of b; its smaller part from the larger, so that nothing cancels.
  const innerX = bx * bx - by * by - 4 * (ax * cx - ay * cy);
  const innerY = 2 * bx * by - 4 * (ax * cy + ay * cx);
  const larger = Math.sqrt((Math.sqrt(innerX * innerX + innerY * innerY) + Math.abs(innerX)) / 2);
  const smaller = larger > 0 ? Math.abs(innerY) / (2 * larger) : 0;
  const sizeX = innerX < 0 ? smaller : larger;
  const sizeY = (innerX < 0 ? larger : smaller) * (innerY < 0 ? -1 : 1);
  const side = bx * sizeX + by * sizeY < 0 ? -1 : 1;
  const qx = -(bx + side * sizeX) / 2;
  const qy = -(by + side * sizeY) / 2;
  const aa = ax * ax + ay * ay;
  const qq = qx * qx + qy * qy;
  return {
    ax,
    ay,
    bx,
    by,
    cx,
    cy,
    root1X: (qx * ax + qy * ay) / aa,
    root1Y: (qy * ax - qx * ay) / aa,
    root2X: (cx * qx + cy * qy) / qq,
    root2Y: (cy * qx - cx * qy) / qq,
  };
}

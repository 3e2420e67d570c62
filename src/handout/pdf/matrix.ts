/** A transform of the plane, as SVG writes it: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** First `second`, then `first`: the transform of a group and of what stands in it. */
export function times(first: Matrix, second: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [g, h, i, j, k, l] = second;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** How much a transform makes lengths longer: the root of what it does to areas. */
export function growth([a, b, c, d]: Matrix): number {
  return Math.sqrt(Math.abs(a * d - b * c));
}

/**
 * The transform that an attribute tells: translate, scale, rotate and matrix, one after the other.
 *
 * @throws RangeError for any other
 */
export function readTransform(text: string): Matrix {
  let matrix = IDENTITY;
  const rest = text.replace(/(\w+)\s*\(([^()]*)\)[\s,]*/g, (whole, name: string, inner: string) => {
    const step = oneTransform(
      name,
      inner
        .trim()
        .split(/[\s,]+/)
        .map(Number),
    );
    if (!step) throw new RangeError(`The transform "${whole}" is not drawn.`);
    matrix = times(matrix, step);
    return '';
  });
  if (rest.trim() !== '') throw new RangeError(`The transform "${text}" is not drawn.`);
  return matrix;
}

function oneTransform(name: string, numbers: readonly number[]): Matrix | null {
  if (!numbers.every(Number.isFinite)) return null;
  const [a = 0, b, c, d, e, f] = numbers;
  switch (`${name} ${numbers.length}`) {
    case 'translate 1':
    case 'translate 2':
      return [1, 0, 0, 1, a, b ?? 0];
    case 'scale 1':
    case 'scale 2':
      return [a, 0, 0, b ?? a, 0, 0];
    case 'rotate 1':
    case 'rotate 3': {
      const [x, y] = [b ?? 0, c ?? 0];
      const [cos, sin] = [Math.cos((a * Math.PI) / 180), Math.sin((a * Math.PI) / 180)];
      return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
    }
    case 'matrix 6':
      return [a, b!, c!, d!, e!, f!];
    default:
      return null;
  }
}

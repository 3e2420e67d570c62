import type { Fabric } from '../piece';
import { digits, spot } from './toPath';
import type { Place } from './marks';

/** How a stitch looks from the right side. */
export type Look = 'knit' | 'purl';

/**
 * How the stitch in a column and row looks from the right side. Row 0 is a right-side row. Garter, knitted on every
 * row, shows purls on wrong-side rows; seed stitch and rib (drawn one and one) alternate.
 */
export function lookOf(fabric: Fabric, column: number, row: number): Look {
  const odd = (n: number) => Math.abs(n % 2) === 1;
  switch (fabric) {
    case 'stockinette':
      return 'knit';
    case 'reverse-stockinette':
      return 'purl';
    case 'garter':
      return odd(row) ? 'purl' : 'knit';
    case 'seed':
      return odd(column + row) ? 'purl' : 'knit';
    case 'rib':
      return odd(column) ? 'purl' : 'knit';
  }
}

/** Shapes of one stitch of a given size on the sheet, each as path data to follow a move to its own start. */
export interface StitchShapes {
  readonly knit: string;
  readonly purl: string;
  /** One link of a slipped selvage: as wide as a stitch and two rows high. */
  readonly chain: string;
  /** One link of a bind-off chain, lying along the edge. */
  readonly link: string;
  /** One loop under a cast-on edge. */
  readonly castOn: string;
  /** One open loop over the edge. */
  readonly open: string;
  /** One open loop under the edge. */
  readonly hanging: string;
}

/** The shapes for stitches `width` by `height` sheet mm. Each starts at the lower left corner of its stitch. */
export function stitchShapes(width: number, height: number): StitchShapes {
  const from = (x: number, y: number) => spot(x * width, -y * height);
  /** A leaf from one end to the other, bulging to two sides; all in parts of a stitch, y up from its lower corner. */
  const leaf = (ends: readonly number[], sides: readonly number[]): string => {
    const [x0, y0, x1, y1] = ends as [number, number, number, number];
    const [ax, ay, bx, by] = sides as [number, number, number, number];
    return (
      `m${from(x0, y0)}q${from(ax - x0, ay - y0)} ${from(x1 - x0, y1 - y0)}` +
      `q${from(bx - x1, by - y1)} ${from(x0 - x1, y0 - y1)}z`
    );
  };
  /** Two legs that rise from the middle to both sides, `high` rows high. */
  const vee = (high: number) =>
    leaf([0.49, 0, 0.05, 1.04 * high], [-0.03, 0.38 * high, 0.5, 0.68 * high]) +
    back(0.49, 0) +
    leaf([0.51, 0, 0.95, 1.04 * high], [1.03, 0.38 * high, 0.5, 0.68 * high]);
  /** After a closed shape the pen stands at that shape's start; the next leaf is measured from the corner again. */
  const back = (x: number, y: number) => `m${from(-x, -y)}`;
  return {
    knit: vee(1),
    chain: vee(1.96),
    purl: leaf([0.03, 0.36, 0.97, 0.36], [0.5, 1.12, 0.5, 0.26]),
    link:
      leaf([0.0, 0.86, 1.06, 0.93], [0.42, 1.1, 0.62, 0.98]) +
      back(0, 0.86) +
      leaf([0, 0.86, 1.06, 0.79], [0.42, 0.6, 0.62, 0.74]),
    castOn: leaf([0.05, 0.24, 0.95, 0.24], [0.5, -0.08, 0.5, 0.26]),
    open: `m${from(0.24, 1)}c${from(0, 0.62)} ${from(0.52, 0.62)} ${from(0.52, 0)}`,
    hanging: `m${from(0.24, 0)}c${from(0, -0.62)} ${from(0.52, -0.62)} ${from(0.52, 0)}`,
  };
}

/** Path data of one shape at many stitches: only the moves differ. `at` is the lower left corner, on the grid. */
export function stitchPath(
  place: Place,
  shape: string,
  at: readonly (readonly [column: number, row: number])[],
): string {
  const { width, height } = place.cell;
  return at
    .map(([column, row]) => {
      const x = place.x + column * width * place.scale;
      const y = place.y - row * height * place.scale;
      return `M${digits(x)},${digits(y)}${shape}`;
    })
    .join('');
}

import type { Grip, Spot } from '../../editor';
import type { Chosen } from './chosen';

/** A grip and where it lies on the sheet. */
export interface SeenGrip {
  readonly grip: Grip;
  readonly spot: Spot;
}

/** A rectangle pulled open over the drawing, in sheet mm. */
export interface Pane {
  readonly from: Spot;
  readonly to: Spot;
}

/** The grip nearest to a spot within reach, sheet mm. Of two in one place, the corner before the handle that lies on it. */
export function gripNear(grips: readonly SeenGrip[], spot: Spot, reach: number): Grip | null {
  let best: Grip | null = null;
  let least = reach;
  for (const { grip, spot: there } of grips) {
    const off = Math.hypot(there[0] - spot[0], there[1] - spot[1]);
    if (off > least || (off === least && best)) continue;
    best = grip;
    least = off;
  }
  return best;
}

/** The corners inside a pane, all of the piece that the first of them belongs to; null where there are none. */
export function cornersIn({ from, to }: Pane, grips: readonly SeenGrip[]): Chosen | null {
  const between = (value: number, a: number, b: number) => value >= Math.min(a, b) && value <= Math.max(a, b);
  const caught = grips.filter(
    ({ grip, spot }) => grip.kind === 'corner' && between(spot[0], from[0], to[0]) && between(spot[1], from[1], to[1]),
  );
  const piece = caught[0]?.grip.piece;
  if (piece === undefined) return null;
  return { piece, corners: caught.filter(({ grip }) => grip.piece === piece).map(({ grip }) => grip.edge), edge: null };
}

import type { DesignPlan } from '../pickup';
import { chosenPieces } from './diagram';
import type { DrawOptions } from './options';
import { layOut } from './layout';

/** Room for a drawing, sheet mm. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Below this a drawing shows nothing any more, whatever the room. */
const SMALLEST = 0.01;

/**
 * The largest scale (sheet mm to one fabric mm) at which a drawing fits into a room. Margins, rulers and type do not
 * grow with the scale, so the size is `fixed + scale * fabric` in each direction, which is solved for the scale.
 */
export function scaleToFit(plan: DesignPlan, options: Omit<DrawOptions, 'scale'>, room: Room): number {
  const pickup = options.pickup === null ? null : (plan.pickups[options.pickup] ?? null);
  const pieces = chosenPieces(plan, pickup, options.pieces);
  const fixed = layOut(pieces, { ...options, scale: 0 });
  const fabric = pieces.map((piece) => layOut([piece], { ...options, scale: 0 }));
  const whole = pieces.map((piece) => layOut([piece], { ...options, scale: 1 }).places[0]!.box);
  const across = whole.reduce((sum, box) => sum + box.width, 0);
  const scales = [
    (room.width - fixed.width) / across,
    ...whole.map((box, i) => (room.height - fabric[i]!.height) / box.height),
  ];
  return Math.max(SMALLEST, Math.min(...scales.filter(Number.isFinite)));
}

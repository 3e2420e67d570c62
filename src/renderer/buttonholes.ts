import type { Hole, PickupPlan } from '../pickup';
import { frameAt, fromFrame, type Frame } from './frame';
import type { LabelBoard } from './labels';
import { placeAlong, type MarkedEdge } from './markers';
import { digits, spot } from './toPath';
import type { PathMark } from './marks';

/** Clear distance between the ends of the stems and a buttonhole. */
const BEYOND_STEMS = 0.7;
/** How wide a buttonhole is drawn, and how long one is at least. */
const WIDTH = 0.9;
const LEAST = 1.8;

/**
 * The buttonholes of a band as slots beyond the stems, each along the stitches that it takes, and the room they take
 * from labels. None is drawn where its piece is not.
 */
export function drawButtonholes(
  plan: PickupPlan,
  edges: readonly (MarkedEdge | null)[],
  board: LabelBoard,
): PathMark[] {
  const ends = edges.map((edge) => edge?.track.length ?? 0);
  const slots = (plan.holes?.holes ?? []).flatMap((hole) => {
    const at = placeAlong(plan, hole.alongMm, ends);
    const edge = at && edges[at.edge];
    if (!edge) return [];
    const frame = frameAt(edge.place, edge.track, at.edgeAt);
    return [slot(frame, edge.stem + BEYOND_STEMS + WIDTH / 2, halfOf(hole, edge.place.scale), board)];
  });
  return slots.length === 0 ? [] : [{ kind: 'path', role: 'buttonhole', d: slots.join(''), count: slots.length }];
}

/** What buttonholes take beyond the stems, sheet mm. */
export const HOLE_ROOM = BEYOND_STEMS + WIDTH;

/** Whether a buttonhole lies within the first `along` sheet mm of a pick-up. */
export function holeWithin({ holes }: PickupPlan, along: number, scale: number): boolean {
  return (holes?.holes ?? []).some((hole) => hole.alongMm * scale - halfOf(hole, scale) < along + BEYOND_STEMS);
}

/** Half of what a buttonhole is drawn long. */
function halfOf({ fromMm, toMm }: Hole, scale: number): number {
  return Math.max(LEAST, (toMm - fromMm) * scale) / 2;
}

/** A slot with round ends, `out` mm from the edge to its middle line. */
function slot(frame: Frame, out: number, half: number, board: LabelBoard): string {
  const radius = WIDTH / 2;
  const straight = half - radius;
  const [near, far] = [out - radius, out + radius];
  const at = (away: number, along: number) => fromFrame(frame, away, along);
  for (const away of [near, far]) board.block(...at(away, -half), ...at(away, half));
  // Seen from outside the fabric the work goes left to right or back, so the ends bulge one way or the other.
  const sweep = frame.outX * frame.goY - frame.outY * frame.goX > 0 ? 0 : 1;
  const arc = `A${digits(radius)},${digits(radius)} 0 0 ${sweep} `;
  return (
    `M${spot(...at(near, -straight))}L${spot(...at(near, straight))}${arc}${spot(...at(far, straight))}` +
    `L${spot(...at(far, -straight))}${arc}${spot(...at(near, -straight))}Z`
  );
}

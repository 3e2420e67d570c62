import type { DesignPlan } from '../pickup';
import { drawingDescription, drawingTitle } from '../text';
import { chosenPieces } from './diagram';

/** Title and description of a drawing, for those who don't see it. */
export function describeDrawing(
  plan: DesignPlan,
  pickup: number | null,
): { readonly title: string; readonly description: string } {
  const chosen = pickup === null ? null : (plan.pickups[pickup] ?? null);
  const names = chosenPieces(plan, chosen, undefined).map(({ piece }) => piece.name);
  const told = chosen && { name: chosen.pickup.name, picked: chosen.picked, edges: chosen.edges.length };
  return {
    title: drawingTitle(plan.design.name, chosen?.pickup.name ?? null),
    description: drawingDescription(names, told),
  };
}

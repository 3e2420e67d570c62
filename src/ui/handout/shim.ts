import type { DesignPlan, PickupPlan } from '../../pickup';
import type { Handout } from '../../piece';
import type { Work } from '../../handout';
import { instructions, type Voice } from '../../text';
export const handoutWork = (plan: DesignPlan, pickup: number, handout: Handout): Work => ({
  plan,
  pickup,
  handout,
  gauges: [],
  strips: [],
});
export const instructionsHtml = (_: string, pickup: PickupPlan, voice: Voice): string =>
  instructions(pickup, voice).join('<p>');

import {
  placeDesign,
  quickLength,
  rowDesign,
  type Design,
  type PlaceQuestion,
  type QuickFault,
  type RowQuestion,
  type StarterWords,
} from '../piece';
import type { Mm } from '../units';
import { planDesign } from './make';
import type { DesignPlan, PickupPlan, PlannedEdge } from './plan';

/** The answer to a question about one edge: the plan of a strip, made as every other plan is. */
export interface PlaceAnswer {
  readonly ok: true;
  readonly question: PlaceQuestion;
  readonly design: Design;
  readonly plan: DesignPlan;
  readonly pickup: PickupPlan;
  readonly edge: PlannedEdge;
  /** False where only a length is known: sections and gauge are told then, but neither runs nor openings. */
  readonly hasOpenings: boolean;
  /** Null where nothing says how long the edge is. */
  readonly lengthMm: Mm | null;
  /** Band stitches over 10 cm that the count implies, `100 * place / length`; null without a length. */
  readonly impliedPer10cm: number | null;
}

/** The answer to a question about one row: its first row, with the design it comes from. */
export interface RowAnswer {
  readonly ok: true;
  readonly question: RowQuestion;
  readonly design: Design;
  readonly plan: DesignPlan;
  readonly pickup: PickupPlan;
}

/** Plans stitches over one straight edge; what can't be answered is a fault of one field. */
export function answerPlace(question: PlaceQuestion, words: StarterWords): PlaceAnswer | QuickFault {
  const made = placeDesign(question, words);
  if (!made.ok) return made;
  const plan = planDesign(made.design);
  const pickup = plan.pickups[0]!;
  const lengthMm = quickLength(question);
  return {
    ok: true,
    question,
    design: made.design,
    plan,
    pickup,
    edge: pickup.edges[0]!,
    hasOpenings: made.hasOpenings,
    lengthMm,
    impliedPer10cm: lengthMm === null ? null : (100 * question.place) / lengthMm,
  };
}

/** Spaces increases or decreases in one row; what can't be answered is a fault of one field. */
export function answerRow(question: RowQuestion, words: StarterWords): RowAnswer | QuickFault {
  const made = rowDesign(question, words);
  if (!made.ok) return made;
  const plan = planDesign(made.design);
  return { ok: true, question, design: made.design, plan, pickup: plan.pickups[0]! };
}

import { checkDesign, DesignError, type Band, type Design, type Piece, type Pickup, type Problem } from '../piece';
import { planPickup, PlanError, type DesignPlan, type PickupPlan, type PlanProblem } from '../pickup';
import { rowHeight, shelf, stitchWidth, type Gauge } from '../units';
import { regridded } from './regrid';

/** Why there is no plan at another gauge: a piece that has none has no size to keep; else what is wrong there. */
export type NotAtGauge = { readonly kind: 'no-gauge'; readonly piece: string } | Problem | PlanProblem;

/** A pick-up planned on pieces of another gauge, or why it can't be. */
export type WorkedAt =
  | { readonly gauge: Gauge; readonly plan: PickupPlan }
  | { readonly gauge: Gauge; readonly plan: null; readonly why: NotAtGauge };

/** As many as a handout tells of. */
const kept = shelf<Pickup, WorkedAt>(6);

/**
 * The same work at another gauge: every piece that the pick-up runs along is drawn on the grid of that gauge, as large
 * as it was (`regridded`), and the pick-up is planned there by the same wishes. A band whose gauge is the piece's own
 * follows it; one with a gauge that is set is scaled in proportion to the first of these pieces, and as deep in mm as
 * it was. Counts that belong to the old gauge go: a demanded total, edges of a given count (which take the rate of
 * their kind), what a pattern states, and buttonholes. Lengths by tape stay.
 *
 * @throws RangeError when there is no such pick-up
 */
export function workAt({ design }: Pick<DesignPlan, 'design'>, pickup: number, gauge: Gauge): WorkedAt {
  const chosen = design.pickups[pickup];
  if (!chosen) throw new RangeError(`There is no pick-up number ${pickup} in this design.`);
  const pieces = design.pieces.filter(({ id }) => chosen.along.some((at) => at.piece === id));
  const { stitches, rows, over } = gauge;
  return kept(chosen, [design.hand, stitches, rows, over, ...pieces], () => worked(design, chosen, pieces, gauge));
}

function worked(design: Design, chosen: Pickup, pieces: readonly Piece[], gauge: Gauge): WorkedAt {
  const bare = pieces.find((piece) => !piece.gauge);
  if (bare) return { gauge, plan: null, why: { kind: 'no-gauge', piece: bare.name } };
  const first = pieces.find(({ id }) => id === chosen.along[0]?.piece)?.gauge ?? gauge;
  const { buttonholes: _holes, statedRatios: _ratios, ...wishes } = chosen;
  const pickup: Pickup = {
    ...wishes,
    band: bandAt(chosen.band, first, gauge),
    rates: chosen.rates.filter(({ rate }) => rate.kind !== 'count'),
    target: null,
    stated: [],
    statedTotal: null,
    statedSections: null,
    got: null,
  };
  const there: Design = { ...design, pieces: pieces.map((piece) => regridded(piece, gauge)), pickups: [pickup] };
  try {
    checkDesign(there);
    return { gauge, plan: planPickup(there, pickup) };
  } catch (error) {
    if (error instanceof DesignError || error instanceof PlanError) return { gauge, plan: null, why: error.problem };
    throw error;
  }
}

function bandAt(band: Band, from: Gauge, to: Gauge): Band {
  const [wider, taller] = [stitchWidth(to) / stitchWidth(from), rowHeight(to) / rowHeight(from)];
  const { gauge, rows } = band;
  return {
    ...band,
    ...(gauge ? { gauge: { ...gauge, stitches: gauge.stitches / wider, rows: gauge.rows / taller } } : {}),
    ...(rows === undefined ? {} : { rows: Math.round(rows / taller) }),
  };
}

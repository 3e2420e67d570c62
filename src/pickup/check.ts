import type { EdgeRef, Pickup } from '../piece';
import type { Gauge } from '../units';
import { causesOf } from './causes';
import type { PlannedEdge } from './plan';
import { ratioOf } from './places';
import { ratioCount } from './ratios';
import type { RatioOf, StatedCheck, Verdict } from './statedCheck';

/** How a stretch (count / wanted - 1) shows in the finished piece; thresholds in percent (common practice). */
export function verdictOf(stretch: number, flat: Pickup['flat']): Verdict {
  const percent = Math.abs(stretch) * 100;
  const slack = 1e-9;
  if (percent <= flat.slight + slack) return 'lies flat';
  if (percent <= flat.strong + slack) return stretch < 0 ? 'slightly tight' : 'slightly loose';
  return stretch < 0 ? 'will pucker' : 'will ruffle';
}

/** What a pick-up is to be held against. */
export interface Total {
  readonly wanted: number;
  readonly target: number;
}

/**
 * What a pattern states beside what this piece needs: the counts of its edges, what its ratios give on them, and the
 * total. A ratio is counted as `placesPer` has it and rounded as every ratio is.
 */
export function checkStated(
  pickup: Pickup,
  edges: readonly PlannedEdge[],
  total: Total,
  band: Gauge | null,
): StatedCheck[] {
  const onEdge = (
    ref: EdgeRef,
    count: (edge: PlannedEdge) => number,
    ratioOn: (edge: PlannedEdge) => RatioOf | null,
  ) => {
    const edge = wholeEdge(edges, ref);
    if (!edge) return [];
    const ratio = ratioOn(edge);
    const { wanted, count: planned, lengthMm } = edge;
    const told = { what: ratio ? 'ratio' : 'edge', edge: { piece: ref.piece, edge: ref.edge }, ratio } as const;
    return [checked(told, count(edge), { wanted, planned, lengthMm, edges: [edge] }, pickup, band)];
  };
  const whole = pickup.statedTotal === null ? [] : [pickup.statedTotal];
  return [
    ...pickup.stated.flatMap((one) =>
      onEdge(
        one,
        () => one.count,
        () => null,
      ),
    ),
    ...(pickup.statedRatios ?? []).flatMap((one) => {
      const ratioOn = (edge: PlannedEdge) => ratioOf(one, edge);
      return onEdge(one, (edge) => ratioCount(ratioOn(edge).places, one.pick, one.of), ratioOn);
    }),
    ...whole.map((count) => checkWhole('total', count, pickup, edges, total, band)),
  ];
}

/** What came out in all, beside what this piece needs; null where it is not told. */
export function checkGot(
  pickup: Pickup,
  edges: readonly PlannedEdge[],
  total: Total,
  band: Gauge | null,
): StatedCheck | null {
  return pickup.got === null ? null : checkWhole('got', pickup.got, pickup, edges, total, band);
}

function checkWhole(
  what: 'total' | 'got',
  count: number,
  pickup: Pickup,
  edges: readonly PlannedEdge[],
  { wanted, target }: Total,
  band: Gauge | null,
): StatedCheck {
  const lengths = edges.map((edge) => edge.lengthMm);
  const lengthMm = lengths.every((mm) => mm !== null) ? lengths.reduce((sum, mm) => sum + mm, 0) : null;
  return checked({ what, edge: null, ratio: null }, count, { wanted, planned: target, lengthMm, edges }, pickup, band);
}

interface Need {
  readonly wanted: number | null;
  readonly planned: number;
  readonly lengthMm: number | null;
  readonly edges: readonly PlannedEdge[];
}

function checked(
  told: Pick<StatedCheck, 'what' | 'edge' | 'ratio'>,
  stated: number,
  { wanted, planned, lengthMm, edges }: Need,
  pickup: Pickup,
  band: Gauge | null,
): StatedCheck {
  const need = wanted ?? planned;
  const stretch = need > 0 ? stated / need - 1 : null;
  const verdict = stretch === null ? null : verdictOf(stretch, pickup.flat);
  const off = verdict !== null && verdict !== 'lies flat';
  return {
    ...told,
    stated,
    planned,
    wanted,
    stretch,
    verdict,
    impliedPer10cm: implied(stated, lengthMm, pickup),
    causes: off ? causesOf({ stated, wanted: need, edges, ratio: told.ratio }, pickup, band) : [],
  };
}

/** What a pick-up has of one edge, all its stretches taken together; undefined where it does not run along it. */
function wholeEdge(edges: readonly PlannedEdge[], { piece, edge }: EdgeRef): PlannedEdge | undefined {
  const [first, ...others] = edges.filter((one) => one.piece.id === piece && one.measured.id === edge);
  return others.reduce<PlannedEdge | undefined>(
    (whole, part) =>
      whole && {
        ...whole,
        stitches: whole.stitches + part.stitches,
        rows: whole.rows + part.rows,
        places: whole.places + part.places,
        openings: whole.openings + part.openings,
        count: whole.count + part.count,
        lengthMm: whole.lengthMm === null || part.lengthMm === null ? null : whole.lengthMm + part.lengthMm,
        wanted: whole.wanted === null || part.wanted === null ? null : whole.wanted + part.wanted,
      },
    first,
  );
}

/** Band stitches over 10 cm that a count on a length implies, the draw-in taken out. */
function implied(count: number, lengthMm: number | null, pickup: Pickup): number | null {
  return lengthMm !== null && lengthMm > 0 ? (100 * count) / (lengthMm * (1 - pickup.band.drawIn / 100)) : null;
}

import type { Pickup } from '../piece';
import { stitchesPerMm, type Gauge } from '../units';
import type { PlannedEdge } from './plan';
import { ratioOf } from './places';
import { plainRatios } from './ratios';
import type { Cause, Misreading, RatioOf } from './statedCheck';

/** Two counts are taken for the same when they differ by less than this share, or by half a stitch. */
const ALIKE = 0.025;

/** What a cause is looked for in. */
export interface Doubt {
  readonly stated: number;
  /** The real number wanted of all the edges. */
  readonly wanted: number;
  readonly edges: readonly PlannedEdge[];
  /** Where it is not a count that is stated but a ratio: the ratio. */
  readonly ratio: RatioOf | null;
}

/**
 * What a ratio of `pick` from every `of` gives, as a share of all places, where it is misread (common practice, no
 * source; the readings are those that its words allow):
 * - skip-of: `pick` picked up, then `of` skipped, so `pick / (pick + of)`: 3 of 4 read as 3 of 7;
 * - turned-round: those to be skipped picked up and the others skipped, so `(of - pick) / of`: 3 of 4 read as 1 of 4;
 * - of-then-skip: `of` picked up, then one skipped, so `of / (of + 1)`: 3 of 4 read as 4 of 5;
 * - one-of: one from every `of` alone, so `1 / of`: 2 of 5 read as 1 of 5.
 * A reading that is right, or the same as one before it, is left out; so is all of a ratio that skips nothing.
 */
export function misreadings(pick: number, of: number): { readonly as: Misreading; readonly share: number }[] {
  if (pick >= of) return [];
  const all = [
    { as: 'skip-of', share: pick / (pick + of) },
    { as: 'turned-round', share: (of - pick) / of },
    { as: 'of-then-skip', share: of / (of + 1) },
    { as: 'one-of', share: 1 / of },
  ] as const;
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-9;
  return all.filter(
    ({ share }, i) => !same(share, pick / of) && !all.slice(0, i).some((other) => same(other.share, share)),
  );
}

/**
 * What the numbers themselves tell about where a wrong count comes from, the likeliest first; one at least wherever
 * something is wanted. Each guess says what it would make of every edge it concerns, the others getting what they want,
 * and counts where the sum is the stated count but for `ALIKE`.
 */
export function causesOf({ stated, wanted, edges, ratio }: Doubt, pickup: Pickup, band: Gauge | null): Cause[] {
  if (!(wanted > 0)) return [];
  const causes: Cause[] = [];
  const near = (value: number | null) =>
    value !== null && value > 0 && Math.abs(stated - value) <= Math.max(ALIKE * value, 0.5);
  /** The sum where each edge gives what the guess says; null where it says nothing of any. */
  const sumOf = (guess: (edge: PlannedEdge) => number | null) => {
    const guesses = edges.map(guess);
    if (guesses.every((one) => one === null)) return null;
    return guesses.reduce<number>((sum, one, i) => sum + (one ?? wantedOn(edges[i]!)), 0);
  };
  const sides = edges.filter(isSide);
  const unit = sides[0]?.unit ?? 'row';
  const halfOfRows = sumOf((edge) => (edge.unit === 'row' && edge.rows > 0 ? edge.rows / 2 : null));
  const halfWanted = sumOf((edge) => (isSide(edge) ? wantedOn(edge) / 2 : null));
  if (stated < wanted && (near(halfOfRows) || near(halfWanted))) {
    causes.push({ kind: 'openings-counted-as-rows', unit });
  }
  const doubled = sumOf((edge) => (inPairs(edge) ? wantedOn(edge) * 2 : null));
  const asRows = sumOf((edge) => (inPairs(edge) ? edge.rows : null));
  if (stated > wanted && (near(doubled) || near(asRows))) causes.push({ kind: 'rows-counted-as-openings', unit });
  if (causes.length === 0 && stated === sumOf((edge) => (isSide(edge) ? edge.places : null))) {
    causes.push({ kind: 'one-from-each', unit });
  }
  if (causes.length === 0 && sides.length > 0) {
    const ratioOn = (edge: PlannedEdge) => (ratio ? null : patternRatio(pickup, edge)) ?? ownRatio(edge);
    causes.push(...misreadOn(near, sumOf, sides, ratioOn));
  }
  if (band) {
    const atBody = sumOf(({ piece: { gauge }, wanted: want }) =>
      gauge && want !== null ? (want * stitchesPerMm(gauge)) / stitchesPerMm(band) : null,
    );
    if (near(atBody) && Math.abs(atBody! / wanted - 1) > ALIKE) causes.push({ kind: 'body-gauge' });
  }
  const left = 1 - pickup.band.drawIn / 100;
  if (pickup.band.drawIn > 0 && near(wanted * left)) causes.push({ kind: 'reduced-twice' });
  if (pickup.band.drawIn > 0 && near(wanted / left)) causes.push({ kind: 'not-reduced' });
  if (causes.length === 0) causes.push(ratio ? betterRatio(wanted, ratio) : otherSize(stated, wanted, edges, sides));
  return causes;
}

function wantedOn({ wanted, count }: PlannedEdge): number {
  return wanted ?? count;
}

/** Counted along rows: the openings that a ratio is worked over. */
function isSide({ unit }: PlannedEdge): boolean {
  return unit === 'row' || unit === 'chain' || unit === 'ridge';
}

/** One opening to two rows. */
function inPairs({ unit }: PlannedEdge): boolean {
  return unit === 'chain' || unit === 'ridge';
}

/** The ratio that the pattern states for an edge. */
function patternRatio({ statedRatios = [] }: Pickup, edge: PlannedEdge): RatioOf | null {
  const stated = statedRatios.find((one) => one.piece === edge.piece.id && one.edge === edge.measured.id);
  return stated ? ratioOf(stated, edge) : null;
}

/** The ratio that an edge is worked by, or goes nearest by. */
function ownRatio({ rate, ratios, places }: PlannedEdge): Pick<RatioOf, 'pick' | 'of' | 'places'> | null {
  const own = rate.kind === 'ratio' ? rate : ratios[0];
  return own ? { pick: own.pick, of: own.of, places } : null;
}

/** The misreading of the first side's ratio that fits, on every side that has the same. */
function misreadOn(
  near: (value: number | null) => boolean,
  sumOf: (guess: (edge: PlannedEdge) => number | null) => number | null,
  sides: readonly PlannedEdge[],
  ratioOn: (edge: PlannedEdge) => Pick<RatioOf, 'pick' | 'of' | 'places'> | null,
): Cause[] {
  const first = ratioOn(sides[0]!);
  if (!first) return [];
  const { pick, of } = first;
  const found = misreadings(pick, of).find(({ share }) =>
    near(
      sumOf((edge) => {
        const ratio = isSide(edge) ? ratioOn(edge) : null;
        return ratio?.pick === pick && ratio.of === of ? ratio.places * share : null;
      }),
    ),
  );
  return found ? [{ kind: 'ratio-misread', pick, of, as: found.as }] : [];
}

/** The plain ratio that this edge wants, counted as the stated one is. */
function betterRatio(wanted: number, { per, places }: RatioOf): Cause {
  const [best] = plainRatios(wanted / places);
  return best ? { kind: 'other-ratio', ...best, per } : { kind: 'other-size' };
}

/** How much longer, wider or otherwise the piece would have to be for the count to lie flat. */
function otherSize(
  stated: number,
  wanted: number,
  edges: readonly PlannedEdge[],
  sides: readonly PlannedEdge[],
): Cause {
  const long = sides.filter((edge) => edge.rows > 0);
  const over = stated - wanted;
  const total = (list: readonly PlannedEdge[], of: (edge: PlannedEdge) => number) =>
    list.reduce((sum, edge) => sum + of(edge), 0);
  if (long.length > 0) {
    const all = total(long, (edge) => edge.rows);
    const rows = Math.round((over * all) / total(long, wantedOn));
    if (rows > -all) return { kind: 'lengthened', rows, ...(long.length > 1 ? { edges: long.length } : {}) };
  } else if (edges.length === 1) {
    const stitches = Math.round((over * edges[0]!.stitches) / wanted);
    if (stitches !== 0 && stitches > -edges[0]!.stitches) return { kind: 'widened', stitches };
  }
  return { kind: 'other-size' };
}

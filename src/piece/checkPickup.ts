import { gaugeProblem } from './checkCorners';
import type { EdgeRef, Pickup, Piece } from './design';
import { nearest } from './nearest';
import { placeOf, type Key } from './place';
import type { Problem } from './problems';

/** How much of an edge two stretches may share and still only touch. */
const TOUCH = 1e-9;

type Place = (...more: Key[]) => string;

function same(a: EdgeRef, b: EdgeRef): boolean {
  return a.piece === b.piece && a.edge === b.edge;
}

function refProblem(pieces: readonly Piece[], ref: EdgeRef, at: string): Problem | null {
  const piece = pieces.find(({ id }) => id === ref.piece);
  if (!piece) {
    const ids = pieces.map(({ id }) => id);
    return { kind: 'unknown-piece', at: `${at}.piece`, piece: ref.piece, nearest: nearest(ref.piece, ids) };
  }
  if (piece.outline.some(({ id }) => id === ref.edge)) return null;
  const ids = piece.outline.map(({ id }) => id);
  const near = nearest(ref.edge, ids);
  return { kind: 'unknown-edge', at: `${at}.edge`, piece: ref.piece, edge: ref.edge, nearest: near };
}

function alongProblem(pieces: readonly Piece[], pickup: Pickup, place: Place): Problem | null {
  for (const [i, stretch] of pickup.along.entries()) {
    const at = place('along', i);
    const problem = refProblem(pieces, stretch, at);
    if (problem) return problem;
    const [from, to] = stretch.part;
    if (from >= to) return { kind: 'part-order', at: `${at}.part`, from, to };
    for (const earlier of pickup.along.slice(0, i)) {
      if (!same(earlier, stretch)) continue;
      const start = Math.max(from, earlier.part[0]);
      const end = Math.min(to, earlier.part[1]);
      if (end - start > TOUCH) {
        return { kind: 'same-stretch', at, piece: stretch.piece, edge: stretch.edge, from: start, to: end };
      }
    }
  }
  return null;
}

/** The lists that say something of edges: each must name an edge of the pick-up, and none twice. */
function listProblem(pieces: readonly Piece[], pickup: Pickup, place: Place): Problem | null {
  for (const list of ['measured', 'rates', 'stated', 'statedRatios'] as const) {
    for (const [i, ref] of (pickup[list] ?? []).entries()) {
      const at = place(list, i);
      const problem = refProblem(pieces, ref, at);
      if (problem) return problem;
      const { piece, edge } = ref;
      if (!pickup.along.some((stretch) => same(stretch, ref))) return { kind: 'not-along', at, piece, edge };
      if (pickup[list]!.slice(0, i).some((earlier) => same(earlier, ref))) {
        return { kind: 'given-twice', at, piece, edge };
      }
    }
  }
  return null;
}

function rateProblem(pieces: readonly Piece[], pickup: Pickup, place: Place): Problem | null {
  const gaugeOf = (ref: EdgeRef) => pieces.find(({ id }) => id === ref.piece)?.gauge;
  const bandGauge = pickup.band.gauge ?? pickup.along.map(gaugeOf).find((gauge) => gauge !== undefined);
  for (const [i, entry] of pickup.rates.entries()) {
    const { piece, edge, rate } = entry;
    const at = place('rates', i, 'rate');
    if (rate.kind === 'ratio' && rate.pick > rate.of) {
      return { kind: 'ratio-above-one', at, pick: rate.pick, of: rate.of };
    }
    if (rate.kind !== 'length') continue;
    const measured = pickup.measured.some((ref) => same(ref, entry));
    if (!gaugeOf(entry) && !measured) return { kind: 'length-without-gauge', at, piece, edge, wants: 'piece' };
    if (!bandGauge) return { kind: 'length-without-gauge', at, piece, edge, wants: 'band' };
  }
  return null;
}

/**
 * What is wrong with pick-up `index`, or null: its band's gauge, what it points at, stretches taken twice, rates that
 * nothing can be worked out from, thresholds out of order. The pieces must have been found right.
 */
export function pickupProblem(root: unknown, pieces: readonly Piece[], pickup: Pickup, index: number): Problem | null {
  const place: Place = (...more) => placeOf(root, ['pickups', index, ...more]);
  const { gauge } = pickup.band;
  const { slight, strong } = pickup.flat;
  return (
    (gauge ? gaugeProblem(gauge, place('band', 'gauge')) : null) ??
    alongProblem(pieces, pickup, place) ??
    listProblem(pieces, pickup, place) ??
    rateProblem(pieces, pickup, place) ??
    (slight > strong ? { kind: 'flat-order', at: place('flat'), slight, strong } : null)
  );
}

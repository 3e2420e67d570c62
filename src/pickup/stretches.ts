import { findTwins, type Design, type Pickup, type Piece, type Rate, type Stretch } from '../piece';
import { cellOf, measurePiece, type MeasuredEdge } from '../shaping';
import { shelf, type Mm } from '../units';
import { pickOut, reverse } from './openingList';
import { openingsOf, type EdgeOpenings } from './openings';
import type { OpeningList } from './plan';

/** Openings of a stretch in working order, first and second places and step holes, distances from its working start. */
export interface StretchOpenings extends OpeningList {
  readonly edgeMm: Mm;
  readonly joinMm: Mm;
  /** How many first places there are, and how many with the second ones. Holes are in neither. */
  readonly first: number;
  readonly most: number;
}

/** One stretch of a pick-up, in working order, with all that lies on it. */
export interface WorkedStretch {
  readonly stretch: Stretch;
  readonly piece: Piece;
  readonly measured: MeasuredEdge;
  /** Worked against the direction of the outline (a left-handed knitter works every run in reverse). */
  readonly against: boolean;
  readonly openings: StretchOpenings;
  readonly edgeMm: Mm;
  readonly joinMm: Mm;
  readonly stitches: number;
  readonly rows: number;
  /** What a tape said of this stretch, or null. */
  readonly measuredMm: Mm | null;
  /** The rate that the file gives, or null. */
  readonly givenRate: Rate | null;
}

/** The stretches of a pick-up in the order in which they are worked. */
export function stretchesOf(design: Design, pickup: Pickup): WorkedStretch[] {
  const pieces = new Map(design.pieces.map((piece) => [piece.id, piece]));
  const left = design.hand === 'left';
  const order = left ? [...pickup.along].reverse() : pickup.along;
  return order.flatMap((stretch) => {
    const piece = pieces.get(stretch.piece);
    const measured = piece && measurePiece(piece).find((edge) => edge.id === stretch.edge);
    if (!piece || !measured) return [];
    const against = stretch.backwards !== left;
    return keptWorked(stretch, [pickup, piece, measured, against], () =>
      workedStretch(pickup, stretch, piece, measured, against),
    );
  });
}

const keptWorked = shelf<Stretch, WorkedStretch>(1);

function workedStretch(
  pickup: Pickup,
  stretch: Stretch,
  piece: Piece,
  measured: MeasuredEdge,
  against: boolean,
): WorkedStretch {
  const [from, to] = stretch.part;
  const whole = openingsOf(measured, cellOf(piece), pickup);
  const openings = keptParts(whole, [from, to, against], () => partOf(whole, from, to, against));
  const same = (ref: { piece: string; edge: string }) => ref.piece === stretch.piece && ref.edge === stretch.edge;
  const tape = pickup.measured.find(same)?.mm;
  return {
    stretch,
    piece,
    measured,
    against,
    openings,
    edgeMm: openings.edgeMm,
    joinMm: openings.joinMm,
    stitches: Math.round(measured.stitches * to) - Math.round(measured.stitches * from),
    rows: Math.round(measured.rows * to) - Math.round(measured.rows * from),
    measuredMm: tape === undefined ? null : tape * (to - from),
    givenRate: pickup.rates.find(same)?.rate ?? null,
  };
}

/** An edge may be picked up from in a few parts, and either way round. */
const keptParts = shelf<EdgeOpenings, StretchOpenings>(4);

/** The openings between two shares of an edge's length; one just at the end belongs to the part behind it. */
function partOf(whole: EdgeOpenings, from: number, to: number, against: boolean): StretchOpenings {
  const { list } = whole;
  const [edgeFrom, edgeTo] = [from * whole.edgeMm, to * whole.edgeMm];
  const joinFrom = from === 0 ? 0 : whole.joinAt(edgeFrom);
  const joinTo = to === 1 ? whole.joinMm : whole.joinAt(edgeTo);
  const slack = 1e-9 * whole.edgeMm;
  let part = list;
  if (from !== 0 || to !== 1 || against) {
    const inside: number[] = [];
    list.edgeAt.forEach((at, i) => {
      if (at >= edgeFrom - slack && (to === 1 || at < edgeTo - slack)) inside.push(i);
    });
    const cut = pickOut(list, inside);
    const way = (start: Mm, end: Mm) => (against ? (at: Mm) => end - at : (at: Mm) => at - start);
    part = {
      ...(against ? reverse(cut) : cut),
      edgeAt: cut.edgeAt.map(way(edgeFrom, edgeTo)),
      joinAt: cut.joinAt.map(way(joinFrom, joinTo)),
    };
  }
  let [first, most] = [0, 0];
  for (const { second, hole } of part.sort) {
    if (!second) first += 1;
    if (!hole) most += 1;
  }
  return { ...part, edgeMm: edgeTo - edgeFrom, joinMm: joinTo - joinFrom, first, most };
}

/**
 * For each stretch the index of its mirror twin in the same pick-up, its own when it mirrors itself, or -1. Twins lie
 * on a symmetric piece, cover mirrored parts and are counted and measured alike.
 */
export function twinsOf(stretches: readonly WorkedStretch[]): number[] {
  return stretches.map((one) => {
    if (!one.piece.symmetric) return -1;
    const twinEdge = findTwins(one.piece)[one.measured.index];
    const j = stretches.findIndex(
      (other) => other.piece === one.piece && other.measured.index === twinEdge && mirrorsPart(one, other),
    );
    const other = stretches[j];
    if (!other || !alike(one, other)) return -1;
    return j;
  });
}

function mirrorsPart(one: WorkedStretch, other: WorkedStretch): boolean {
  const slack = 1e-9;
  return (
    Math.abs(one.stretch.part[0] - (1 - other.stretch.part[1])) < slack &&
    Math.abs(one.stretch.part[1] - (1 - other.stretch.part[0])) < slack
  );
}

function alike(one: WorkedStretch, other: WorkedStretch): boolean {
  const sameTape =
    one.measuredMm === other.measuredMm ||
    (one.measuredMm !== null &&
      other.measuredMm !== null &&
      Math.abs(one.measuredMm - other.measuredMm) <= 1e-9 * one.measuredMm);
  return sameTape && JSON.stringify(one.givenRate) === JSON.stringify(other.givenRate);
}

import { findTwins, type Design, type Pickup, type Piece, type Rate, type Stretch } from '../piece';
import { cellOf, measurePiece, type MeasuredEdge } from '../shaping';
import type { Mm } from '../units';
import { openingsOf, type EdgeOpening } from './openings';

/** One stretch of a pick-up, in working order, with all that lies on it. */
export interface WorkedStretch {
  readonly stretch: Stretch;
  readonly piece: Piece;
  readonly measured: MeasuredEdge;
  /** Worked against the direction of the outline (a left-handed knitter works every run in reverse). */
  readonly against: boolean;
  /** First and second places and step holes in working order, distances from the stretch's working start. */
  readonly openings: readonly EdgeOpening[];
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
    return piece && measured ? [workedStretch(pickup, stretch, piece, measured, stretch.backwards !== left)] : [];
  });
}

function workedStretch(
  pickup: Pickup,
  stretch: Stretch,
  piece: Piece,
  measured: MeasuredEdge,
  against: boolean,
): WorkedStretch {
  const cell = cellOf(piece);
  const whole = openingsOf(measured, cell, pickup);
  const [from, to] = stretch.part;
  const same = (ref: { piece: string; edge: string }) => ref.piece === stretch.piece && ref.edge === stretch.edge;
  const tape = pickup.measured.find(same)?.mm;
  const common = {
    stretch,
    piece,
    measured,
    against,
    measuredMm: tape === undefined ? null : tape * (to - from),
    givenRate: pickup.rates.find(same)?.rate ?? null,
  };
  if (from === 0 && to === 1) {
    return {
      ...common,
      openings: against ? turned(whole.all, whole.edgeMm, whole.joinMm) : whole.all,
      edgeMm: whole.edgeMm,
      joinMm: whole.joinMm,
      stitches: measured.stitches,
      rows: measured.rows,
    };
  }
  const edgeFrom = from * whole.edgeMm;
  const edgeTo = to * whole.edgeMm;
  const joinFrom = from === 0 ? 0 : whole.joinAt(edgeFrom);
  const joinTo = to === 1 ? whole.joinMm : whole.joinAt(edgeTo);
  const slack = 1e-9 * whole.edgeMm;
  const inside = whole.all
    .filter(({ edgeAt }) => edgeAt >= edgeFrom - slack && (to === 1 || edgeAt < edgeTo - slack))
    .map((opening) => ({ ...opening, edgeAt: opening.edgeAt - edgeFrom, joinAt: opening.joinAt - joinFrom }));
  const edgeMm = edgeTo - edgeFrom;
  const joinMm = joinTo - joinFrom;
  return {
    ...common,
    openings: against ? turned(inside, edgeMm, joinMm) : inside,
    edgeMm,
    joinMm,
    stitches: Math.round(measured.stitches * to) - Math.round(measured.stitches * from),
    rows: Math.round(measured.rows * to) - Math.round(measured.rows * from),
  };
}

function turned(openings: readonly EdgeOpening[], edgeMm: Mm, joinMm: Mm): EdgeOpening[] {
  return openings
    .map((opening) => ({ ...opening, edgeAt: edgeMm - opening.edgeAt, joinAt: joinMm - opening.joinAt }))
    .reverse();
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

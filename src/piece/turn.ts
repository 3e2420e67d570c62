import { signedArea } from '../geometry';
import type { Design, Edge, Pickup, Piece, Stretch } from './design';
import { endOf, resolveOutline } from './outline';
import { placeOf } from './place';
import { DesignError, type Notice } from './problems';

function turnedEdge(edge: Edge, end: Edge['from']): Edge {
  if (edge.path !== 'curve') return { ...edge, from: end };
  const [first, second] = edge.handles;
  return { ...edge, from: end, handles: [second, first] };
}

/**
 * The piece with its outline run the other way round: the same first edge, every edge beginning where it ended, the
 * handles of curves changed over. Schedules stay, since they are read bottom up either way.
 */
export function turnedRound(piece: Piece): Piece {
  const turned = piece.outline.map((edge, i) => turnedEdge(edge, endOf(piece.outline, i)));
  return { ...piece, outline: [...turned.slice(0, 1), ...turned.slice(1).reverse()] };
}

/**
 * Whether the outline of a piece runs counterclockwise, by the line that is worked; null when a schedule of it does
 * not end on its corner, so that there is no such line.
 */
function runsCounterclockwise(piece: Piece): boolean | null {
  try {
    return signedArea(resolveOutline(piece).flatMap((edge) => edge.path)) > 0;
  } catch (error) {
    if (error instanceof DesignError) return null;
    throw error;
  }
}

/** The same by the corners and curves alone, each stepped edge taken for a straight one. */
function drawnClockwise(piece: Piece): boolean {
  const outline = piece.outline.map((edge) =>
    edge.path === 'stepped' ? ({ ...edge, path: 'straight' } as const) : edge,
  );
  return runsCounterclockwise({ ...piece, outline }) === false;
}

/**
 * Whether an outline is to be turned round. A schedule says which side is in and which is out, so it leads to its
 * corner in one direction only; where it does so in neither, the corners decide.
 */
function runsClockwise(piece: Piece): boolean {
  if (runsCounterclockwise(piece) === true) return false;
  if (runsCounterclockwise(turnedRound(piece)) === true) return true;
  return drawnClockwise(piece);
}

function turnedStretch(stretch: Stretch): Stretch {
  const [from, to] = stretch.part;
  return { ...stretch, part: [1 - to, 1 - from] };
}

/** Each run of neighbouring stretches on turned pieces, the other way round: it was listed along the old outline. */
function runsReversed(along: readonly Stretch[], isTurned: (stretch: Stretch) => boolean): Stretch[] {
  const result: Stretch[] = [];
  let run: Stretch[] = [];
  for (const stretch of along) {
    if (isTurned(stretch)) run.unshift(stretch);
    else {
      result.push(...run, stretch);
      run = [];
    }
  }
  return [...result, ...run];
}

/**
 * Turns round every outline that runs clockwise, with a notice of each. Edges keep their ids, so whatever points at
 * them still does; parts of them, being fractions in the direction of the outline, are counted from the other end, so
 * that the same fabric is meant. `backwards` stays: it means "against the outline", and the outline now runs as a
 * right-handed knitter works. Stretches that follow each other on turned pieces change places for the same reason, so
 * that a run from edge to neighbouring edge stays one.
 */
export function turnCounterclockwise(design: Design): { design: Design; notices: Notice[] } {
  const turned = new Set(design.pieces.filter(runsClockwise));
  if (turned.size === 0) return { design, notices: [] };
  const notices = [...turned].map((piece): Notice => ({
    kind: 'turned-round',
    at: placeOf(design, ['pieces', design.pieces.indexOf(piece)]),
    piece: piece.id,
  }));
  const ids = new Set([...turned].map((piece) => piece.id));
  const pickupOf = (pickup: Pickup): Pickup => ({
    ...pickup,
    along: runsReversed(
      pickup.along.map((stretch) => (ids.has(stretch.piece) ? turnedStretch(stretch) : stretch)),
      (stretch) => ids.has(stretch.piece),
    ),
  });
  return {
    design: {
      ...design,
      pieces: design.pieces.map((piece) => (turned.has(piece) ? turnedRound(piece) : piece)),
      pickups: design.pickups.map(pickupOf),
    },
    notices,
  };
}

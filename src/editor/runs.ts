import type { Design, Piece, Pickup, Stretch } from '../piece';
import { freshId, idOf } from './outline/ids';

function whole(piece: Piece, index: number, backwards = false): Stretch {
  const n = piece.outline.length;
  return { piece: piece.id, edge: piece.outline[(index + n) % n]!.id, backwards, part: [0, 1] };
}

/**
 * The edges from one to another in the direction of the outline, both included: the whole way round where the last one
 * comes just before the first. None where the piece has no such edges.
 */
export function runBetween(piece: Piece, fromEdge: string, toEdge: string): Stretch[] {
  const from = piece.outline.findIndex(({ id }) => id === fromEdge);
  const to = piece.outline.findIndex(({ id }) => id === toEdge);
  if (from < 0 || to < 0) return [];
  const count = ((to - from + piece.outline.length) % piece.outline.length) + 1;
  return Array.from({ length: count }, (_, i) => whole(piece, from + i));
}

/** Every edge of a piece, in the direction of its outline, from its first edge on. */
export function allRound(piece: Piece): Stretch[] {
  return piece.outline.map((_, i) => whole(piece, i));
}

/**
 * What follows a run at its end, or comes before it at its start, on the same piece: the rest of an edge of which only
 * a part is taken, or the next edge. Null where that is in the run already, or the run is empty or points nowhere.
 */
export function nextTo(design: Design, along: readonly Stretch[], end: 'start' | 'end'): Stretch | null {
  const last = end === 'end' ? along.at(-1) : along[0];
  const piece = design.pieces.find(({ id }) => id === last?.piece);
  const index = piece?.outline.findIndex(({ id }) => id === last?.edge) ?? -1;
  if (!last || !piece || index < 0) return null;
  const onwards = last.backwards !== (end === 'end');
  const [from, to] = last.part;
  const rest: Stretch | null =
    onwards && to < 1 ? { ...last, part: [to, 1] } : !onwards && from > 0 ? { ...last, part: [0, from] } : null;
  const next = rest ?? whole(piece, onwards ? index + 1 : index - 1, last.backwards);
  const isTaken = along.some(
    ({ piece: id, edge, part }) =>
      id === next.piece && edge === next.edge && part[0] < next.part[1] && next.part[0] < part[1],
  );
  return isTaken ? null : next;
}

/**
 * A pick-up along a run, with every field as a file gives it that says no more than that. It is worked in the round
 * where the run goes all round one piece. Its id is made of its name.
 */
export function newPickup(design: Design, along: readonly Stretch[], name: string): Pickup {
  const taken = design.pickups.map(({ id }) => id);
  return {
    id: freshId(idOf(name, 'pick-up'), taken),
    name,
    along,
    joined: goesAllRound(design, along),
    measure: 'edge',
    measured: [],
    inset: 1,
    band: { fabric: 'stockinette', multiple: 1, plus: 0, drawIn: 0 },
    rates: [],
    target: null,
    spread: 'even',
    stated: [],
    statedTotal: null,
    statedSections: null,
    got: null,
    flat: { slight: 3, strong: 8 },
    stepHoles: false,
    halfLoop: false,
    garterAt: 'bump',
  };
}

function goesAllRound(design: Design, along: readonly Stretch[]): boolean {
  const [first] = along;
  const piece = design.pieces.find(({ id }) => id === first?.piece);
  if (!first || piece?.outline.length !== along.length) return false;
  const start = piece.outline.findIndex(({ id }) => id === first.edge);
  return along.every((stretch, i) => {
    const { edge } = whole(piece, start + (first.backwards ? -i : i));
    const isWhole = stretch.part[0] === 0 && stretch.part[1] === 1;
    return stretch.piece === piece.id && stretch.edge === edge && stretch.backwards === first.backwards && isWhole;
  });
}

import type { Edge, GridPoint, Piece, ScheduleStep } from '../../piece';
import { measurePiece } from '../../shaping';
import { fittedHandles, naturalHandles, thirds } from './curves';
import { asCurve, asStepped, asStraight, endCorner, wayOf, type GridPlace } from './paths';
import { joinedSteps } from './reschedule';
import { mirrorOf, withEdge } from './symmetry';

export type Path = Edge['path'];

/**
 * The piece with an edge run straight, curved, or worked from a schedule. A schedule becomes the curve nearest to its
 * steps; a straight edge a curve that goes on as its neighbours do; a slope or curve the schedule it is worked by. An
 * edge without rows, or a curve that turns in y, has no schedule of its own and stays.
 */
export function withPath(piece: Piece, index: number, path: Path): Piece {
  const edge = piece.outline[index]!;
  if (edge.path === path) return piece;
  const to = endCorner(piece.outline, index);
  switch (path) {
    case 'straight':
      return withEdge(piece, index, asStraight(edge));
    case 'curve': {
      const middle = mirrorOf(piece)?.sum ?? null;
      const handles = edge.path === 'stepped' ? fittedHandles(piece, edge, to) : naturalHandles(piece, index, middle);
      return withEdge(piece, index, asCurve(edge, handles));
    }
    case 'stepped': {
      const steps = workedSchedule(piece, index);
      return steps ? withEdge(piece, index, asStepped(edge, steps)) : piece;
    }
  }
}

/**
 * The schedule by which an edge is worked, in the order of knitting; null for an edge without rows, or one that both
 * climbs and falls. Stitches that are bound off or cast on together at a turn go into the step above them.
 */
export function workedSchedule(piece: Piece, index: number): ScheduleStep[] | null {
  const [, dy] = wayOf(piece.outline, index);
  const { worked } = measurePiece(piece)[index]!;
  if (dy === 0 || worked.some(({ up }) => up * dy < 0)) return null;
  const upwards = dy > 0 ? worked : [...worked].reverse();
  const steps: ScheduleStep[] = [];
  let flat = 0;
  for (const { across, up } of upwards) {
    if (up === 0) flat += across;
    else {
      steps.push({ stitches: across + flat, every: Math.abs(up), times: 1 });
      flat = 0;
    }
  }
  const last = steps.at(-1);
  if (!last) return null;
  steps[steps.length - 1] = { ...last, stitches: last.stitches + flat };
  return joinedSteps(steps);
}

/** The piece with one handle of a curve elsewhere; the twin's goes along. Other edges have no handles and stay. */
export function withHandle(piece: Piece, index: number, handle: 0 | 1, at: GridPlace): Piece {
  const edge = piece.outline[index]!;
  if (edge.path !== 'curve') return piece;
  const mirror = mirrorOf(piece);
  const image = mirror?.edge(index) === index ? mirror.flip(at) : edge.handles[1 - handle]!;
  return withEdge(piece, index, asCurve(edge, handle === 0 ? [at, image] : [image, at]));
}

/**
 * The piece with an edge bent so that its middle (t = 1/2) passes through a place: both handles move alike, by 4/3 of
 * what the middle does. A straight edge becomes a curve, and so does a worked one.
 */
export function withBend(piece: Piece, index: number, through: GridPlace): Piece {
  const edge = piece.outline[index]!;
  const to = endCorner(piece.outline, index);
  const mirror = mirrorOf(piece);
  const x = mirror?.edge(index) === index ? mirror.sum / 2 : through[0];
  const [a, b] = handlesOf(piece, edge, to);
  const middle = (k: 0 | 1) => (edge.from[k] + 3 * a[k] + 3 * b[k] + to[k]) / 8;
  const [dx, dy] = [x - middle(0), through[1] - middle(1)];
  if (dx === 0 && dy === 0) return piece;
  const moved = (handle: GridPlace): GridPlace => [handle[0] + (4 / 3) * dx, handle[1] + (4 / 3) * dy];
  return withEdge(piece, index, asCurve(edge, [moved(a), moved(b)]));
}

function handlesOf(piece: Piece, edge: Edge, to: GridPoint): readonly [GridPlace, GridPlace] {
  switch (edge.path) {
    case 'straight':
      return thirds(edge.from, to);
    case 'curve':
      return edge.handles;
    case 'stepped':
      return fittedHandles(piece, edge, to);
  }
}

import {
  angleBetween,
  chainPointAt,
  cornerAngle,
  distance,
  turningTo,
  unitTangentAt,
  type ChainPlace,
} from '../geometry';
import { measurePiece } from '../shaping';
import type { WorkedStretch } from './stretches';

/** Where two stretches of a run meet. */
export interface Meeting {
  /** Radians, above 0 where the run goes round an outer corner. */
  readonly turn: number;
  readonly seam: boolean;
}

/** Two ends that lie nearer to each other than this, in mm, are one place. */
const TOUCHING = 1e-6;
/** Half a turn less 10 degrees, in radians: where a run all but doubles back, its two parallels never meet. */
export const SHARPEST = (170 * Math.PI) / 180;

/** How far a stretch turns between its ends, in radians, above 0 where it goes round an outer curve. */
export function turningWithin(one: WorkedStretch): number {
  const { line } = one.measured;
  const [start, end] = endsOf(one);
  let sum = 0;
  for (let i = start.index; i <= end.index; i++) {
    sum += turningTo(line[i]!, i === end.index ? end.t : 1) - turningTo(line[i]!, i === start.index ? start.t : 0);
    // A kink within an edge is a part of its curve.
    if (i > start.index) sum += cornerAngle(line[i - 1]!, line[i]!);
  }
  return sum;
}

/**
 * How the run turns from the end of one stretch to the start of the next. On one piece where they touch; else they are
 * taken to be sewn together along the edges beside them, and the two inner angles of the fabric add up. Null where they
 * do neither: a gap in one edge, a way that turns back on itself, or fabric on both sides.
 */
export function meetingOf(one: WorkedStretch, next: WorkedStretch): Meeting | null {
  if (one.against !== next.against) return null;
  // In the direction of the outline, which has the fabric on its left, a turn to the left goes round an outer corner.
  const [before, after] = one.against ? [next, one] : [one, next];
  const [, end] = endsOf(before);
  const [start] = endsOf(after);
  const samePiece = before.piece === after.piece;
  if (samePiece && distance(end.point, start.point) < TOUCHING) {
    return possible({ turn: angleBetween(end.tangent, start.tangent), seam: false });
  }
  if (before.stretch.part[1] !== 1 || after.stretch.part[0] !== 0) return null;
  const beside = neighbour(before, 1);
  const other = neighbour(after, -1);
  if (samePiece && beside === other) return null;
  const turned = angleBetween(end.tangent, unitTangentAt(beside.line[0]!, 0));
  const turning = angleBetween(unitTangentAt(other.line.at(-1)!, 1), start.tangent);
  return possible({ turn: turned + turning - Math.PI, seam: true });
}

function possible(meeting: Meeting): Meeting | null {
  return Math.abs(meeting.turn) > SHARPEST ? null : meeting;
}

/** The places of a stretch's ends in the direction of the outline. */
function endsOf({ measured: { line, edgeMm }, stretch }: WorkedStretch): [ChainPlace, ChainPlace] {
  const [from, to] = stretch.part;
  return [chainPointAt(line, from * edgeMm), chainPointAt(line, to === 1 ? Infinity : to * edgeMm)];
}

function neighbour({ piece, measured }: WorkedStretch, way: 1 | -1) {
  const edges = measurePiece(piece);
  return edges[(measured.index + way + edges.length) % edges.length]!;
}

import { chainPointAt, type ChainPlace, type Segment } from '../geometry';
import type { PlannedEdge } from '../pickup';
import type { Hand } from '../piece';
import { toSheet } from './place';
import type { Place } from './marks';

/** A place on an edge as it lies on the sheet, with the two directions that marks are built in. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  /** Away from the fabric, of length 1. */
  readonly outX: number;
  readonly outY: number;
  /** In which the knitter works, of length 1. */
  readonly goX: number;
  readonly goY: number;
}

/** Where a planned edge lies on the line of its whole edge, and how to find places on it. */
export interface Track {
  readonly line: readonly Segment[];
  readonly lengths: readonly number[];
  /** Distance of the stretch's start from the start of the line, mm in the direction of the outline. */
  readonly start: number;
  /** 1 where the knitter works along the outline, -1 where against it. */
  readonly sign: 1 | -1;
  /** Length of the stretch along the line, mm. */
  readonly length: number;
}

/** The track of a planned edge; a left-handed knitter works every stretch the other way. */
export function trackOf(edge: PlannedEdge, hand: Hand, lengths: readonly number[]): Track {
  const { part } = edge.stretch;
  const against = edge.stretch.backwards !== (hand === 'left');
  const whole = edge.measured.edgeMm;
  return {
    line: edge.measured.line,
    lengths,
    start: (against ? part[1] : part[0]) * whole,
    sign: against ? -1 : 1,
    length: (part[1] - part[0]) * whole,
  };
}

/** The distance along the line of the whole edge, in its own direction, of a place on the stretch. */
export function alongLine(track: Track, edgeAt: number): number {
  return track.start + track.sign * edgeAt;
}

/** The place at `edgeAt` mm from the start of the stretch, in working order. */
export function frameAt(place: Place, track: Track, edgeAt: number): Frame {
  return frameOnLine(place, track.line, track.lengths, alongLine(track, edgeAt), track.sign);
}

/** The place at a distance along a line in the direction of the outline; the fabric lies on its left. */
export function frameOnLine(
  place: Place,
  line: readonly Segment[],
  lengths: readonly number[],
  distance: number,
  sign: 1 | -1,
): Frame {
  return frameThere(place, chainPointAt(line, distance, lengths), sign);
}

/** The frame of a place on a line in the direction of the outline, already found. */
export function frameThere(place: Place, { point, tangent }: ChainPlace, sign: 1 | -1): Frame {
  const [x, y] = toSheet(place, point.x, point.y);
  return { x, y, outX: tangent.y, outY: tangent.x, goX: sign * tangent.x, goY: -sign * tangent.y };
}

/** Half of what a box takes in the direction of the frame's normal: how far its middle stands off to touch it. */
export function reachOut(frame: Frame, width: number, height: number): number {
  return (Math.abs(frame.outX) * width + Math.abs(frame.outY) * height) / 2;
}

/** The spot `out` mm away from the fabric and `go` mm on in working order. */
export function fromFrame(frame: Frame, out: number, go = 0): [number, number] {
  return [frame.x + frame.outX * out + frame.goX * go, frame.y + frame.outY * out + frame.goY * go];
}

/** The frame of a corner where two edges meet: its directions lie half way between theirs. */
export function betweenFrames(a: Frame, b: Frame): Frame {
  const half = (x: number, y: number): [number, number] => {
    const length = Math.hypot(x, y);
    return length > 1e-9 ? [x / length, y / length] : [NaN, NaN];
  };
  const [outX, outY] = half(a.outX + b.outX, a.outY + b.outY);
  const [goX, goY] = half(a.goX + b.goX, a.goY + b.goY);
  return Number.isNaN(outX) || Number.isNaN(goX) ? a : { x: a.x, y: a.y, outX, outY, goX, goY };
}

import type { CurvedEdge, Edge, GridPoint, ScheduleStep, SteppedEdge, StraightEdge } from '../../piece';
import { cubic, line, type Point, type Segment } from '../../geometry';

/** A place on the grid that need not be whole, such as a curve handle. */
export type GridPlace = readonly [x: number, y: number];

export type Handles = CurvedEdge['handles'];

/** What an edge has whichever path it takes; fields of other hands stay. */
export function baseOf(edge: Edge): Omit<StraightEdge, 'path'> {
  switch (edge.path) {
    case 'straight': {
      const { path: _path, ...rest } = edge;
      return rest;
    }
    case 'curve': {
      const { path: _path, handles: _handles, ...rest } = edge;
      return rest;
    }
    case 'stepped': {
      const { path: _path, steps: _steps, ...rest } = edge;
      return rest;
    }
  }
}

/** The edge run straight to its far corner; the very same one where it does. */
export function asStraight(edge: Edge): StraightEdge {
  return edge.path === 'straight' ? edge : { ...baseOf(edge), path: 'straight' };
}

export function asCurve(edge: Edge, handles: Handles): CurvedEdge {
  return edge.path === 'curve' ? { ...edge, handles } : { ...baseOf(edge), path: 'curve', handles };
}

export function asStepped(edge: Edge, steps: readonly ScheduleStep[]): SteppedEdge {
  return edge.path === 'stepped' ? { ...edge, steps } : { ...baseOf(edge), path: 'stepped', steps };
}

/** The edge with the path of another: its kind, and its handles or steps. */
export function withPathOf(edge: Edge, other: Edge): Edge {
  switch (other.path) {
    case 'straight':
      return asStraight(edge);
    case 'curve':
      return asCurve(edge, other.handles);
    case 'stepped':
      return asStepped(edge, other.steps);
  }
}

/** The corner at the end of edge `index`, where the next edge begins. */
export function endCorner(outline: readonly Edge[], index: number): GridPoint {
  return outline[(index + 1) % outline.length]!.from;
}

/** How far the edge at `index` goes: its end less its beginning. */
export function wayOf(outline: readonly Edge[], index: number): GridPoint {
  const [from, to] = [outline[index]!.from, endCorner(outline, index)];
  return [to[0] - from[0], to[1] - from[1]];
}

export function pointOf([x, y]: GridPlace): Point {
  return { x, y };
}

export function placeOf({ x, y }: Point): GridPlace {
  return [x, y];
}

/** The line of a straight or curved edge on the grid. */
export function segmentOf(edge: StraightEdge | CurvedEdge, to: GridPoint): Segment {
  return edge.path === 'straight'
    ? line(pointOf(edge.from), pointOf(to))
    : cubic(pointOf(edge.from), pointOf(edge.handles[0]), pointOf(edge.handles[1]), pointOf(to));
}

import { pointAt, sizeOf, type Segment } from '../geometry';
import type { MeasuredEdge } from '../shaping';
import { toSheet } from './place';
import type { Box, Place } from './marks';

/** Sheet mm of curve to one straight piece of its trace; the trace then strays by some hundredths of a mm at most. */
const TRACE_STEP = 1.2;
const MOST_TRACE_STEPS = 160;

/** x0, y0, x1, y1 … of a chain in fabric mm, as fine straight pieces on the sheet. */
export function traceOf(place: Place, chain: readonly Segment[]): number[] {
  const trace: number[] = [];
  chain.forEach((segment, i) => {
    const wanted = Math.ceil((sizeOf(segment) * place.scale) / TRACE_STEP);
    const steps = segment.kind === 'line' ? 1 : Math.min(Math.max(wanted, 6), MOST_TRACE_STEPS);
    for (let k = i === 0 ? 0 : 1; k <= steps; k++) {
      const point = pointAt(segment, k / steps);
      trace.push(...toSheet(place, point.x, point.y));
    }
  });
  return trace;
}

export function boxOf(trace: readonly number[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i + 1 < trace.length; i += 2) {
    left = Math.min(left, trace[i]!);
    right = Math.max(right, trace[i]!);
    top = Math.min(top, trace[i + 1]!);
    bottom = Math.max(bottom, trace[i + 1]!);
  }
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/**
 * The corners of an edge as it is worked, on the grid and in the direction of the outline: on a rising edge each
 * step's stitches come before its rows, on a falling one after them, and the other way where rows come first.
 */
export function stairOf(edge: MeasuredEdge): [stitches: number, rows: number][] {
  const corners: [number, number][] = [[edge.from[0], edge.from[1]]];
  let [x, y] = edge.from;
  const go = (across: number, up: number) => {
    if (across === 0 && up === 0) return;
    x += across;
    y += up;
    corners.push([x, y]);
  };
  for (const { across, up, rowsFirst = false } of edge.worked) {
    if (up < 0 !== rowsFirst) {
      go(0, up);
      go(across, 0);
    } else {
      go(across, 0);
      go(0, up);
    }
  }
  go(edge.to[0] - x, 0);
  go(0, edge.to[1] - y);
  return corners;
}

/** The worked outline of a whole piece on the grid, x0, y0, x1, y1 …, closed by its first corner. */
export function stairOutline(edges: readonly MeasuredEdge[]): number[] {
  return edges.flatMap((edge) => stairOf(edge).slice(0, -1).flat());
}

/** The smooth outline of a whole piece on the grid, x0, y0, x1, y1 …, closed by its first corner. */
export function smoothOutline(edges: readonly MeasuredEdge[], cell: Place['cell']): number[] {
  const grid: Place = { piece: '', x: 0, y: 0, scale: 1, cell, box: { x: 0, y: 0, width: 0, height: 0 } };
  return edges.flatMap((edge) => {
    const trace = traceOf(grid, edge.line).slice(0, -2);
    return trace.map((value, i) => (i % 2 === 0 ? value / cell.width : -value / cell.height));
  });
}

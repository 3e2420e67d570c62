import { chainLength, isStraight, scaled, type Line, type Segment } from '../geometry';
import { expandSteps, resolveOutline, type Edge, type Piece, type ResolvedEdge } from '../piece';
import { rowHeight, shelf, stitchWidth, type Mm } from '../units';
import { curveSteps } from './drawn';
import type { EdgeShape, MeasuredEdge, WorkedStep } from './measured';
import { slopeSteps } from './slope';

/** A piece without a gauge is drawn 3 stitches to 4 rows: a stitch 4 wide, a row 3 high. */
export const DRAWN_STITCH: Mm = 4;
export const DRAWN_ROW: Mm = 3;

/** Width of a stitch and height of a row in mm as the piece is drawn. */
export function cellOf(piece: Piece): { readonly width: Mm; readonly height: Mm } {
  return piece.gauge
    ? { width: stitchWidth(piece.gauge), height: rowHeight(piece.gauge) }
    : { width: DRAWN_STITCH, height: DRAWN_ROW };
}

const measuredPieces = new WeakMap<Piece, readonly MeasuredEdge[]>();

/** An edge as it is, and as it was before the corner at its end was moved. */
const measuredEdges = shelf<Edge, MeasuredEdge>(2);

/**
 * Measures every edge of a piece, in outline order. Kept per piece object, which is never changed in place; of a piece
 * that was changed only those edges are measured anew that are not what they were, the others stay the same objects.
 */
export function measurePiece(piece: Piece): readonly MeasuredEdge[] {
  const known = measuredPieces.get(piece);
  if (known) return known;
  const measured = resolveOutline(piece).map((edge) => measureEdge(piece, edge));
  measuredPieces.set(piece, measured);
  return measured;
}

/** All that an edge has from its place in the outline and from its piece decides whether it is measured anew. */
function measureEdge(piece: Piece, resolved: ResolvedEdge): MeasuredEdge {
  const { index, to, side, finish, selvage } = resolved;
  const { width, height } = cellOf(piece);
  const hasGauge = piece.gauge !== undefined;
  return measuredEdges(resolved.edge, [index, ...to, side, finish, selvage, width, height, hasGauge], () =>
    measure(resolved, width, height, hasGauge),
  );
}

function measure(resolved: ResolvedEdge, width: Mm, height: Mm, hasGauge: boolean): MeasuredEdge {
  const { edge, from, to } = resolved;
  const stitches = Math.abs(to[0] - from[0]);
  const rows = Math.abs(to[1] - from[1]);
  const grid = straightened(resolved.path);
  const shape = shapeOf(resolved, grid);
  const line = grid.map((segment) => scaled(segment, width, height));
  return {
    index: resolved.index,
    edge,
    id: edge.id,
    side: resolved.side,
    shape,
    finish: resolved.finish,
    selvage: resolved.selvage,
    from,
    to,
    stitches,
    rows,
    line,
    edgeMm: chainLength(line),
    hasGauge,
    worked: workedSteps(resolved, grid, shape),
  };
}

/** A curve whose handles lie on its chord is a straight edge: the shape is read off the line, never stored. */
function straightened(path: readonly Segment[]): readonly Segment[] {
  return path.map((segment) =>
    segment.kind === 'cubic' && isStraight(segment)
      ? ({ kind: 'line', from: segment.from, to: segment.to } satisfies Line)
      : segment,
  );
}

function shapeOf({ edge, from, to }: ResolvedEdge, grid: readonly Segment[]): EdgeShape {
  if (grid.some((segment) => segment.kind === 'cubic')) return 'curved';
  if (to[1] === from[1]) return 'horizontal';
  if (edge.path === 'stepped') {
    const worked = edge.steps.filter((step) => step.times > 0);
    if (worked.every((step) => step.stitches === 0)) return 'vertical';
    const alike = worked.every((step) => step.stitches === worked[0]?.stitches && step.every === worked[0].every);
    return alike ? 'sloped' : 'curved';
  }
  return to[0] === from[0] ? 'vertical' : 'sloped';
}

function workedSteps({ edge, from, to }: ResolvedEdge, grid: readonly Segment[], shape: EdgeShape): WorkedStep[] {
  if (shape === 'horizontal') return [];
  const rising = to[1] > from[1];
  if (edge.path === 'stepped') {
    const steps = expandSteps(edge, from, to).map(({ dx, rows }) => ({ across: dx, up: rows }));
    return rising ? steps : falling(steps);
  }
  const curve = grid[0];
  if (curve?.kind === 'cubic') return curveSteps(curve);
  if (shape === 'vertical') return [{ across: 0, up: to[1] - from[1] }];
  // Bottom up, then turned if the outline runs the other way.
  const sign = Math.sign(to[0] - from[0]) * (rising ? 1 : -1);
  // A slope that takes the fabric in runs leftwards on the outline.
  const takesIn = to[0] < from[0];
  const steps = slopeSteps(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])).map((step): WorkedStep => ({
    across: step.across * sign,
    up: step.rows,
    ...(takesIn && step.across > 1 ? { rowsFirst: true } : {}),
  }));
  return rising ? steps : falling(steps);
}

/** Steps counted bottom up, as they follow each other on an outline that falls. */
function falling(steps: readonly WorkedStep[]): WorkedStep[] {
  return [...steps].reverse().map((step) => ({ ...step, across: 0 - step.across, up: 0 - step.up }));
}

import type { Edge, GridPoint, Piece, ScheduleStep, SteppedEdge } from '../piece';
import { rowHeight, stitchWidth, type Gauge } from '../units';

/**
 * The piece drawn on the grid of another gauge, as large as it was: corners go to the nearest whole stitch and row,
 * curve handles are scaled, schedules keep their shape as nearly as whole steps allow. A piece without a gauge keeps
 * its stitches and rows, since it has no size.
 */
export function regridded(piece: Piece, gauge: Gauge): Piece {
  const old = piece.gauge;
  if (!old) return { ...piece, gauge };
  const sx = stitchWidth(old) / stitchWidth(gauge);
  const sy = rowHeight(old) / rowHeight(gauge);
  // Mirrored corners stay mirrored: both are rounded from the middle of the piece outwards.
  const xs = piece.outline.map((edge) => edge.from[0]);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const newMiddle = middle % 1 === 0 ? Math.round(middle * sx) : Math.floor(middle * sx) + 0.5;
  const toX = (x: number) => {
    const away = (x - middle) * sx;
    const half = newMiddle % 1;
    return newMiddle + Math.sign(away) * (Math.round(Math.abs(away) + half) - half);
  };
  const corner = ([x, y]: GridPoint): GridPoint => [toX(x), Math.round(y * sy)];
  const handle = ([x, y]: readonly [number, number]): readonly [number, number] => [
    newMiddle + (x - middle) * sx,
    y * sy,
  ];
  const outline = piece.outline.map((edge, i): Edge => {
    const from = corner(edge.from);
    switch (edge.path) {
      case 'straight':
        return { ...edge, from };
      case 'curve':
        return { ...edge, from, handles: [handle(edge.handles[0]), handle(edge.handles[1])] };
      case 'stepped': {
        const next = piece.outline[(i + 1) % piece.outline.length] ?? edge;
        return rescheduled(edge, from, corner(next.from), sx, sy);
      }
    }
  });
  return { ...piece, gauge, outline };
}

/** A stepped edge between new corners: the points between its steps are scaled and rounded, bottom up. */
function rescheduled(edge: SteppedEdge, from: GridPoint, to: GridPoint, sx: number, sy: number): Edge {
  const stitches = to[0] - from[0];
  const rows = Math.abs(to[1] - from[1]);
  if (rows === 0) {
    const { steps: _steps, ...rest } = edge;
    return { ...rest, from, path: 'straight' };
  }
  const steps: ScheduleStep[] = [];
  let [x, y, doneX, doneY] = [0, 0, 0, 0];
  const singles = edge.steps.flatMap((step) => Array.from({ length: step.times }, () => step));
  singles.forEach((single, i) => {
    x += single.stitches * sx;
    y += single.every * sy;
    const last = i === singles.length - 1;
    const nextY = last ? rows : Math.min(rows - 1, Math.round(y));
    const nextX = last ? stitches : Math.round(x);
    // A step that would have no rows is worked together with the next one.
    if (nextY <= doneY) return;
    push(steps, nextX - doneX, nextY - doneY);
    doneX = nextX;
    doneY = nextY;
  });
  return { ...edge, from, steps };
}

function push(steps: ScheduleStep[], stitches: number, every: number): void {
  const last = steps.at(-1);
  if (last?.stitches === stitches && last.every === every) steps[steps.length - 1] = { ...last, times: last.times + 1 };
  else steps.push({ stitches, every, times: 1 });
}

import type { Box, Drawing, EdgeTrace } from './marks';

export interface FoundEdge {
  readonly piece: string;
  readonly edge: string;
  /** How far away it lies, sheet mm. */
  readonly distance: number;
}

export interface FoundPoint {
  /** Index into the points of the drawn pick-up. */
  readonly point: number;
  readonly distance: number;
}

/** The nearest edge within `reach` sheet mm of a place on the sheet, or null. */
export function edgeAt(drawing: Drawing, [x, y]: readonly [number, number], reach: number): FoundEdge | null {
  let best: FoundEdge | null = null;
  for (const trace of drawing.edges) {
    if (!near(trace.box, x, y, best?.distance ?? reach)) continue;
    const distance = distanceTo(trace, x, y);
    if (distance <= reach && (best === null || distance < best.distance)) {
      best = { piece: trace.piece, edge: trace.edge, distance };
    }
  }
  return best;
}

/** The nearest opening within `reach` sheet mm of a place on the sheet, used or skipped, or null. */
export function pointAt(drawing: Drawing, [x, y]: readonly [number, number], reach: number): FoundPoint | null {
  let best: FoundPoint | null = null;
  for (const trace of drawing.points) {
    const distance = Math.hypot(trace.x - x, trace.y - y);
    if (distance <= reach && (best === null || distance < best.distance)) best = { point: trace.point, distance };
  }
  return best;
}

/** The room that an edge takes on the sheet, to bring it into view; a whole piece when no edge is named. */
export function placeOf(drawing: Drawing, piece: string, edge?: string): Box | null {
  if (edge === undefined) return drawing.places.find((place) => place.piece === piece)?.box ?? null;
  return drawing.edges.find((trace) => trace.piece === piece && trace.edge === edge)?.box ?? null;
}

function near(box: Box, x: number, y: number, reach: number): boolean {
  return x >= box.x - reach && x <= box.x + box.width + reach && y >= box.y - reach && y <= box.y + box.height + reach;
}

function distanceTo({ line }: EdgeTrace, x: number, y: number): number {
  let best = Infinity;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [x0, y0, x1, y1] = [line[i]!, line[i + 1]!, line[i + 2]!, line[i + 3]!];
    const [dx, dy] = [x1 - x0, y1 - y0];
    const square = dx * dx + dy * dy;
    const t = square > 0 ? Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / square)) : 0;
    best = Math.min(best, Math.hypot(x0 + t * dx - x, y0 + t * dy - y));
  }
  return best;
}

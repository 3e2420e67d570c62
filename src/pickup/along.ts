import {
  arcOf,
  chainJoinLength,
  cornerJoin,
  lengthOf,
  parameterAt,
  turningAlong,
  turnsInY,
  unitTangentAt,
  type Cubic,
  type Line,
  type Segment,
} from '../geometry';
import { parameterAtHeight, type MeasuredEdge } from '../shaping';
import type { Mm } from '../units';

/** Distances from the start of an edge, along the edge itself and along its join line, mm. */
export interface Along {
  readonly edgeAt: Mm;
  readonly joinAt: Mm;
}

/** Lists of such distances, place by place. */
export interface AlongLists {
  readonly edgeAt: Mm[];
  readonly joinAt: Mm[];
}

/** Tells how far along an edge a height on it lies. */
export interface AlongLine {
  readonly joinMm: Mm;
  /** Puts the distances at height `y` in rows, inside the worked step of this index, on the end of the lists. */
  put(to: AlongLists, step: number, y: number): void;
  /** At height `y` in rows, inside the worked step of this index. */
  at(step: number, y: number): Along;
  /** Where the stretch begins and ends that lies between two turns and holds this worked step. */
  ends(step: number): readonly [Along, Along];
  /** At a distance along the edge. */
  atDistance(edgeAt: Mm): Along;
}

/**
 * The distances along a side edge. The join runs `inset` mm inside the edge, so on a curve it is longer or shorter by
 * the turning times the inset (model: `join = integral of (1 + curvature * inset) ds`); at a corner between two
 * straight steps half of the corner's `2 * inset * tan(a / 2)` goes to each side.
 */
export function alongLine(edge: MeasuredEdge, cell: { readonly width: Mm; readonly height: Mm }, inset: Mm): AlongLine {
  const first = edge.line[0];
  if (first?.kind === 'cubic') return onCurve(edge, first, cell.height, inset);
  return onSteps(edge.line, cell.height, inset);
}

function onCurve(edge: MeasuredEdge, curve: Cubic, height: Mm, inset: Mm): AlongLine {
  const cuts = [0, ...turnsInY(curve), 1];
  const { length, lengthTo } = arcOf(curve);
  const turningTo = turningAlong(curve);
  const at = (t: number): Along => {
    const edgeAt = lengthTo(t);
    return { edgeAt, joinAt: edgeAt - inset * turningTo(t) };
  };
  const start = (step: number): number => cuts[edge.worked[step]?.climb ?? 0] ?? 0;
  const stop = (step: number): number => cuts[(edge.worked[step]?.climb ?? 0) + 1] ?? 1;
  const parameter = (step: number, y: number) => parameterAtHeight(curve, y * height, start(step), stop(step));
  return {
    joinMm: at(1).joinAt,
    put(to, step, y) {
      const t = parameter(step, y);
      const edgeAt = lengthTo(t);
      to.edgeAt.push(edgeAt);
      to.joinAt.push(edgeAt - inset * turningTo(t));
    },
    at: (step, y) => at(parameter(step, y)),
    ends: (step) => [at(start(step)), at(stop(step))],
    atDistance: (edgeAt) => at(parameterAt(curve, Math.min(Math.max(edgeAt, 0), length))),
  };
}

function onSteps(line: readonly Segment[], height: Mm, inset: Mm): AlongLine {
  const lines = line.filter((segment): segment is Line => segment.kind === 'line');
  const starts: Along[] = [];
  const spans: Along[] = [];
  let edgeAt = 0;
  let joinAt = 0;
  lines.forEach((segment, i) => {
    const length = lengthOf(segment);
    const before = lines[i - 1];
    const after = lines[i + 1];
    const span =
      length +
      (before ? cornerBetween(before, segment, inset) / 2 : 0) +
      (after ? cornerBetween(segment, after, inset) / 2 : 0);
    starts.push({ edgeAt, joinAt });
    spans.push({ edgeAt: length, joinAt: span });
    edgeAt += length;
    joinAt += span;
  });
  // A straight slope is one line under all its steps; a stepped edge has a line a step.
  const single = lines.length === 1;
  const along = (i: number, fraction: number): Along => ({
    edgeAt: starts[i]!.edgeAt + fraction * spans[i]!.edgeAt,
    joinAt: starts[i]!.joinAt + fraction * spans[i]!.joinAt,
  });
  const fractionAt = (i: number, y: number): number => {
    const { from, to } = lines[i]!;
    return to.y === from.y ? 0.5 : (y * height - from.y) / (to.y - from.y);
  };
  return {
    joinMm: chainJoinLength(line, inset),
    put(to, step, y) {
      const i = single ? 0 : step;
      const fraction = fractionAt(i, y);
      to.edgeAt.push(starts[i]!.edgeAt + fraction * spans[i]!.edgeAt);
      to.joinAt.push(starts[i]!.joinAt + fraction * spans[i]!.joinAt);
    },
    at: (step, y) => along(single ? 0 : step, fractionAt(single ? 0 : step, y)),
    ends: (step) => [along(single ? 0 : step, 0), along(single ? 0 : step, 1)],
    atDistance(distance) {
      let i = lines.length - 1;
      while (i > 0 && (starts[i]?.edgeAt ?? 0) > distance) i -= 1;
      const span = spans[i]?.edgeAt ?? 0;
      return along(i, span === 0 ? 0 : Math.min(1, (distance - (starts[i]?.edgeAt ?? 0)) / span));
    },
  };
}

function cornerBetween(before: Line, after: Line, inset: Mm): Mm {
  const a = unitTangentAt(before, 1);
  const b = unitTangentAt(after, 0);
  return cornerJoin(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y), inset);
}

import {
  chainJoinLength,
  cornerJoin,
  joinLengthOf,
  joinLengthTo,
  lengthOf,
  lengthTo,
  parameterAt,
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

/** Tells how far along an edge a height on it lies. */
export interface AlongLine {
  readonly joinMm: Mm;
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
  const whole = lengthOf(curve);
  const stretch = (step: number): [number, number] => {
    const climb = edge.worked[step]?.climb ?? 0;
    return [cuts[climb] ?? 0, cuts[climb + 1] ?? 1];
  };
  const at = (t: number): Along => ({ edgeAt: lengthTo(curve, t), joinAt: joinLengthTo(curve, t, inset) });
  return {
    joinMm: joinLengthOf(curve, inset),
    at(step, y) {
      const [t0, t1] = stretch(step);
      return at(parameterAtHeight(curve, y * height, t0, t1));
    },
    ends(step) {
      const [t0, t1] = stretch(step);
      return [at(t0), at(t1)];
    },
    atDistance: (edgeAt) => at(parameterAt(curve, Math.min(Math.max(edgeAt, 0), whole))),
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
  const single = lines.length === 1;
  const along = (i: number, fraction: number): Along => {
    const start = starts[i] ?? { edgeAt: 0, joinAt: 0 };
    const span = spans[i] ?? { edgeAt: 0, joinAt: 0 };
    return { edgeAt: start.edgeAt + fraction * span.edgeAt, joinAt: start.joinAt + fraction * span.joinAt };
  };
  return {
    joinMm: chainJoinLength(line, inset),
    at(step, y) {
      // A straight slope is one line under all its steps; a stepped edge has a line a step.
      const i = single ? 0 : step;
      const segment = lines[i];
      if (!segment) return { edgeAt, joinAt };
      const rise = segment.to.y - segment.from.y;
      return along(i, rise === 0 ? 0.5 : (y * height - segment.from.y) / rise);
    },
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

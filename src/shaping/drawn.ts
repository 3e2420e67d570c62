import { between, derivativeAt, inflections, pointAt, turnsInY, type Cubic } from '../geometry';
import { roundHalfUp } from '../units';
import { parameterAtHeight } from './height';
import type { Step } from './slope';
import { joined, tidied } from './tidy';
import type { WorkedStep } from './measured';

/** A stretch of a curve that climbs or falls all the way, with the whole corners that it runs between. */
interface Climb {
  readonly curve: Cubic;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/**
 * The worked steps of a drawn curve, in its own direction. It is cut where it turns in y; each part is sampled on
 * every second row counted from its bottom, since one side can only be shaped on every second row: the right edge on
 * right-side rows, the left one a row apart on wrong-side rows, so twins have mirrored steps. The samples are rounded
 * to whole stitches and tidied where the curve bends one way. A part that lies within half a row is bound off or cast
 * on together (`up` is 0).
 *
 * @param curve in stitches and rows; its ends are whole
 */
export function curveSteps(curve: Cubic): WorkedStep[] {
  return climbs(curve).flatMap((part, climb) => climbSteps(part).map((step) => ({ ...step, climb })));
}

function climbs(curve: Cubic): Climb[] {
  const cuts = [0, ...turnsInY(curve), 1];
  const corners = cuts.map((t) => {
    const { x, y } = pointAt(curve, t);
    return [symmetricRound(x - curve.from.x) + curve.from.x, roundHalfUp(y)] as const;
  });
  return cuts.slice(1).flatMap((t1, i) => {
    const [from, to, t0] = [corners[i], corners[i + 1], cuts[i]];
    return from && to && t0 !== undefined ? [{ curve: between<Cubic>(curve, t0, t1), from, to }] : [];
  });
}

/** Rounds away from the start alike on both hands, so that mirrored curves have mirrored steps. */
function symmetricRound(value: number): number {
  return Math.sign(value) * roundHalfUp(Math.abs(value));
}

function climbSteps({ curve, from, to }: Climb): WorkedStep[] {
  const up = to[1] - from[1];
  const across = to[0] - from[0];
  if (up === 0) return across === 0 ? [] : [{ across, up: 0 }];
  const rising = up > 0;
  const bottom = rising ? from : to;
  const top = rising ? to : from;
  const steps = bottomUp(curve, bottom, top);
  return rising
    ? steps.map((step) => ({ across: step.across, up: step.rows }))
    : steps.reverse().map((step) => ({ across: 0 - step.across, up: 0 - step.rows }));
}

/** Signed steps counted from the bottom corner to the top one. */
function bottomUp(curve: Cubic, bottom: readonly [number, number], top: readonly [number, number]): Step[] {
  const marks: number[] = [];
  for (let y = bottom[1] + 2; y < top[1]; y += 2) marks.push(y);
  marks.push(top[1]);
  let at = bottom[0];
  let y = bottom[1];
  const samples = marks.map((mark, i) => {
    const last = i === marks.length - 1;
    const x = last ? top[0] : bottom[0] + symmetricRound(xAt(curve, mark) - bottom[0]);
    const step = { across: x - at, rows: mark - y };
    at = x;
    y = mark;
    return step;
  });
  return joined(tidyBends(samples, curve, bottom[1]));
}

/** x of a monotone stretch at height y; beyond its ends (they are rounded) its end. */
function xAt(curve: Cubic, y: number): number {
  return pointAt(curve, parameterAtHeight(curve, y, 0, 1)).x;
}

/** Tidies each run of samples that bends one way and moves one way. */
function tidyBends(samples: readonly Step[], curve: Cubic, bottomY: number): Step[] {
  const bends = inflections(curve).map((t) => pointAt(curve, t).y);
  const result: Step[] = [];
  let run: Step[] = [];
  let runBottom = bottomY;
  let y = bottomY;
  let way = 0;
  const close = () => {
    result.push(...tidyRun(run, curve, runBottom, y));
    run = [];
    way = 0;
    runBottom = y;
  };
  for (const sample of samples) {
    const bent = bends.some((bend) => bend > runBottom && bend <= y);
    const turned = way * sample.across < 0;
    if (run.length > 0 && (bent || turned)) close();
    run.push(sample);
    if (sample.across !== 0) way = Math.sign(sample.across);
    y += sample.rows;
  }
  close();
  return result;
}

function tidyRun(run: readonly Step[], curve: Cubic, bottomY: number, topY: number): Step[] {
  const sign = run.some((step) => step.across < 0) ? -1 : 1;
  const flattening = leanAt(curve, bottomY) >= leanAt(curve, topY);
  const amounts = tidied(
    run.map((step) => step.across * sign),
    flattening,
  );
  return run.map((step, i) => ({ across: (amounts[i] ?? 0) * sign, rows: step.rows }));
}

/** How far the curve leans at height y: the size of dx/dy, large where it lies flat. */
function leanAt(curve: Cubic, y: number): number {
  const lowest = Math.min(curve.from.y, curve.to.y);
  const highest = Math.max(curve.from.y, curve.to.y);
  const margin = (highest - lowest) * 1e-3;
  const t = parameterAtHeight(curve, Math.min(Math.max(y, lowest + margin), highest - margin), 0, 1);
  const { x: dx, y: dy } = derivativeAt(curve, t);
  return Math.abs(dx) / Math.max(Math.abs(dy), Number.MIN_VALUE);
}

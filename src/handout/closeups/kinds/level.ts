import { CLOSE_UP_LABELS as WORDS } from '../../../text';
import { bindOff, castOn, lastLink, within } from '../chain';
import { compose, labelLeft, labelRight, type MarkedOpening } from '../compose';
import { rowFromBelow, rowOf, rowToAbove, tucked, turn } from '../fabric';
import { HELD_NEEDLE, heldRow, SAG_NEEDLE, undoneRow } from '../held';
import type { Knot } from '../loop';
import { needle } from '../needle';
import type { Scene, SceneMark } from '../scene';
import { opened, turned, yarn, type View } from '../view';

/** The line of the edge on the sheet, mm from the top. */
const EDGE = 19;

/** Room for a needle in the middle of a stitch, rows above its feet. */
const ROOM = 0.78;

/** A bound-off edge: one opening to a stitch, below the chain. */
export function boundOff(): Scene {
  const view = turned(0, 30, 44.6);
  const knots: Knot[][] = [...rowFromBelow(0, -3, 3), rowOf(1, -3, 3), rowOf(2, -3, 3)];
  knots.push(...within(bindOff(3, 4, -3), -3.6, 3.6));
  return compose({
    knots,
    view,
    entry: [0, 2 + ROOM],
    marks: [-2, -1, 0, 1, 2].map((u) => ({ u, v: 2 + ROOM, edge: { x: 0, y: EDGE } })),
    labels: [labelLeft(WORDS.chain, 8, view(-3.1, 4.4))],
  });
}

/** A cast-on edge, the work turned so that it lies on top. */
export function castOnEdge(): Scene {
  const view = turned(2, 30, 23.4);
  const knots: Knot[][] = [...within(castOn(-0.6, -4, 4), -3.5, 3.5), rowOf(0, -3, 3), rowOf(1, -3, 3)];
  knots.push(...rowToAbove(2, -3, 3));
  return compose({
    knots,
    view,
    entry: [0, ROOM],
    marks: [-2, -1, 0, 1, 2].map((u) => ({ u, v: ROOM, edge: { x: 0, y: EDGE } })),
    labels: [labelLeft(WORDS.castOn, 8, view(2.9, -0.7))],
  });
}

/** The riser's column, and the hole at its foot. */
const RISER = 0;
const FOOT_AT = [0.53, 2.36] as const;

/**
 * A step of a curve: three stitches bound off, two rows of the edge, the next ones bound off. The needle is in a stitch
 * of the tread, or in the hole at the foot where holes are used.
 */
export function step(hole: boolean): Scene {
  const flat = turned(0, 30, 42);
  const view = opened(flat, flat(...FOOT_AT), 1.3, 6);
  const tread = bindOff(2, 3, 2);
  const knots: Knot[][] = rowFromBelow(0, -3, 3);
  knots.push([
    ...rowOf(1, -3, 3).slice(0, -1),
    ...turn(3, 1, 1),
    ...tread.slice(1),
    ...lastLink(2, 1),
    ...rowOf(2, 0, -3).slice(1),
  ]);
  const upper = within(bindOff(4, RISER, -3), -3.6, 4)[0]!;
  knots.push([...rowOf(3, -3, 0).slice(0, -1), ...turn(0, 3, 1), ...upper.slice(1)]);
  const top = flat(0, 3.5).y;
  const marks: MarkedOpening[] = [
    ...[1, 2, 3].map((u) => ({ u, v: 1 + ROOM, edge: { x: 0, y: top } })),
    ...[2, 3].map((row) => ({
      u: -0.5,
      v: row + 0.66,
      edge: { x: flat(row === 2 ? 0.2 : 0.45, row).x, y: 0 },
      out: 'right' as const,
      inset: 1,
    })),
    { u: FOOT_AT[0], v: FOOT_AT[1], edge: { x: 0, y: top }, second: hole, used: hole },
  ];
  const { x, y: low } = view(...FOOT_AT);
  // Just short of the sign.
  const foot = { x: x + 0.5, y: low - 1.4 };
  const label = hole ? labelRight(WORDS.foot, 15, foot, 39) : labelRight(WORDS.passOver, 6, foot, 42);
  return compose({
    knots,
    view,
    entry: hole ? [0.56, 2.2] : [3, 1 + ROOM],
    marks,
    labels: [label],
    tip: hole ? 4 : 11.5,
  });
}

/** Stitches held on a needle. */
export function live(): Scene {
  const view = turned(0, 32, 43);
  const knots: Knot[][] = [...rowFromBelow(0, -3, 2), rowOf(1, -3, 2), rowOf(2, -3, 2), heldRow(3, -3, 2)];
  return onNeedle(knots, view, 3 + HELD_NEEDLE, [-3, -2, -1, 0, 1, 2], WORDS.held);
}

/** The loops of a provisional cast-on on a needle, the work turned so that they lie on top. */
export function provisional(): Scene {
  const view = turned(2, 28, 19);
  const knots: Knot[][] = [undoneRow(0, -3, 2), rowOf(1, -3, 2), rowOf(2, -3, 2)];
  knots.push(...rowToAbove(3, -3, 2));
  return onNeedle(knots, view, SAG_NEEDLE, [-2.5, -1.5, -0.5, 0.5, 1.5], WORDS.undone);
}

function onNeedle(knots: Knot[][], view: View, v: number, columns: readonly number[], word: string): Scene {
  const { y } = view(0, v);
  const along = needle({ x: 57, y }, 0, 54, 0, () => 0);
  const marks = columns.map((u): SceneMark => {
    const { x } = view(u, v);
    return { x, y: y - 3.2, used: true, second: false, live: true, inset: null, tip: { x, y: y - 8 } };
  });
  const first = Math.min(...marks.map(({ x }) => x));
  const label = labelLeft(word, 5, { x: first - 1, y: y - 3 });
  return { strands: [...knots.map((one) => yarn(tucked(one), view)), along], marks, labels: [label] };
}

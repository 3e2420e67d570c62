import { CLOSE_UP_LABELS as WORDS } from '../../../text';
import { slippedTurn, TALL } from '../chain';
import { compose, labelLeft, type MarkedOpening } from '../compose';
import { pairOf, rowFromBelow, rowOf, rowToAbove, type RowFaces } from '../fabric';
import { KNIT, loop, moved, PURL, type Knot } from '../loop';
import type { Scene } from '../scene';
import { columnsAt, shiftAt, slopedFromBelow, slopedPair, slopedRow, slopedToAbove } from '../slope';
import { ROW_HEIGHT, STITCH_WIDTH, tilted, turned, type View } from '../view';

/** Side edges are shown as they are held: the edge on top, the first rows at the right. The edge stitch is column 0. */
const EDGE = 19;
const RIGHT = 59.5;
const OUTER = 0.5;

/** Ridges lie closer together than rows of stockinette. */
const GARTER_ROW = 4.8;

const side = (row = ROW_HEIGHT): View => turned(1, RIGHT, EDGE + OUTER * STITCH_WIDTH, row);

/** The signs of openings one after the other, so far inside the edge. */
function signs(
  view: View,
  inset: number,
  heights: readonly number[],
  skipped: readonly number[] = [],
): MarkedOpening[] {
  // Right at the edge, stems begin on the strand that bulges over it.
  const over = inset === 0 ? 0.25 : 0;
  return heights.map((v) => ({
    u: OUTER - inset,
    v,
    edge: view(OUTER + over, v),
    inset,
    used: !skipped.includes(v),
  }));
}

function stockinette(): Knot[][] {
  const knots: Knot[][] = rowFromBelow(0, -2, 0);
  for (let row = 1; row < 9; row += 2) knots.push(pairOf(row, -2, 0));
  return [...knots, ...rowToAbove(9, -2, 0)];
}

/** How far above a row's feet there is room for a needle, by how far inside the edge it goes in. */
const ROOM = { 1: 0.66, 0.5: 0.74, 0: 0.5 } as const;

/** A plain selvage: one opening to a row. */
export function selvage(inset: 1 | 0.5 | 0): Scene {
  const view = side();
  const room = ROOM[inset];
  if (inset === 0) {
    return compose({
      knots: stockinette(),
      view,
      entry: [0.4, 3 + room],
      marks: signs(
        view,
        0,
        [1, 3, 5, 7].map((row) => row + room),
      ),
      labels: [labelLeft(WORDS.strand, 8, view(0.66, 7.9))],
    });
  }
  return compose({
    knots: stockinette(),
    view,
    entry: [OUTER - inset, 4 + room],
    marks: signs(
      view,
      inset,
      [1, 2, 3, 4, 5, 6, 7].map((row) => row + room),
      [2 + room, 6 + room],
    ),
    labels: [labelLeft(WORDS.edgeStitch, 8, view(0.42, 9.1))],
  });
}

/** A plain selvage with a decrease one stitch inside it on every fourth row, turned so that the edge lies level. */
export function slope(): Scene {
  const decreases = [
    { row: 2, column: -1 },
    { row: 6, column: -2 },
  ];
  const columns = (row: number) => columnsAt(row, row < 3 ? -2 : -3, 0, decreases);
  const knots: Knot[][] = slopedFromBelow(0, columns(0), decreases);
  for (let row = 1; row < 7; row += 2) {
    const [lower, upper] = [row, row + 1].map((one) => slopedRow(one, columns(one), decreases));
    // The column that begins here at the lower side of the picture comes in from outside it.
    const shown = row === 3 ? lower!.slice(3) : lower!;
    knots.push(slopedPair(row, shown, upper!, 0, decreases));
  }
  knots.push(...slopedToAbove(7, columns(7), decreases));
  const level = Math.atan2(STITCH_WIDTH, 4 * ROW_HEIGHT);
  const view = tilted(turned(1, 57.2, EDGE - 4.2), level, { x: 30, y: EDGE });
  const edgeAt = (v: number) => OUTER + shiftAt(0, v, decreases);
  const marks = [0, 1, 2, 3, 4, 5, 6].map((row): MarkedOpening => {
    const v = row + ROOM[1];
    const edge = edgeAt(v);
    return { u: edge - 1, v, edge: view(edge, v), inset: 1, used: row !== 1 };
  });
  const entry = [edgeAt(3 + ROOM[1]) - 1, 3 + ROOM[1]] as const;
  return compose({ knots, view, entry, marks, labels: [labelLeft(WORDS.decrease, 8, view(-2.3, 6.9))] });
}

/** A garter selvage: one ridge to two rows. */
export function garter(at: 'bump' | 'between' | 'hollow'): Scene {
  const view = side(GARTER_ROW);
  const face = (row: number) => (row % 2 === 0 ? KNIT : PURL);
  const faces = (row: number): RowFaces => ({ own: face(row), above: face(row + 1) });
  const knots: Knot[][] = rowFromBelow(0, -2, 0, faces(0));
  for (let row = 1; row < 11; row += 2) knots.push(pairOf(row, -2, 0, faces(row), faces(row + 1)));
  knots.push(...rowToAbove(11, -2, 0, faces(11)));
  const inset = at === 'bump' ? 0.25 : 1;
  const room = at === 'bump' ? 0.28 : at === 'between' ? 0.45 : 1.45;
  const marks = signs(
    view,
    inset,
    [3, 5, 7].map((row) => row + room),
  );
  return compose({
    knots,
    view,
    entry: [OUTER - inset, 5 + room],
    marks: marks.map((mark) => ({ ...mark, second: at === 'hollow' })),
    labels: [
      at === 'hollow' ? labelLeft(WORDS.hollow, 8, view(0.5, 10.2)) : labelLeft(WORDS.ridge, 8, view(0.56, 9.3)),
    ],
  });
}

/** A slipped selvage: one chain to two rows. */
export function slipped(at: 'chain' | 'gap'): Scene {
  const view = side();
  const knots: Knot[][] = rowFromBelow(0, -2, -1);
  knots.push(moved(loop(KNIT, KNIT, TALL, 0.625 * Math.PI, 1.375 * Math.PI), 0, -1));
  for (let row = 1; row < 9; row += 2) {
    knots.push([...rowOf(row, -2, -1), ...slippedTurn(0, row), ...rowOf(row + 1, -1, -2)]);
  }
  knots.push(...rowToAbove(9, -2, 0));
  const room = at === 'chain' ? 1.5 : 2.3;
  const marks = signs(
    view,
    0.5,
    (at === 'chain' ? [1, 3, 5, 7] : [1, 3, 5]).map((row) => row + room),
  );
  return compose({
    knots,
    view,
    // Under the whole chain, so from below it; the opening itself lies in its middle.
    entry: [-0.5, 3 + room - 0.25],
    marks: marks.map((mark) => ({ ...mark, second: at === 'gap' })),
    labels: [at === 'chain' ? labelLeft(WORDS.chain, 8, view(0.42, 8.9)) : labelLeft(WORDS.gap, 8, view(0.35, 9.3))],
  });
}

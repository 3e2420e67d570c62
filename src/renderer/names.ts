import { lengthOf } from '../geometry';
import type { MeasuredPiece } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import { drawnEdgeSize, drawnGauge, edgeName, type DrawingWords } from '../text';
import { frameOnLine, fromFrame, reachOut } from './frame';
import { boxAround, type LabelBoard } from './labels';
import { TYPE } from './sizes';
import { MIDDLE, textWidth } from './width';
import type { Box, Place, TextMark, TextRole } from './marks';

/** An edge shorter than this on the sheet has no room for a name beside it. */
const SHORTEST = 9;
/** Clear of the row of dots: how far inside the edge a name begins, and its further tries. */
const INSIDE = [1.8, 3.6];
/** Where along the edge a name may stand, as a part of it: its middle first. */
const ALONG = [0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75];
const LEADING = 1.28;

interface LineOfText {
  readonly text: string;
  readonly role: TextRole;
  readonly size: number;
}

/** Name and size of an edge inside the fabric near its middle, where there is room; with `sizes` false the name only. */
export function nameEdge(
  place: Place,
  edge: MeasuredEdge,
  depth: number,
  sizes: boolean,
  inside: (x: number, y: number) => boolean,
  board: LabelBoard,
): TextMark[] {
  if (edge.edgeMm * place.scale < SHORTEST) return [];
  const name: LineOfText = { text: edgeName(edge.edge), role: 'edge-name', size: TYPE.small };
  const size: LineOfText = { text: drawnEdgeSize(edge.stitches, edge.rows), role: 'edge-size', size: TYPE.small };
  const lines = sizes ? [name, size] : [name];
  const { width, height } = extentOf(lines);
  const lengths = edge.line.map(lengthOf);
  const candidates = function* (): Generator<Box> {
    for (const farther of INSIDE) {
      for (const along of ALONG) {
        const frame = frameOnLine(place, edge.line, lengths, edge.edgeMm * along, 1);
        // A name longer than its edge would seem to belong to the neighbours.
        if (Math.abs(frame.goX) * width + Math.abs(frame.goY) * height > edge.edgeMm * place.scale) continue;
        const box = boxAround(...fromFrame(frame, -(depth + farther + reachOut(frame, width, height))), width, height);
        if (inside(box.x, box.y)) yield box;
      }
    }
  };
  const box = board.place(candidates());
  return box ? linesIn(box, lines) : [];
}

/** Name of a piece and its gauge in the fabric, as near to its middle as there is room; else under the piece. */
export function namePiece(
  place: Place,
  { piece }: MeasuredPiece,
  words: DrawingWords,
  inside: (x: number, y: number) => boolean,
  board: LabelBoard,
): TextMark[] {
  const name: LineOfText = { text: piece.name, role: 'piece-name', size: TYPE.piece };
  const note: LineOfText[] = piece.gauge
    ? [{ text: drawnGauge(piece.gauge, words), role: 'piece-note', size: TYPE.small }]
    : [];
  for (const lines of [[name, ...note], [name]]) {
    const { width, height } = extentOf(lines);
    const box = board.place(middles(place.box, width + 6, height + 6, inside));
    if (box) return linesIn(box, lines);
  }
  const { width, height } = extentOf([name]);
  const under = place.box.y + place.box.height + height / 2 + 2;
  const box = board.place(
    [0, 1.5, 3].map((more) => boxAround(place.box.x + place.box.width / 2, under + more, width, height)),
  );
  return box ? linesIn(box, [name]) : [];
}

/** Boxes inside the fabric, from the middle of its lower half outwards. */
function* middles(
  within: Box,
  width: number,
  height: number,
  inside: (x: number, y: number) => boolean,
): Generator<Box> {
  for (const down of [0.56, 0.5, 0.62, 0.68, 0.44, 0.74, 0.38, 0.8, 0.32, 0.86]) {
    for (const across of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8]) {
      const box = boxAround(within.x + within.width * across, within.y + within.height * down, width, height);
      if (inside(box.x, box.y)) yield box;
    }
  }
}

function extentOf(lines: readonly LineOfText[]): { width: number; height: number } {
  return {
    width: Math.max(...lines.map(({ text, size }) => textWidth(text, size))),
    height: lines.reduce((sum, { size }) => sum + size * LEADING, 0),
  };
}

function linesIn(box: Box, lines: readonly LineOfText[]): TextMark[] {
  let y = box.y + (box.height - extentOf(lines).height) / 2;
  return lines.map(({ text, role, size }) => {
    const baseline = y + (size * LEADING) / 2 + size * MIDDLE;
    y += size * LEADING;
    return { kind: 'text', role, text, x: box.x + box.width / 2, y: baseline, size, anchor: 'middle' };
  });
}

import { drawingWords } from '../text';
import { fromFrame, type Frame } from './frame';
import type { LabelBoard } from './labels';
import { TYPE } from './sizes';
import { ASCENT, MIDDLE, textWidth } from './width';
import { linesPath, type Spot } from './toPath';
import type { Box, PathMark, TextMark } from './marks';

/** How far the mark stands over the stems, how long its arm is, and the size of its head, sheet mm. */
const OVER = 1.6;
const ARM = 6.5;
const HEAD = { length: 1.5, half: 0.6 } as const;

/** What the arrow takes along the edge. */
export const ARROW_ALONG = ARM;

export interface StartMark {
  readonly mark: PathMark;
  /** Where it leaves the edge, and how far out its arm lies. */
  readonly first: Frame;
  readonly out: number;
}

/**
 * Where the work begins and which way it goes: a line out of the edge that bends into an arrow along it. In the round
 * it has a foot inside the fabric too, for the round ends there as well.
 *
 * @param frames along the edge from its start on, so that the arrow follows a curve
 * @param stem how far stems, and buttonholes beyond them, reach over the edge
 */
export function drawStart(
  frames: readonly Frame[],
  stem: number,
  joined: boolean,
  board: LabelBoard,
): StartMark | null {
  const first = frames[0];
  if (!first) return null;
  const out = stem + OVER;
  const foot = fromFrame(first, joined ? -OVER : 0);
  const arm: Spot[] = frames.map((frame) => fromFrame(frame, out));
  const tip = arm.at(-1)!;
  const { goX, goY } = frames.at(-1)!;
  const barb = (side: number): Spot => [
    tip[0] - goX * HEAD.length - goY * HEAD.half * side,
    tip[1] - goY * HEAD.length + goX * HEAD.half * side,
  ];
  const spots: Spot[] = [foot, ...arm];
  spots.forEach((spot, i) => {
    const before = spots[i - 1];
    if (before) board.block(...before, ...spot);
  });
  const mark: PathMark = {
    kind: 'path',
    role: 'arrow',
    d: linesPath(spots) + linesPath([barb(1), tip, barb(-1)]),
    count: 1,
  };
  return { mark, first, out };
}

/** How many frames the arm follows a bent edge by. */
const ARM_STEPS = 8;

/** Distances along the edge, fabric mm, that the arm follows. */
export function armDistances(length: number, scale: number): number[] {
  const whole = Math.min(ARM / scale, length / 2);
  return Array.from({ length: ARM_STEPS + 1 }, (_, i) => (whole * i) / ARM_STEPS);
}

/** The word at the start, where there is room for it. */
export function startWord(frame: Frame, out: number, joined: boolean, board: LabelBoard): TextMark[] {
  const text = joined ? drawingWords.startAndEnd : drawingWords.start;
  const width = textWidth(text, TYPE.small);
  const height = TYPE.small * (ASCENT + 0.1);
  const candidates: Box[] = [];
  for (const farther of [0, 1.5, 3, 5]) {
    const [x, y] = fromFrame(frame, out + 0.9 + farther);
    const [besideX, besideY] = fromFrame(frame, out * 0.6, -0.9 - farther);
    candidates.push(
      { x: x - width / 2, y: frame.outY < 0 ? y - height : y, width, height },
      { x: frame.outX < 0 ? x - width : x, y: y - height / 2, width, height },
      { x: besideX - width, y: besideY - height / 2, width, height },
      { x: besideX, y: besideY - height / 2, width, height },
    );
  }
  const box = board.place(candidates);
  if (!box) return [];
  const y = box.y + height / 2 + TYPE.small * MIDDLE;
  return [{ kind: 'text', role: 'start-word', text, x: box.x + width / 2, y, size: TYPE.small, anchor: 'middle' }];
}

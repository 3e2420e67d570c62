import { fromFrame, reachOut, type Frame } from './frame';
import { boxAround, type LabelBoard } from './labels';
import { LABEL_GAP, TYPE } from './sizes';
import { MIDDLE, textWidth } from './width';
import type { Box, TextMark, TextRole } from './marks';

/** A number that wants to stand outside the fabric, beyond its stem. */
export interface NumberWish {
  readonly text: string;
  readonly frame: Frame;
  readonly stem: number;
}

/** Numbers stand at every tenth point, or every 20th, 50th, 100th … as the drawing gets smaller. */
const STEPS = [10, 20, 50, 100, 200, 500, 1000];

/** Clear room wanted between two numbers, as a part of a number's own width. */
const BREATH = 1.4;

/** The smallest step at which the numbers of a pick-up stand apart. */
export function numberStep(count: number, sheetLength: number): number {
  const each = sheetLength / Math.max(count, 1);
  const wanted = textWidth(String(count), TYPE.number) * BREATH;
  return STEPS.find((step) => step * each >= wanted) ?? STEPS.at(-1)!;
}

/** Further tries for a number that must stand somewhere: outwards, then to either side along the edge. */
const OUT = [0, 1.4, 2.8, 4.6, 6.6];
const ALONG = [0, 1.6, -1.6, 3.2, -3.2, 5, -5];

/** Places one number; the ends of a pick-up try harder than the tens. */
export function placeNumber(wish: NumberWish, role: TextRole, board: LabelBoard): TextMark | null {
  const width = textWidth(wish.text, TYPE.number);
  const height = TYPE.number * 0.8;
  const outs = role === 'end-number' ? OUT : OUT.slice(0, 2);
  const alongs = role === 'end-number' ? ALONG : [0];
  const candidates = function* (): Generator<Box> {
    for (const along of alongs) {
      for (const out of outs) {
        const stand = wish.stem + LABEL_GAP + reachOut(wish.frame, width, height) + out;
        yield boxAround(...fromFrame(wish.frame, stand, along), width, height);
      }
    }
  };
  const box = board.place(candidates());
  return box && textIn(box, wish.text, role, TYPE.number);
}

/** A line of text in the middle of its box. */
export function textIn(box: Box, text: string, role: TextRole, size: number): TextMark {
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2 + size * MIDDLE;
  return { kind: 'text', role, text, x, y, size, anchor: 'middle' };
}

import { drawingWords, rulerLength, rulerNumber, type DrawingWords } from '../text';
import type { LabelBoard } from './labels';
import { MARGIN, RULER, TYPE } from './sizes';
import { MIDDLE, textWidth } from './width';
import { roundTicks } from './ticks';
import { linesPath } from './toPath';
import type { PathMark, Place, TextMark } from './marks';

/** Sheet mm between two numbers that read easily, and between two ticks that can still be counted. */
const NUMBERS_APART = 11;
const TICKS_APART = 1.3;

const TICK = { long: 1.5, short: 0.8 } as const;

interface Scale {
  /** In the ruler's own unit. */
  readonly length: number;
  /** Sheet mm. */
  readonly sheetLength: number;
  readonly whole: boolean;
  readonly word: string;
}

interface Ticks {
  readonly long: readonly number[];
  readonly short: readonly number[];
}

/** Round numbers to write at, and the finest round step between them that leaves ticks apart. */
export function ticksOf({ length, sheetLength, whole }: Pick<Scale, 'length' | 'sheetLength' | 'whole'>): Ticks {
  const scale = (value: number) => (value * sheetLength) / length;
  const fits = (ticks: readonly number[], apart: number) =>
    ticks.length < 2 || scale(ticks[1]!) - scale(ticks[0]!) >= apart;
  const at = (apart: number) => {
    let count = Math.max(1, Math.floor(sheetLength / apart));
    let ticks = roundTicks(length, count);
    while (count > 1 && !(fits(ticks, apart) && (!whole || ticks.every(Number.isInteger)))) {
      count = Math.floor(count * 0.8);
      ticks = roundTicks(length, count);
    }
    return ticks.filter((tick) => !whole || Number.isInteger(tick));
  };
  const long = at(NUMBERS_APART);
  const finest = at(TICKS_APART);
  const step = long.length > 1 ? long[1]! - long[0]! : length;
  // A tick that is no part of a numbered step would only confuse.
  const fine = finest.length > 1 ? finest[1]! - finest[0]! : step;
  const parts = step / fine;
  const even = Math.abs(parts - Math.round(parts)) < 1e-6;
  return { long, short: even ? finest.filter((tick) => !long.includes(tick)) : [] };
}

export interface Rulers {
  readonly marks: readonly PathMark[];
  readonly texts: readonly TextMark[];
}

/** Stitches and cm or inches along the bottom, rows and cm or inches up the left side. */
export function drawRulers(place: Place, hasGauge: boolean, words: DrawingWords, board: LabelBoard): Rulers {
  const { box, scale, cell } = place;
  const length = { word: words.units, whole: false };
  const across = [
    { length: box.width / scale / cell.width, sheetLength: box.width, whole: true, word: drawingWords.stitches },
    ...(hasGauge ? [{ length: rulerLength(box.width / scale, words), sheetLength: box.width, ...length }] : []),
  ];
  const up = [
    { length: box.height / scale / cell.height, sheetLength: box.height, whole: true, word: drawingWords.rows },
    ...(hasGauge ? [{ length: rulerLength(box.height / scale, words), sheetLength: box.height, ...length }] : []),
  ];
  const strokes: string[] = [];
  const texts: TextMark[] = [];
  let count = 0;
  const put = (text: TextMark) => {
    const width = textWidth(text.text, text.size);
    const left = text.anchor === 'middle' ? text.x - width / 2 : text.anchor === 'end' ? text.x - width : text.x;
    const box = { x: left, y: text.y - text.size * (MIDDLE + 0.4), width, height: text.size * 0.8 };
    if (board.place([box], 'labels')) texts.push(text);
  };
  const label = (role: 'ruler-number' | 'ruler-unit', text: string, x: number, y: number, anchor: TextMark['anchor']) =>
    put({ kind: 'text', role, text, x, y: y + TYPE.small * MIDDLE, size: TYPE.small, anchor });

  across.forEach((ruler, i) => {
    const y = box.y + box.height + MARGIN + i * RULER;
    const at = (value: number) => box.x + (value / ruler.length) * ruler.sheetLength;
    const ticks = ticksOf(ruler);
    board.block(box.x, y, box.x + ruler.sheetLength, y);
    strokes.push(
      linesPath([
        [box.x, y],
        [box.x + ruler.sheetLength, y],
      ]),
    );
    for (const tick of ticks.short)
      strokes.push(
        linesPath([
          [at(tick), y],
          [at(tick), y + TICK.short],
        ]),
      );
    for (const tick of ticks.long)
      strokes.push(
        linesPath([
          [at(tick), y],
          [at(tick), y + TICK.long],
        ]),
      );
    count += 1 + ticks.short.length + ticks.long.length;
    label('ruler-unit', ruler.word, box.x + ruler.sheetLength + 1.6, y, 'start');
    for (const tick of ticks.long)
      label('ruler-number', rulerNumber(tick, words), at(tick), y + TICK.long + 1.7, 'middle');
  });
  up.forEach((ruler, i) => {
    const x = box.x - MARGIN - i * RULER;
    const at = (value: number) => box.y + box.height - (value / ruler.length) * ruler.sheetLength;
    const ticks = ticksOf(ruler);
    board.block(x, box.y, x, box.y + ruler.sheetLength);
    strokes.push(
      linesPath([
        [x, box.y],
        [x, box.y + ruler.sheetLength],
      ]),
    );
    for (const tick of ticks.short)
      strokes.push(
        linesPath([
          [x, at(tick)],
          [x - TICK.short, at(tick)],
        ]),
      );
    for (const tick of ticks.long)
      strokes.push(
        linesPath([
          [x, at(tick)],
          [x - TICK.long, at(tick)],
        ]),
      );
    count += 1 + ticks.short.length + ticks.long.length;
    label('ruler-unit', ruler.word, x, box.y - 2.2, 'end');
    for (const tick of ticks.long)
      label('ruler-number', rulerNumber(tick, words), x - TICK.long - 0.6, at(tick), 'end');
  });
  return { marks: [{ kind: 'path', role: 'ruler', d: strokes.join(''), count }], texts };
}

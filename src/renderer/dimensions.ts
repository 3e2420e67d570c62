import { dimensionText, drawnRows, drawnStitches, type DrawingWords } from '../text';
import type { LabelBoard } from './labels';
import { DIMENSION, MARGIN, RULER, TYPE } from './sizes';
import { MIDDLE, textWidth } from './width';
import { linesPath } from './toPath';
import type { PathMark, Place, TextMark } from './marks';

/** Half the length of the strokes that end a dimension line. */
const END = 1;

export interface Dimensions {
  readonly marks: readonly PathMark[];
  readonly texts: readonly TextMark[];
}

/** The whole width under the piece and the whole height at its right, each a line broken by its words. */
export function drawDimensions(
  place: Place,
  hasGauge: boolean,
  rulers: boolean,
  words: DrawingWords,
  board: LabelBoard,
): Dimensions {
  const { box, scale, cell } = place;
  const stitches = Math.round(box.width / scale / cell.width);
  const rows = Math.round(box.height / scale / cell.height);
  const said = (mm: number, counted: string) => dimensionText(hasGauge ? mm : null, counted, words);
  const width = said(box.width / scale, drawnStitches(stitches));
  const height = said(box.height / scale, drawnRows(rows));
  const y = box.y + box.height + MARGIN + (rulers ? RULER * (hasGauge ? 2 : 1) : 0) + DIMENSION / 2;
  const x = box.x + box.width + MARGIN + DIMENSION / 2;
  board.block(box.x, y, box.x + box.width, y);
  board.block(x, box.y, x, box.y + box.height);
  const strokes: string[] = [];
  const texts: TextMark[] = [];

  const across = textWidth(width, TYPE.small) + 2;
  const middle = box.x + box.width / 2;
  if (across <= box.width - 4) {
    strokes.push(line([box.x, y], [middle - across / 2, y]), line([middle + across / 2, y], [box.x + box.width, y]));
  }
  strokes.push(
    line([box.x, y - END], [box.x, y + END]),
    line([box.x + box.width, y - END], [box.x + box.width, y + END]),
  );
  const flat = { x: middle - across / 2, y: y - TYPE.small / 2, width: across, height: TYPE.small };
  if (board.place([flat], 'labels')) texts.push(text(width, middle, y + TYPE.small * MIDDLE));

  const up = textWidth(height, TYPE.small) + 2;
  const centre = box.y + box.height / 2;
  if (up <= box.height - 4) {
    strokes.push(line([x, box.y], [x, centre - up / 2]), line([x, centre + up / 2], [x, box.y + box.height]));
  }
  strokes.push(
    line([x - END, box.y], [x + END, box.y]),
    line([x - END, box.y + box.height], [x + END, box.y + box.height]),
  );
  const upright = { x: x - TYPE.small / 2, y: centre - up / 2, width: TYPE.small, height: up };
  if (board.place([upright], 'labels')) texts.push({ ...text(height, x + TYPE.small * MIDDLE, centre), rotate: -90 });

  return { marks: [{ kind: 'path', role: 'dimension', d: strokes.join(''), count: strokes.length }], texts };
}

function line(from: readonly [number, number], to: readonly [number, number]): string {
  return linesPath([from, to]);
}

function text(words: string, x: number, y: number): TextMark {
  return { kind: 'text', role: 'dimension-text', text: words, x, y, size: TYPE.small, anchor: 'middle' };
}

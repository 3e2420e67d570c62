import { displayWidth } from './table';

/** Stands for a space that must not break. */
const TIE = '\u00a0';
const COUNT = /\b(skip|up|knit) (?=\d)/g;

/** Columns of a terminal that reports keep to. */
export const REPORT_WIDTH = 88;

/**
 * A paragraph broken at its spaces into lines of at most `width` columns, every line but the first set in by `indent`.
 * Spaces at its beginning are kept; a word longer than a line stands on one of its own. A count is not parted from what
 * is done with it (`skip 1`).
 */
export function wrapped(text: string, width = REPORT_WIDTH, indent = ''): string {
  const [lead = ''] = /^ */.exec(text) ?? [];
  const lines: string[] = [];
  let line = lead;
  let bare = true;
  for (const word of text.slice(lead.length).replace(COUNT, `$1${TIE}`).split(' ')) {
    if (!bare && displayWidth(line) + 1 + displayWidth(word) > width) {
      lines.push(line);
      line = indent;
      bare = true;
    }
    line += bare ? word : ` ${word}`;
    bare = false;
  }
  return [...lines, line].join('\n').replaceAll(TIE, ' ');
}

/** A column of a table: what stands above it, and whether it holds figures, which line up on the right. */
export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
}

const GAP = '  ';
const SEGMENTS = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Marks and controls that take no room of their own. */
const NO_WIDTH = /^[\p{M}\p{Cf}\p{Cc}]+$/u;
/** Scripts and pictures that terminals draw two columns wide (after Unicode Standard Annex 11, East Asian Width). */
const WIDE =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]|^\p{Emoji_Presentation}|\ufe0f/u;

/** How many columns of a terminal a text takes: two for wide characters, none for marks that stand on others. */
export function displayWidth(text: string): number {
  let width = 0;
  for (const { segment } of SEGMENTS.segment(text)) width += NO_WIDTH.test(segment) ? 0 : WIDE.test(segment) ? 2 : 1;
  return width;
}

/**
 * A table in plain text: a line of heads, a rule, a line a row; columns as wide as they need to be, with two spaces
 * between. A missing cell is empty. No line ends in a space.
 */
export function tableText(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map(({ head }, i) =>
    Math.max(...[head, ...rows.map((row) => row[i] ?? '')].map(displayWidth)),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map(({ align }, i) => padded(cells[i] ?? '', widths[i] ?? 0, align))
      .join(GAP)
      .trimEnd();
  return [
    line(columns.map(({ head }) => head)),
    widths.map((width) => '-'.repeat(width)).join(GAP),
    ...rows.map(line),
  ].join('\n');
}

function padded(text: string, width: number, align: Column['align']): string {
  const room = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'right' ? `${room}${text}` : `${text}${room}`;
}

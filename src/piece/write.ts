import type { Design } from './design';

/** Longest line on which a list or an object is written whole. */
const WIDTH = 110;

function scalar(value: unknown): string {
  // JSON knows -0, but its writer drops the sign; what was read is written.
  return Object.is(value, -0) ? '-0' : JSON.stringify(value);
}

/** Entries of an object that JSON can hold, in its order. */
function entriesOf(value: object): [string, unknown][] {
  return Object.entries(value).filter(([, inner]) => inner !== undefined);
}

/** The value on one line, or null when it takes more than `room` characters. */
function inline(value: unknown, room: number): string | null {
  if (typeof value !== 'object' || value === null) {
    const text = scalar(value);
    return text.length <= room ? text : null;
  }
  const list = Array.isArray(value);
  const parts: string[] = [];
  let left = room - (list ? 2 : 4);
  for (const [key, inner] of entriesOf(value)) {
    const name = list ? '' : `${JSON.stringify(key)}: `;
    const text = inline(inner, left - name.length);
    if (text === null) return null;
    parts.push(name + text);
    left -= name.length + text.length + 2;
  }
  if (parts.length === 0) return list ? '[]' : '{}';
  return list ? `[${parts.join(', ')}]` : `{ ${parts.join(', ')} }`;
}

function block(value: unknown, indent: string, taken: number): string {
  if (typeof value !== 'object' || value === null) return scalar(value);
  const short = inline(value, WIDTH - taken);
  if (short !== null) return short;
  const inner = `${indent}  `;
  const list = Array.isArray(value);
  const lines = entriesOf(value).map(([key, entry]) => {
    const name = list ? '' : `${JSON.stringify(key)}: `;
    return inner + name + block(entry, inner, inner.length + name.length);
  });
  const [open, close] = list ? ['[', ']'] : ['{', '}'];
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}

/**
 * The text of a design file: JSON, two spaces deep, the fields of every object in the order they stand in, an edge or
 * a step on one line where it fits. Read again it gives the same design; unknown fields are written like any other.
 */
export function writeDesign(design: Design): string {
  return `${block(design, '', 0)}\n`;
}

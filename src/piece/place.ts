/** Places in a document, written so that a person finds them. */

export type Key = string | number;

/** Longest id or field name that is written out in a place. */
const LONGEST = 60;

/** Line and paragraph separators, which JSON leaves as they are and which would break a one-line message. */
const SEPARATORS = /[\u0085\u2028\u2029]/g;

/** A text in double quotes, on one line, cut short with an ellipsis when it is long. */
export function quoted(text: string): string {
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return JSON.stringify(short).replace(SEPARATORS, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

function property(value: unknown, key: Key): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<Key, unknown>)[key]
    : undefined;
}

/**
 * Follows `keys` from the root of a document and writes the way: list entries by their number counted from 0, with
 * their id when they have one, as in `pieces[0] "front" > outline[2] "neck-left" > steps[1].every`.
 */
export function placeOf(root: unknown, keys: readonly Key[]): string {
  let place = '';
  let value = root;
  let joint = '';
  for (const key of keys) {
    value = property(value, key);
    if (typeof key === 'string') {
      place += joint + (/^[\w-]+$/.test(key) && key.length <= LONGEST ? key : quoted(key));
      joint = '.';
      continue;
    }
    place += `[${key}]`;
    const id = property(value, 'id');
    joint = '.';
    if (typeof id === 'string' && id !== '') {
      place += ` ${quoted(id)}`;
      joint = ' > ';
    }
  }
  return place;
}

/** How the good document is made bad, one change at a time. */
import type { Problem } from '../../src/piece';
import { GOOD } from './good';

/** A document whose fields can be reached and changed by name; it is nobody's type on purpose. */
interface Loose {
  [field: string]: Loose;
  [entry: number]: Loose;
}

/** What one change does to the good document, and what must be said of it. */
export interface BadFile {
  readonly title: string;
  /** The text of the bad file. */
  readonly text: string;
  readonly kind: Problem['kind'];
  readonly at: string;
  /** Words of the sentence that say what is wrong or how to mend it. */
  readonly says: readonly string[];
}

export function changed(change: (document: Loose) => void): string {
  const document = structuredClone(GOOD);
  change(document as unknown as Loose);
  return JSON.stringify(document);
}

/** Sets what `path` leads to, as in `pieces.0.outline.2.from`; undefined takes the field out. */
function set(path: string, value: unknown): string {
  return changed((document) => {
    const keys = path.split('.');
    const last = keys.pop()!;
    const owner = keys.reduce((inner, key) => inner[key]!, document);
    if (value === undefined) Reflect.deleteProperty(owner, last);
    else owner[last] = value as Loose;
  });
}

export function bad(title: string, text: string, kind: Problem['kind'], at: string, ...says: string[]): BadFile {
  return { title, text, kind, at, says };
}

/** A list of `n` entries made by one pattern. */
export const many = (n: number, entry: (i: number) => object) => Array.from({ length: n }, (_, i) => entry(i));

/** A field set to a value. */
export function wrong(path: string, value: unknown, kind: Problem['kind'], at: string, ...says: string[]): BadFile {
  const shown = value === undefined ? 'taken out' : JSON.stringify(value).slice(0, 40);
  return bad(`${path}: ${shown}`, set(path, value), kind, at, ...says);
}

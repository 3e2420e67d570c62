import type { SyntaxReason } from './problems';

/** Where a text stops being JSON. */
export interface SyntaxSlip {
  readonly offset: number;
  readonly reason: SyntaxReason;
}

const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORD = /true|false|null/y;

/** How far `pattern` reaches from `at`; `at` itself when it does not match there. */
function reach(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** The offset of the quote that closes the string opened at `at`, or of the first character that it can't hold. */
function stringEnd(text: string, at: number): number {
  let end = at + 1;
  for (;;) {
    const c = text[end];
    if (c === undefined || c === '"' || c < ' ') return end;
    const next = c === '\\' ? reach(ESCAPE, text, end) : end + 1;
    if (next === end) return end;
    end = next;
  }
}

/** What a text may be cut short in: the beginning of a word, of a number, of an escape. */
const CUT_SCALAR = /(?:t(?:ru?)?|f(?:a(?:ls?)?)?|n(?:ul?)?|-|-?\d+\.|-?\d+(?:\.\d+)?[eE][+-]?)$/y;
const CUT_ESCAPE = /\\(?:u[0-9a-fA-F]{0,3})?$/y;

function reasonAt(text: string, at: number): SyntaxReason {
  const c = text[at];
  if (c === undefined) return text.trim() === '' ? 'empty' : 'ends-early';
  if (c === '/') return 'comment';
  if (c === "'" || c === '“' || c === '”' || c === '‘' || c === '’') return 'quotes';
  return 'other';
}

/**
 * Finds the first place where a text breaks the grammar of JSON (RFC 8259), or null when it keeps it. Engines word and
 * place their own errors each in their way, some without a place at all, so the place is found here.
 */
export function findSyntaxSlip(text: string): SyntaxSlip | null {
  /** The brackets that are open, the innermost last. */
  const open: string[] = [];
  let at = 0;
  /** What may come next: a value, a key of an object, or what follows a value. */
  let next: 'value' | 'key' | 'after' = 'value';
  /** Just behind a `[` or `{`, where the bracket may close; behind a comma it may not. */
  let fresh = false;
  let comma = 0;
  const slip = (offset: number, reason: SyntaxReason = reasonAt(text, offset)): SyntaxSlip => ({ offset, reason });

  for (;;) {
    at = reach(SPACE, text, at);
    const c = text[at];
    if (c === undefined) return open.length === 0 && next === 'after' ? null : slip(at);
    if (next === 'after') {
      const inside = open.at(-1);
      if (inside === undefined) return slip(at);
      if (c === ',') {
        comma = at;
        next = inside === '{' ? 'key' : 'value';
        fresh = false;
      } else if (c === (inside === '{' ? '}' : ']')) open.pop();
      else return slip(at);
      at++;
    } else if (c === '}' || c === ']') {
      const closes = open.at(-1) === (c === '}' ? '{' : '[') && next === (c === '}' ? 'key' : 'value');
      if (!closes || !fresh) return closes ? slip(comma, 'trailing-comma') : slip(at);
      open.pop();
      next = 'after';
      at++;
    } else if (c === '"') {
      const end = stringEnd(text, at);
      if (reach(CUT_ESCAPE, text, end) > end) return slip(text.length);
      if (text[end] !== '"') return slip(end, end < text.length ? 'text' : undefined);
      at = end + 1;
      if (next === 'key') {
        at = reach(SPACE, text, at);
        if (text[at] !== ':') return slip(at);
        at++;
        next = 'value';
        fresh = false;
      } else next = 'after';
    } else if (next === 'key') {
      return slip(at, /[\w$]/.test(c) ? 'quotes' : reasonAt(text, at));
    } else if (c === '{' || c === '[') {
      open.push(c);
      next = c === '{' ? 'key' : 'value';
      fresh = true;
      at++;
    } else {
      if (reach(CUT_SCALAR, text, at) > at) return slip(text.length);
      const end = Math.max(reach(NUMBER, text, at), reach(WORD, text, at));
      const glued = /[\w.+-]/.test(text[end] ?? '');
      if (end === at) return slip(at, /[-+.]/.test(c) ? 'number' : undefined);
      if (glued) return slip(end, /[-\d]/.test(c) ? 'number' : 'other');
      at = end;
      next = 'after';
    }
  }
}

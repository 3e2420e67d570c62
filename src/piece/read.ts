import { BOUNDS } from './bounds';
import { assertCorners, assertLinesAndPickups } from './check';
import { fillDesign } from './defaults';
import type { Design } from './design';
import { assertShape } from './issue';
import { migrate, VERSION, type JsonObject } from './migrate';
import { placeOf, type Key } from './place';
import { DesignError, type Notice } from './problems';
import { findSyntaxSlip } from './syntax';
import { turnCounterclockwise } from './turn';
import { findUnknown } from './unknown';

export interface ReadResult {
  readonly design: Design;
  readonly notices: readonly Notice[];
}

/** Size of a text in UTF-8, in bytes. */
function bytesOf(text: string): number {
  let bytes = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    // Each half of a surrogate pair stands for two of its four bytes.
    const half = code >= 0xd800 && code <= 0xdfff;
    bytes += code < 0x80 ? 1 : code < 0x800 || half ? 2 : 3;
  }
  return bytes;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const slip = findSyntaxSlip(text);
    if (!slip) throw error;
    const before = text.slice(0, slip.offset).split(/\r\n|\r|\n/);
    const line = before.length;
    const column = (before.at(-1) ?? '').length + 1;
    const code = text.codePointAt(slip.offset);
    const found = code === undefined ? null : String.fromCodePoint(code);
    throw new DesignError({ kind: 'not-json', at: '', line, column, reason: slip.reason, found });
  }
}

function refuseDeep(root: unknown): void {
  const limit = BOUNDS.depth;
  const left: { value: unknown; keys: readonly Key[] }[] = [{ value: root, keys: [] }];
  for (let next = left.pop(); next; next = left.pop()) {
    const { value, keys } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (keys.length >= limit) throw new DesignError({ kind: 'too-deep', at: placeOf(root, keys.slice(0, 1)), limit });
    const list = Array.isArray(value);
    for (const [key, inner] of Object.entries(value)) {
      left.push({ value: inner, keys: [...keys, list ? Number(key) : key] });
    }
  }
}

function refuseForeign(raw: unknown): JsonObject {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    throw new DesignError({ kind: 'wrong-type', at: '', expected: 'object', found: raw });
  }
  const document = raw as JsonObject;
  const { format } = document;
  if (format !== 'edgewise') throw new DesignError({ kind: 'not-edgewise', at: 'format', found: format });
  return document;
}

/**
 * Reads the text of a design file: a byte-order mark is passed over, earlier versions are brought up to date, defaults
 * filled in, outlines that run clockwise turned round, fields of other hands kept.
 * @throws DesignError, and nothing else, for a text that is not a design; nothing of it is then read.
 */
export function readDesign(text: string): ReadResult {
  const bytes = bytesOf(text);
  const limit = BOUNDS.fileBytes;
  if (bytes > limit) throw new DesignError({ kind: 'too-large', at: '', bytes, limit });
  const raw = parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  refuseDeep(raw);
  const { document, from } = migrate(refuseForeign(raw));
  assertShape(document);
  const fields = findUnknown(document);
  const filled = fillDesign(document);
  assertCorners(filled);
  const { design, notices: turned } = turnCounterclockwise(filled);
  assertLinesAndPickups(design, filled);
  const notices: Notice[] = [...turned];
  if (from < VERSION) notices.unshift({ kind: 'migrated', from, to: VERSION });
  if (fields.length > 0) notices.push({ kind: 'unknown-fields', fields });
  return { design, notices };
}

import { viewOf, type FontFile } from './fontFile';

/** The letters of a face that a document uses, as a font of its own. */
export interface Subset {
  readonly bytes: Uint8Array;
  /** The glyph of each letter in it, by code point, and its exact advance in thousandths of the type size. */
  readonly letters: ReadonlyMap<number, { readonly glyph: number; readonly advance: number }>;
}

/** Flags of a glyph made of others (OpenType, table glyf): how long each part's record is, and whether one follows. */
const WORDS = 0x0001;
const SCALE = 0x0008;
const MORE = 0x0020;
const TWO_SCALES = 0x0040;
const FOUR_SCALES = 0x0080;
const INSTRUCTIONS = 0x0100;

/**
 * A TrueType font that holds only the given letters (those of them that the font has). Each letter gets a glyph of its
 * own, even where two look alike, so that text taken out of the document is what was put in. The instructions for
 * coarse screens are left out.
 *
 * @param codes code points of the basic plane
 * @param name the font's PostScript name
 */
export function subsetFont(font: FontFile, codes: Iterable<number>, name: string): Subset {
  const used = [...new Set(codes)].filter((code) => font.glyphs.has(code)).sort((a, b) => a - b);
  // The first glyph stands for missing letters; parts of composed glyphs come after the letters.
  const olds = [0, ...used.map((code) => font.glyphs.get(code)!)];
  const parts = new Map<number, number>();
  const partOf = (old: number): number => {
    const known = parts.get(old);
    if (known !== undefined) return known;
    parts.set(old, olds.length);
    return olds.push(old) - 1;
  };
  const outlines: Uint8Array[] = [];
  // Parts are put at the end of the list while it is gone through.
  for (const old of olds) outlines.push(plainOutline(font.outline(old), partOf));

  const loca = new Uint8Array(4 * (outlines.length + 1));
  outlines.reduce((place, outline, i) => {
    viewOf(loca).setUint32(4 * (i + 1), place + outline.length);
    return place + outline.length;
  }, 0);
  const hmtx = new Uint8Array(4 * olds.length);
  olds.forEach((old, i) => {
    const { advance, bearing } = font.metric(old);
    viewOf(hmtx).setUint16(4 * i, advance);
    viewOf(hmtx).setInt16(4 * i + 2, bearing);
  });
  const changed = (tag: string, at: number, value: number): Uint8Array => {
    const table = font.table(tag)!.slice();
    viewOf(table).setUint16(at, value);
    return table;
  };
  const post = font.table('post')!.slice(0, 32);
  viewOf(post).setUint32(0, 0x00030000);
  const os2 = font.table('OS/2');
  const bytes = fontBytes([
    ...(os2 ? [['OS/2', os2] as const] : []),
    ['cmap', letterMap(used)],
    ['glyf', joined(outlines)],
    ['head', changed('head', 50, 1)],
    ['hhea', changed('hhea', 34, olds.length)],
    ['hmtx', hmtx],
    ['loca', loca],
    ['maxp', changed('maxp', 4, olds.length)],
    ['name', nameTable(name)],
    ['post', post],
  ]);
  const advance = (glyph: number) => (font.metric(olds[glyph]!).advance * 1000) / font.unitsPerEm;
  return { bytes, letters: new Map(used.map((code, i) => [code, { glyph: i + 1, advance: advance(i + 1) }])) };
}

/** A glyph without its instructions, its parts renumbered, filled up to four bytes. */
function plainOutline(outline: Uint8Array, partOf: (glyph: number) => number): Uint8Array {
  if (outline.length === 0) return outline;
  const contours = viewOf(outline).getInt16(0);
  if (contours >= 0) {
    const at = 10 + 2 * contours;
    const skipped = viewOf(outline).getUint16(at);
    return filledUp([outline.subarray(0, at), new Uint8Array(2), outline.subarray(at + 2 + skipped)]);
  }
  const copy = outline.slice();
  const view = viewOf(copy);
  let at = 10;
  let flags = MORE;
  while (flags & MORE) {
    flags = view.getUint16(at);
    view.setUint16(at, flags & ~INSTRUCTIONS);
    view.setUint16(at + 2, partOf(view.getUint16(at + 2)));
    at += 4 + (flags & WORDS ? 4 : 2) + (flags & SCALE ? 2 : flags & TWO_SCALES ? 4 : flags & FOUR_SCALES ? 8 : 0);
  }
  return filledUp([copy.subarray(0, at)]);
}

function filledUp(pieces: readonly Uint8Array[]): Uint8Array {
  const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
  return joined([...pieces, new Uint8Array((4 - (length % 4)) % 4)]);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function words(...values: number[]): Uint8Array {
  const bytes = new Uint8Array(2 * values.length);
  values.forEach((value, i) => {
    viewOf(bytes).setUint16(2 * i, value & 0xffff);
  });
  return bytes;
}

/** Table cmap, format 4: letters in a row are glyphs in a row. */
function letterMap(codes: readonly number[]): Uint8Array {
  const rows: { from: number; to: number; glyph: number }[] = [];
  codes.forEach((code, i) => {
    const last = rows.at(-1);
    if (last?.to === code - 1) last.to = code;
    else rows.push({ from: code, to: code, glyph: i + 1 });
  });
  rows.push({ from: 0xffff, to: 0xffff, glyph: 0 });
  const twice = 2 * rows.length;
  const power = 2 ** Math.floor(Math.log2(rows.length));
  const search = [2 * power, Math.log2(power), twice - 2 * power];
  return joined([
    words(0, 1, 3, 1, 0, 12, 4, 16 + 4 * twice, 0, twice, ...search),
    words(...rows.map(({ to }) => to), 0),
    words(...rows.map(({ from }) => from)),
    words(...rows.map(({ from, glyph }) => glyph - from)),
    words(...rows.map(() => 0)),
  ]);
}

/** Table name with the PostScript name alone (Macintosh, Roman). */
function nameTable(name: string): Uint8Array {
  return joined([words(0, 1, 18, 1, 0, 0, 6, name.length, 0), Uint8Array.from(name, (one) => one.charCodeAt(0))]);
}

/** A font file of tables in the order of their tags. Sums are left out: the document's writer makes its own. */
function fontBytes(tables: readonly (readonly [tag: string, table: Uint8Array])[]): Uint8Array {
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const head = joined([words(1, 0, tables.length, 16 * power, Math.log2(power), 16 * (tables.length - power))]);
  const directory = new Uint8Array(16 * tables.length);
  const bodies: Uint8Array[] = [];
  let place = head.length + directory.length;
  tables.forEach(([tag, table], i) => {
    directory.set(
      Uint8Array.from(tag, (one) => one.charCodeAt(0)),
      16 * i,
    );
    viewOf(directory).setUint32(16 * i + 8, place);
    viewOf(directory).setUint32(16 * i + 12, table.length);
    const body = filledUp([table]);
    bodies.push(body);
    place += body.length;
  });
  return joined([head, directory, ...bodies]);
}

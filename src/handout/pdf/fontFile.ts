/**
 * A TrueType file, read as far as widths and outlines need it. The tables are those of the OpenType specification
 * (ISO/IEC 14496-22): https://learn.microsoft.com/en-us/typography/opentype/spec/otff
 */
export interface FontFile {
  /** Font units in the type size. */
  readonly unitsPerEm: number;
  readonly glyphCount: number;
  /** The glyph of each letter, by its code point. */
  readonly glyphs: ReadonlyMap<number, number>;
  /** How far the pen moves on after a glyph, and where its outline begins, in font units. */
  metric: (glyph: number) => { readonly advance: number; readonly bearing: number };
  /** The glyph's description as it lies in the file; empty for one without an outline. */
  outline: (glyph: number) => Uint8Array;
  /** A whole table by its tag; undefined where the file has none. */
  table: (tag: string) => Uint8Array | undefined;
}

/**
 * Reads a TrueType file.
 *
 * @throws RangeError when the bytes are no TrueType font with outlines of its own and a map of letters
 */
export function readFontFile(bytes: Uint8Array): FontFile {
  const view = viewOf(bytes);
  if (bytes.length < 12 || view.getUint32(0) !== 0x00010000) throw new RangeError('This is no TrueType font.');
  const tables = new Map<string, Uint8Array>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
    const offset = view.getUint32(at + 8);
    tables.set(tag, bytes.subarray(offset, offset + view.getUint32(at + 12)));
  }
  const need = (tag: string): DataView => {
    const table = tables.get(tag);
    if (!table) throw new RangeError(`The font has no table ${tag}.`);
    return viewOf(table);
  };
  const [head, hhea, hmtx, loca, glyf] = [need('head'), need('hhea'), need('hmtx'), need('loca'), need('glyf')];
  const long = head.getInt16(50) === 1;
  const place = (glyph: number) => (long ? loca.getUint32(4 * glyph) : 2 * loca.getUint16(2 * glyph));
  const metrics = hhea.getUint16(34);
  return {
    unitsPerEm: head.getUint16(18),
    glyphCount: need('maxp').getUint16(4),
    glyphs: readLetters(need('cmap')),
    metric: (glyph) => ({
      advance: hmtx.getUint16(4 * Math.min(glyph, metrics - 1)),
      bearing: hmtx.getInt16(glyph < metrics ? 4 * glyph + 2 : 4 * metrics + 2 * (glyph - metrics)),
    }),
    outline: (glyph) => new Uint8Array(glyf.buffer, glyf.byteOffset + place(glyph), place(glyph + 1) - place(glyph)),
    table: (tag) => tables.get(tag),
  };
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** The letters of the basic plane, from the subtable for Windows (platform 3, encoding 1, format 4). */
function readLetters(cmap: DataView): Map<number, number> {
  for (let i = 0; i < cmap.getUint16(2); i++) {
    const [platform, encoding] = [cmap.getUint16(4 + 8 * i), cmap.getUint16(6 + 8 * i)];
    const offset = cmap.getUint32(8 + 8 * i);
    if (platform === 3 && encoding === 1 && cmap.getUint16(offset) === 4) return readFormat4(cmap, offset);
  }
  throw new RangeError('The font has no map of letters that can be read.');
}

function readFormat4(cmap: DataView, offset: number): Map<number, number> {
  const letters = new Map<number, number>();
  const twice = cmap.getUint16(offset + 6);
  const [ends, starts] = [offset + 14, offset + 16 + twice];
  for (let i = 0; i < twice; i += 2) {
    const delta = cmap.getUint16(starts + twice + i);
    const ranges = starts + 2 * twice + i;
    const range = cmap.getUint16(ranges);
    const from = cmap.getUint16(starts + i);
    for (let code = from; code <= cmap.getUint16(ends + i) && code < 0xffff; code++) {
      const listed = range === 0 ? code : cmap.getUint16(ranges + range + 2 * (code - from));
      const glyph = range === 0 || listed !== 0 ? (listed + delta) & 0xffff : 0;
      if (glyph !== 0) letters.set(code, glyph);
    }
  }
  return letters;
}

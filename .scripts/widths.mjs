// npm run letters: writes the widths of the handout's letters from the font files.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { runnerImport } from 'vite';
import { top } from './run.mjs';

const target = join(top, 'src', 'handout', 'letters', 'widths.ts');

/** Letters that stand by themselves: no marks that go over another letter, nothing invisible, nobody's own signs. */
const STANDS_ALONE = /^[^\p{M}\p{C}\u2028\u2029]$/u;

/** Blocks that nobody writes a pattern in: phonetics, letters of medieval copyists, pieces of tall brackets. */
const LEFT_OUT = [
  [0x250, 0x2af],
  [0x1d00, 0x1dbf],
  [0x2320, 0x24ff],
  [0x27c0, 0x2aff],
  [0x2c60, 0xa7ff],
  [0xfff0, 0xffff],
];

const isWanted = (code) =>
  STANDS_ALONE.test(String.fromCodePoint(code)) && !LEFT_OUT.some(([from, to]) => from <= code && code <= to);

/** Runs of equal things as "thing" or "thing*count". */
function runs(things) {
  const found = [];
  for (const thing of things) {
    const last = found.at(-1);
    if (last?.thing === thing) last.count++;
    else found.push({ thing, count: 1 });
  }
  return found.map(({ thing, count }) => (count === 1 ? thing : `${thing}*${count}`)).join(' ');
}

/** Cut at spaces into lines, as the source of a string that they add up to. */
function source(text) {
  const lines = [''];
  for (const word of text.split(' ')) {
    if (lines.at(-1).length + word.length > 112) lines.push('');
    lines[lines.length - 1] += `${word} `;
  }
  return lines.map((line, i) => `'${i === lines.length - 1 ? line.trimEnd() : line}'`).join(' +\n  ');
}

/**
 * The table's source.
 * @param {Record<string, import('../src/handout/pdf/fontFile').FontFile>} fonts by face
 */
export function tableSource(fonts) {
  const all = Object.values(fonts);
  const codes = [...all[0].glyphs.keys()]
    .filter((code) => isWanted(code) && all.every(({ glyphs }) => glyphs.has(code)))
    .sort((a, b) => a - b);
  const ranges = [];
  for (const code of codes) {
    const last = ranges.at(-1);
    if (last?.[1] === code - 1) last[1] = code;
    else ranges.push([code, code]);
  }
  const hex = (code) => code.toString(16);
  const faces = Object.entries(fonts).map(
    ([face, font]) =>
      `  ${face}:\n    ${source(runs(codes.map((code) => String(font.metric(font.glyphs.get(code)).advance)))).replaceAll('\n', '\n  ')},\n`,
  );
  return (
    '// Written by `npm run letters` from DejaVu Serif 2.37: not to be changed by hand.\n' +
    "import type { Face } from './face';\n\n" +
    '/** Widths are parts of this: font units in the type size. */\n' +
    `export const UNITS = ${all[0].unitsPerEm};\n\n` +
    '/** The letters that all three faces have, as ranges of code points (hexadecimal). */\n' +
    'export const LETTERS =\n  ' +
    `${source(ranges.map(([from, to]) => (from === to ? hex(from) : `${hex(from)}-${hex(to)}`)).join(' '))};\n\n` +
    '/** Their advance widths in that order; "614*3" is three times 614. */\n' +
    `export const WIDTHS: Readonly<Record<Face, string>> = {\n${faces.join('')}};\n`
  );
}

/** Reads the three faces from the package. */
export async function readFaces() {
  const { readFontFile } = (await runnerImport(join(top, 'src', 'handout', 'pdf', 'fontFile.ts'))).module;
  const { FACE_FILES } = (await runnerImport(join(top, 'src', 'handout', 'letters', 'face.ts'))).module;
  const folder = join(top, 'node_modules', 'dejavu-fonts-ttf', 'ttf');
  return Object.fromEntries(
    Object.entries(FACE_FILES).map(([face, file]) => [face, readFontFile(readFileSync(join(folder, file)))]),
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(target, tableSource(await readFaces()));
}

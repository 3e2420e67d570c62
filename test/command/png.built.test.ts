import { copyFileSync, cpSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { decode, type DecodedPng } from 'fast-png';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pngSize, textWidth } from '../../src/handout';
import { itemsOf } from '../../src/handout/pdf/walk';
import { bodyElements, fileDrawing } from '../../src/renderer';
import { planSample, sampleFile } from '../samples/sample';
import { COMMAND, edgewise, edgewiseBytes } from './runner';

const HEEL_FLAP = sampleFile('heel-flap');
const changed = (fields: object) =>
  JSON.stringify({ ...(JSON.parse(readFileSync(HEEL_FLAP, 'utf8')) as object), ...fields });

let folder = '';
beforeAll(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'edgewise-')));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const read = (png: Uint8Array) => decode(png, { checkCrc: true });

/** How bright a dot is, 0 for black to 255; every dot of a picture must be opaque. */
function brightness({ width, data, channels }: DecodedPng, x: number, y: number): number {
  const at = (y * width + x) * channels;
  if (channels === 4 && data[at + 3] !== 255) throw new Error(`The dot at ${x}, ${y} can be seen through.`);
  return (data[at]! + data[at + 1]! + data[at + 2]!) / 3;
}

/** The first and the last column with dots darker than half, of the part of a picture between four edges. */
function inkAcross(picture: DecodedPng, edges: { left: number; right: number; top: number; bottom: number }) {
  const columns: number[] = [];
  for (let x = Math.floor(edges.left); x <= edges.right; x++) {
    let dark = false;
    for (let y = Math.floor(edges.top); y <= edges.bottom; y++) dark ||= brightness(picture, x, y) < 160;
    if (dark) columns.push(x);
  }
  return { count: columns.length, first: columns[0] ?? NaN, last: columns.at(-1) ?? NaN };
}

describe('plan as png', () => {
  it('is the drawing on white in so many dots, in true size, its texts set in the letters beside the command', () => {
    const words = ['plan', HEEL_FLAP, '--as', 'png', '--resolution', '150'];
    const { status, out, err } = edgewiseBytes(words);
    expect([status, err]).toEqual([0, '']);
    const picture = read(out);
    const drawing = fileDrawing(planSample('heel-flap'), 0);
    const { width, height, resolution } = picture;
    expect({ width, height }).toEqual(pngSize(drawing, 150));
    // Dots to the metre: 150 / 0.0254.
    expect(resolution).toEqual({ x: 5906, y: 5906, unit: 1 });
    expect([0, width - 1].map((x) => [0, height - 1].map((y) => brightness(picture, x, y)))).toEqual([
      [255, 255],
      [255, 255],
    ]);

    // The name of the piece is as wide as those letters make it: in no other face is it.
    const name = [...itemsOf(bodyElements(drawing))].find(
      (item) => item.kind === 'text' && item.style.anchor === 'middle' && item.text === 'Heel flap',
    );
    if (name?.kind !== 'text') throw new Error('The piece has no name.');
    const { size } = name.style;
    const dots = 150 / 25.4;
    const wide = textWidth(name.text, size, 'regular') * dots;
    const [middle, foot] = [(name.x + name.matrix[4]) * dots, (name.y + name.matrix[5]) * dots];
    const around = { left: middle - wide, right: middle + wide, top: foot - size * 0.75 * dots, bottom: foot };
    const ink = inkAcross(picture, around);
    expect(ink.count).toBeGreaterThan(wide / 2);
    const inked = ink.last + 1 - ink.first;
    // The white beside the first and the last letter belongs to the width.
    expect(inked).toBeLessThanOrEqual(wide);
    expect(inked).toBeGreaterThan(0.96 * wide);
    expect(Math.abs((ink.first + ink.last) / 2 - middle)).toBeLessThan(0.03 * wide);
  });

  it('are files with --pages, one for each, and nothing on standard output', () => {
    const handout = { paper: 'Letter', diagram: 'fitted', blocks: ['title', 'diagram', 'needle', 'instructions'] };
    const file = join(folder, 'handout.png');
    const words = ['plan', '-', '--as', 'png', '--pages', '--resolution', '72', '--paper', 'A4', '--out', file];
    const { status, out, err } = edgewiseBytes(words, changed({ handout }));
    expect([status, out.length, err]).toEqual([0, 0, '']);
    const names = readdirSync(folder);
    expect(names.length).toBeGreaterThan(0);
    expect(names.sort()).toEqual(names.map((_, i) => `handout-${i + 1}.png`));
    for (const name of names) {
      const page = read(readFileSync(join(folder, name)));
      expect([page.width, page.height]).toEqual([595, 842]);
      // Its foot names the design at the left margin.
      const foot = inkAcross(page, { left: 0, right: 594, top: 760, bottom: 841 });
      expect(foot.count).toBeGreaterThan(30);
    }
  });
});

describe('what is refused', () => {
  it('letters that the picture lacks: one line, and nothing comes out', () => {
    const { status, out, err } = edgewise(['plan', '-', '--as', 'png'], changed({ name: 'Heel', pieces: renamed() }));
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(
      /^edgewise: the picture's letters lack "編" and "み"[^\n]*; save or print it from the page[^\n]*\n$/u,
    );
  });

  it('more dots than a picture may have: the most that it may have', () => {
    const words = ['plan', sampleFile('pullover'), '--as', 'png', '--resolution'];
    const { status, out, err } = edgewise([...words, '1200']);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^edgewise: at 1200 dots to the inch [^\n]*use --resolution \d{3} or less[^\n]*\n$/);
  });

  it('a command without what draws: one line that names the file and the mend', () => {
    const alone = join(mkdtempSync(join(folder, 'alone-')), 'edgewise.mjs');
    copyFileSync(COMMAND, alone);
    cpSync(join(dirname(COMMAND), 'letters'), join(dirname(alone), 'letters'), { recursive: true });
    const { status, stdout, stderr } = spawnSync(process.execPath, [alone, 'plan', HEEL_FLAP, '--as', 'png'], {
      encoding: 'utf8',
    });
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(
      /^edgewise: what draws pictures is missing, [^\n]*resvg\.wasm: put its folder back[^\n]*\n$/,
    );
    expect(stderr).toContain(dirname(alone));
  });
});

it('what draws lies beside the command as it was made, with its licence', () => {
  const beside = (name: string) => readFileSync(join(dirname(COMMAND), 'pictures', name));
  const made = readFileSync(new URL('../../node_modules/@resvg/resvg-wasm/index_bg.wasm', import.meta.url));
  expect(beside('resvg.wasm').equals(made)).toBe(true);
  expect(beside('LICENSE').toString()).toContain('Mozilla Public License 2.0');
});

/** The pieces of the sample with a name in other letters. */
function renamed(): object[] {
  const { pieces } = JSON.parse(readFileSync(HEEL_FLAP, 'utf8')) as { pieces: object[] };
  return pieces.map((piece) => ({ ...piece, name: '編み' }));
}

import { copyFileSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileDrawing } from '../../src/renderer';
import { instructions, voiceOf } from '../../src/text';
import { readPdf, type ReadPage } from '../handout/pdf/reader';
import { planSample, sampleFile } from '../samples/sample';
import { COMMAND, edgewise, edgewiseBytes } from './runner';

const PULLOVER = sampleFile('pullover');
const changed = (fields: object) =>
  JSON.stringify({ ...(JSON.parse(readFileSync(PULLOVER, 'utf8')) as object), ...fields });

let folder = '';
beforeAll(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'edgewise-')));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** All that is written on a page, in one line. */
const wordsOf = ({ texts }: ReadPage) => texts.map(({ text }) => text).join(' ');

async function pagesOf(words: readonly string[], input = '') {
  const { status, out, err } = edgewiseBytes(words, input);
  expect([status, err]).toEqual([0, '']);
  return await readPdf(out);
}

describe('plan as pdf', () => {
  it.each(['heel-flap', 'pullover', 'strip'] as const)(
    'is the drawing alone, on one page of its size: %s',
    async (name) => {
      const { pages } = await pagesOf(['plan', sampleFile(name), '--as', 'pdf']);
      const drawing = fileDrawing(planSample(name), 0);
      expect(pages).toHaveLength(1);
      const [page] = pages;
      expect(Math.abs(page!.width - drawing.width)).toBeLessThan(0.01);
      expect(Math.abs(page!.height - drawing.height)).toBeLessThan(0.01);
      expect(page!.images).toBe(0);
      expect(page!.fonts.length).toBeGreaterThan(0);
      expect(page!.fonts.every(({ embedded }) => embedded)).toBe(true);
      expect(page!.texts.length).toBeGreaterThan(10);
    },
  );

  it('writes a whole file with --out, and nothing to standard output', async () => {
    const file = join(folder, 'neckband.pdf');
    const { status, out, err } = edgewiseBytes(['plan', PULLOVER, '--as', 'pdf', '--out', file]);
    expect([status, out.length, err]).toEqual([0, 0, '']);
    expect((await readPdf(new Uint8Array(readFileSync(file)))).pages).toHaveLength(1);
    expect(readdirSync(folder)).toEqual(['neckband.pdf']);
  });
});

describe('the pages of the handout', () => {
  const answer = planSample('pullover').pickups[0]!;

  it('are on A4 where nothing says otherwise, with the numbers of the plan', async () => {
    const { pages, info } = await pagesOf(['plan', PULLOVER, '--as', 'pdf', '--pages']);
    expect(pages.length).toBeGreaterThan(1);
    for (const { width, height, images } of pages) {
      expect([Math.round(width), Math.round(height), images]).toEqual([210, 297, 0]);
    }
    const all = pages.map(wordsOf).join(' ');
    expect(all).toContain(`Neckband: ${answer.target} stitches`);
    const [first] = instructions(answer, voiceOf(planSample('pullover').design));
    expect(all.replace(/\s+/g, ' ')).toContain(first!.slice(0, 40));
    expect(info.Title).toContain('Neckband');
  });

  it('are as the file has them, and the words of the command come first', async () => {
    const input = changed({ handout: { paper: 'Letter', note: 'Bring two needles', blocks: ['title', 'sections'] } });
    const kept = await pagesOf(['plan', '-', '--as', 'pdf', '--pages'], input);
    expect(kept.pages).toHaveLength(1);
    expect(kept.pages[0]!.width).toBeCloseTo(215.9, 1);
    expect(wordsOf(kept.pages[0]!)).toContain('Bring two needles');
    const words = ['--paper', 'A4', '--orientation', 'landscape', '--exercise'];
    const { pages } = await pagesOf(['plan', '-', '--as', 'pdf', '--pages', ...words], input);
    expect([Math.round(pages[0]!.width), Math.round(pages[0]!.height)]).toEqual([297, 210]);
    expect(wordsOf(pages[0]!)).toContain('Exercise');
    expect(wordsOf(pages[0]!)).not.toContain(`${answer.target} stitches`);
  });

  it('hold other gauges and practice strips', async () => {
    const handout = { blocks: ['gauges', 'strips'], gauges: [{ stitches: 18, rows: 24 }] };
    const { pages } = await pagesOf(['plan', '-', '--as', 'pdf', '--pages'], changed({ handout }));
    const all = pages.map(wordsOf).join(' ');
    expect(all).toContain('18 × 24');
    expect(all).toContain('24 rows, 10.0 cm');
  });

  it('hold the pick-up that is asked for', async () => {
    const { design } = planSample('vest');
    const last = design.pickups.at(-1)!;
    const words = ['plan', sampleFile('vest'), '--pickup', last.id, '--as', 'pdf', '--pages'];
    expect(wordsOf((await pagesOf(words)).pages[0]!)).toContain(last.name);
  });
});

describe('what is refused', () => {
  it('letters that the document lacks: one line, nothing comes out, what stood there stays', () => {
    const { status, out, err } = edgewise(['plan', '-', '--as', 'pdf', '--pages'], changed({ name: '編み' }));
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^edgewise: the PDF's letters lack "編" and "み".*; print from the page instead, [^\n]*\n$/u);
  });

  it('missing letters: one line that names the folder and the mend', () => {
    const alone = join(folder, 'alone.js');
    copyFileSync(COMMAND, alone);
    const { status, stdout, stderr } = spawnSync(process.execPath, [alone, 'plan', PULLOVER, '--as', 'pdf'], {
      encoding: 'utf8',
    });
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(
      /^edgewise: the letters of PDF documents and pictures are missing from [^\n]*letters.*: put the folder back[^\n]*\n$/u,
    );
    expect(stderr).toContain(folder);
  });
});

it('plan as html holds the counts of every pick-up', () => {
  const { status, out } = edgewise(['plan', sampleFile('vest'), '--as', 'html']);
  expect(status).toBe(0);
  expect(out).toMatch(/^<!doctype html>/);
  for (const { pickup, target } of planSample('vest').pickups)
    expect(out).toContain(`${pickup.name}: ${target} stitches`);
});

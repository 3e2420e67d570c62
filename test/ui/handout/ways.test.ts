import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { FACE_FILES, handoutPages } from '../../../src/handout';
import { handoutWork } from '../../../src/editor';
import { DEFAULT_HANDOUT, type Design } from '../../../src/piece';
import { HANDOUT, handoutWorkWords } from '../../../src/text';
import { Workbench } from '../../../src/ui';
import { copyInstructions, giveCsv, giveHtml, givePdf, givePng, giveText } from '../../../src/ui/handout/ways';
import { pngOf } from '../../../src/ui/handout/png';
import { readSample } from '../../samples/sample';

vi.mock('../../../src/handout/letters/urls', () => ({
  FACE_URLS: { regular: 'regular', bold: 'bold', italic: 'italic' },
}));

const folder = join(process.cwd(), 'node_modules', 'dejavu-fonts-ttf', 'ttf');

beforeEach(() => {
  vi.stubGlobal('fetch', (face: keyof typeof FACE_FILES) =>
    Promise.resolve(new Response(new Uint8Array(readFileSync(join(folder, FACE_FILES[face]))))),
  );
});

afterEach(() => vi.unstubAllGlobals());

const heel = (): Design => readSample('heel-flap').design;
const sheet = { title: 'Heel flap', version: 'sheet' as const };

function pagesOf(design: Design) {
  const { plan } = new Workbench(design, 'test');
  return handoutPages(
    handoutWork(plan, 0, { ...DEFAULT_HANDOUT, blocks: ['title', 'edges'] }, handoutWorkWords(design)),
  );
}

describe('the pages as a document', () => {
  it('are given as one PDF file, page by page', async () => {
    const give = vi.fn();
    const told: string[] = [];
    const said = await givePdf(pagesOf(heel()), sheet, give, new AbortController().signal, (done, of) =>
      told.push(`${done} of ${of}`),
    );
    expect(said).toBe('');
    expect(told).toEqual(['1 of 1']);
    expect(give).toHaveBeenCalledTimes(1);
    const [kind, data] = give.mock.calls[0] as [unknown, Blob];
    expect(kind).toEqual({ holds: 'handout', version: 'sheet', form: 'pdf' });
    expect(await data.slice(0, 5).text()).toBe('%PDF-');
  });

  it('are not given once they are cancelled, and that is said', async () => {
    const give = vi.fn();
    const asked = new AbortController();
    asked.abort();
    expect(await givePdf(pagesOf(heel()), sheet, give, asked.signal, () => undefined)).toBe(HANDOUT.cancelled);
    expect(give).not.toHaveBeenCalled();
  });

  it('are not given when they are cancelled after the last page either', async () => {
    const give = vi.fn();
    const asked = new AbortController();
    expect(await givePdf(pagesOf(heel()), sheet, give, asked.signal, () => asked.abort())).toBe(HANDOUT.cancelled);
    expect(give).not.toHaveBeenCalled();
  });

  it('are not given with letters that it lacks: they are named, and printing is offered', async () => {
    const give = vi.fn();
    const pages = pagesOf({ ...heel(), name: '手袋' });
    const said = await givePdf(pages, sheet, give, new AbortController().signal, () => undefined);
    expect(said).toContain('手');
    expect(said).toMatch(/print/i);
    expect(give).not.toHaveBeenCalled();
  });
});

describe('the drawing as a picture', () => {
  const size = { width: 300, height: 300 };

  it('is cancelled at once while the browser is at it, and nothing is given', async () => {
    const give = vi.fn();
    const begun = vi.fn(() => new Promise<void>(() => undefined));
    vi.stubGlobal(
      'Image',
      class {
        decode = begun;
      },
    );
    const asked = new AbortController();
    const said = givePng(new Workbench(heel(), 'test'), 150, give, asked.signal);
    await vi.waitFor(() => expect(begun).toHaveBeenCalledTimes(1));
    asked.abort();
    expect(await said).toBe(HANDOUT.cancelled);
    expect(give).not.toHaveBeenCalled();
  });

  it('is not drawn once it is cancelled', async () => {
    const asked = new AbortController();
    vi.stubGlobal(
      'Image',
      class {
        decode = () => {
          asked.abort();
          return Promise.resolve();
        };
      },
    );
    await expect(pngOf('<svg/>', size, 300, asked.signal)).rejects.toMatchObject({ name: 'AbortError' });
  });
});

describe('the words', () => {
  it('are given as text, as a page of HTML and as a table of openings', async () => {
    const bench = new Workbench(heel(), 'test');
    const given = new Map<string, string>();
    const give = (kind: { readonly form: string }, data: string | Blob) =>
      void given.set(kind.form, typeof data === 'string' ? data : 'no text');
    for (const way of [giveText, giveHtml, giveCsv]) expect(await way(bench, give)).toBe('');
    expect([...given.keys()]).toEqual(['txt', 'html', 'csv']);
    expect(given.get('txt')).toContain(`pick up and knit ${bench.pickup!.picked} stitches`);
    expect(given.get('html')).toMatch(/^<!doctype html>/);
    expect(given.get('csv')!.split('\r\n')).toHaveLength(bench.pickup!.points.length + 2);
  });

  it('are copied as HTML and as plain text, or it is said why not', async () => {
    const bench = new Workbench(heel(), 'test');
    vi.stubGlobal(
      'ClipboardItem',
      class {
        constructor(readonly kinds: Record<string, Blob>) {}
      },
    );
    const write = vi.fn((_: readonly { readonly kinds: Record<string, Blob> }[]) => Promise.resolve());
    vi.stubGlobal('navigator', { clipboard: { write } });
    expect(await copyInstructions(bench)).toBe(HANDOUT.copied);
    const { kinds } = write.mock.calls[0]![0][0]!;
    expect(Object.keys(kinds)).toEqual(['text/html', 'text/plain']);
    expect(await kinds['text/html']!.text()).toContain('<h2>');
    vi.stubGlobal('navigator', { clipboard: { write: () => Promise.reject(new Error('no')) } });
    expect(await copyInstructions(bench)).toBe(HANDOUT.notCopied);
  });
});

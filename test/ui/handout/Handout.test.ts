import { fireEvent, render, screen } from '@testing-library/svelte';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { FACE_FILES } from '../../../src/handout';
import type { PdfOptions, writePdf } from '../../../src/handout/pdf/writePdf';
import { HANDOUT, pageDone } from '../../../src/text';
import { loadEditing, Workbench } from '../../../src/ui';
import Handout from '../../../src/ui/handout/Handout.svelte';
import { readSample } from '../../samples/sample';

vi.mock('../../../src/handout/letters/urls', () => ({
  FACE_URLS: { regular: 'regular', bold: 'bold', italic: 'italic' },
}));

/** Where the writer waits after each page until it may go on. */
const writer = vi.hoisted(() => ({ after: (): void | Promise<void> => undefined }));

vi.mock('../../../src/handout/pdf/writePdf', async (load) => {
  const real = await load<{ writePdf: typeof writePdf }>();
  return {
    writePdf: (pages: Parameters<typeof writePdf>[0], options: PdfOptions) =>
      real.writePdf(pages, {
        ...options,
        onPage: async (done, of) => {
          await options.onPage?.(done, of);
          await writer.after();
        },
      }),
  };
});

beforeAll(loadEditing);

/** A slow machine is given time. */
const PATIENCE = { timeout: 20_000 };

const folder = join(process.cwd(), 'node_modules', 'dejavu-fonts-ttf', 'ttf');
let fetched: () => Promise<void>;

beforeEach(() => {
  fetched = () => Promise.resolve();
  writer.after = () => undefined;
  vi.stubGlobal('fetch', async (face: keyof typeof FACE_FILES) => {
    await fetched();
    return new Response(new Uint8Array(readFileSync(join(folder, FACE_FILES[face]))));
  });
  vi.stubGlobal(
    'FontFace',
    class {
      load = () => Promise.resolve(this);
    },
  );
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  Object.defineProperty(document, 'fonts', { value: new Set(), configurable: true });
});

afterEach(() => vi.unstubAllGlobals());

function shown() {
  const give = vi.fn();
  const { design } = readSample('heel-flap');
  render(Handout, { open: true, bench: new Workbench(design, 'test'), give });
  return give;
}

const button = (name: string) => screen.getByRole('button', { name, hidden: true });
const said = () => screen.queryByRole('alert', { hidden: true })?.textContent;
const shows = (words: string) => vi.waitFor(() => expect(screen.getByText(words)).toBeTruthy(), PATIENCE);

describe('a document under way', () => {
  it('is cancelled at once while the letters are on their way, and can be made afterwards', async () => {
    const waiting: (() => void)[] = [];
    fetched = () => new Promise((resolve) => waiting.push(resolve));
    const give = shown();
    button(HANDOUT.pdf).focus();
    await fireEvent.click(button(HANDOUT.pdf));
    await shows(HANDOUT.making);
    expect(document.activeElement).toBe(button(HANDOUT.cancel));
    await fireEvent.click(button(HANDOUT.cancel));
    await vi.waitFor(() => expect(said()).toBe(HANDOUT.cancelled), PATIENCE);
    expect(document.activeElement).toBe(button(HANDOUT.pdf));
    for (const arrive of waiting) arrive();
    await fireEvent.click(button(HANDOUT.pdf));
    await vi.waitFor(() => expect(give).toHaveBeenCalledTimes(1), PATIENCE);
  });

  it('tells of its pages, and is cancelled between them', async () => {
    let goOn = () => {};
    writer.after = () => new Promise((resolve) => (goOn = resolve));
    const give = shown();
    await fireEvent.click(button(HANDOUT.pdf));
    await shows(pageDone(1, 2));
    await fireEvent.click(button(HANDOUT.cancel));
    await vi.waitFor(() => expect(said()).toBe(HANDOUT.cancelled), PATIENCE);
    expect(button(HANDOUT.pdf)).toBeTruthy();
    goOn();
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(give).not.toHaveBeenCalled();
  });

  it('is not saved when the handout is closed before it is done', async () => {
    let goOn = () => {};
    writer.after = () => new Promise((resolve) => (goOn = resolve));
    const give = shown();
    await fireEvent.click(button(HANDOUT.pdf));
    await shows(pageDone(1, 2));
    await fireEvent.click(button(HANDOUT.close));
    goOn();
    await vi.waitFor(() => expect(said()).toBe(HANDOUT.cancelled), PATIENCE);
    expect(give).not.toHaveBeenCalled();
  });
});

import { describe, expect, it } from 'vitest';
import { FACES, type Face } from '../../../src/handout/letters/face';
import { textWidth } from '../../../src/handout/letters/width';
import { ForeignLettersError } from '../../../src/handout/pdf/foreign';
import type { Page } from '../../../src/handout/pdf/page';
import { writePdf, type PdfOptions } from '../../../src/handout/pdf/writePdf';
import { allFaces } from '../letters/fonts';
import { a4, group, path, text } from './elements';
import { readPdf, rgb } from './reader';

const fonts = allFaces();
const CREATED = new Date('2026-03-01T12:00:00Z');

const write = (pages: readonly Page[], more: Partial<PdfOptions> = {}) =>
  writePdf(pages, { title: 'Round-neck pullover', language: 'en', fonts, created: CREATED, ...more });

const read = async (...pages: Page[]) => readPdf(await write(pages));

const STYLES: Readonly<Record<Face, Record<string, string>>> = {
  regular: {},
  bold: { 'font-weight': 'bold' },
  italic: { 'font-style': 'italic' },
};

describe('pages', () => {
  it('are as many and exactly as large as asked for', async () => {
    const { pages } = await read(
      a4(),
      { width: 297, height: 210, elements: [] },
      { width: 215.9, height: 279.4, elements: [] },
      { width: 279.4, height: 215.9, elements: [] },
    );
    const sizes = [210, 297, 297, 210, 215.9, 279.4, 279.4, 215.9];
    expect(pages.length).toBe(4);
    for (const [i, size] of pages.flatMap(({ width, height }) => [width, height]).entries()) {
      expect(Math.abs(size - sizes[i]!)).toBeLessThan(0.001);
    }
  });

  it('are at least one', async () => {
    await expect(write([])).rejects.toThrow(RangeError);
  });
});

describe('the document', () => {
  it('says what it is, who made it, when, and in which language', async () => {
    const bytes = await write([a4()], { title: 'Шаль “½”' });
    const { info } = await readPdf(bytes);
    expect(info).toMatchObject({ Title: 'Шаль “½”', Creator: 'Edgewise', Language: 'en' });
    expect(info.CreationDate).toBe("D:20260301120000+00'00'");
  });

  it('is the same byte for byte for the same pages, and another for others', async () => {
    const page = a4(text('108', 20, 20), path('M20,40h100'));
    const [first, second] = [await write([page]), await write([page])];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
    const other = await write([a4(text('109', 20, 20), path('M20,40h100'))]);
    expect((await readPdf(other)).fingerprint).not.toBe((await readPdf(first)).fingerprint);
  });
});

describe('text', () => {
  const LINES = [
    'Pick up 108 (½ ¼ ⅜) – 4×5 → 2.5 cm',
    'Ελληνικά πλέξη ΐ',
    'Вязание Ёё Ґґ Її',
    'Größe, façade, Łódź, ăâîșț, Việt',
    'a b co‑op “q” Ω µ μ … ″',
    '(back\\slash) <angle> & [x]',
  ];
  const rows = LINES.map((line, i) => [line, 20 + 9 * i] as const);

  it('comes out as it was put in, in every face', async () => {
    const pages = FACES.map((face) => a4(group(STYLES[face], ...rows.map(([line, y]) => text(line, 15, y)))));
    const document = await read(...pages);
    for (const page of document.pages) expect(page.texts.map((one) => one.text)).toEqual(LINES);
  });

  it('has spaces that do not break', async () => {
    const { pages } = await read(a4(text('16\u00a0st', 20, 20)));
    // The reader gives every space as a plain one.
    expect(pages[0]!.texts.map((one) => one.text)).toEqual(['16 st']);
  });

  it('keeps two letters apart that look alike', async () => {
    const { pages } = await read(a4(text('\u00b5\u03bc \u0394\u2206', 20, 20)));
    expect(pages[0]!.texts.map((one) => one.text)).toEqual(['\u00b5\u03bc \u0394\u2206']);
  });

  it('stands where the page has it, as wide as the table of widths says', async () => {
    const placed = FACES.flatMap((face, f) =>
      rows.flatMap(([line, y], i) =>
        (['start', 'middle', 'end'] as const).map((anchor, j) => ({
          face,
          line: `${line} ${j}`,
          x: 105 + i,
          y: y + 80 * f + 3 * j - 10,
          anchor,
          size: 2.5,
        })),
      ),
    );
    const { pages } = await read(
      a4(
        ...placed.map(({ face, line, x, y, anchor, size }) =>
          text(line, x, y, { ...STYLES[face], 'text-anchor': anchor, 'font-size': size }),
        ),
      ),
    );
    expect(pages[0]!.texts.length).toBe(placed.length);
    for (const [i, { face, line, x, y, anchor, size }] of placed.entries()) {
      const found = pages[0]!.texts[i]!;
      const width = textWidth(line, size, face);
      const left = x - { start: 0, middle: width / 2, end: width }[anchor];
      expect(found.text).toBe(line);
      expect(Math.abs(found.x - left)).toBeLessThan(0.05);
      expect(Math.abs(found.y - y)).toBeLessThan(0.05);
      expect(Math.abs(found.width - width)).toBeLessThan(0.05);
      expect(Math.abs(found.size - size)).toBeLessThan(0.001);
    }
  });

  it('is as wide as the table says to a hundredth of a mm, however long the line', async () => {
    const line = 'Pick up and knit 108 stitches along the neck edge, from the left shoulder.';
    const { pages } = await read(a4(...FACES.map((face, i) => text(line, 5, 20 + 10 * i, STYLES[face]))));
    expect(pages[0]!.texts).toHaveLength(3);
    for (const [i, face] of FACES.entries()) {
      expect(Math.abs(pages[0]!.texts[i]!.width - textWidth(line, 4, face))).toBeLessThan(0.01);
    }
  });

  it('turns and moves with its groups', async () => {
    const inner = text('turned', 10, 20, { transform: 'rotate(-90 10 20)', 'text-anchor': 'middle' });
    const { pages } = await read(a4(group({ transform: 'translate(50 60)' }, group({ transform: 'scale(2)' }, inner))));
    const [found] = pages[0]!.texts;
    // The middle of the line is at 50 + 2·10 and 60 + 2·20; it runs upwards.
    expect(found!.angle).toBeCloseTo(-90, 3);
    expect(found!.size).toBeCloseTo(8, 3);
    expect(Math.abs(found!.x - 70)).toBeLessThan(0.01);
    expect(Math.abs(found!.y - (100 + textWidth('turned', 8, 'regular') / 2))).toBeLessThan(0.01);
  });

  it('has its colour, and leaves that of the paths alone', async () => {
    const box = path('M10,10h5v5h-5z', { fill: '#27506b' });
    const { pages } = await read(a4(box, text('red', 10, 40, { fill: '#a9351f' }), box));
    expect(pages[0]!.textColours).toEqual([rgb('#a9351f')]);
    expect(pages[0]!.paths.map(({ fill }) => fill)).toEqual([rgb('#27506b'), rgb('#27506b')]);
  });

  it('brings its letters along, and only the faces that are used', async () => {
    const { pages } = await read(a4(text('one', 10, 10), text('two', 10, 20, STYLES.italic)));
    expect(pages[0]!.fonts).toEqual([
      { name: 'EDGEWR+DejaVuSerif', embedded: true },
      { name: 'EDGEWI+DejaVuSerif-Italic', embedded: true },
    ]);
    const small = await write([a4(text('one', 10, 10))]);
    expect(small.length).toBeLessThan(8000);
  });

  it('is refused with the letters that the faces lack, and the texts that they stand in', async () => {
    const page = a4(text('Neckband', 10, 10), text('編み物', 10, 20), text('wool 🧶', 10, 30, STYLES.bold));
    const error = await write([page]).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(ForeignLettersError);
    expect((error as ForeignLettersError).problem).toEqual({
      kind: 'foreign-letters',
      letters: ['編', 'み', '物', '🧶'],
      texts: ['編み物', 'wool 🧶'],
    });
  });
});

describe('paths', () => {
  const near = (found: { left: number; top: number; right: number; bottom: number }, box: number[]) => {
    const sides = [found.left, found.top, found.right, found.bottom];
    for (const [i, side] of sides.entries()) expect(Math.abs(side - box[i]!)).toBeLessThan(0.02);
  };

  it('are vectors of the right size: a bar of 100 mm is 100.0 mm', async () => {
    const { pages } = await read(a4(path('M20,100h100v5h-100z', { fill: '#000' })));
    const [bar] = pages[0]!.paths;
    expect(Math.abs(bar!.right - bar!.left - 100)).toBeLessThan(0.001);
    near(bar!, [20, 100, 120, 105]);
    expect(pages[0]!.images).toBe(0);
  });

  it('lie where their groups put them, curves and arcs too', async () => {
    const circle = 'M5,10a5,5 0 1 0 10,0a5,5 0 1 0 -10,0z';
    const { pages } = await read(
      a4(
        path(circle),
        group({ transform: 'translate(100 50)' }, group({ transform: 'scale(-2 2)' }, path(circle))),
        group({ transform: 'matrix(0 1 -1 0 80 90)' }, path('M0,0l10,5')),
        // Control points at the height of 20: the curve itself reaches three quarters of it, the quadratic one half.
        path('M30,200C30,180 60,180 60,200'),
        path('M30,250Q45,230 60,250'),
      ),
    );
    const boxes = pages[0]!.paths;
    near(boxes[0]!, [5, 5, 15, 15]);
    near(boxes[1]!, [70, 60, 90, 80]);
    near(boxes[2]!, [75, 90, 80, 100]);
    near(boxes[3]!, [30, 185, 60, 200]);
    near(boxes[4]!, [30, 240, 60, 250]);
  });

  it('keep their colours, weights, ends, corners and dashes, and inherit them', async () => {
    const line = {
      ...{ fill: 'none', stroke: '#a9351f', 'stroke-width': 0.35, 'stroke-linecap': 'round' },
      ...{ 'stroke-linejoin': 'bevel', 'stroke-dasharray': '2 1' },
    };
    const { pages } = await read(
      a4(
        group(line, path('M10,10h50'), path('M10,20h50', { fill: '#f7f1e5', 'stroke-dasharray': 'none' })),
        group({ transform: 'scale(3)' }, path('M10,10h5', { stroke: 'black', 'stroke-width': 0.5, fill: 'none' })),
        path('M10,90h5v5z'),
      ),
    );
    const [dashed, both, scaled, filled] = pages[0]!.paths;
    expect(dashed).toMatchObject({ paint: 'stroke', stroke: rgb('#a9351f'), cap: 1, join: 2 });
    expect(dashed!.weight).toBeCloseTo(0.35, 4);
    expect(dashed!.dash.map((one) => Math.round(one * 1000) / 1000)).toEqual([2, 1]);
    expect(both).toMatchObject({ paint: 'both', fill: rgb('#f7f1e5'), stroke: rgb('#a9351f'), dash: [] });
    expect(scaled).toMatchObject({ paint: 'stroke', stroke: [0, 0, 0], cap: 0, join: 0, dash: [] });
    expect(scaled!.weight).toBeCloseTo(1.5, 4);
    expect(scaled!.miter).toBeCloseTo(4, 4);
    expect(filled).toMatchObject({ paint: 'fill', fill: [0, 0, 0] });
  });

  it('begin each page afresh', async () => {
    const line = path('M10,10h50', { stroke: '#27506b', 'stroke-width': 0.7, fill: 'none', 'stroke-dasharray': '3 2' });
    const plain = path('M10,10h50', { stroke: '#27506b', 'stroke-width': 0.7, fill: 'none' });
    const { pages } = await read(a4(line), a4(plain));
    expect(pages[1]!.paths).toHaveLength(1);
    expect(pages[1]!.paths[0]).toMatchObject({ stroke: rgb('#27506b'), dash: [] });
    expect(pages[1]!.paths[0]!.weight).toBeCloseTo(0.7, 4);
  });

  it.each([
    ['a pattern', path('M0,0h5', { fill: 'url(#knit)' })],
    ['an opacity', path('M0,0h5', { opacity: '0.5' })],
    ['a skew', group({ transform: 'skewX(10)' }, path('M0,0h5'))],
    ['broken data', path('M0,0h')],
  ])('are refused with %s', async (_, element) => {
    await expect(write([a4(element)])).rejects.toThrow(RangeError);
  });
});

describe('cancelling', () => {
  const pages = Array.from({ length: 4 }, (_, i) => a4(text(`page ${i + 1}`, 10, 10)));

  it('tells of each page when it is done', async () => {
    const told: string[] = [];
    await write(pages, { onPage: (done, of) => void told.push(`${done}/${of}`) });
    expect(told).toEqual(['1/4', '2/4', '3/4', '4/4']);
  });

  it('stops between pages, with the reason', async () => {
    const controller = new AbortController();
    const told: number[] = [];
    const work = write(pages, {
      signal: controller.signal,
      onPage: (done) => {
        told.push(done);
        if (done === 2) controller.abort(new Error('not wanted any more'));
      },
    });
    await expect(work).rejects.toThrow('not wanted any more');
    expect(told).toEqual([1, 2]);
  });

  it('lets others have their turn, so that they can cancel', async () => {
    const controller = new AbortController();
    setTimeout(() => controller.abort(), 0);
    const many = Array.from({ length: 50 }, () => pages[0]!);
    await expect(write(many, { signal: controller.signal })).rejects.toMatchObject({ name: 'AbortError' });
  });

  it('does nothing when it is cancelled beforehand', async () => {
    const signal = AbortSignal.abort();
    await expect(write([a4(path('not read'))], { signal })).rejects.toMatchObject({ name: 'AbortError' });
  });
});

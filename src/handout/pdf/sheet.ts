import { jsPDF } from 'jspdf';
import { textWidth } from '../letters/width';
import type { Lettering } from './lettering';
import { growth, type Matrix } from './matrix';
import type { Page } from './page';
import { drawPath, type Pen } from './path';
import { faceOf, type Style } from './style';
import { isStroked, type Item } from './walk';
import type { Face } from '../letters/face';

/** Points of 1/72 in to the mm. */
const POINTS = 72 / 25.4;
/** Digits after the point: a hundred-thousandth of a point in places, of one in the sines of a rotation. */
const PRECISION = 5;

/** What paints a path; the second one where rings in a path are holes by the even-odd rule. */
const PAINT = {
  stroke: ['stroke', 'stroke'],
  fill: ['fill', 'fillEvenOdd'],
  both: ['fillStroke', 'fillStrokeEvenOdd'],
} as const;

/** What the writer of documents tells of a font that it has just read, as far as it is put right here. */
interface NewFont {
  readonly font: {
    readonly fontName: string;
    readonly metadata: { readonly Unicode: { widths: unknown[] }; italicAngle: number; stemV: number };
  };
}

export interface About {
  readonly title: string;
  readonly language: 'en';
  readonly created: Date;
  readonly id: string;
}

/** A document that is being written: pages are begun, and items drawn on the last one. */
export class Sheet {
  readonly #doc: jsPDF;
  readonly #names = new Map<Face, string>();
  #height = 0;
  #isEmpty = true;
  /** What the page is set to, so that each setting is written only when it changes. */
  #set = new Map<string, string>();

  constructor(first: Page, lettering: ReadonlyMap<Face, Lettering>, about: About) {
    const doc = new jsPDF({
      unit: 'mm',
      ...shapeOf(first),
      compress: true,
      putOnlyUsedFonts: true,
      precision: PRECISION,
      floatPrecision: PRECISION,
    });
    this.#doc = doc;
    doc.setDocumentProperties({ title: about.title, creator: 'Edgewise' });
    doc.setLanguage(about.language);
    doc.setCreationDate(pdfDate(about.created));
    doc.setFileId(about.id);
    doc.internal.events.subscribe('addFont', ({ font }: NewFont) => {
      const own = [...lettering.values()].find(({ name }) => name === font.fontName);
      if (!own) return;
      // It would cut every width down to a whole thousandth of the size, and long lines would come out too short.
      font.metadata.Unicode.widths = [...own.letters.values()].flatMap(({ glyph, advance }) => [glyph, [advance]]);
      font.metadata.italicAngle = own.face === 'italic' ? -11 : 0;
      font.metadata.stemV = own.face === 'bold' ? 140 : 80;
    });
    for (const { face, name, bytes } of lettering.values()) {
      doc.addFileToVFS(`${face}.ttf`, binaryString(bytes));
      doc.addFont(`${face}.ttf`, name, 'normal');
      this.#names.set(face, name);
    }
  }

  /** Begins a page; the first one is there from the beginning. */
  begin(page: Page): void {
    const { format, orientation } = shapeOf(page);
    if (!this.#isEmpty) this.#doc.addPage(format, orientation);
    this.#isEmpty = false;
    this.#height = page.height;
    this.#set = new Map();
  }

  draw(item: Item): void {
    if (item.kind === 'path') this.#drawPath(item.d, item.style, item.matrix);
    else this.#drawText(item);
  }

  /** The whole document. */
  bytes(): Uint8Array {
    return new Uint8Array(this.#doc.output('arraybuffer'));
  }

  #drawPath(d: string, style: Style, matrix: Matrix): void {
    const doc = this.#doc;
    const { fill, stroke, evenOdd } = style;
    if (fill !== null) this.#change('fill', fill, () => doc.setFillColor(fill));
    const stroked = isStroked(style);
    if (stroked && stroke !== null) this.#setLine(stroke, style, growth(matrix));
    drawPath(d, penFor(doc, matrix));
    const paint = PAINT[fill === null ? 'stroke' : stroked ? 'both' : 'fill'][evenOdd ? 1 : 0];
    doc[paint]();
  }

  #setLine(stroke: string, style: Style, by: number): void {
    const doc = this.#doc;
    const { weight, cap, join, miterLimit, dash, dashFrom } = style;
    this.#change('stroke', stroke, () => doc.setDrawColor(stroke));
    this.#change('weight', String(weight * by), () => doc.setLineWidth(weight * by));
    this.#change('cap', cap, () => doc.setLineCap(cap));
    this.#change('join', join, () => doc.setLineJoin(join));
    // A limit is a plain number, which the writer takes for a length.
    this.#change('miter', String(miterLimit), () => doc.setLineMiterLimit(miterLimit / POINTS));
    const lengths = dash.map((one) => one * by);
    const solid = this.#set.get('dash') === undefined && dash.length === 0;
    if (!solid) {
      this.#change('dash', [...lengths, dashFrom * by].join(' '), () =>
        doc.setLineDashPattern(lengths, dash.length === 0 ? 0 : dashFrom * by),
      );
    }
  }

  #drawText({ text, x, y, style, matrix }: Extract<Item, { kind: 'text' }>): void {
    const doc = this.#doc;
    const face = faceOf(style);
    const { size, anchor, fill } = style;
    if (fill === null) return;
    const width = textWidth(text, size, face);
    const left = x - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
    const [a, b, c, d, e, f] = matrix;
    const by = growth(matrix);
    if (by === 0) return;
    doc.setFont(this.#names.get(face)!, 'normal');
    doc.setFontSize(size * by * POINTS);
    doc.setTextColor(fill);
    // Letters stand upright where y goes up, as it does in the document.
    const place = doc.Matrix(
      a / by,
      -b / by,
      -c / by,
      d / by,
      (a * left + c * y + e) * POINTS,
      (this.#height - (b * left + d * y + f)) * POINTS,
    );
    // Its place is all in the matrix: the height of the page is nought from below.
    doc.text(text, 0, this.#height, { angle: place });
    // The letters' colour is the page's fill from here on.
    this.#set.delete('fill');
  }

  #change(name: string, value: string, write: () => void): void {
    if (this.#set.get(name) === value) return;
    this.#set.set(name, value);
    write();
  }
}

function penFor(doc: jsPDF, [a, b, c, d, e, f]: Matrix): Pen {
  const X = (x: number, y: number) => a * x + c * y + e;
  const Y = (x: number, y: number) => b * x + d * y + f;
  return {
    moveTo: (x, y) => void doc.moveTo(X(x, y), Y(x, y)),
    lineTo: (x, y) => void doc.lineTo(X(x, y), Y(x, y)),
    curveTo: (x1, y1, x2, y2, x, y) => void doc.curveTo(X(x1, y1), Y(x1, y1), X(x2, y2), Y(x2, y2), X(x, y), Y(x, y)),
    close: () => void doc.close(),
  };
}

function shapeOf({ width, height }: Page): { format: [number, number]; orientation: 'landscape' | 'portrait' } {
  return { format: [width, height], orientation: width > height ? 'landscape' : 'portrait' };
}

/** A date as documents hold it, in universal time, so that it is the same in every zone. */
function pdfDate(date: Date): string {
  return `D:${date.toISOString().slice(0, 19).replace(/\D/g, '')}+00'00'`;
}

function binaryString(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 4096) text += String.fromCharCode(...bytes.subarray(i, i + 4096));
  return text;
}

import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

const MM = 25.4 / 72;

export interface ReadText {
  readonly text: string;
  /** Where its baseline begins, mm from the upper left corner. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Type size, mm; degrees to the right of level. */
  readonly size: number;
  readonly angle: number;
}

export interface ReadPath {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly paint: 'fill' | 'stroke' | 'both';
  readonly fill: readonly number[];
  readonly stroke: readonly number[];
  readonly weight: number;
  readonly cap: number;
  readonly join: number;
  readonly miter: number;
  readonly dash: readonly number[];
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  readonly paths: readonly ReadPath[];
  readonly textColours: readonly (readonly number[])[];
  readonly images: number;
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
}

type Font = { readonly name: string; readonly missingFile?: boolean; readonly data?: Uint8Array };

/** Reads a document with pdf.js, which is by others: all lengths in mm, y down. */
export async function readPdf(bytes: Uint8Array) {
  const task = getDocument({
    data: Uint8Array.from(bytes),
    verbosity: 0,
    fontExtraProperties: true,
    useSystemFonts: false,
  });
  try {
    const document = await task.promise;
    const pages: ReadPage[] = [];
    for (let i = 1; i <= document.numPages; i++) pages.push(await readPage(await document.getPage(i)));
    const { info } = await document.getMetadata();
    return { pages, info: info as Record<string, unknown>, fingerprint: document.fingerprints[0] };
  } finally {
    await task.destroy();
  }
}

type PageProxy = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

async function readPage(page: PageProxy): Promise<ReadPage> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const height = (top - bottom) * MM;
  const content = await page.getTextContent({ disableNormalization: true });
  const texts = content.items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a, b, , , e, f] = item.transform as number[];
    return {
      text: item.str,
      x: e! * MM,
      y: height - f! * MM,
      width: item.width * MM,
      size: Math.hypot(a!, b!) * MM,
      angle: (-Math.atan2(b!, a!) * 180) / Math.PI,
    };
  });
  return { width: (right - left) * MM, height, texts, ...(await readOperators(page, height)) };
}

/** A transform of the plane, as PDF writes it. */
type Place = readonly [number, number, number, number, number, number];

function within([a, b, c, d, e, f]: Place, [g, h, i, j, k, l]: Place): Place {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

async function readOperators(page: PageProxy, height: number) {
  const { fnArray, argsArray } = await page.getOperatorList();
  const fonts = new Map<string, Font>();
  const paths: ReadPath[] = [];
  const textColours: number[][] = [];
  let images = 0;
  let box: number[] = [];
  /** How what is drawn comes to lie on the page, and what to go back to. */
  let place: Place = [1, 0, 0, 1, 0, 0];
  const before: Place[] = [];
  const set = { fill: [0, 0, 0], stroke: [0, 0, 0], weight: 1, cap: 0, join: 0, miter: 10, dash: [] as number[] };
  const paint = (kind: ReadPath['paint']) => {
    const [a, b, c, d, e, f] = place;
    const [left = 0, bottom = 0, right = 0, top = 0] = box;
    const corners = [left, right].flatMap((x) =>
      [bottom, top].map((y) => [a * x + c * y + e, b * x + d * y + f] as const),
    );
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    paths.push({
      ...set,
      weight: set.weight * MM * Math.sqrt(Math.abs(a * d - b * c)),
      dash: set.dash.map((one) => one * MM),
      ...{ left: x0 * MM, right: x1 * MM, top: height - y1 * MM, bottom: height - y0 * MM },
      paint: kind,
    });
  };
  fnArray.forEach((fn, i) => {
    const args = argsArray[i] as unknown[];
    switch (fn) {
      case OPS.save:
        before.push(place);
        break;
      case OPS.restore:
        place = before.pop() ?? place;
        break;
      case OPS.transform:
        place = within(place, args as unknown as Place);
        break;
      case OPS.constructPath:
        box = boxOf(args[0] as number[], args[1] as number[]);
        break;
      case OPS.fill:
      case OPS.eoFill:
        paint('fill');
        break;
      case OPS.stroke:
        paint('stroke');
        break;
      case OPS.fillStroke:
      case OPS.eoFillStroke:
        paint('both');
        break;
      case OPS.setFillRGBColor:
        set.fill = Array.from(args as number[]);
        break;
      case OPS.setStrokeRGBColor:
        set.stroke = Array.from(args as number[]);
        break;
      case OPS.setLineWidth:
        set.weight = args[0] as number;
        break;
      case OPS.setLineCap:
        set.cap = args[0] as number;
        break;
      case OPS.setLineJoin:
        set.join = args[0] as number;
        break;
      case OPS.setMiterLimit:
        set.miter = args[0] as number;
        break;
      case OPS.setDash:
        set.dash = args[0] as number[];
        break;
      case OPS.setFont:
        fonts.set(args[0] as string, page.commonObjs.get(args[0] as string) as Font);
        break;
      case OPS.showText:
        textColours.push(set.fill);
        break;
      case OPS.paintImageXObject:
      case OPS.paintInlineImageXObject:
      case OPS.paintImageMaskXObject:
      case OPS.paintSolidColorImageMask:
      case OPS.paintFormXObjectBegin:
      case OPS.shadingFill:
        images++;
        break;
    }
  });
  const embedded = [...fonts.values()].map((font) => ({
    name: font.name,
    embedded: font.missingFile !== true && (font.data?.length ?? 0) > 0,
  }));
  return { paths, textColours, images, fonts: embedded };
}

/** The box round a path: pdf.js itself goes by control points, so the places where curves turn back are found here. */
function boxOf(kinds: readonly number[], numbers: readonly number[]): number[] {
  const box = [Infinity, Infinity, -Infinity, -Infinity] as [number, number, number, number];
  let at = 0;
  let [x, y] = [0, 0];
  const reach = (px: number, py: number) => {
    box[0] = Math.min(box[0], px);
    box[1] = Math.min(box[1], py);
    box[2] = Math.max(box[2], px);
    box[3] = Math.max(box[3], py);
  };
  for (const kind of kinds) {
    if (kind === OPS.closePath) continue;
    const [x1, y1, x2, y2, x3, y3] = numbers.slice(at, at + 6) as [number, number, number, number, number, number];
    if (kind === OPS.curveTo) {
      for (const t of [...turnsOf(x, x1, x2, x3), ...turnsOf(y, y1, y2, y3), 1]) {
        const u = 1 - t;
        const on = (a: number, b: number, c: number, d: number) =>
          u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
        reach(on(x, x1, x2, x3), on(y, y1, y2, y3));
      }
      [x, y] = [x3, y3];
      at += 6;
    } else if (kind === OPS.moveTo || kind === OPS.lineTo) {
      [x, y] = [x1, y1];
      reach(x, y);
      at += 2;
    } else if (kind === OPS.rectangle) {
      reach(x1, y1);
      reach(x1 + x2, y1 + y2);
      at += 4;
    } else throw new Error(`The reader of tests knows no step ${kind}.`);
  }
  return box;
}

/** Where within a cubic curve one of its coordinates turns back: the roots of its derivative between 0 and 1. */
function turnsOf(p0: number, p1: number, p2: number, p3: number): number[] {
  const [a, b, c] = [p3 - 3 * p2 + 3 * p1 - p0, 2 * (p2 - 2 * p1 + p0), p1 - p0];
  const root = Math.sqrt(b * b - 4 * a * c);
  const roots = Math.abs(a) < 1e-12 ? [-c / b] : [(-b + root) / (2 * a), (-b - root) / (2 * a)];
  return roots.filter((t) => t > 0 && t < 1);
}

/** "#a9351f" as three numbers to 255. */
export function rgb(colour: string): number[] {
  return [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16));
}

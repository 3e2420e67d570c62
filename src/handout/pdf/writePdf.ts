import type { Face } from '../letters/face';
import { letteringOf } from './lettering';
import type { Page } from './page';
import { Sheet } from './sheet';
import { itemsOf, type Item } from './walk';

export interface PdfOptions {
  readonly title: string;
  readonly language: 'en';
  /** The three font files (TrueType). */
  readonly fonts: Readonly<Record<Face, Uint8Array>>;
  /** When it was made: now where it is left out. With it, the same pages make the same bytes. */
  readonly created?: Date;
  readonly signal?: AbortSignal;
  /** Told after each page. */
  readonly onPage?: (done: number, of: number) => void | Promise<void>;
}

/** After this many paths and texts it looks whether it is still wanted. */
const BATCH = 200;
/** It lets others have their turn after so many ms, and after each page. */
const TURN = 40;

/**
 * Some pages as a PDF document: paths as vectors, texts as text in embedded letters, each page in its exact size.
 *
 * @throws ForeignLettersError when a text has letters that the handout's faces lack
 * @throws RangeError when there is no page, or an element that can't be drawn (see style.ts and walk.ts)
 * @throws the signal's reason when it is cancelled
 */
export async function writePdf(pages: readonly Page[], options: PdfOptions): Promise<Uint8Array> {
  const { signal, onPage } = options;
  const [first] = pages;
  if (!first) throw new RangeError('A document needs a page.');
  signal?.throwIfAborted();
  const drawn = pages.map(({ elements }) => [...itemsOf(elements)]);
  const created = options.created ?? new Date();
  const about = { title: options.title, language: options.language, created, id: idOf(options.title, created, drawn) };
  const sheet = new Sheet(first, letteringOf(drawn.flat(), options.fonts), about);
  let turn = Date.now();
  for (const [i, items] of drawn.entries()) {
    sheet.begin(pages[i]!);
    for (const [n, item] of items.entries()) {
      if (n % BATCH === BATCH - 1) {
        if (Date.now() - turn > TURN) {
          await others();
          turn = Date.now();
        }
        signal?.throwIfAborted();
      }
      sheet.draw(item);
    }
    await onPage?.(i + 1, pages.length);
    await others();
    turn = Date.now();
    signal?.throwIfAborted();
  }
  return sheet.bytes();
}

function others(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}

/** 32 hexadecimal figures that differ for different documents: four sums of Fowler, Noll and Vo (FNV-1a, 32 bits). */
function idOf(title: string, created: Date, drawn: readonly (readonly Item[])[]): string {
  const texts = drawn.flatMap((items) => items.map((item) => (item.kind === 'path' ? item.d : item.text)));
  const whole = [title, created.toISOString(), ...texts];
  return [0, 1, 2, 3]
    .map((salt) => {
      let sum = 0x811c9dc5 ^ salt;
      for (const text of whole) {
        // The ends of long paths tell them apart well enough.
        for (const letter of text.length > 80 ? text.slice(0, 40) + text.slice(-40) : text) {
          sum = Math.imul(sum ^ letter.codePointAt(0)!, 0x01000193);
        }
      }
      return (sum >>> 0).toString(16).padStart(8, '0');
    })
    .join('');
}

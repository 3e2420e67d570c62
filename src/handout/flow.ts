import type { DrawnElement } from '../renderer';
import { columnsOf, GUTTER, MARGIN, roomOn, type Size } from './paper';
import type { Strip } from './strip';

/** Room under what goes over all columns, mm. */
const UNDER = 5;
/** Sums of the same heights made in another order are the same. */
const SLACK = 1e-6;

/** A strip with the page on which it stands, the first being 0, and the place of its upper left corner there, mm. */
interface Placed {
  readonly strip: Strip;
  readonly page: number;
  readonly x: number;
  readonly y: number;
}

/** With this share of the room between blocks and paragraphs pages are still easy to read. */
const TIGHT = 0.7;

/**
 * Lays strips down the columns of as many pages as they take, in mm, a little closer where that saves a page. A strip goes on in the next column where the one
 * it stands in is full; strips that belong together (`withNext`) go together where a column can hold them. A strip that
 * goes over all columns ends those above it, and the columns begin anew under it.
 *
 * @returns what is drawn on each page; one page at least
 * @throws RangeError when a strip is higher than a page
 */
export function flow(strips: readonly Strip[], size: Size): DrawnElement[][] {
  const loose = laidOut(strips, size);
  const closer = strips.map((strip) => ({ ...strip, gap: strip.gap * TIGHT }));
  const tight = pagesOf(loose) > 1 ? laidOut(closer, size) : loose;
  const placed = pagesOf(tight) < pagesOf(loose) ? tight : loose;
  const pages = Array.from({ length: pagesOf(placed) }, (): DrawnElement[] => []);
  for (const { strip, page, x, y } of placed) pages[page]!.push(...strip.draw(x, y));
  return pages;
}

function pagesOf(placed: readonly Placed[]): number {
  return (placed.at(-1)?.page ?? 0) + 1;
}

function laidOut(strips: readonly Strip[], size: Size): readonly Placed[] {
  const { count, width } = columnsOf(size);
  const bottom = MARGIN.top + roomOn(size).height;
  const placed: Placed[] = [];
  let page = 0;
  /** Where the columns begin, and how far down each is filled. */
  let top: number = MARGIN.top;
  let column = 0;
  let y = top;
  let deepest = top;
  /** The head of the table that is under way. */
  let head: Strip | null = null;

  const newPage = () => {
    page += 1;
    [top, column, y, deepest] = [MARGIN.top, 0, MARGIN.top, MARGIN.top];
  };
  const newColumn = () => {
    if (column + 1 < count) {
      column += 1;
      y = top;
    } else newPage();
  };
  const put = (strip: Strip) => {
    if (strip.height > bottom - MARGIN.top + SLACK) {
      throw new RangeError(`A strip of ${strip.height} mm is higher than the page.`);
    }
    const from = y === top ? y : y + strip.gap;
    placed.push({ strip, page, x: MARGIN.side + column * (width + GUTTER), y: from });
    y = from + strip.height;
    deepest = Math.max(deepest, y);
  };

  for (let i = 0; i < strips.length;) {
    const together = groupAt(strips, i);
    i += together.length;
    const [first] = together;
    if (together.some(({ across }) => across)) {
      const startsHere = deepest === top && column === 0;
      const from = startsHere ? top : deepest + (first?.gap ?? 0);
      const fits = from + heightOf(together) <= bottom + SLACK;
      if (!fits && !(startsHere && top === MARGIN.top)) newPage();
      else if (!startsHere) [top, column, y] = [from, 0, from];
      for (const strip of together) put(strip);
      [top, column] = [deepest + UNDER, 0];
      [y, deepest] = [top, top];
      head = null;
      continue;
    }
    const needed = heightOf(together);
    const goesOn = head !== null && together.every(({ again }) => again === head);
    if (y !== top && y + (first?.gap ?? 0) + needed > bottom + SLACK) {
      newColumn();
      // What is left over under a picture may be too low for what comes.
      if (y + needed > bottom + SLACK && top !== MARGIN.top) newPage();
      if (goesOn && head) put(head);
    } else if (y === top && top !== MARGIN.top && y + needed > bottom + SLACK) {
      newPage();
    }
    for (const strip of together) {
      if (y !== top && y + strip.gap + strip.height > bottom + SLACK) newColumn();
      put(strip);
    }
    head = together.at(-1)?.again ?? null;
  }
  return placed;
}

/** The strip at `i` and those that must stand with it, as many as a page can be expected to hold. */
function groupAt(strips: readonly Strip[], i: number): readonly Strip[] {
  let end = i + 1;
  while (end < strips.length && strips[end - 1]!.withNext) end += 1;
  return strips.slice(i, end);
}

/** From the top of the first to the foot of the last, without the room over the first. */
export function heightOf(strips: readonly Strip[]): number {
  return strips.reduce((sum, { gap, height }, i) => sum + height + (i === 0 ? 0 : gap), 0);
}

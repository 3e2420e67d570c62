import { svgPathProperties } from 'svg-path-properties';
import { textWidth } from '../../src/handout';
import { faceOf } from '../../src/handout/pdf/style';
import type { Page } from '../../src/handout/pdf/page';
import { drawPath } from '../../src/handout/pdf/path';
import { growth, type Matrix } from '../../src/handout/pdf/matrix';
import { itemsOf, type Item } from '../../src/handout/pdf/walk';
import type { DrawnElement } from '../../src/renderer';

/** A place on a page, mm. */
export type Spot = readonly [x: number, y: number];

/** A text on a page with the corners of its ink: a level box, turned as its groups say. */
export interface TextBox {
  readonly text: string;
  readonly corners: readonly Spot[];
}

/** How far letters rise over their line and fall under it, as parts of the type size. */
const INK = { rise: 0.73, fall: 0.02 } as const;

const at = ([a, b, c, d, e, f]: Matrix, x: number, y: number): Spot => [a * x + c * y + e, b * x + d * y + f];

export const everyElement = (elements: readonly DrawnElement[]): DrawnElement[] =>
  elements.flatMap((element) => [element, ...everyElement(element.children)]);

export const textsOn = ({ elements }: Page): string[] =>
  [...itemsOf(elements)].flatMap((item) => (item.kind === 'text' ? [item.text] : []));

export function textBox(item: Extract<Item, { kind: 'text' }>): TextBox {
  const { text, x, y, style, matrix } = item;
  const width = textWidth(text, style.size, faceOf(style));
  const left = x - (style.anchor === 'middle' ? width / 2 : style.anchor === 'end' ? width : 0);
  const [upper, lower] = [y - INK.rise * style.size, y + INK.fall * style.size];
  return {
    text,
    corners: [
      at(matrix, left, upper),
      at(matrix, left + width, upper),
      at(matrix, left + width, lower),
      at(matrix, left, lower),
    ],
  };
}

/** Whether two convex shapes share more than a touch of `slack` mm, by looking for a line between them (SAT). */
export function overlapping(a: readonly Spot[], b: readonly Spot[], slack = 0.02): boolean {
  return [a, b].every((shape) =>
    shape.every(([x, y], i) => {
      const [nextX, nextY] = shape[(i + 1) % shape.length]!;
      const length = Math.hypot(nextX - x, nextY - y);
      if (length === 0) return true;
      const [nx, ny] = [(nextY - y) / length, (x - nextX) / length];
      const spanOf = (all: readonly Spot[]) => {
        const along = all.map(([px, py]) => px * nx + py * ny);
        return [Math.min(...along), Math.max(...along)] as const;
      };
      const [one, other] = [spanOf(a), spanOf(b)];
      return one[1] - slack > other[0] && other[1] - slack > one[0];
    }),
  );
}

/** Texts that lie on one another, by their words. */
export function overlapsOn({ elements }: Page): string[] {
  const boxes = [...itemsOf(elements)].flatMap((item) => (item.kind === 'text' ? [textBox(item)] : []));
  const sorted = boxes
    .map((box) => ({
      ...box,
      left: Math.min(...box.corners.map(([x]) => x)),
      right: Math.max(...box.corners.map(([x]) => x)),
    }))
    .sort((a, b) => a.left - b.left);
  const found: string[] = [];
  for (let i = 0; i < sorted.length; i++) {
    for (let j = i + 1; j < sorted.length && sorted[j]!.left < sorted[i]!.right; j++) {
      if (overlapping(sorted[i]!.corners, sorted[j]!.corners))
        found.push(`"${sorted[i]!.text}" and "${sorted[j]!.text}"`);
    }
  }
  return found;
}

/** What leaves the page, in words. */
export function beyond({ width, height, elements }: Page): string[] {
  const found: string[] = [];
  const inside = ([x, y]: Spot, room: number) => x >= room && y >= room && x <= width - room && y <= height - room;
  for (const item of itemsOf(elements)) {
    if (item.kind === 'text') {
      if (!textBox(item).corners.every((spot) => inside(spot, 0))) found.push(`"${item.text}"`);
      continue;
    }
    const room = item.style.stroke === null ? 0 : (item.style.weight * growth(item.matrix)) / 2;
    const spots: Spot[] = [];
    const take = (x: number, y: number) => void spots.push(at(item.matrix, x, y));
    // Control points reach at least as far as their curve.
    drawPath(item.d, {
      moveTo: take,
      lineTo: take,
      curveTo: (x1, y1, x2, y2, x, y) => {
        take(x1, y1);
        take(x2, y2);
        take(x, y);
      },
      close: () => undefined,
    });
    if (!spots.every((spot) => inside(spot, room))) found.push(item.d.slice(0, 60));
  }
  return found;
}

/** Ids that more than one element of a page has. */
export function doubledIds({ elements }: Page): string[] {
  const ids = everyElement(elements).flatMap(({ attributes }) => (attributes.id === undefined ? [] : [attributes.id]));
  return ids.filter((id, i) => ids.indexOf(id) !== i);
}

/** How long a path is, mm, by others' arithmetic. */
export const lengthOf = (d: string): number => new svgPathProperties(d).getTotalLength();

import { describe, expect, it } from 'vitest';
import { scaleToFit, type Box, type Drawing, type TextMark } from '../../src/renderer';
import { overlap } from '../../src/renderer/labels';
import { textWidth } from '../../src/renderer/width';
import { planSample, SAMPLES } from '../samples/sample';
import { dataOf, draw, marksOf } from './designs';

/** What a telephone and a desk have for the drawing, in sheet mm of 96 px to the inch. */
const ROOMS = {
  phone: { width: 103, height: 108, rulers: false },
  'small phone': { width: 95, height: 90, rulers: false },
  desk: { width: 210, height: 220, rulers: true },
} as const;

/** A name this near beside a marker's number would read as its name. */
const BESIDE = 1.6;

function inkOf({ text, size, anchor, rotate, x, y }: TextMark): Box {
  const width = textWidth(text, size);
  const height = size * 0.72;
  const left = anchor === 'middle' ? -width / 2 : anchor === 'end' ? -width : 0;
  return rotate === -90
    ? { x: x - height, y: y - left - width, width: height, height: width }
    : { x: x + left, y: y - height, width, height };
}

/** The tags that markers carry their counts in: `M x,y h w …`, a rounded rectangle from the left end of its top side. */
function tagsOf(drawing: Drawing): Box[] {
  return [...dataOf(drawing, 'running').matchAll(/M([\d.]+),([\d.]+)h([\d.]+)a([\d.]+),[^z]*z/gu)].map((found) => {
    const [x, y, straight, radius] = found.slice(1).map(Number) as [number, number, number, number];
    return { x: x - radius, y, width: straight + 2 * radius, height: 2 * radius };
  });
}

/** The lines of the markers, walked in steps of a tenth of a millimetre. */
function walkedLines(drawing: Drawing): [number, number][] {
  return [...dataOf(drawing, 'marker').matchAll(/M[^M]+/gu)].flatMap(([line]) => {
    const spots = [...line.matchAll(/(-?[\d.]+),(-?[\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const);
    return spots.slice(1).flatMap(([x1, y1], i) => {
      const [x0, y0] = spots[i]!;
      const steps = Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) * 10));
      return Array.from({ length: steps + 1 }, (_, k): [number, number] => [
        x0 + ((x1 - x0) * k) / steps,
        y0 + ((y1 - y0) * k) / steps,
      ]);
    });
  });
}

function grown({ x, y, width, height }: Box, by: number): Box {
  return { x: x - by, y, width: width + 2 * by, height };
}

/** Every label that lies on a marker's line or too near to its tag. */
function touching(drawing: Drawing): string[] {
  const tags = tagsOf(drawing);
  const line = walkedLines(drawing);
  return marksOf(drawing).flatMap((mark) => {
    if (mark.kind !== 'text' || mark.role === 'running-number') return [];
    const ink = inkOf(mark);
    const near = mark.role === 'edge-name' || mark.role === 'edge-size' ? BESIDE : 0;
    const crossed = line.some(([x, y]) => overlap(ink, { x, y, width: 0, height: 0 }));
    return crossed || tags.some((tag) => overlap(grown(ink, near), tag)) ? [mark.text] : [];
  });
}

function drawings(name: (typeof SAMPLES)[number], room: keyof typeof ROOMS): [string, Drawing][] {
  const plan = planSample(name);
  const { rulers } = ROOMS[room];
  return plan.pickups.flatMap((pickup, i) => {
    const drawn = [...new Set(pickup.edges.map(({ piece }) => piece.id))];
    const views = drawn.length > 1 ? [...drawn.map((id) => [id]), drawn] : [drawn];
    return views.map((pieces): [string, Drawing] => {
      const options = { pickup: i, pieces, rulers, dimensions: rulers, fabric: 'none', detail: 'shape' } as const;
      const scale = scaleToFit(plan, { ...options, words: { units: 'cm' } }, ROOMS[room]);
      return [`${pickup.pickup.id}, ${pieces.join(' and ')}`, draw(plan, { ...options, scale })];
    });
  });
}

describe.each(Object.keys(ROOMS) as (keyof typeof ROOMS)[])('on a %s', (room) => {
  it.each(SAMPLES)('no label meets a marker or its number: %s', (name) => {
    const found = drawings(name, room).map(([view, drawing]) => [view, touching(drawing)]);
    expect(found).toEqual(found.map(([view]) => [view, []]));
  });
});

it('would be found if one did', () => {
  const [[, drawing]] = drawings('pullover', 'phone') as [[string, Drawing]];
  const [tag] = tagsOf(drawing);
  const texts = marksOf(drawing).filter((mark) => mark.kind === 'text');
  expect(texts.filter(({ role }) => role === 'running-number').length).toBeGreaterThan(2);
  expect(tagsOf(drawing)).toHaveLength(texts.filter(({ role }) => role === 'running-number').length);
  expect(walkedLines(drawing).length).toBeGreaterThan(100);
  const name = texts.find(({ role }) => role === 'edge-name')!;
  const moved = { ...name, x: tag!.x - textWidth(name.text, name.size) / 2 - 0.5, y: tag!.y + 3 };
  const groups = [{ ...drawing.groups[0]!, groups: [], marks: [moved] }, ...drawing.groups];
  expect(touching({ ...drawing, groups })).toContain(name.text);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Drawing, TextMark } from '../../src/renderer';
import { boxAround, LabelBoard, overlap } from '../../src/renderer/labels';
import { numberStep } from '../../src/renderer/numbers';
import { textWidth } from '../../src/renderer/width';
import { planned } from '../pickup/planned';
import { around, curvedFront, draw, marksOf, neckband, planOf, square, textsOf, vFront } from './designs';

const board = () => new LabelBoard({ x: 0, y: 0, width: 100, height: 100 });

describe('the label board', () => {
  it('gives each label the first candidate that is free', () => {
    const labels = board();
    const [a, b] = [boxAround(50, 50, 10, 4), boxAround(55, 50, 10, 4)];
    const c = boxAround(70, 50, 10, 4);
    expect(labels.place([a])).toBe(a);
    expect(labels.place([b, c])).toBe(c);
    expect(labels.place([a, b])).toBeNull();
    expect(labels.placed).toEqual([a, c]);
  });

  it('keeps them off lines, however long', () => {
    const labels = board();
    labels.block(0, 0, 100, 100);
    expect(labels.isFree(boxAround(50, 50, 4, 4))).toBe(false);
    expect(labels.isFree(boxAround(50, 50, 4, 4), 'labels')).toBe(true);
    expect(labels.isFree(boxAround(50, 60, 4, 4))).toBe(true);
  });

  it('keeps them on the sheet', () => {
    expect(board().isFree(boxAround(1, 50, 4, 4))).toBe(false);
    expect(board().isFree(boxAround(2, 50, 4, 4))).toBe(true);
  });

  it('finds exactly the crossings that a fine walk along the line finds', () => {
    const number = fc.double({ min: 5, max: 95, noNaN: true });
    fc.assert(
      fc.property(number, number, number, number, number, number, (x0, y0, x1, y1, x, y) => {
        const labels = board();
        labels.block(x0, y0, x1, y1);
        const box = boxAround(x, y, 8, 4);
        const walked = Array.from({ length: 4001 }, (_, i) => i / 4000).some((t) => {
          const [px, py] = [x0 + (x1 - x0) * t, y0 + (y1 - y0) * t];
          return Math.abs(px - x) < 4 + 0.45 && Math.abs(py - y) < 2 + 0.45;
        });
        // A walk in steps may miss a corner that is only just cut, never the other way round.
        if (walked) expect(labels.isFree(box)).toBe(false);
        const wide = Array.from({ length: 4001 }, (_, i) => i / 4000).some((t) => {
          const [px, py] = [x0 + (x1 - x0) * t, y0 + (y1 - y0) * t];
          return Math.abs(px - x) < 4.5 && Math.abs(py - y) < 2.5;
        });
        if (!wide && onSheet(box)) expect(labels.isFree(box)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

function onSheet({ x, y, width, height }: Box): boolean {
  return x >= 0 && y >= 0 && x + width <= 100 && y + height <= 100;
}

/** The ink of a line of text, by the same widths but worked out from the mark itself. */
function inkOf(mark: TextMark): Box {
  const width = textWidth(mark.text, mark.size);
  const height = mark.size * 0.72;
  const left = mark.anchor === 'middle' ? -width / 2 : mark.anchor === 'end' ? -width : 0;
  // Turned by -90 degrees about its anchor, what lay above the baseline lies left of it.
  return mark.rotate === -90
    ? { x: mark.x - height, y: mark.y - left - width, width: height, height: width }
    : { x: mark.x + left, y: mark.y - height, width, height };
}

function firstOverlap(drawing: Drawing): string | null {
  const texts = marksOf(drawing).filter((mark) => mark.kind === 'text');
  const boxes = texts.map(inkOf);
  for (let i = 0; i < boxes.length; i++) {
    for (let j = i + 1; j < boxes.length; j++) {
      if (overlap(boxes[i]!, boxes[j]!)) return `"${texts[i]!.text}" and "${texts[j]!.text}"`;
    }
  }
  return null;
}

const gauge = fc.record({ stitches: fc.integer({ min: 10, max: 36 }), rows: fc.integer({ min: 14, max: 48 }) });
const sections = fc.record({
  by: fc.constantFrom('length', 'landmarks', 'both'),
  parts: fc.integer({ min: 2, max: 24 }),
  counts: fc.constant('exact'),
});
const half = fc.integer({ min: 6, max: 40 });
const depth = fc.integer({ min: 10, max: 90 });

const anyPlan = fc.oneof(
  fc
    .tuple(half, depth, gauge, sections)
    .map(([w, d, g, s]) =>
      planned(() => planOf(curvedFront(w, d, g), neckband(['neck-left', 'neck-front', 'neck-right'], { sections: s }))),
    ),
  fc
    .tuple(half, depth, gauge, sections, fc.constantFrom('left', 'right'))
    .map(([w, d, g, s, hand]) =>
      planned(() => planOf(vFront(w, d, g), neckband(['neck-left', 'neck-right'], { sections: s }), { hand })),
    ),
  fc
    .tuple(half, depth, gauge, sections)
    .map(([w, d, g, s]) =>
      planned(() =>
        planOf(
          square(w, d, {}, { gauge: g, name: 'A rather long name for a small square' }),
          around({ joined: true, sections: s }),
        ),
      ),
    ),
);

describe('labels of any drawing', () => {
  it('never overlap and never leave the sheet, at any scale', () => {
    const scale = fc.double({ min: 0.05, max: 2, noNaN: true });
    const options = fc.record({
      scale,
      detail: fc.constantFrom('shape' as const, 'stitches' as const),
      rulers: fc.boolean(),
      dimensions: fc.boolean(),
    });
    fc.assert(
      fc.property(anyPlan, options, (plan, chosen) => {
        fc.pre(plan !== null);
        const drawing = draw(plan, { fabric: 'none', windows: {}, ...chosen });
        expect(firstOverlap(drawing)).toBeNull();
        for (const mark of marksOf(drawing)) {
          if (mark.kind !== 'text') continue;
          const ink = inkOf(mark);
          expect(ink.x).toBeGreaterThanOrEqual(-0.1);
          expect(ink.y).toBeGreaterThanOrEqual(-0.1);
          expect(ink.x + ink.width).toBeLessThanOrEqual(drawing.width + 0.1);
          expect(ink.y + ink.height).toBeLessThanOrEqual(drawing.height + 0.1);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('would be found if they did overlap', () => {
    const drawing = draw(planOf(square(40, 60), around({}, ['right'])));
    const twice = { ...drawing, groups: [...drawing.groups, ...drawing.groups] };
    expect(firstOverlap(twice)).not.toBeNull();
  });

  it('thin out as the scale falls, the ends last', () => {
    const plan = planOf(square(80, 200), around({}, ['right']));
    const numbers = [1, 0.5, 0.25, 0.12].map((scale) => textsOf(draw(plan, { scale }), 'number').length);
    expect(numbers).toEqual([...numbers].sort((a, b) => b - a));
    expect(numbers.at(-1)).toBeLessThan(numbers[0]!);
    expect(textsOf(draw(plan, { scale: 0.12 }), 'end-number')).toHaveLength(2);
  });
});

describe('the step between numbers', () => {
  it('is ten where there is room, and a round number else', () => {
    expect(numberStep(100, 300)).toBe(10);
    expect(numberStep(100, 50)).toBe(20);
    expect(numberStep(500, 100)).toBe(50);
    expect(numberStep(800, 60)).toBe(200);
  });
});

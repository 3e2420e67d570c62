import { describe, expect, it } from 'vitest';
import { drawCloseUp } from '../../../src/handout';
import { sceneOf } from '../../../src/handout/closeups/draw';
import { drawLabel } from '../../../src/handout/closeups/sign';
import { piecesOf, pointOn } from '../../../src/handout/closeups/strand';
import type { DrawnElement } from '../../../src/renderer';
import { textWidth } from '../../../src/renderer/width';
import { CLOSE_UP_KINDS, type CloseUpKind } from '../../../src/text';
import { expectGolden } from '../../golden';
import type { Raw } from '../../pickup/builders';
import { around, planOf, square } from '../../renderer/designs';

function all(elements: readonly DrawnElement[]): DrawnElement[] {
  return elements.flatMap((one) => [one, ...all(one.children)]);
}

function written({ name, attributes, children, text = '' }: DrawnElement, depth = 1): string {
  const indent = '  '.repeat(depth);
  const list = Object.entries(attributes).map(([key, value]) => ` ${key}="${value}"`);
  if (children.length === 0) return `${indent}<${name}${list.join('')}>${text}</${name}>\n`;
  return `${indent}<${name}${list.join('')}>\n${children.map((one) => written(one, depth + 1)).join('')}${indent}</${name}>\n`;
}

function svg(kind: CloseUpKind, hand: 'right' | 'left'): string {
  const { width, height, elements } = drawCloseUp(kind, hand);
  const box = `width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="DejaVu Serif"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${box}>\n${elements.map((one) => written(one)).join('')}</svg>\n`;
}

describe.each(CLOSE_UP_KINDS)('the close-up %s', (kind) => {
  const { strands, marks, labels } = sceneOf(kind, 'right');

  it('is 60 by 45 mm, and of groups, paths and texts alone', () => {
    const { width, height, elements } = drawCloseUp(kind, 'right');
    expect([width, height]).toEqual([60, 45]);
    const list = all(elements);
    expect([...new Set(list.map(({ name }) => name))].sort()).toEqual(['g', 'path', 'text']);
    for (const { attributes } of list) {
      for (const name of ['id', 'clip-path', 'mask', 'filter', 'opacity']) expect(attributes).not.toHaveProperty(name);
      expect(Object.values(attributes).join()).not.toMatch(/NaN|undefined|url|e-/);
    }
  });

  it('stays inside its picture', () => {
    for (const [i, strand] of strands.entries()) {
      for (const piece of piecesOf(strand, i)) {
        const half = strand.kind === 'needle' ? 0 : piece.width / 2;
        for (const t of [0, 0.5, 1]) {
          const { x, y } = pointOn(piece, t);
          expect(x).toBeGreaterThanOrEqual(half);
          expect(x).toBeLessThanOrEqual(60 - half);
          expect(y).toBeGreaterThanOrEqual(half);
          expect(y).toBeLessThanOrEqual(45 - half);
        }
      }
    }
  });

  it('has its words beside the yarn and the needle, whichever hand works', () => {
    for (const { text, x, y, anchor } of labels) {
      const width = textWidth(text, 2.5);
      const left = anchor === 'start' ? x : x - width;
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + width).toBeLessThanOrEqual(60);
      for (const [i, strand] of strands.entries()) {
        for (const piece of piecesOf(strand, i)) {
          const reach = piece.width / 2 + 0.3;
          const { x: px, y: py } = pointOn(piece, 0.5);
          const inside = px > left - reach && px < left + width + reach && py > y - 2 - reach && py < y + 0.6 + reach;
          expect(inside, `${text} meets a strand at ${px}, ${py}`).toBe(false);
        }
      }
    }
  });

  it('mirrored is the left-handed one', () => {
    const left = sceneOf(kind, 'left');
    const hundredths = (value: number) => Math.round(value * 100) || 0;
    const spots = (list: readonly { x: number; y: number }[], side: (x: number) => number) =>
      list.map(({ x, y }) => [hundredths(side(x)), hundredths(y)]);
    expect(left.strands).toHaveLength(strands.length);
    left.strands.forEach(({ kind: body, places, widths }, i) => {
      expect([body, widths]).toEqual([strands[i]!.kind, strands[i]!.widths]);
      expect(spots(places, (x) => 60 - x)).toEqual(spots(strands[i]!.places, (x) => x));
      expect(places.map(({ z }) => z)).toEqual(strands[i]!.places.map(({ z }) => z));
    });
    expect(spots(left.marks, (x) => 60 - x)).toEqual(spots(marks, (x) => x));
    expect(left.marks.map(({ used }) => used)).toEqual(marks.map(({ used }) => used));
    expect(left.labels.map(({ text }) => text)).toEqual(labels.map(({ text }) => text));
    for (const label of left.labels) {
      expect(drawLabel(label).find(({ name }) => name === 'text')!.attributes).not.toHaveProperty('transform');
    }
  });

  it('has the sign of an opening where the needle is', () => {
    const needle = strands.find((strand) => strand.kind === 'needle')!;
    const near = (mark: { x: number; y: number }) =>
      Math.min(...needle.places.map(({ x, y }) => Math.hypot(x - mark.x, y - mark.y)));
    const nearest = Math.min(...marks.filter(({ used }) => used).map(near));
    expect(nearest).toBeLessThan(marks[0]!.live ? 3.5 : 0.7);
  });
});

/** How far inside the side edge at x = 12 a plan's openings lie, in stitches. */
function insets(right: Raw, options: Parameters<typeof around>[0], second: boolean): number[] {
  const plan = planOf(square(12, 16, { right }), around(options, ['right']));
  const points = plan.pickups[0]!.points.filter((point) => point.second === second);
  return [...new Set(points.map(({ x }) => 12 - x))];
}

/** Otherwise a garter edge is picked up one to a ridge. */
const BY_LENGTH = [{ piece: 'square', edge: 'right', rate: { kind: 'length' } }];

describe('the sign lies as far inside the edge as the openings of a plan', () => {
  const cases: readonly (readonly [CloseUpKind, Raw, Parameters<typeof around>[0], boolean])[] = [
    ['selvage', {}, { inset: 1 }, false],
    ['selvage-half', {}, { inset: 0.5 }, false],
    ['selvage-strand', {}, { inset: 0 }, false],
    ['slope', {}, { inset: 1 }, false],
    ['garter-bump', { selvage: 'garter' }, { garterAt: 'bump' }, false],
    ['garter-between', { selvage: 'garter' }, { garterAt: 'inside' }, false],
    ['garter-hollow', { selvage: 'garter' }, { garterAt: 'inside', target: 14, rates: BY_LENGTH }, true],
    ['chain', { selvage: 'slipped' }, {}, false],
    ['chain-gap', { selvage: 'slipped' }, { target: 14 }, true],
  ];
  it.each(cases)('%s', (kind, edge, options, second) => {
    const wanted = insets(edge, options, second);
    expect(wanted).toHaveLength(1);
    const { marks } = sceneOf(kind, 'right');
    expect(marks.length).toBeGreaterThan(2);
    for (const mark of marks) {
      expect(mark.inset).toBeCloseTo(wanted[0]!, 9);
      expect(mark.second).toBe(second);
    }
  });
});

describe('close-ups stay as they are', () => {
  it.each(['bound-off', 'cast-on', 'selvage', 'slope', 'garter-bump', 'chain', 'step'] as const)('%s', (kind) => {
    expectGolden(`close-up-${kind}.svg`, svg(kind, 'right'));
  });

  it('left-handed', () => {
    expectGolden('close-up-live-left-handed.svg', svg('live', 'left'));
  });
});

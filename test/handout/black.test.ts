import { describe, expect, it } from 'vitest';
import { handoutPages } from '../../src/handout';
import { inBlack } from '../../src/handout/black';
import { itemsOf } from '../../src/handout/pdf/walk';
import { LIGHT, type DrawnElement } from '../../src/renderer';
import { planSample, SAMPLES } from '../samples/sample';
import { everyElement } from './onPage';
import { workOf } from './works';

/** What the fabric itself is drawn with: left out in black, where words could not be read over it. */
const CLOTH = new Set(['fabric', 'knit', 'purl', 'selvage', 'open']);

const shapes = (elements: readonly DrawnElement[]) =>
  everyElement(elements)
    .filter(({ name, attributes }) => name !== 'g' && !CLOTH.has(attributes.class ?? ''))
    .map(({ attributes: { d, x, y }, text }) => [d, x, y, text]);

describe('a handout in black alone', () => {
  it.each(SAMPLES.filter((name) => name !== 'blanket'))(
    '%s has nothing but ink and paper on it, and all but the fabric of what it has in colour',
    (name) => {
      const plan = planSample(name);
      const [black, colour] = (['black', 'colour'] as const).map((ink) =>
        handoutPages(workOf(plan, { ink, version: 'answers', gauges: [], blocks: ['diagram', 'needle', 'ruler'] })),
      );
      const elements = black!.flatMap((page) => everyElement(page.elements));
      const used = elements.flatMap(({ attributes: { fill, stroke } }) => [fill, stroke]);
      const paints = new Set(used.filter((one) => one !== undefined && one !== 'none'));
      expect([...paints].filter((one) => one !== LIGHT.ink && one !== '#ffffff')).toEqual([]);
      // What says nothing of its own is drawn as its group is, in the end.
      const drawn = black!
        .flatMap((page) => [...itemsOf(page.elements)])
        .flatMap(({ style: { fill, stroke } }) => [fill, stroke]);
      expect(drawn.filter((one) => one !== LIGHT.ink && one !== '#ffffff' && one !== null)).toEqual([]);
      expect(
        black!.flatMap((page) => everyElement(page.elements)).some(({ attributes }) => attributes.class === 'knit'),
      ).toBe(false);
      const whole = (pages: typeof black) => JSON.stringify(pages!.map((page) => shapes(page.elements)));
      expect(whole(black) === whole(colour)).toBe(true);
    },
  );

  it('tells picked places from skipped ones by their shape: one is filled, the other is not', () => {
    const pages = handoutPages(workOf(planSample('pullover'), { ink: 'black', blocks: ['diagram'] }));
    const looks = (role: string) =>
      pages
        .flatMap((page) => everyElement(page.elements))
        .filter(({ attributes }) => attributes.class === role)
        .map(({ attributes: { fill = 'none', stroke = 'none' } }) => `${fill} ${stroke}`);
    expect(new Set(looks('used'))).toEqual(new Set([`${LIGHT.ink} none`]));
    expect(new Set(looks('skipped'))).toEqual(new Set([`none ${LIGHT.ink}`]));
  });

  it('writes numbers on markers in white, so that they can be read', () => {
    const pages = handoutPages(workOf(planSample('vest'), { ink: 'black', blocks: ['diagram'] }));
    const all = pages.flatMap((page) => everyElement(page.elements));
    const on = all.filter(({ attributes }) => attributes.class === 'running-number');
    expect(on.length).toBeGreaterThan(0);
    for (const { attributes } of on) expect(attributes.fill).toBe('#ffffff');
    for (const { attributes } of all.filter((one) => one.attributes.class === 'running')) {
      expect(attributes.fill).toBe(LIGHT.ink);
    }
  });

  it('has no tint, and stitches in the thinnest of lines', () => {
    const path = (attributes: Record<string, string>): DrawnElement => ({ name: 'path', attributes, children: [] });
    const { attributes: fabric } = inBlack(path({ fill: LIGHT.fabric }));
    expect(fabric.fill).toBe('none');
    const { attributes: stitch } = inBlack(
      path({ fill: LIGHT.stitch, stroke: LIGHT.stitchLine, 'stroke-width': '0.2' }),
    );
    expect(stitch).toMatchObject({ fill: 'none', stroke: LIGHT.ink });
    expect(Number(stitch['stroke-width'])).toBeLessThan(0.1);
  });
});

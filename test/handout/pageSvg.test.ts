import { describe, expect, it } from 'vitest';
import { handoutWork } from '../../src/editor';
import { handoutPages, type Page } from '../../src/handout';
import { DEFAULT_HANDOUT, HANDOUT_BLOCKS, type Handout } from '../../src/piece';
import { writeElement } from '../../src/renderer';
import { handoutWorkWords } from '../../src/text';
import { allOf, foreignIn, readStrictXml, strokesOf } from '../renderer/strictXml';
import { planSample, type SampleName } from '../samples/sample';

const NASTY = 'a <b> & "c" \u0008 https://nowhere';

function pagesOf(name: SampleName, fields: Partial<Handout>): Page[] {
  const plan = planSample(name);
  const handout = { ...DEFAULT_HANDOUT, blocks: HANDOUT_BLOCKS, note: NASTY, ...fields };
  return handoutPages(handoutWork(plan, 0, handout, handoutWorkWords(plan.design)));
}

/** All pages in one file, as they stand in one document: their ids must not meet. */
function fileOf(pages: readonly Page[]): string {
  const children = pages.map(({ width, height, elements }) => ({
    name: 'svg' as const,
    attributes: { width: `${width}mm`, height: `${height}mm`, viewBox: `0 0 ${width} ${height}` },
    children: elements,
  }));
  return writeElement({ name: 'svg', attributes: { xmlns: 'http://www.w3.org/2000/svg' }, children });
}

const GAUGES = [{ stitches: 18, rows: 24, over: 100 }];

describe.each(['blanket', 'pullover', 'strip'] as const)('the pages of a handout as SVG: %s', (name) => {
  it.each([
    ['fitted', 'sheet'],
    ['true-size', 'answers'],
    ['fitted', 'exercise'],
  ] as const)(
    'are strict XML without anything foreign, ids of their own, named groups (%s, %s)',
    (diagram, version) => {
      const pages = pagesOf(name, { diagram, version, gauges: GAUGES });
      const root = readStrictXml(fileOf(pages));
      expect(foreignIn(root)).toEqual([]);
      const elements = allOf(root);
      const ids = elements.flatMap(({ attributes }) => attributes.id ?? []);
      expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
      for (const page of root.children)
        expect(page.children.map(({ attributes }) => attributes.class)).toEqual(['page']);
      expect(elements.some(({ text }) => text.includes('a <b> & "c"'))).toBe(true);
    },
  );

  it('show no chosen point in an exercise, and some in its answers', () => {
    const used = (version: Handout['version']) =>
      strokesOf(allOf(readStrictXml(fileOf(pagesOf(name, { version, blocks: ['diagram', 'strips'] })))), [
        'used',
        'used-second',
        'live',
        'stem',
      ]);
    expect(used('exercise')).toBe(0);
    expect(used('answers')).toBeGreaterThan(0);
  });
});

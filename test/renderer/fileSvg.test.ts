import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planDesign, type DesignPlan, type PickupPlan } from '../../src/pickup';
import { describeDrawing, fileSvg } from '../../src/renderer';
import { planned } from '../pickup/planned';
import { arbitraryDesign } from '../piece/arbitrary';
import { planSample, SAMPLES } from '../samples/sample';
import { allOf, foreignIn, readStrictXml, strokesOf, type XmlElement } from './strictXml';

const USED = ['used', 'used-second', 'live'];

/** Used points by edge, as the plan has them … */
function plannedUse({ edges, points }: PickupPlan): Record<string, number> {
  const keys = points.flatMap(({ n, edge }) => {
    const { stretch } = edges[edge]!;
    return n === null ? [] : [[`${stretch.piece} ${stretch.edge}`, 1] as const];
  });
  return summed(keys);
}

/** … and as the file shows them. */
function drawnUse(elements: readonly XmlElement[]): Record<string, number> {
  const edges = elements.filter(({ name, attributes }) => name === 'g' && attributes.class === 'edge');
  return summed(
    edges.flatMap(({ attributes, children }) => {
      const count = strokesOf(children, USED);
      return count === 0 ? [] : [[`${attributes['data-piece']} ${attributes['data-edge']}`, count] as const];
    }),
  );
}

function summed(counts: readonly (readonly [key: string, count: number])[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const [key, count] of counts) sums[key] = (sums[key] ?? 0) + count;
  return sums;
}

function expectClean(plan: DesignPlan, index: number): void {
  const root = readStrictXml(fileSvg(plan, index));
  const elements = allOf(root);
  expect(foreignIn(root)).toEqual([]);

  const ids = elements.flatMap(({ attributes }) => attributes.id ?? []);
  expect(new Set(ids).size).toBe(ids.length);
  const groups = elements.filter(({ name }) => name === 'g');
  expect(groups.filter(({ attributes }) => !attributes.class)).toEqual([]);
  for (const kind of ['piece', 'edge']) {
    const named = groups.filter(({ attributes }) => attributes.class === kind);
    expect(named.length).toBeGreaterThan(0);
    expect(named.every(({ attributes }) => attributes.id !== undefined && attributes['data-piece'] !== '')).toBe(true);
  }

  const [title, desc] = root.children;
  const told = describeDrawing(plan, index);
  expect([root.name, title!.name, desc!.name]).toEqual(['svg', 'title', 'desc']);
  expect(desc!.text).toContain(`${plan.pickups[index]!.picked} stitch`);
  expect(title!.text.length > 0).toBe(told.title.length > 0);
  expect(root.attributes['aria-labelledby']).toBe(`${title!.attributes.id} ${desc!.attributes.id}`);

  expect(strokesOf(elements, USED)).toBe(plan.pickups[index]!.picked);
  expect(drawnUse(elements)).toEqual(plannedUse(plan.pickups[index]!));
}

describe('a drawing as a file, read by another parser: strict, clean, named, and as many points as the plan', () => {
  it.each(SAMPLES)('%s', (name) => {
    const plan = planSample(name);
    plan.pickups.forEach((_, i) => expectClean(plan, i));
  });

  it('any design', () => {
    let drawn = 0;
    fc.assert(
      fc.property(arbitraryDesign, (design) => {
        const plan = planned(() => planDesign(design));
        plan?.pickups.forEach((_, i) => expectClean(plan, i));
        drawn += plan?.pickups.length ?? 0;
      }),
      { numRuns: 15 },
    );
    expect(drawn).toBeGreaterThan(10);
  });
});

describe('the parser', () => {
  it.each([
    ['an element left open', '<svg xmlns="http://www.w3.org/2000/svg"><g></svg>'],
    ['a bare &', '<svg xmlns="http://www.w3.org/2000/svg">a & b</svg>'],
    ['an attribute twice', '<svg xmlns="http://www.w3.org/2000/svg" a="1" a="2"/>'],
    ['no namespace', '<svg/>'],
  ])('refuses %s', (_, text) => {
    expect(() => readStrictXml(text)).toThrow();
  });

  it('finds what is not clean', () => {
    const root = readStrictXml(
      '<svg xmlns="http://www.w3.org/2000/svg"><script/><g onclick="x"/><path fill="url(#a)"/><g id="https://a.b"/></svg>',
    );
    expect(foreignIn(root)).toEqual(['script', 'onclick="x"', 'fill="url(#a)"', 'id="https://a.b"']);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handoutPages, pageSvg, type Work } from '../../src/handout';
import { MARGIN } from '../../src/handout/paper';
import type { Page } from '../../src/handout/pdf/page';
import { planDesign } from '../../src/pickup';
import { DEFAULT_HANDOUT, HANDOUT_BLOCKS, type Handout } from '../../src/piece';
import { tooManyTiles } from '../../src/text';
import { expectGolden } from '../golden';
import { planned } from '../pickup/planned';
import { arbitraryDesign } from '../piece/arbitrary';
import { planSample, SAMPLES } from '../samples/sample';
import { beyond, doubledIds, overlapsOn, textBox, textsOn } from './onPage';
import { text } from './pdf/elements';
import { itemsOf } from '../../src/handout/pdf/walk';
import { HARD, SETTINGS, workOf } from './works';

/** What is wrong with the pages of a handout, in words. Reading them refuses what no document can hold. */
function faultsOf(work: Work): string[] {
  const { paper, orientation } = work.handout;
  return handoutPages(work).flatMap((page, i) => {
    const [short, long] = paper === 'A4' ? [210, 297] : [215.9, 279.4];
    const isUpright = orientation === 'portrait';
    const sized = page.width === (isUpright ? short : long) && page.height === (isUpright ? long : short);
    return [
      ...(sized ? [] : ['size']),
      ...overlapsOn(page).map((words) => `overlap: ${words}`),
      ...beyond(page).map((what) => `beyond: ${what}`),
      ...doubledIds(page).map((id) => `twice: ${id}`),
    ].map((fault) => `page ${i + 1}, ${fault}`);
  });
}

describe('the pages of a handout', () => {
  describe.each(SAMPLES)('%s', (name) => {
    const plan = planSample(name);
    const settings = SETTINGS.map((fields, i) => ({ fields, i, ...fields }));

    it.each(settings)('$paper $orientation $diagram $version: nothing overlaps or leaves the page', ({ fields, i }) => {
      // The border of the blanket is long: its parts in true size are looked at once.
      const diagram = name === 'blanket' && i !== 3 ? 'fitted' : fields.diagram;
      expect(faultsOf(workOf(plan, { ...fields, diagram }, i % plan.pickups.length))).toEqual([]);
    });
  });

  it.each(Object.keys(HARD).map((name, i) => [name, i] as const))(
    'with %s: nothing overlaps or leaves the page',
    (name, i) => {
      const plan = HARD[name]!();
      expect(faultsOf(workOf(plan, { ...SETTINGS[i % SETTINGS.length], diagram: 'fitted' }))).toEqual([]);
      // Tables with all that is long in two columns.
      const narrow: Partial<Handout> = { paper: 'Letter', orientation: 'landscape', version: 'exercise' };
      expect(faultsOf(workOf(plan, { ...narrow, blocks: ['title', 'edges', 'gauges', 'sections'] }))).toEqual([]);
    },
  );

  it('of random pieces: nothing overlaps or leaves the page', () => {
    const settings = fc.tuple(fc.constantFrom(...SETTINGS), fc.shuffledSubarray([...HANDOUT_BLOCKS], { minLength: 4 }));
    const plans = arbitraryDesign
      .map((design) => planned(() => planDesign(design)))
      .filter((plan) => plan !== null && plan.pickups.length > 0);
    fc.assert(
      fc.property(plans, settings, (plan, [fields, blocks]) => {
        expect(faultsOf(workOf(plan!, { ...fields, blocks, diagram: 'fitted' }))).toEqual([]);
      }),
      { numRuns: 6 },
    );
  });

  it('would tell of texts that overlap, leave the page, and of ids that are there twice', () => {
    const page: Page = {
      width: 100,
      height: 100,
      elements: [text('one', 10, 20, { id: 'a' }), text('two', 12, 21, { id: 'a' }), text('far out', 98, 50)],
    };
    expect(overlapsOn(page)).toEqual(['"one" and "two"']);
    expect(beyond(page)).toEqual(['"far out"']);
    expect(doubledIds(page)).toEqual(['a']);
    const [turned] = itemsOf([text('level', 10, 20, { transform: 'rotate(-90 10 20)' })]);
    if (turned?.kind !== 'text') throw new Error('no text');
    expect(Math.min(...textBox(turned).corners.map(([, y]) => y))).toBeLessThan(15);
  });

  it('has no more on it than its blocks, in their order', () => {
    const plan = planSample('pullover');
    const order = (blocks: Handout['blocks']) =>
      handoutPages(workOf(plan, { blocks }))
        .flatMap(textsOn)
        .filter((words) => ['Edge by edge', 'Section by section', 'Where the needle goes', '100 mm'].includes(words));
    expect(order(['ruler', 'sections', 'edges'])).toEqual(['100 mm', 'Section by section', 'Edge by edge']);
    expect(order(['edges', 'ruler'])).toEqual(['Edge by edge', '100 mm']);
    expect(handoutPages(workOf(plan, { blocks: [] })).map(textsOn)).toEqual([[plan.design.name]]);
  });

  it('numbers its pages, and says the design at the foot of each', () => {
    const plan = planSample('vest');
    const pages = handoutPages(workOf(plan));
    expect(pages.length).toBeGreaterThan(1);
    pages.forEach((page, i) => {
      expect(textsOn(page).slice(-2)).toEqual([plan.design.name, `${i + 1} of ${pages.length}`]);
    });
  });

  it('refuses a pick-up that is not there', () => {
    expect(() => handoutPages({ ...workOf(planSample('strip')), pickup: 7 })).toThrow(RangeError);
  });
});

describe('on a page that lies on its side', () => {
  /** On which page what is said under the diagram stands, and how far from the left, mm. */
  const saidAt = (pages: readonly Page[]) =>
    pages.flatMap(({ elements }, page) =>
      [...itemsOf(elements)].flatMap((item) =>
        item.kind === 'text' && /^(Every ring|The diagram is drawn)/.test(item.text) ? [{ page, x: item.x }] : [],
      ),
    )[0];
  const blocks = ['title', 'diagram'] as const;
  const onItsSide: Partial<Handout> = { orientation: 'landscape', ink: 'black', blocks };

  it.each(SAMPLES)('the diagram of %s stands under its title, whatever that takes', (name) => {
    for (const version of ['sheet', 'exercise', 'answers'] as const) {
      for (const paper of ['A4', 'Letter'] as const) {
        const note = 'For the class of Tuesday and Thursday evening\nBring 4 needles and a crochet hook';
        const pages = handoutPages(workOf(planSample(name), { ...onItsSide, version, paper, note }));
        expect(saidAt(pages), `${version}, ${paper}`).toEqual({ page: 0, x: MARGIN.side });
      }
    }
  });

  it('the diagram goes on in the next column where too little of the first is left', () => {
    const note = Array.from({ length: 14 }, (_, i) => `Line ${i}`).join('\n');
    const { page, x } = saidAt(handoutPages(workOf(planSample('cardigan-front'), { ...onItsSide, note })))!;
    expect(page).toBe(0);
    expect(x).toBeGreaterThan(297 / 2);
  });

  it('the words of a close-up stand beside it where only one has room, or there is only one', () => {
    const at = (name: 'blanket' | 'heel-flap', paper: Handout['paper'], title: string) => {
      const [page] = handoutPages(workOf(planSample(name), { ...onItsSide, paper, blocks: ['needle'] }));
      return [...itemsOf(page!.elements)].find((item) => item.kind === 'text' && item.text === title);
    };
    const beside = { x: expect.closeTo(MARGIN.side + 66, 0) as number };
    expect(at('blanket', 'A4', 'Bound-off edge')).toMatchObject({ x: MARGIN.side });
    expect(at('blanket', 'Letter', 'Bound-off edge')).toMatchObject(beside);
    expect(at('heel-flap', 'A4', 'Slipped edge')).toMatchObject(beside);
  });
});

describe('a diagram in true size', () => {
  it('has pages of its own after the others, one for every part', () => {
    const plan = planSample('cardigan-front');
    const fitted = handoutPages(workOf(plan));
    const both = handoutPages(workOf(plan, { diagram: 'true-size' }));
    expect(both.length).toBeGreaterThan(fitted.length);
    for (const page of both.slice(fitted.length)) expect(textsOn(page)[0]).toMatch(/ in true size/);
    expect(handoutPages(workOf(plan, { diagram: 'true-size', blocks: ['edges'] }))).toHaveLength(1);
  });

  it('of a blanket of 5 m is fitted instead, and says so', () => {
    const plan = HARD['a blanket of 5 m']!();
    const pages = handoutPages(workOf(plan, { diagram: 'true-size', blocks: ['title', 'diagram'] }));
    expect(pages).toEqual(expect.arrayContaining([expect.objectContaining({ width: 210 })]));
    const said = pages.flatMap(textsOn).join(' ');
    const count = Number(/would take (\d+) pages/.exec(said)?.[1]);
    // 5 m each way, along the border only: at least its length over what a page shows.
    expect(count).toBeGreaterThan((4 * 5000) / 267);
    expect(said).toContain(tooManyTiles(count, 40));
    expect(said).not.toContain(', part A1');
  });
});

describe('pages stay as they are', () => {
  const goldens: Readonly<Record<string, () => Page[]>> = {
    'handout-pullover': () => handoutPages({ ...workOf(planSample('pullover')), handout: DEFAULT_HANDOUT }),
    'handout-exercise-in-black': () =>
      handoutPages(
        workOf(planSample('cardigan-front'), { version: 'exercise', ink: 'black', orientation: 'landscape', note: '' }),
      ),
  };

  it.each(Object.keys(goldens))('%s', (name) => {
    const pages = goldens[name]!();
    expectGolden(`${name}.svg`, pageSvg(pages[0]!, 0, pages.length));
  });
});

import { describe, expect, it } from 'vitest';
import { handoutPages, type Page, type Work } from '../../src/handout';
import { planDesign, type DesignPlan } from '../../src/pickup';
import type { Handout } from '../../src/piece';
import { edgeTitle, placesText, shownName, voiceOf, wantedText } from '../../src/text';
import { planSample, readSample, SAMPLES, type SampleName } from '../samples/sample';
import { everyElement, textsOn } from './onPage';
import { workOf } from './works';

type Fields = Partial<Handout>;

const pagesOf = (plan: DesignPlan, fields: Fields, pickup = 0): Page[] => handoutPages(workOf(plan, fields, pickup));
const wordsOf = (plan: DesignPlan, fields: Fields, pickup = 0) => pagesOf(plan, fields, pickup).flatMap(textsOn);
const elementsOf = (pages: readonly Page[]) => pages.flatMap(({ elements }) => everyElement(elements));

/** What is in one list and not in the other, as often as it is there more often. */
function without(list: readonly string[], other: readonly string[]): string[] {
  const left = [...other];
  return list.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** Path data of a role, of all pages. */
const drawnAs = (pages: readonly Page[], ...roles: string[]) =>
  elementsOf(pages)
    .filter(({ attributes }) => roles.includes(attributes.class ?? ''))
    .map(({ attributes }) => attributes.d ?? '')
    .join('');

const strokesIn = (d: string) => d.match(/M/g)?.length ?? 0;

/** Boxes to write into. */
const boxesOn = (pages: readonly Page[]) =>
  elementsOf(pages).filter(({ attributes: { d = '' } }) => /^M[\d.]+,[\d.]+h13v6h-13z$/.test(d)).length;

const every = SAMPLES.flatMap((name) => {
  const plan = planSample(name);
  return plan.pickups.map((made, pickup) => [`${name}, ${made.pickup.name}`, plan, pickup] as const);
});

describe.each(every)('the answers of %s', (_, plan, pickup) => {
  const made = plan.pickups[pickup]!;

  it('are the counts of the plan, each in the row of its edge', () => {
    const said = wordsOf(
      plan,
      { version: 'answers', blocks: ['edges'], paper: 'A4', orientation: 'landscape' },
      pickup,
    );
    const joined = said.join(' ');
    let from = 0;
    for (const edge of made.edges) {
      const wanted = edge.wanted === null ? '' : ` ${wantedText(edge.wanted)}`;
      const title = joined.indexOf(edgeTitle(edge.piece, edge.measured.edge).slice(0, 12), from);
      expect(title).toBeGreaterThanOrEqual(from);
      from = joined.indexOf(`${wanted} ${edge.count}`, title);
      expect(from, `${edge.measured.id}: ${edge.count}`).toBeGreaterThan(title);
    }
  });

  it('and nothing else are what the exercise leaves out of the table of edges', () => {
    const [answers, exercise] = (['answers', 'exercise'] as const).map((version) =>
      pagesOf(plan, { version, blocks: ['edges'] }, pickup),
    );
    const [told, asked] = [answers!.flatMap(textsOn), exercise!.flatMap(textsOn)];
    const total = made.edges.length > 1 ? [String(made.picked)] : [];
    const counts = made.edges.flatMap(({ count, wanted }) => [
      ...(wanted === null ? [] : [wantedText(wanted)]),
      String(count),
    ]);
    expect(without(told, asked).sort()).toEqual([...counts, ...total].sort());
    expect(without(asked, told)).toEqual([]);
    expect(boxesOn(answers!)).toBe(0);
    // Wanted and picked up on every edge, and the total.
    expect(boxesOn(exercise!)).toBe(2 * made.edges.length + total.length);
  });

  it('are the sections and their tally, which the exercise leaves out too', () => {
    const [answers, exercise] = (['answers', 'exercise'] as const).map((version) =>
      pagesOf(plan, { version, blocks: ['sections'] }, pickup),
    );
    const [told, asked] = [answers!.flatMap(textsOn), exercise!.flatMap(textsOn)];
    if (made.sections.length < 2) {
      expect(told).toEqual(asked);
      return;
    }
    const answered = without(told, asked);
    expect(
      without(
        made.sections.flatMap(({ count, running }) => [String(count), String(running)]),
        answered,
      ),
    ).toEqual([]);
    expect(without(asked, told)).toEqual([]);
    expect(boxesOn(exercise!)).toBe(2 * made.sections.length);
  });

  it('are drawn on the diagram, where the exercise has a ring for every opening and nothing else', () => {
    const [answers, exercise] = (['answers', 'exercise'] as const).map((version) =>
      handoutPages(openWork(plan, { version, blocks: ['diagram'], diagram: 'fitted' }, pickup)),
    );
    const first = (pages: readonly Page[]) => {
      // The first picture has all; what follows it are closer looks at parts of it.
      const [drawing] = elementsOf(pages).filter(({ attributes }) => attributes.class === 'printed-drawing');
      return [{ width: 1, height: 1, elements: [drawing!] }];
    };
    const used = ['used', 'used-second', 'live'];
    const rings = ['skipped', 'skipped-second'];
    expect(strokesIn(drawnAs(first(answers!), ...used))).toBe(made.picked);
    expect(strokesIn(drawnAs(first(exercise!), ...rings))).toBe(made.points.length);
    expect(drawnAs(exercise!, ...used, 'stem', 'marker', 'running', 'buttonhole')).toBe('');
    const numbers = elementsOf(exercise!).filter(({ attributes }) =>
      ['number', 'end-number', 'running-number'].includes(attributes.class ?? ''),
    );
    expect(numbers).toEqual([]);
  });
});

/** Work with nothing planned but its own plan. */
function openWork(plan: DesignPlan, fields: Fields, pickup: number): Work {
  return { ...workOf(plan, { ...fields, gauges: [] }, pickup), gauges: [], strips: [] };
}

/** The same sample with every edge at another rate, and so with other counts and openings. */
function otherwise(name: SampleName): DesignPlan {
  const { design } = readSample(name);
  return planDesign({
    ...design,
    pickups: design.pickups.map((pickup) => ({
      ...pickup,
      target: null,
      rates: pickup.along.map(({ piece, edge }) => ({ piece, edge, rate: { kind: 'ratio', pick: 2, of: 5 } as const })),
    })),
  });
}

describe.each(SAMPLES)('the exercise of %s', (name) => {
  it('is the same whatever its answers are', () => {
    const [one, other] = [planSample(name), otherwise(name)];
    expect(other.pickups[0]!.picked).not.toBe(one.pickups[0]!.picked);
    const fields: Fields = { version: 'exercise', gauges: [] };
    const whole = (plan: DesignPlan) => JSON.stringify(pagesOf(plan, fields));
    expect(whole(other) === whole(one)).toBe(true);
    // The sheets of answers are not.
    const told: Fields = { ...fields, version: 'answers', blocks: ['edges'] };
    expect(pagesOf(other, told)).not.toEqual(pagesOf(one, told));
  });

  it('says where the stitches can be picked up, which is given, and no count in its title', () => {
    const plan = planSample(name);
    const [made] = plan.pickups;
    const words = wordsOf(plan, { version: 'exercise', blocks: ['title', 'edges', 'sum', 'band'] }).join(' ');
    for (const edge of made!.edges) {
      for (const word of placesText(made!, edge, voiceOf(plan.design).terms).split(' ')) expect(words).toContain(word);
    }
    expect(words).not.toContain(`${shownName(made!.pickup.name)}: `);
    expect(words).not.toContain('In all: ');
    expect(words).not.toContain('It is worked on');
  });
});

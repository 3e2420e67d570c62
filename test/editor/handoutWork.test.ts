import { describe, expect, expectTypeOf, it } from 'vitest';
import { handoutWork, type HandoutWork } from '../../src/editor';
import { handoutPages, type Work } from '../../src/handout';
import { DEFAULT_HANDOUT, type Handout } from '../../src/piece';
import { handoutWorkWords, noPlanAtText } from '../../src/text';
import { planSample, SAMPLES, type SampleName } from '../samples/sample';

const GAUGES = [
  { stitches: 18, rows: 24, over: 100 },
  { stitches: 4, rows: 4, over: 100 },
];

function workOf(name: SampleName, fields: Partial<Handout>): Work {
  const plan = planSample(name);
  return handoutWork(plan, 0, { ...DEFAULT_HANDOUT, ...fields }, handoutWorkWords(plan.design));
}

it('is what a handout is made from', () => {
  expectTypeOf<HandoutWork>().toExtend<Work>();
});

describe('the work of a handout', () => {
  it('has the plan, and neither gauges nor strips where none are printed', () => {
    expect(workOf('pullover', { gauges: GAUGES })).toMatchObject({ pickup: 0, gauges: [], strips: [] });
  });

  it('has every gauge with its plan or the reason why there is none', () => {
    const { gauges } = workOf('pullover', { gauges: GAUGES, blocks: ['gauges'] });
    expect(gauges.map(({ gauge }) => gauge)).toEqual(GAUGES);
    expect(gauges[0]!.plan!.picked).toBeGreaterThan(0);
    expect(gauges.every(({ plan, why }) => (plan === null) === (typeof why === 'string'))).toBe(true);
    expect(workOf('strip', { gauges: GAUGES, blocks: ['gauges'] }).gauges[0]).toMatchObject({
      plan: null,
      why: expect.stringContaining('has no gauge') as string,
    });
  });

  it('has a strip for each gauge, and three where none is named', () => {
    expect(workOf('pullover', { gauges: GAUGES, blocks: ['strips'] }).strips).toHaveLength(2);
    expect(workOf('pullover', { blocks: ['strips'] }).strips).toHaveLength(3);
  });

  it.each(SAMPLES)('makes pages of all blocks: %s', (name) => {
    expect(handoutPages(workOf(name, { gauges: GAUGES, blocks: ['gauges', 'strips'] })).length).toBeGreaterThan(0);
  });

  it('refuses a pick-up that is not there', () => {
    const plan = planSample('strip');
    expect(() => handoutWork(plan, 1, DEFAULT_HANDOUT, handoutWorkWords(plan.design))).toThrow(RangeError);
  });
});

describe('why there is no plan at a gauge', () => {
  const at = 'pieces[0]';
  it.each([
    [{ kind: 'no-gauge', piece: 'Strip' }, '"Strip" has no gauge, so no size to keep'],
    [{ kind: 'no-length', at, piece: 'front', edge: 'tip' }, 'too coarse: edge "tip" would vanish'],
    [
      { kind: 'crossing', at, piece: 'front', first: 'a', second: 'b', x: 1, y: 2 },
      'too coarse: "a" would run into "b"',
    ],
    [
      { kind: 'piece-too-big', at, piece: 'front', what: 'stitches', found: 2400, limit: 2000 },
      'too fine: more than 2000 stitches',
    ],
    [{ kind: 'gauge-bounds', at, what: 'rows', per10cm: 301, min: 4, max: 300 }, 'the band would have too many rows'],
    [{ kind: 'too-many-increases', from: 10, to: 30 }, "10 can't be made 30 in one row"],
    [{ kind: 'nothing-to-pick-up', pickup: 'Band' }, 'no place to pick up from'],
    [{ kind: 'not-symmetric', at, piece: 'front', edge: 'side' }, 'the outline does not fit its grid'],
  ] as const)('%j: %s', (fault, text) => {
    expect(noPlanAtText(fault)).toBe(text);
  });
});

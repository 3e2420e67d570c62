import { describe, expect, it } from 'vitest';
import { changed } from '../../src/editor';
import { planDesign } from '../../src/pickup';
import { rateKey, rateOptions } from '../../src/ui/rate';
import { mirrorImage } from '../../src/ui/twin';
import { readSample } from '../samples/sample';

const { design } = readSample('pullover');
const curve = { piece: 'front', edge: 'neck-curve-left' };
const edgeOf = (plan: ReturnType<typeof planDesign>, id: string) =>
  plan.pickups[0]!.edges.find(({ measured }) => measured.id === id)!;

describe('the rates of an edge', () => {
  it('are by length, one each and the plain ratios, each with what it gives', () => {
    const options = rateOptions(edgeOf(planDesign(design), 'neck-curve-left'));
    expect(options.map(({ value }) => value)).toEqual(['length', 'each', '3/4', '4/5', '2/3']);
    expect(options[2]!.text).toBe('3 of 4 gives 14, 2.8% short');
  });

  it('have the one that is set among them', () => {
    const rates = [
      { kind: 'count', count: 18 },
      { kind: 'ratio', pick: 7, of: 11 },
    ] as const;
    for (const rate of rates) {
      const plan = planDesign(changed(design, { kind: 'rate', pickup: 'neckband', edge: curve, rate }));
      const options = rateOptions(edgeOf(plan, 'neck-curve-left'));
      expect(options.at(-1)).toMatchObject({ value: rateKey(rate), rate });
    }
  });

  it('leave out the length where there is no gauge', () => {
    const strip = planDesign(readSample('strip').design);
    expect(rateOptions(strip.pickups[0]!.edges[0]!).map(({ value }) => value)).not.toContain('length');
  });
});

describe('the mirror image of an edge', () => {
  const [plan] = planDesign(design).pickups;
  it('is its twin on the same piece', () => {
    const left = plan!.edges.find(({ measured }) => measured.id === 'neck-curve-left')!;
    expect(mirrorImage(plan!, left)?.measured.id).toBe('neck-curve-right');
  });

  it('is none for an edge that mirrors itself', () => {
    const centre = plan!.edges.find(({ measured }) => measured.id === 'neck-center')!;
    expect(mirrorImage(plan!, centre)).toBeUndefined();
  });
});

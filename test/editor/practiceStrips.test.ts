import { describe, expect, it } from 'vitest';
import { practiceStrips, usualGauges } from '../../src/editor';
import { yarnWeights } from '../../src/pickup';
import { starterWords } from '../../src/text';

const words = starterWords('strip', { units: 'cm', terms: 'US', hand: 'right' });

describe('practice strips', () => {
  it('are as long as 10 cm, and picked up along by length', () => {
    const gauges = [
      { stitches: 20, rows: 28, over: 100 },
      { stitches: 18, rows: 25.4, over: 101.6 },
    ];
    const strips = practiceStrips(gauges, words);
    expect(strips.map(({ gauge }) => gauge)).toEqual(gauges);
    const edges = strips.map(({ plan }) => plan.pickups[0]!.edges[0]!);
    expect(edges.map(({ rows }) => rows)).toEqual([28, 25]);
    // 10 cm at 20 stitches to 10 cm; 25 rows of 4 mm, so 10 cm, at 18 to 4 in: 17.7.
    expect(edges.map(({ count }) => count)).toEqual([20, 18]);
    expect(edges.map(({ rate }) => rate.kind)).toEqual(['length', 'length']);
    expect(edges.map(({ measured }) => [measured.edge.path, measured.edge.selvage])).toEqual([
      ['straight', 'plain'],
      ['straight', 'plain'],
    ]);
    for (const { plan } of strips) expect(plan.pickups).toHaveLength(1);
  });

  it('have twelve rows where 10 cm hold fewer', () => {
    const [strip] = practiceStrips([{ stitches: 6, rows: 8, over: 100 }], words);
    expect(strip!.plan.pickups[0]!.edges[0]!.rows).toBe(12);
  });

  it('are there at the finest gauge', () => {
    const [strip] = practiceStrips([{ stitches: 200, rows: 300, over: 100 }], words);
    expect(strip!.plan.pickups[0]!.picked).toBe(200);
  });

  it('come at three usual gauges where none is named', () => {
    expect(practiceStrips([], words).map(({ gauge }) => gauge)).toEqual(usualGauges('cm'));
  });
});

// Craft Yarn Council, Standard Yarn Weight System: 2 fine, 3 light, 4 medium
// (https://www.craftyarncouncil.com/standards/yarn-weight-system).
it.each(['cm', 'in'] as const)('the usual gauges are those of fine, light and medium yarn (%s)', (units) => {
  const gauges = usualGauges(units);
  expect(gauges.map(yarnWeights).map((weights, i) => weights.includes(i + 2))).toEqual([true, true, true]);
  expect(new Set(gauges.map(({ rows }) => rows)).size).toBe(3);
  expect(gauges.every(({ over }) => over === (units === 'cm' ? 100 : 101.6))).toBe(true);
});

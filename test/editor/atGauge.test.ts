import { describe, expect, it } from 'vitest';
import { workAt } from '../../src/editor';
import { planDesign, type PickupPlan } from '../../src/pickup';
import type { Design, Pickup } from '../../src/piece';
import type { Gauge } from '../../src/units';
import { planSample, readSample, SAMPLES } from '../samples/sample';

const GAUGES: readonly Gauge[] = [
  { stitches: 18, rows: 24, over: 100 },
  { stitches: 27, rows: 38, over: 100 },
  { stitches: 20, rows: 28, over: 101.6 },
];

const { design } = readSample('pullover');

function planAt(design: Design, gauge: Gauge): PickupPlan {
  const { plan } = workAt(planDesign(design), 0, gauge);
  if (!plan) throw new Error('no plan');
  return plan;
}

const withPickup = (fields: Partial<Pickup>): Design => ({
  ...design,
  pickups: [{ ...design.pickups[0]!, ...fields }],
});

describe.each(GAUGES)('work at $stitches by $rows', (gauge) => {
  it.each(SAMPLES.filter((name) => name !== 'strip'))('%s keeps its size, edge by edge', (name) => {
    const plan = planSample(name);
    const here = plan.pickups[0]!;
    const there = workAt(plan, 0, gauge).plan!;
    expect(there.edges.map(({ stretch }) => stretch.edge)).toEqual(here.edges.map(({ stretch }) => stretch.edge));
    const [width, height] = [gauge.over / gauge.stitches, gauge.over / gauge.rows];
    there.edges.forEach((edge, i) => {
      const old = here.edges[i]!.piece.gauge!;
      const slack = width + height + old.over / old.stitches + old.over / old.rows;
      expect(Math.abs(edge.edgeMm! - here.edges[i]!.edgeMm!)).toBeLessThan(slack);
    });
    expect(there.edges.every(({ piece }) => piece.gauge === gauge)).toBe(true);
  });
});

describe('the band', () => {
  it('follows the piece where it has no gauge of its own', () => {
    const { gauge: _gauge, ...band } = design.pickups[0]!.band;
    expect(planAt(withPickup({ band }), GAUGES[0]!).bandGauge).toEqual(GAUGES[0]);
  });

  it('is scaled in proportion where it has one, and as deep as it was', () => {
    const old = design.pieces[0]!.gauge!;
    const gauge = { stitches: old.stitches * 1.1, rows: old.rows * 1.2, over: old.over };
    const to = { stitches: old.stitches * 2, rows: old.rows / 2, over: old.over };
    const plan = planAt(withPickup({ band: { ...design.pickups[0]!.band, gauge, rows: 10 } }), to);
    expect(plan.bandGauge!.stitches).toBeCloseTo(gauge.stitches * 2, 9);
    expect(plan.bandGauge!.rows).toBeCloseTo(gauge.rows / 2, 9);
    expect(plan.pickup.band.rows).toBe(5);
  });
});

it('counts what a knitter at that gauge would: length by stitches to the length', () => {
  const plan = planAt(design, GAUGES[0]!);
  for (const edge of plan.edges) {
    if (edge.rate.kind !== 'length') continue;
    const share = plan.bandGauge!.stitches / plan.bandGauge!.over;
    expect(edge.wanted).toBeCloseTo(edge.lengthMm! * share * (1 - plan.pickup.band.drawIn / 100), 9);
  }
  const { multiple, plus } = plan.pickup.band;
  expect((plan.target - plus) % multiple).toBe(0);
});

it('lets go of counts that belong to the old gauge', () => {
  const edge = { piece: 'front', edge: 'neck-curve-left' };
  const counted = withPickup({
    target: 83,
    rates: [{ ...edge, rate: { kind: 'count', count: 3 } }],
    stated: [{ ...edge, count: 3 }],
    statedRatios: [{ ...edge, pick: 3, of: 4 }],
    statedTotal: 83,
    statedSections: [41, 42],
    got: 80,
    buttonholes: { holes: 5, stitches: 2, from: 3, to: 3 },
  });
  expect(planAt(counted, GAUGES[1]!).edges.map(({ count }) => count)).toEqual(
    planAt(design, GAUGES[1]!).edges.map(({ count }) => count),
  );
  expect(planAt(counted, GAUGES[1]!)).toMatchObject({ stated: [], holes: null });
});

it('at its own gauge is the plan as it is', () => {
  const plan = planDesign(design);
  const there = workAt(plan, 0, design.pieces[0]!.gauge!).plan!;
  expect(there.edges.map(({ count }) => count)).toEqual(plan.pickups[0]!.edges.map(({ count }) => count));
});

it('is planned once for each gauge', () => {
  const plan = planDesign(design);
  const all = [...GAUGES, ...GAUGES].map((gauge) => workAt(plan, 0, { ...gauge }).plan);
  expect(all[0]).not.toBeNull();
  expect(all.slice(0, 3).map((one, i) => one === all[i + 3])).toEqual([true, true, true]);
});

describe('where there is none', () => {
  const whyOf = (design: Design, gauge: Gauge) => {
    const worked = workAt(planDesign(design), 0, gauge);
    return worked.plan ? null : worked.why;
  };

  it('says that a piece without a gauge has no size', () => {
    expect(whyOf(readSample('strip').design, GAUGES[0]!)).toMatchObject({ kind: 'no-gauge' });
  });

  it('says which edge is too short for the stitches', () => {
    const why = whyOf(design, { stitches: 4, rows: 4, over: 100 });
    expect(why).toMatchObject({ kind: 'no-length', piece: 'front', edge: 'underarm-left' });
  });

  it('says that the piece has more stitches than a piece may', () => {
    const pieces = design.pieces.map((piece) => ({ ...piece, gauge: { ...piece.gauge!, stitches: 4 } }));
    const { gauge: _gauge, ...band } = design.pickups[0]!.band;
    const why = whyOf({ ...withPickup({ band }), pieces }, { stitches: 200, rows: 30, over: 100 });
    expect(why).toMatchObject({ kind: 'piece-too-big', piece: 'front', what: 'stitches' });
  });

  it('says that the band would have a gauge that no knitting has', () => {
    const why = whyOf(readSample('heel-flap').design, { stitches: 4, rows: 4, over: 100 });
    expect(why).toMatchObject({ kind: 'gauge-bounds', what: 'rows' });
  });

  it('refuses a pick-up that is not there', () => {
    expect(() => workAt(planDesign(design), 7, GAUGES[0]!)).toThrow(RangeError);
  });
});

import { describe, expect, test } from 'vitest';
import { planDesign } from '../../src/pickup';
import { firstRowText, planDocument, TERMS, type EdgeDocument, type PointDocument } from '../../src/text';
import { along, design, rectangle } from '../pickup/builders';
import { planSample, SAMPLES } from '../samples/sample';

const EDGE_FIELDS = [
  'piece',
  'edge',
  'shape',
  'stitches',
  'rows',
  'edgeMm',
  'joinMm',
  'openings',
  'rate',
  'lengthMm',
  'wanted',
  'count',
  'stretch',
  'rhythm',
  'ratios',
] satisfies (keyof EdgeDocument)[];
const POINT_FIELDS = [
  'n',
  'piece',
  'edge',
  'opening',
  'used',
  'column',
  'row',
  'xMm',
  'yMm',
  'alongMm',
  'section',
] satisfies (keyof PointDocument)[];

describe.each(SAMPLES)('planDocument of the sample %s', (name) => {
  const plan = planSample(name);
  const document = planDocument(plan);

  test('has the fields of the format, and none that JSON cannot hold', () => {
    expect(document).toMatchObject({ format: 'edgewise-plan', version: 1, design: plan.design.name });
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    for (const pickup of document.pickups) {
      expect(Object.keys(pickup)).toEqual(
        expect.arrayContaining([
          'id',
          'name',
          'edges',
          'wanted',
          'target',
          'picked',
          'choices',
          'sections',
          'firstRow',
          'points',
          'stated',
          'band',
          'text',
          'notes',
        ]),
      );
      for (const edge of pickup.edges) expect(Object.keys(edge)).toEqual(expect.arrayContaining(EDGE_FIELDS));
      for (const point of pickup.points) expect(Object.keys(point)).toEqual(expect.arrayContaining(POINT_FIELDS));
      for (const section of pickup.sections) {
        expect(Object.keys(section)).toEqual(expect.arrayContaining(['n', 'lengthMm', 'count', 'running']));
      }
    }
  });

  test('numbers its points in working order, and its edges hold as many as they say', () => {
    for (const pickup of document.pickups) {
      const used = pickup.points.filter((point) => point.used);
      expect(used.map((point) => point.n)).toEqual(used.map((_, i) => i + 1));
      expect(used).toHaveLength(pickup.picked);
      expect(pickup.points.filter((point) => !point.used).every((point) => point.n === null)).toBe(true);
      expect(pickup.edges.reduce((sum, edge) => sum + edge.count, 0)).toBe(pickup.picked);
      for (const edge of pickup.edges) {
        const all = edge.rhythm.reduce((sum, run) => sum + run.times * (run.pick + run.skip), 0);
        expect(pickup.points.filter((point) => point.piece === edge.piece && point.edge === edge.edge)).toHaveLength(
          all,
        );
      }
      if (pickup.sections.length > 0) expect(pickup.sections.at(-1)!.running).toBe(pickup.picked);
    }
  });

  test('places its points in mm', () => {
    plan.pickups.forEach((made, i) => {
      made.points.forEach((point, k) => {
        const gauge = made.edges[point.edge]!.piece.gauge;
        const [width, height] = gauge ? [gauge.over / gauge.stitches, gauge.over / gauge.rows] : [4, 3];
        const shown = document.pickups[i]!.points[k]!;
        expect(shown.xMm / width).toBeCloseTo(point.x, 9);
        expect(shown.yMm / height).toBeCloseTo(point.y, 9);
      });
    });
  });
});

describe('planDocument', () => {
  test('keeps full precision', () => {
    const plan = planSample('pullover');
    const [made] = plan.pickups;
    const [pickup] = planDocument(plan).pickups;
    expect(pickup!.edges.map((edge) => edge.wanted)).toEqual(made!.edges.map((edge) => edge.wanted));
    expect(pickup!.edges.map((edge) => edge.stretch)).toEqual(made!.edges.map((edge) => edge.changed));
    expect(pickup!.wanted).toBe(made!.wanted);
  });

  test('gives no lengths on a piece without a gauge', () => {
    const [pickup] = planDocument(planSample('strip')).pickups;
    expect(pickup!.edges[0]).toMatchObject({ edgeMm: null, joinMm: null, lengthMm: null, wanted: null, stretch: null });
    expect(pickup!.sections.map((section) => section.lengthMm)).toEqual([null, null, null, null]);
  });

  test('lists what is stated: edges that are, then the total', () => {
    const fields = { stated: [{ piece: 'piece', edge: 'right', count: 16 }], statedTotal: 70 };
    const [pickup] = planDocument(planDesign(design(rectangle(30, 42), along(['right', 'top'], fields)))).pickups;
    expect(pickup!.stated).toMatchObject([
      { piece: 'piece', edge: 'right', count: 16, verdict: 'will pucker' },
      { piece: null, edge: null, count: 70, verdict: 'will ruffle' },
    ]);
    expect(pickup!.stated[0]!.stretch).toBeCloseTo(16 / 30 - 1, 12);
    expect(pickup!.stated[0]!.causes.join(' ')).not.toBe('');
  });

  test('writes the first row, and nothing where nothing changes', () => {
    const plan = planDesign(design(rectangle(30, 28), along(['right'], { target: 31, joined: true })));
    const [pickup] = planDocument(plan).pickups;
    expect(pickup!.firstRow.text).toBe(firstRowText(plan.pickups[0]!.firstRow));
    expect(pickup!.firstRow).toMatchObject({ from: 28, to: 31 });
    expect(pickup!.notes[0]).toMatchObject({ kind: 'too-few-openings' });
    expect(planDocument(planSample('blanket')).pickups[0]!.firstRow.text).toBe('');
  });

  test('has the free edge of the band and its corners', () => {
    const [pickup] = planDocument(planSample('blanket')).pickups;
    expect(pickup!.band).toMatchObject({ rows: 12, after: 544, tooDeep: false });
    expect(pickup!.band!.freeMm).toBeCloseTo(3400, 6);
    expect(pickup!.band!.freeStitches).toBeCloseTo(544, 6);
    expect(pickup!.band!.corners).toHaveLength(4);
    expect(pickup!.band!.corners[0]).toMatchObject({
      from: { piece: 'blanket', edge: 'bound-off' },
      to: { piece: 'blanket', edge: 'side-left' },
      kind: 'outer',
      seam: false,
      stitches: [112],
      times: 6,
      rows: [2, 4, 6, 8, 10, 12],
    });
    expect(pickup!.band!.corners[0]!.degrees).toBeCloseTo(90, 9);
    expect(planDocument(planSample('heel-flap')).pickups[0]!.band).toBeNull();
  });

  test('takes the terms of the design unless told otherwise', () => {
    const plan = planSample('pullover');
    expect(planDocument(plan).pickups[0]!.text.join(' ')).toContain('pick up and knit');
    expect(planDocument(plan, { terms: TERMS.UK }).pickups[0]!.text.join(' ')).toContain('knit up');
  });

  test('gives one pick-up, or says which there are', () => {
    const plan = planSample('vest');
    const ids = plan.pickups.map(({ pickup }) => pickup.id);
    expect(planDocument(plan, {}, ids[1]).pickups.map(({ id }) => id)).toEqual([ids[1]]);
    expect(() => planDocument(plan, {}, 'collar')).toThrow(/no pick-up "collar": choose one of "neckband"/);
    expect(() => planDocument({ ...plan, pickups: [] }, {}, 'collar')).toThrow(/has no pick-ups/);
  });
});

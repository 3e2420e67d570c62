import { describe, expect, it } from 'vitest';
import { along, plan, rate, rectangle, type Raw } from './builders';

const LENGTH = { kind: 'length' };
const side = (fields: Raw = {}, piece: Raw = {}) => plan(rectangle(20, 56, {}, piece), along(['right'], fields));
const rateOf = (made: ReturnType<typeof plan>) => made.edges.map((edge) => edge.rate.kind);

describe('what is wanted', () => {
  it('is length * band stitches per mm, less the draw-in', () => {
    // 56 rows of 28 over 10 cm are 20 cm.
    expect(side().wanted).toBeCloseTo(40, 9);
    expect(side({ band: { gauge: { stitches: 24, rows: 32 } } }).wanted).toBeCloseTo(48, 9);
    expect(side({ band: { gauge: { stitches: 24, rows: 32 }, drawIn: 5 } }).wanted).toBeCloseTo(45.6, 9);
    expect(side({ band: { drawIn: 5 } }).picked).toBe(38);
  });

  it('goes by the tape where there is one, and says by how much it differs', () => {
    const made = side({ measured: [{ piece: 'piece', edge: 'right', mm: 186 }] });
    expect(made.wanted).toBeCloseTo(37.2, 9);
    expect(made.edges[0]!.lengthMm).toBe(186);
    expect(made.edges[0]!.edgeMm).toBeCloseTo(200, 9);
    const note = made.notes.find((one) => one.kind === 'measured-differs');
    expect(note).toMatchObject({ edge: { piece: 'piece', edge: 'right' }, measuredMm: 186 });
    expect(side({ measured: [{ piece: 'piece', edge: 'right', mm: 200.5 }] }).notes).toEqual([]);
  });

  it('goes by the join where the user asks for it', () => {
    const neck = {
      ...rectangle(60, 60),
      outline: [
        { id: 'foot', from: [0, 0], path: 'straight' },
        { id: 'right', from: [60, 0], path: 'straight' },
        { id: 'a', from: [60, 60], path: 'straight' },
        {
          id: 'neck',
          from: [50, 60],
          path: 'curve',
          handles: [
            [50, 30],
            [10, 30],
          ],
        },
        { id: 'b', from: [10, 60], path: 'straight' },
        { id: 'left', from: [0, 60], path: 'straight' },
      ],
    };
    const edge = plan(neck, along(['neck']));
    const join = plan(neck, along(['neck'], { measure: 'join' }));
    // Half a circle's turning, one stitch of 5 mm inside: pi stitches more.
    expect(join.wanted - edge.wanted).toBeCloseTo(Math.PI, 6);
    expect(plan(neck, along(['neck'], { measure: 'join', inset: 0.5 })).wanted - edge.wanted).toBeCloseTo(
      Math.PI / 2,
      6,
    );
  });

  it('alone is rounded to the nearest, a half going down', () => {
    expect(plan(rectangle(20, 63), along(['right'])).picked).toBe(45);
    // 4½ inches at 5 stitches to the inch.
    const made = plan(rectangle(20, 33, {}, { gauge: { stitches: 5, rows: 33 / 4.5, over: 25.4 } }), along(['right']));
    expect(made.wanted).toBeCloseTo(22.5, 9);
    expect(made.picked).toBe(22);
  });
});

describe('rates', () => {
  it('are each on a horizontal edge and by length on a side, unless given', () => {
    expect(rateOf(plan(rectangle(20, 28), along(['right', 'top', 'left'])))).toEqual(['length', 'each', 'length']);
    const given = plan(
      rectangle(20, 28),
      along(['right', 'top'], { rates: [rate('right', { kind: 'each' }), rate('top', LENGTH)] }),
    );
    expect(rateOf(given)).toEqual(['each', 'length']);
    expect(given.edges.map((edge) => edge.count)).toEqual([28, 20]);
  });

  it('are each on a garter edge whose band has the gauge of the body within 2%', () => {
    const garter = (stitches: number) =>
      plan(
        rectangle(20, 40, {}, { fabric: 'garter', gauge: { stitches: 20, rows: 40 } }),
        along(['right'], { band: { gauge: { stitches, rows: 40 } } }),
      );
    expect([20, 20.4, 19.6].map((stitches) => rateOf(garter(stitches))[0])).toEqual(['each', 'each', 'each']);
    expect([20.5, 19.5, 25].map((stitches) => rateOf(garter(stitches))[0])).toEqual(['length', 'length', 'length']);
    expect(garter(20).edges[0]!.count).toBe(20);
    expect(garter(25).edges[0]!.count).toBe(25);
  });

  it('count a ratio from the openings: per row, per ridge or per chain', () => {
    const ratio = { rates: [rate('right', { kind: 'ratio', pick: 3, of: 4 })] };
    const counts = ['plain', 'slipped', 'garter'].map(
      (selvage) => plan(rectangle(20, 56, { right: { selvage } }), along(['right'], ratio)).edges[0]!.count,
    );
    expect(counts).toEqual([42, 21, 21]);
  });

  it('say how far an edge that goes by another rate is stretched', () => {
    const made = side({ rates: [rate('right', { kind: 'ratio', pick: 1, of: 2 })] });
    expect(made.edges[0]!.changed).toBeCloseTo(28 / 40 - 1, 9);
    expect(made.notes).toContainEqual(expect.objectContaining({ kind: 'stretched', verdict: 'will pucker' }));
  });
});

describe('a bare strip', () => {
  const bare = (fields: Raw, rows = 113) => plan({ ...rectangle(1, rows), gauge: null }, along(['right'], fields));

  it('places N stitches over R rows without any gauge', () => {
    const made = bare({ target: 84 });
    expect([made.picked, made.wanted, made.edges[0]!.openings]).toEqual([84, 84, 113]);
    expect([made.edges[0]!.lengthMm, made.edges[0]!.edgeMm, made.edges[0]!.wanted]).toEqual([null, null, null]);
    expect(made.edges[0]!.ratios[0]).toMatchObject({ pick: 3, of: 4, count: 85 });
    expect(made.bandGauge).toBe(null);
  });

  it('goes by its openings where nothing is demanded', () => {
    expect(bare({}).picked).toBe(113);
  });
});

describe("the band's gauge", () => {
  it('is its own, else that of the first piece that has one, whichever hand works it', () => {
    const pieces = [
      rectangle(10, 10, {}, { id: 'a', gauge: null }),
      rectangle(10, 10, {}, { id: 'b', gauge: { stitches: 18, rows: 24 } }),
      rectangle(10, 10, {}, { id: 'c', gauge: { stitches: 30, rows: 40 } }),
    ];
    const run = { along: ['a', 'b', 'c'].map((id) => ({ piece: id, edge: 'top' })) };
    for (const hand of ['right', 'left']) {
      expect(plan(pieces, run, { hand }).bandGauge).toMatchObject({ stitches: 18 });
      expect(plan(pieces, { ...run, band: { gauge: { stitches: 26, rows: 36 } } }, { hand }).bandGauge).toMatchObject({
        stitches: 26,
      });
    }
  });
});

import { describe, expect, it } from 'vitest';
import { plainRatios } from '../../src/pickup';
import { along, design, piece, plan, rate, rectangle, usedOn } from './builders';
import { surveyDesign } from '../../src/pickup';

const INCHES = { stitches: 5, rows: 7, over: 25.4 };

/** Whole plans held against what every knitter knows. */
describe('common practice', () => {
  it('a bound-off edge of 16 stitches gives 16 (common practice)', () => {
    const made = plan(rectangle(16, 20), along(['top']));
    expect([made.picked, made.target, usedOn(made, 0).every(Boolean)]).toEqual([16, 16, true]);
  });

  it('garter of 16 stitches by 32 rows, a ridge as tall as a stitch is wide, is square and gives 16 (common practice)', () => {
    const square = rectangle(16, 32, {}, { fabric: 'garter', gauge: { stitches: 20, rows: 40 } });
    const edges = surveyDesign(design(square));
    expect(edges.map((edge) => edge.edgeMm)).toEqual([80, 80, 80, 80]);
    expect(edges.map((edge) => [edge.openings, edge.unit])).toEqual([
      [16, 'stitch'],
      [16, 'ridge'],
      [16, 'stitch'],
      [16, 'ridge'],
    ]);
    const made = plan(square, along(['right', 'top', 'left']));
    expect(made.edges.map((edge) => [edge.count, edge.changed])).toEqual([
      [16, 0],
      [16, 0],
      [16, 0],
    ]);
  });

  it('on a stockinette side two of three or three of four are usual (common practice)', () => {
    for (const [stitches, rows] of [
      [18, 24],
      [20, 27],
      [22, 30],
      [24, 33],
      [16, 23],
      [14, 20],
      [28, 38],
      [20, 30],
    ] as const) {
      const { pick, of } = plainRatios(stitches / rows)[0]!;
      const usual = [2 / 3, 5 / 7, 3 / 4];
      expect(usual.some((ratio) => Math.abs(pick / of - ratio) < 1e-9)).toBe(true);
      const ratios = plan(rectangle(20, 96, {}, { gauge: { stitches, rows } }), along(['right'])).edges[0]!.ratios;
      expect(ratios.some((one) => Math.abs(one.pick / one.of - 0.71) < 0.05 && Math.abs(one.stretch!) < 0.06)).toBe(
        true,
      );
    }
  });

  it('4½ inches at 5 to the inch want 22.5, so 22 or 23, and 22 fits two of three over 33 rows (common practice)', () => {
    const made = plan(rectangle(20, 33, {}, { gauge: { ...INCHES, rows: 33 / 4.5 } }), along(['right']));
    expect(made.wanted).toBeCloseTo(22.5, 9);
    expect(made.choices.map((choice) => choice.count)).toEqual([22, 23]);
    const two = plan(
      rectangle(20, 33, {}, { gauge: { ...INCHES, rows: 33 / 4.5 } }),
      along(['right'], { rates: [rate('right', { kind: 'ratio', pick: 2, of: 3 })] }),
    );
    expect(two.picked).toBe(22);
    expect(made.edges[0]!.ratios).toContainEqual(expect.objectContaining({ pick: 2, of: 3, count: 22 }));
  });

  it('at 5 to the inch a 4-inch vertical edge gives 20 and a 5-inch slope over the same rows 25 (common practice)', () => {
    const raw = piece(
      [
        { from: [0, 0] },
        { id: 'upright', from: [40, 0] },
        { id: 'slope', from: [40, 28] },
        { from: [25, 56] },
        { from: [0, 56] },
      ],
      {
        gauge: INCHES,
      },
    );
    const made = plan(raw, along(['upright', 'slope']));
    expect(made.edges.map((edge) => edge.rows)).toEqual([28, 28]);
    expect(made.edges.map((edge) => edge.edgeMm! / 25.4)).toEqual([expect.closeTo(4, 9), expect.closeTo(5, 9)]);
    expect(made.edges.map((edge) => edge.count)).toEqual([20, 25]);
  });

  it('12.2 in each section: 12 in each, the rest increased on the first row (common practice)', () => {
    for (const parts of [5, 10]) {
      const made = plan(
        rectangle(20, 400),
        along(['right'], { target: 12.2 * parts, sections: { by: 'length', parts, counts: 'same' } }),
      );
      expect(made.sections.map((section) => section.count)).toEqual(Array.from({ length: parts }, () => 12));
      expect([made.firstRow.from, made.firstRow.to]).toEqual([12 * parts, 12.2 * parts]);
    }
  });

  it('the last opening is never a skipped one, whatever the count (common practice)', () => {
    for (let count = 2; count <= 40; count++) {
      for (const spread of ['even', 'grouped']) {
        const made = plan(
          rectangle(20, 40),
          along(['right'], { spread, rates: [rate('right', { kind: 'count', count })] }),
        );
        expect([usedOn(made, 0)[0], usedOn(made, 0).at(-1)]).toEqual([true, true]);
      }
    }
  });
});

/** Published cases, the sources from notes. */
describe('published cases', () => {
  /** Begin and end on the edge, the rest spread: Knitting Magic, https://knittingmagic.biz (knit-perfect-ngc). */
  it('two of three re-ordered so that the last row is picked', () => {
    const made = plan(
      rectangle(20, 30),
      along(['right'], { rates: [rate('right', { kind: 'ratio', pick: 2, of: 3 })] }),
    );
    const rhythm = made.edges[0]!.rhythm;
    expect(rhythm.at(-1)!.skip).toBe(0);
    expect(rhythm.reduce((sum, run) => sum + run.pick * run.times, 0)).toBe(20);
    expect(rhythm.every((run) => run.skip <= 1)).toBe(true);
  });

  /** "On the V: 64 rows, 56 stitches, 7 of 8": Knit Much, https://www.knitmuch.com (colorburst vest). */
  it('64 rows and 56 stitches are 7 of 8', () => {
    const made = plan({ ...rectangle(1, 64), gauge: null }, along(['right'], { target: 56 }));
    expect(made.edges[0]!.ratios[0]).toEqual({ pick: 7, of: 8, count: 56, stretch: null });
  });
});

import { describe, expect, it } from 'vitest';
import { planDesign, surveyDesign } from '../../src/pickup';
import { along, design, rectangle } from './builders';

describe('surveyDesign', () => {
  it('measures every edge of every piece, picked up from or not', () => {
    const made = design([
      rectangle(20, 28, { right: { selvage: 'slipped' } }),
      rectangle(10, 12, {}, { id: 'bare', gauge: null, fabric: 'garter' }),
    ]);
    const rows = surveyDesign(made).map(({ piece, measured, edgeMm, joinMm, openings, unit }) => [
      piece.id,
      measured.id,
      edgeMm === null ? null : Math.round(edgeMm),
      joinMm === null ? null : Math.round(joinMm),
      openings,
      unit,
    ]);
    expect(rows).toEqual([
      ['piece', 'bottom', 100, 100, 20, 'stitch'],
      ['piece', 'right', 100, 100, 14, 'chain'],
      ['piece', 'top', 100, 100, 20, 'stitch'],
      ['piece', 'left', 100, 100, 28, 'row'],
      ['bare', 'bottom', null, null, 10, 'stitch'],
      ['bare', 'right', null, null, 6, 'ridge'],
      ['bare', 'top', null, null, 10, 'stitch'],
      ['bare', 'left', null, null, 6, 'ridge'],
    ]);
  });
});

describe('the finished width', () => {
  const finished = (edges: string[], inset = 1) =>
    planDesign(design(rectangle(40, 60), along(edges, { inset }))).finished[0]!;

  /** A whole stitch at each picked-up edge turns inside: Robin's knitting blog, https://knittingrobin.blogspot.com (2013/07). */
  it('is less the selvage of each picked-up side', () => {
    expect(finished(['right', 'left'])).toEqual({ piece: 'piece', stitches: 40, taken: 2, widthMm: 190 });
    expect(finished(['right'])).toMatchObject({ taken: 1, widthMm: 195 });
    expect(finished(['right', 'left'], 0.5)).toMatchObject({ taken: 1, widthMm: 195 });
    expect(finished(['right', 'left'], 0)).toMatchObject({ taken: 0, widthMm: 200 });
    expect(finished(['top'])).toMatchObject({ taken: 0, widthMm: 200 });
  });
});

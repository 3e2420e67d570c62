import { describe, expect, it } from 'vitest';
import { KNIT, loop, loopAt, PURL, STITCH } from '../../../src/handout/closeups/loop';

describe('the curve of a loop', () => {
  it('runs from the middle of one sinker to the next, its head above its middle', () => {
    const knots = loop(KNIT, KNIT);
    expect(knots[0]!.u).toBeCloseTo(-0.5, 12);
    expect(knots.at(-1)!.u).toBeCloseTo(0.5, 12);
    expect(knots[0]!.v).toBeCloseTo(0, 12);
    const head = knots[(knots.length - 1) / 2]!;
    expect(head.u).toBeCloseTo(0, 12);
    expect(head.v).toBeCloseTo(STITCH.height, 12);
  });

  it('is narrow at the neck and wide at the head, and never crosses itself', () => {
    const [neck, shoulder] = [loopAt(Math.PI / 4, STITCH, KNIT, KNIT), loopAt((3 * Math.PI) / 4, STITCH, KNIT, KNIT)];
    expect(neck.u).toBeLessThan(0);
    expect(Math.abs(neck.u)).toBeLessThan(Math.abs(shoulder.u));
    for (let t = 0.05; t < Math.PI; t += 0.05) expect(loopAt(t, STITCH, KNIT, KNIT).u).toBeLessThan(0);
  });

  it('lies behind at foot and head and in front at its legs when knitted, the other way round when purled', () => {
    const depths = (face: 1 | -1) => [0, 0.5, 1, 1.5].map((t) => loopAt(t * Math.PI, STITCH, face, face).z);
    expect(depths(KNIT).map(Math.sign)).toEqual([-1, 1, -1, 1]);
    expect(depths(PURL).map(Math.sign)).toEqual([1, -1, 1, -1]);
  });

  it('changes sides along its legs where the stitch above is worked the other way', () => {
    expect(loopAt(0, STITCH, KNIT, PURL).z).toBeCloseTo(-1, 12);
    expect(loopAt(Math.PI, STITCH, KNIT, PURL).z).toBeCloseTo(1, 12);
  });
});

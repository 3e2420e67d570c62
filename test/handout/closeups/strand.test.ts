import { describe, expect, it } from 'vitest';
import { CLOSE_UP_KINDS } from '../../../src/text';
import { sceneOf } from '../../../src/handout/closeups/draw';
import { piecesOf, pointOn } from '../../../src/handout/closeups/strand';

describe('yarn', () => {
  it.each(CLOSE_UP_KINDS)('is one curve without breaks or kinks: %s', (kind) => {
    sceneOf(kind, 'right').strands.forEach((strand, i) => {
      const pieces = piecesOf(strand, i);
      expect(pieces.length).toBeGreaterThan(0);
      for (const [k, piece] of pieces.entries()) {
        const next = pieces[k + 1];
        if (!next) continue;
        expect(pointOn(piece, 1)).toEqual(pointOn(next, 0));
        const [inX, inY] = [piece.to.x - piece.c2.x, piece.to.y - piece.c2.y];
        const [outX, outY] = [next.c1.x - next.from.x, next.c1.y - next.from.y];
        const sine = (inX * outY - inY * outX) / (Math.hypot(inX, inY) * Math.hypot(outX, outY));
        expect(Math.abs(sine)).toBeLessThan(1e-6);
        expect(inX * outX + inY * outY).toBeGreaterThan(0);
        expect(piece.end).toBeCloseTo(next.start, 9);
      }
    });
  });

  it('of a straight line stays straight', () => {
    const places = [0, 1, 3, 4].map((x) => ({ x, y: 2, z: 0 }));
    for (const piece of piecesOf({ kind: 'fabric', places, widths: [1, 1, 1, 1] }, 0)) {
      expect(pointOn(piece, 0.3).y).toBeCloseTo(2, 12);
      expect(piece.end - piece.start).toBeCloseTo(piece.to.x - piece.from.x, 12);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { rowOf } from '../../../src/handout/closeups/fabric';
import { KNIT, PURL, type Face } from '../../../src/handout/closeups/loop';
import { stack } from '../../../src/handout/closeups/stack';
import type { Strand } from '../../../src/handout/closeups/strand';
import { turned, yarn } from '../../../src/handout/closeups/view';
import { crossingsOf } from './crossings';

const view = turned(0, 30, 40);
const WIDE = 3;

/** Two rows of three stitches, the upper one worked as said. */
function twoRows(face: Face): Strand[] {
  const lower = rowOf(0, 0, WIDE - 1, { own: KNIT, above: face });
  const upper = rowOf(1, 0, WIDE - 1, { own: face, above: KNIT });
  return [yarn(lower, view), yarn(upper, view)];
}

/** The crossings along one strand, in the order of its yarn: is it over? */
function along(strands: readonly Strand[], strand: number): boolean[] {
  return crossingsOf(strands)
    .flatMap(({ over, under }) => [
      { piece: over, over: true },
      { piece: under, over: false },
    ])
    .filter(({ piece }) => piece.strand === strand)
    .sort((a, b) => a.piece.index - b.piece.index)
    .map(({ over }) => over);
}

describe('two rows of knitting', () => {
  it('cross four times in every stitch, never level', () => {
    for (const face of [KNIT, PURL]) {
      const crossings = crossingsOf(twoRows(face));
      expect(crossings).toHaveLength(4 * WIDE);
      for (const { apart } of crossings) expect(apart).toBeGreaterThan(0.4);
    }
  });

  it('knitted: the new loop goes under one leg, over the head twice, under the other leg', () => {
    expect(along(twoRows(KNIT), 1)).toEqual(Array.from({ length: WIDE }, () => [false, true, true, false]).flat());
  });

  it('purled: the other way round', () => {
    expect(along(twoRows(PURL), 1)).toEqual(Array.from({ length: WIDE }, () => [true, false, false, true]).flat());
  });
});

describe('the order of drawing', () => {
  it('holds every piece once, and what passes over comes after what it passes over', () => {
    const strands = twoRows(KNIT);
    const layers = stack(strands);
    const layerOf = new Map<string, number>();
    layers.forEach((runs, layer) => {
      for (const { strand, pieces } of runs) for (const { index } of pieces) layerOf.set(`${strand} ${index}`, layer);
    });
    const drawn = layers.flat().flatMap(({ pieces }) => pieces);
    expect(drawn).toHaveLength(strands.reduce((sum, { places }) => sum + places.length - 1, 0));
    expect(layerOf.size).toBe(drawn.length);
    for (const { over, under } of crossingsOf(strands)) {
      expect(layerOf.get(`${over.strand} ${over.index}`)!).toBeGreaterThan(
        layerOf.get(`${under.strand} ${under.index}`)!,
      );
    }
  });
});

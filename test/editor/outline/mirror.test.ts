import { describe, expect, it } from 'vitest';
import { changed } from '../../../src/editor';
import { planDesign } from '../../../src/pickup';
import type { Design } from '../../../src/piece';
import { SAMPLES } from '../../samples/sample';
import { done, edgeOf, pieceOf, sample } from './sample';

const cardigan = sample('cardigan-front');
const mirrored = (design: Design, piece: string) => done(design, { kind: 'mirror-piece', piece });

describe('a mirrored piece', () => {
  it('lies in the same place, its edges where their mirror images were', () => {
    const next = pieceOf(mirrored(cardigan, 'right-front'), 'right-front');
    expect(edgeOf(next, 'front-edge').from).toEqual([0, 162]);
    expect(edgeOf(next, 'neck-curve')).toMatchObject({
      from: [18, 180],
      handles: [
        [18, 170],
        [11, 162],
      ],
    });
    const { path, from } = edgeOf(next, 'armhole');
    expect({ path, from }).toEqual({ path: 'stepped', from: [53, 114] });
    expect(edgeOf(next, 'armhole')).toMatchObject({
      steps: [{ stitches: -3 }, { stitches: -2 }, { stitches: -1 }, {}],
    });
  });

  it.each(SAMPLES)('of %s is as it was when it is mirrored again', (name) => {
    const design = sample(name);
    for (const { id } of design.pieces) expect(mirrored(mirrored(design, id), id)).toEqual(design);
  });

  it('is picked up along the same edges as many times, in the order of the outline', () => {
    const pullover = sample('pullover');
    const next = mirrored(pullover, 'front');
    const counts = (design: Design) =>
      Object.fromEntries(
        planDesign(design).pickups[0]!.edges.map(({ piece, measured, count }) => [`${piece.id} ${measured.id}`, count]),
      );
    expect(counts(next)).toEqual(counts(pullover));
    expect(next.pickups[0]!.along.map(({ edge }) => edge).slice(0, 5)).toEqual([
      'neck-straight-right',
      'neck-curve-right',
      'neck-center',
      'neck-curve-left',
      'neck-straight-left',
    ]);
    expect(next.pickups[0]!.along.slice(5)).toEqual(pullover.pickups[0]!.along.slice(5));
  });

  it('is picked up along the same part of an edge', () => {
    const part = { kind: 'part', pickup: 'front-band', stretch: 0, part: [0, 0.25] } as const;
    const next = mirrored(done(cardigan, part), 'right-front');
    expect(next.pickups[0]!.along[0]!.part).toEqual([0.75, 1]);
  });

  it('that is not there changes nothing', () => {
    expect(changed(cardigan, { kind: 'mirror-piece', piece: 'none' })).toBe(cardigan);
  });
});

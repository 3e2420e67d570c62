import { describe, expect, it } from 'vitest';
import { newPickupName, partRefused, RUN_SAID, runGist, stretchSize } from '../../src/text';
import { edgeOf, planSample } from '../samples/sample';

const along = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ piece: 'p', edge: `e${i}`, backwards: false, part: [0, 1] as const }));

describe('the words of a run', () => {
  it('tell the size of a stretch, and of what it is a part', () => {
    const edge = edgeOf(planSample('pullover'), 'front', 'neck-center');
    expect(stretchSize(edge, [0, 1], 'cm')).toBe('12 sts, 5.5 cm');
    expect(stretchSize(edge, [0.25, 1], 'cm')).toBe('25% to 100% of 12 sts, 4.1 cm');
    const bare = planSample('strip').measured[0]!.edges[0]!;
    expect(stretchSize(bare, [0, 1], 'cm')).not.toContain('cm');
  });

  it('tell how many edges there are and how they are worked', () => {
    expect(runGist({ along: along(8), joined: true })).toBe('8 edges, in the round');
    expect(runGist({ along: along(1), joined: false })).toBe('1 edge, flat, in rows');
    expect(RUN_SAID.along({ name: 'Neckband', along: along(2) })).toBe('Neckband now runs along 2 edges.');
  });

  it('give places along an edge in percent', () => {
    expect(partRefused(0.125, 1, '50')).toBe('A place between 12.5% and 100% of the edge is needed, so 50% stays.');
  });

  it('number a new pick-up after those that are there', () => {
    expect([newPickupName(0), newPickupName(2)]).toEqual(['Pick-up', 'Pick-up 3']);
  });
});

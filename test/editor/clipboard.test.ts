import { expect, it } from 'vitest';
import { changed, copiedPieces, pasted } from '../../src/editor';
import { checkDesign, readDesign } from '../../src/piece';
import { sample } from './outline/sample';

const pullover = sample('pullover');

it('copied pieces are a design file of their own, with the pick-ups that run along them alone', () => {
  const both = copiedPieces(pullover, ['front', 'back'])!;
  expect(readDesign(both).design.pickups).toEqual(pullover.pickups);
  const one = copiedPieces(pullover, ['front'])!;
  expect(readDesign(one).design.pieces).toEqual([pullover.pieces[0]]);
  // The neckband runs along the back too.
  expect(readDesign(one).design.pickups).toEqual([]);
  expect(copiedPieces(pullover, ['none'])).toBeNull();
});

it('what was copied can be pasted', () => {
  const found = pasted(copiedPieces(pullover, ['front', 'back'])!)!;
  expect(found).toEqual({ pieces: pullover.pieces, pickups: pullover.pickups });
  const next = changed(pullover, { kind: 'paste', ...found });
  expect(() => checkDesign(next)).not.toThrow();
  expect(next.pieces).toHaveLength(4);
});

it('a text that is no design holds nothing', () => {
  expect(pasted('bind off 3, 2, 2')).toBeNull();
  expect(pasted('{"format": "edgewise"}')).toBeNull();
});

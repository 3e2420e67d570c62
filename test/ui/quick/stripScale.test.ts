import { expect, it } from 'vitest';
import { stripScale } from '../../../src/ui/quick/stripScale';

const strip = (places: number, gap: number) => Array.from({ length: places }, (_, i) => ({ alongMm: i * gap }));

/** How far apart the places of a strip are drawn, mm of the sheet. */
const apart = (places: number, gap: number) => stripScale(strip(places, gap)) * gap;

it('draws a short strip no wider than it reads well, a long one with every place told apart', () => {
  expect(apart(10, 3)).toBeCloseTo(3, 12);
  expect(apart(5000, 3)).toBeCloseTo(1.4, 12);
});

it('fits a strip between them to one length, whatever its rows measure', () => {
  for (const gap of [0.5, 3, 40]) expect(58 * apart(58, gap)).toBeCloseTo(116, 9);
});

it('has a scale for a single place too', () => {
  expect(stripScale(strip(1, 3))).toBe(3);
});

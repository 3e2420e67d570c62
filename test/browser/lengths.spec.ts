import { expect, test } from '@playwright/test';
import { cubic, lengthOf, lengthTo, type Cubic } from '../../src/geometry';

/**
 * Arc lengths beside those of a program that shares nothing with ours: the browser's own SVGPathElement.getTotalLength.
 * Chromium adds up chords in 32-bit numbers (6e-8 of their size), and chords that stray from their curve by up to about
 * half a unit are good enough for it, so that small drawings would tell little: these are a million units large. On
 * them Chromium's lengths are off by 5e-7 of that size on average and by 2.2e-6 at the most, and by the same share on
 * drawings a hundred times as large; the slack is a little more. Our own error, below 1e-9, is found in the unit tests.
 */
const SIZE = 1e6;
const SLACK = 3e-6;

/** Park and Miller's minimal generator, so that every run draws the same curves. */
function generator(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

const next = generator(7);
/** Whole numbers, which 32 bits hold exactly. */
const place = (): { x: number; y: number } => ({ x: Math.round(SIZE * next()), y: Math.round(SIZE * next()) });
const random: Cubic[] = Array.from({ length: 2000 }, () => cubic(place(), place(), place(), place()));

const at = (x: number, y: number): { x: number; y: number } => ({ x: SIZE * x, y: SIZE * y });
const special: Cubic[] = [
  // A quarter round, a cusp, a knot, handles of no length, a line, and one that doubles back.
  cubic(at(0, 0), at(0, 0.55), at(0.45, 1), at(1, 1)),
  cubic(at(0, 0), at(1, 1), at(0, 1), at(1, 0)),
  cubic(at(0, 0), at(1, 1), at(-0.5, 1), at(0.5, 0)),
  cubic(at(0, 0), at(0, 0), at(1, 0.5), at(1, 0.5)),
  cubic(at(0, 0), at(0.25, 0.25), at(0.5, 0.5), at(1, 1)),
  cubic(at(0, 0), at(1, 0), at(0, 0), at(0.25, 0)),
];

const pathOf = (c: Cubic): string =>
  `M${c.from.x},${c.from.y}C${c.c1.x},${c.c1.y} ${c.c2.x},${c.c2.y} ${c.to.x},${c.to.y}`;

const BLANK = '<svg xmlns="http://www.w3.org/2000/svg"><path /></svg>';

test('every length is the one that Chromium measures', async ({ page }) => {
  const curves = [...special, ...random];
  await page.setContent(BLANK);
  const measured = await page.evaluate((paths) => {
    const path = document.querySelector('path')!;
    return paths.map((each) => {
      path.setAttribute('d', each);
      return path.getTotalLength();
    });
  }, curves.map(pathOf));
  const error = (curve: Cubic, i: number): number => Math.abs(lengthOf(curve) - measured[i]!) / SIZE;
  expect(measured).toHaveLength(curves.length);
  expect(Math.max(...curves.map(error))).toBeLessThan(SLACK);
  // The slack is small enough to tell a curve from one with a handle a ten-thousandth of the size away.
  const moved = curves.map((c) => cubic(c.from, { x: c.c1.x + SIZE * 1e-4, y: c.c1.y }, c.c2, c.to));
  expect(moved.filter((curve, i) => error(curve, i) > SLACK).length).toBeGreaterThan(0.8 * curves.length);
});

test('the place at a length is the one that Chromium finds', async ({ page }) => {
  const curves = random.slice(0, 300);
  await page.setContent(BLANK);
  const asked = curves.map((curve, i) => ({
    d: pathOf(curve),
    length: lengthTo(curve, ((i % 19) + 0.5) / 19),
  }));
  const places = await page.evaluate((all) => {
    const path = document.querySelector('path')!;
    return all.map((each) => {
      path.setAttribute('d', each.d);
      const { x, y } = path.getPointAtLength(each.length);
      return { x, y };
    });
  }, asked);
  for (const [i, curve] of curves.entries()) {
    const t = ((i % 19) + 0.5) / 19;
    const u = 1 - t;
    const [x, y] = (['x', 'y'] as const).map(
      (k) => u ** 3 * curve.from[k] + 3 * u * u * t * curve.c1[k] + 3 * u * t * t * curve.c2[k] + t ** 3 * curve.to[k],
    ) as [number, number];
    // Within a chord Chromium takes t as growing evenly with the length.
    expect(Math.hypot(places[i]!.x - x, places[i]!.y - y) / SIZE).toBeLessThan(2e-5);
  }
});

import { describe, expect, it } from 'vitest';
import { handoutPages } from '../../src/handout';
import { drawPath } from '../../src/handout/pdf/path';
import { itemsOf } from '../../src/handout/pdf/walk';
import { planSample } from '../samples/sample';
import { SETTINGS, workOf } from './works';

describe.each(SETTINGS)('the ruler of $paper $orientation', (fields) => {
  const pages = handoutPages(workOf(planSample('strip'), { ...fields, diagram: 'fitted', blocks: ['title', 'ruler'] }));
  /** From left to right, mm on the page; the bars are single level lines, each with its ticks after it. */
  const paths = [...itemsOf(pages[0]!.elements)].flatMap((item) => {
    if (item.kind !== 'path') return [];
    const [xs, ys]: [number[], number[]] = [[], []];
    const {
      matrix: [a, b, c, d, e, f],
      d: data,
    } = item;
    const at = (x: number, y: number) => {
      xs.push(a * x + c * y + e);
      ys.push(b * x + d * y + f);
    };
    drawPath(data, { moveTo: at, lineTo: at, curveTo: (...n) => at(n[4], n[5]), close: () => undefined });
    return [{ xs, ys, length: Math.max(...xs) - Math.min(...xs), level: Math.max(...ys) === Math.min(...ys) }];
  });
  const bars = paths.filter(({ xs, level }) => level && xs.length === 2 && paths.length > 0).slice(-2);

  it('has a bar of 100 mm and one of 4 in, which is 101.6 mm', () => {
    const [mm, inch] = bars;
    expect(Math.abs(mm!.length - 100)).toBeLessThan(0.001);
    expect(Math.abs(inch!.length - 101.6)).toBeLessThan(0.001);
  });

  it('parts them every 5 mm and every quarter of an inch', () => {
    const ticks = bars.map((bar) => paths[paths.indexOf(bar) + 1]!);
    [5, 6.35].forEach((step, i) => {
      const places = [...new Set(ticks[i]!.xs)].map((x) => x - Math.min(...bars[i]!.xs));
      expect(places).toHaveLength(Math.round(bars[i]!.length / step) + 1);
      // Written to a hundredth of a mm.
      places.forEach((x, n) => expect(Math.abs(x - n * step)).toBeLessThan(0.011));
    });
  });
});

import { describe, expect, it } from 'vitest';
import { Pointed, Sheet, Workbench } from '../../src/ui';
import { pointFrom } from '../../src/ui/pointFrom';
import { reason } from '../../src/ui/reason.svelte';
import { pickupOf, planSample, readSample } from '../samples/sample';

const neckband = pickupOf(planSample('pullover'), 'neckband');
const numberOf = (index: number | null) => (index === null ? null : neckband.points[index]!.n);
const CENTER = { piece: 'front', edge: 'neck-center' };

describe('the pick-up point gone to', () => {
  it('is the next or the one before in working order, every one of them once, round and round', () => {
    const numbers: (number | null)[] = [];
    let at: number | null = null;
    for (let i = 0; i <= neckband.picked; i++) numbers.push(numberOf((at = pointFrom(neckband, 'next', at, null))));
    expect(numbers).toEqual([...Array.from({ length: neckband.picked }, (_, i) => i + 1), 1]);
    expect(numberOf(pointFrom(neckband, 'previous', at, null))).toBe(neckband.picked);
  });

  it('is the first or the last of all from anywhere', () => {
    for (const from of [null, 0, 40]) {
      expect(numberOf(pointFrom(neckband, 'first', from, CENTER))).toBe(1);
      expect(numberOf(pointFrom(neckband, 'last', from, CENTER))).toBe(neckband.picked);
    }
  });

  it('is the first or the last of the chosen edge where none was gone to', () => {
    // Six on the straight part and fourteen on the curve come before the middle.
    expect(numberOf(pointFrom(neckband, 'next', null, CENTER))).toBe(21);
    const center = neckband.edges.find(({ measured }) => measured.id === 'neck-center')!;
    expect(numberOf(pointFrom(neckband, 'previous', null, CENTER))).toBe(20 + center.count);
  });

  it('is none where nothing is picked up', () => {
    const points = neckband.points.map((point) => ({ ...point, n: null }));
    expect(pointFrom({ ...neckband, points }, 'next', null, null)).toBeNull();
    expect(pointFrom({ ...neckband, points: [] }, 'last', null, null)).toBeNull();
  });
});

describe('going along the points', () => {
  function shown() {
    const bench = new Workbench(readSample('pullover').design, 'test');
    const sheet = new Sheet(bench);
    sheet.resize({ width: 170, height: 180 });
    sheet.openView();
    return { bench, sheet, pointed: new Pointed(bench, sheet) };
  }

  it('marks and tells each as hovering does, and lights its edge', () => {
    const { bench, sheet, pointed } = shown();
    pointed.walk('first');
    expect(pointed.readout).toBe('Front, upper left neck: stitch 1 of 84, in row 126');
    expect(bench.lit).toEqual({ piece: 'front', edge: 'neck-straight-left' });
    expect(pointed.spot).toEqual(sheet.spotOf(0));
    pointed.leave();
    expect(pointed.spot).toBeNull();
  });

  it('says the edge and why it gets its count when it comes to it, and then the point alone', () => {
    const { bench, pointed } = shown();
    reason.words = () => 'the sum';
    pointed.walk('first');
    expect(bench.announcement).toBe('Front, upper left neck: stitch 1 of 84, in row 126. the sum');
    pointed.walk('next');
    expect(bench.announcement).toMatch(/^stitch 2 of 84, in row 12\d/);
    pointed.walk('previous');
    pointed.walk('previous');
    expect(bench.announcement).toMatch(/^Back, .*: stitch 84 of 84, .*\. the sum$/);
    reason.words = null;
  });

  it('says how many are passed over before a point', () => {
    const { bench, pointed } = shown();
    const aloud = Array.from({ length: neckband.picked }, () => {
      pointed.walk('next');
      return Number(/after (\d+) passed over/.exec(bench.announcement)?.[1] ?? 0);
    });
    const skipped = neckband.points.filter(({ n }) => n === null).length;
    expect(aloud.reduce((sum, one) => sum + one, 0)).toBe(skipped);
    expect(skipped).toBeGreaterThan(0);
  });

  it('brings the point into view, on whatever piece it lies', () => {
    const { sheet, pointed } = shown();
    sheet.zoom(20);
    const inView = () => {
      const [x, y] = [pointed.spot![0] - sheet.view.left, pointed.spot![1] - sheet.view.top];
      return x > 0 && x < sheet.size.width && y > 0 && y < sheet.size.height;
    };
    for (const way of ['first', 'next', 'last', 'previous', 'first'] as const) {
      pointed.walk(way);
      pointed.show();
      expect(inView()).toBe(true);
    }
  });
});

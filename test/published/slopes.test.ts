import { describe, expect } from 'vitest';
import { edge, pickup, plan, source } from './published';

const perRow = (id: string) => {
  const { edges, wanted } = pickup('slopes-3-to-4', id);
  return wanted / (edges[0]?.rows ?? NaN);
};

describe('a slope', () => {
  source(
    'L01',
    'Online knitting book, chapter 23',
    'http://studioknits.com/bookpage82.htm',
    '3 of 4 straight; 4 of 5 for a decrease every 4th row is right and every 6th a little high; 5 of 6 and 1 of 1 fall short of the length on steeper ones (right are 9 of 10 and 5 for 4 rows)',
    () => {
      expect(perRow('on-straight')).toBeCloseTo(0.75, 9);
      expect(Math.abs(perRow('on-every-4') - 4 / 5)).toBeLessThan(0.02);
      expect(4 / 5 - perRow('on-every-6')).toBeGreaterThan(0.02);
      expect(4 / 5 - perRow('on-every-6')).toBeLessThan(0.04);
      expect(perRow('on-every-2')).toBeCloseTo(0.901, 3);
      expect(perRow('on-every-2') - 5 / 6).toBeLessThan(0.07);
      expect(perRow('on-every-1')).toBeCloseTo(1.25, 9);
      // 75 from 60 rows: a decrease on every row gives a place of its own.
      expect(pickup('slopes-3-to-4', 'on-every-1')).toMatchObject({ picked: 75, notes: [] });
    },
  );

  source(
    'L06',
    'Name pullover',
    'https://sites.google.com/site/hbmprintablepatterns/name-pullover',
    'one stitch bound off, then 1 every 4th row 5 (7, 8, 8, 11) times and every 2nd 6 (4, 4, 5, 2) times, in five sizes',
    () => {
      const sizes = [
        [6, 5, 6],
        [8, 7, 4],
        [10, 8, 4],
        [12, 8, 5],
        [14, 11, 2],
      ] as const;
      const [w, h] = [(2 * 25.4) / 9, 25.4 / 7];
      for (const [size, fourth, second] of sizes) {
        const neckband = pickup('two-rate-v-five-sizes', `neckband-${size}`);
        const left = edge(neckband, 'neck-left');
        expect(left).toMatchObject({ stitches: fourth + second, rows: 4 * fourth + 2 * second });
        expect(left.edgeMm).toBeCloseTo(fourth * Math.hypot(w, 4 * h) + second * Math.hypot(w, 2 * h), 9);
        expect(edge(neckband, 'neck-center').count).toBe(1);
        expect(edge(neckband, 'neck-right').count).toBe(left.count);
      }
      const shoulders = plan('two-rate-v-five-sizes').measured.map(
        ({ edges }) => edges.find(({ id }) => id === 'shoulder-left')?.stitches,
      );
      expect(shoulders).toEqual([12, 13, 14, 15, 16]);
    },
  );

  source(
    'D05',
    'Compound slope: V decreases (a scanned book)',
    'https://zanotowane.pl/713/7790',
    '1 every 2nd row 5 times, then every 4th row 10 times, takes 50 rows and rounds the base of the V',
    () => {
      const neckband = pickup('v-neck-compound');
      const left = edge(neckband, 'neck-left');
      expect(left).toMatchObject({ stitches: 15, rows: 50, shape: 'curved' });
      // Rounder than a straight V, and so a little longer.
      const straight = Math.hypot(15 * 5, (50 * 100) / 28);
      expect(left.edgeMm ?? NaN).toBeGreaterThan(straight);
      expect((left.edgeMm ?? NaN) / straight).toBeLessThan(1.03);
      expect(edge(neckband, 'neck-right').count).toBe(left.count);
    },
  );
});

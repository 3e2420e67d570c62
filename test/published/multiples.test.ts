import { describe, expect } from 'vitest';
import { fitsMultiple, fittingCounts } from '../../src/pickup';
import { kindsOf, pickup, plan, source } from './published';

describe('stitch multiples', () => {
  source(
    'R01',
    'K2P2 ribbing',
    'https://tkga.org/article/k2p2-ribbing-by-binka-schwan/',
    'k2p2 worked flat with two knit stitches at both ends has 4n + 2',
    () => {
      expect(fitsMultiple(62, { multiple: 4, plus: 2 })).toBe(true);
      expect([60, 61, 63, 64].filter((count) => fitsMultiple(count, { multiple: 4, plus: 2 }))).toEqual([]);
    },
  );

  source(
    'R04',
    'Edging an afghan',
    'http://learninglovingcrochet.blogspot.com/2011/04/edging-afghan.html',
    '197 and 157 fit 4n + 1 with 49 and 39 repeats, not the 48 and 38 that are printed',
    () => {
      const pattern = { multiple: 4, plus: 1 };
      for (const [count, repeats, printed] of [
        [197, 49, 48],
        [157, 39, 38],
      ] as const) {
        expect(fitsMultiple(count, pattern)).toBe(true);
        expect(fittingCounts(count, pattern)[0]).toBe(4 * repeats + 1);
        expect(4 * printed + 1).toBe(count - 4);
      }
    },
  );

  source(
    'N04',
    'Sweater, The Knitter, May 2020',
    'http://www.pressreader.com/australia/the-knitter/20200528/281908775338710',
    'k5p5 with matching ends has 10n + 7: 30, 37 and 30 are 97; 33, 41 and 33 are 107',
    () => {
      const bands = plan('neckband-10n-plus-7').pickups;
      expect(bands.map(({ picked, target }) => [picked, target])).toEqual([
        [97, 97],
        [107, 107],
      ]);
      expect(bands.flatMap(kindsOf)).toEqual([]);
      expect(pickup('neckband-10n-plus-7', 'neckband-1').choices[0]?.count).toBe(97);
    },
  );
});

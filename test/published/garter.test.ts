import { describe, expect } from 'vitest';
import { onlyEdge, pickup, plan, source } from './published';

const counts = (name: string, id: string) => pickup(name, id).edges.map(({ count }) => count);

describe('garter', () => {
  source(
    'G01',
    'Picking up from a garter selvedge',
    'https://illitilli.com/?p=15613',
    'one from every ridge, that is one for 2 rows',
    () => {
      expect(onlyEdge(pickup('ridge-each'))).toMatchObject({ rows: 40, openings: 20, unit: 'ridge', count: 20 });
    },
  );

  source(
    'G02',
    'Log cabin',
    'http://wildflowerwoolknits.blogspot.com/2009/07/everything-is-always-right.html',
    'a log of 10 stitches and 10 ridges: 10 and the last stitch of the bind-off are 11; then 5, 10 and 1 are 16',
    () => {
      expect(counts('log-cabin-with-corner', 'second-log')).toEqual([1, 10]);
      expect(counts('log-cabin-with-corner', 'third-log')).toEqual([1, 5, 10]);
      expect(plan('log-cabin-with-corner').pickups.map(({ picked }) => picked)).toEqual([11, 16]);
    },
  );

  source(
    'G03',
    'Knit bit: log cabin technique',
    'http://musingsofamommy.blogspot.com/2007/11/knit-bit-log-cabin-technique.html',
    'a log of 20 stitches and 20 ridges: 20, then 10 and 20 are 30 (some take one more at the corner)',
    () => {
      expect(plan('log-cabin-without-corner').pickups.map(({ picked }) => picked)).toEqual([20, 30]);
    },
  );

  source(
    'G05',
    'The baby blanket is complete',
    'https://sandirosner.substack.com/p/the-baby-blanket-is-complete',
    '70 from the side of a square, and 69 back from a provisional cast-on of 70',
    () => {
      expect(pickup('provisional-70', 'from-side').picked).toBe(70);
      expect(pickup('provisional-70', 'from-cast-on').picked).toBe(69);
    },
  );

  source(
    'P01',
    'Knitted fabric: knitting up vs. knitting down',
    'http://techknitting.blogspot.com/2007/01/knitted-fabric-knitting-up-vs-knitting.html',
    'a provisional cast-on of 10 gives back 9, of 9 gives 8, of 5 gives 4; the half loop at the end keeps the number',
    () => {
      const picked = plan('provisional-10-9-5').pickups.map((band) => [band.pickup.id, band.picked]);
      expect(Object.fromEntries(picked)).toEqual({
        ten: 9,
        'half-ten': 10,
        nine: 8,
        'half-nine': 9,
        five: 4,
        'half-five': 5,
      });
    },
  );
});

import { describe, expect } from 'vitest';
import { onlyEdge, pickup, source } from './published';

describe('a horizontal edge', () => {
  source(
    'P04',
    'Picking up stitches: curved edge',
    'https://tkga.org/article/picking-up-stitches-curved-edge-by-binka-schwan/',
    'one from every bound-off stitch',
    () => {
      expect(onlyEdge(pickup('bound-off-12'))).toMatchObject({ stitches: 12, unit: 'stitch', openings: 12, count: 12 });
    },
  );

  source(
    'P05',
    'Pine Cone Jacket',
    'https://preprod2.youscribe.com/catalogue/documents/loisirs-et-hobbies/loisirs-creatifs/pine-cone-jacket-materials-cascade-greenland-100g-x-6-7-8-7--1483716',
    'from the middle of an underarm of 8: 4, then 38 (42, 46) held stitches, then 4, are 46 (50, 54)',
    () => {
      for (const held of [38, 42, 46]) {
        const sleeve = pickup('sleeve-from-held-stitches', `sleeve-${held}`);
        expect(sleeve.edges.map(({ count, unit }) => [count, unit])).toEqual([
          [4, 'stitch'],
          [held, 'live'],
          [4, 'stitch'],
        ]);
        expect(sleeve).toMatchObject({ picked: held + 8, notes: [] });
      }
    },
  );
});

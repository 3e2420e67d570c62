import { describe, expect } from 'vitest';
import type { BandEdge } from '../../src/pickup';
import { along, piece, plan, rectangle, type Corner, type Raw } from '../pickup/builders';
import { source } from './published';

const GARTER = { stitches: 20, rows: 40 };
/** Three stitches are as wide as four rows are high. */
const THREE_TO_FOUR = { stitches: 21, rows: 28 };

function free(outline: Raw, edges: readonly string[], fields: Raw): BandEdge {
  return plan(outline, along(edges, fields)).bandEdge!;
}

/** A V that is `half` stitches wide on each side of its middle and `deep` rows deep. */
function vNeck(half: number, deep: number): Raw {
  const corners: Corner[] = [
    [0, 0],
    [40, 0],
    [40, 40],
    [20 + half, 40],
    [20, 40 - deep],
    [20 - half, 40],
    [0, 40],
  ];
  return piece(
    corners.map((from) => ({ from })),
    { gauge: THREE_TO_FOUR },
  );
}

const sides = ['edge-3', 'edge-4'];

describe('corners', () => {
  source(
    'K01',
    "Josephine's squares: adding a border",
    'http://stitchtherapyknitalong.blogspot.com/2013/03/josephines-squares-adding-border.html',
    'a garter border in the round: a stitch each side of every corner in each knit round, 24 in 6 rounds',
    () => {
      const square = rectangle(60, 80, {}, { gauge: THREE_TO_FOUR });
      const band = { fabric: 'garter', gauge: GARTER, rows: 6 };
      const { corners } = free(square, ['bottom', 'right', 'top', 'left'], { joined: true, band });
      expect(corners.map(({ rows }) => rows)).toEqual(Array.from({ length: 4 }, () => [2, 4, 6]));
      expect(corners.reduce((sum, { times }) => sum + 2 * times, 0)).toBe(24);
    },
  );

  source(
    'K03',
    'Knitting a mitered square',
    'http://gardengnomeathome.blogspot.com/2010/04/knitting-mitered-square.html',
    '63 stitches round a right angle of garter, three of them made one in the middle every second row: then 61',
    () => {
      // An inner corner: the square is worked into the angle between two edges.
      const corners: Corner[] = [
        [0, 0],
        [62, 0],
        [62, 30],
        [31, 30],
        [31, 94],
        [0, 94],
      ];
      const angle = piece(
        corners.map((from) => ({ from })),
        { gauge: GARTER, fabric: 'garter' },
      );
      const made = (rows: number) =>
        free(angle, ['edge-2', 'edge-3'], { target: 63, band: { fabric: 'garter', rows } });
      expect(made(2)).toMatchObject({ after: 61 });
      expect(made(4)).toMatchObject({ after: 59 });
      expect(made(2).corners[0]).toMatchObject({ times: 1, rows: [2] });
      expect(made(2).corners[0]!.stitches).toHaveLength(1);
    },
  );

  source(
    'K04',
    'Entrelac knitting',
    'https://docslib.org/doc/5694404/entrelac-knitting',
    'garter of two rows to a stitch, decreased every other row, lies at 45 degrees; stocking stitch of 3 stitches to 4 rows at 30 (33.7 exactly), every row at 60 (53.1): so 45 degrees take 3 in 4 rows',
    () => {
      const right = free(rectangle(30, 40), ['right', 'top'], { band: { gauge: GARTER, rows: 8 } });
      expect(right.corners[0]).toMatchObject({ times: 4, rows: [2, 4, 6, 8] });
      const stocking = (outline: Raw, edges: readonly string[]) =>
        free(outline, edges, { band: { gauge: THREE_TO_FOUR, rows: 8 } }).corners[0]!;
      expect(stocking(rectangle(30, 40), ['right', 'top'])).toMatchObject({ times: 6 });
      // Both sides of a V lie so far off its middle, half the turn off square to it.
      const every = stocking(vNeck(9, 16), sides);
      expect((-every.turn * 90) / Math.PI).toBeCloseTo(53.13, 2);
      expect(every.rows).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
      const other = stocking(vNeck(18, 16), sides);
      expect((-other.turn * 90) / Math.PI).toBeCloseTo(33.69, 2);
      expect(other.rows).toEqual([2, 4, 6, 8]);
    },
  );
});

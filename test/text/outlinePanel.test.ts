import { describe, expect, it } from 'vitest';
import {
  deviationShort,
  deviationText,
  OUTLINE_REFUSED,
  pieceName,
  sizedText,
  stepsHelp,
  stepsMissText,
  termsFor,
  wayText,
} from '../../src/text';

describe('the words of the outline as a table', () => {
  it.each([
    [3, 0, '→', 'to the right'],
    [-3, 0, '←', 'to the left'],
    [0, 4, '↑', 'straight up'],
    [0, -4, '↓', 'straight down'],
    [3, 4, '↗', 'up to the right'],
    [-3, 4, '↖', 'up to the left'],
    [3, -4, '↘', 'down to the right'],
    [-3, -4, '↙', 'down to the left'],
  ])('an edge of %i across and %i up goes %s %s', (dx, dy, arrow, words) => {
    expect(wayText(dx, dy)).toEqual({ arrow, words });
  });

  it('say how far the steps stray, rounded to a tenth, with the row counted from the foot', () => {
    expect(deviationText({ stitches: 0.62, row: 24 }, -80)).toBe(
      'As worked it strays from the line drawn by 0.6 of a stitch at most, at row 104.',
    );
    expect(deviationText({ stitches: 1.04, row: 8 }, 0)).toContain('by 1 stitch at most');
    expect(deviationText({ stitches: 1.16, row: 8 }, 0)).toContain('by 1.2 stitches at most');
    expect(deviationText({ stitches: 0.04, row: 8 }, 0)).toBe('As worked it follows the line drawn.');
  });

  it('say in short how far the steps stray, and nothing where that can not be seen', () => {
    expect(deviationShort({ stitches: 0.62, row: 24 })).toBe('at most 0.6 of a stitch off the line');
    expect(deviationShort({ stitches: 1.16, row: 8 })).toBe('at most 1.2 stitches off the line');
    expect(deviationShort({ stitches: 0.04, row: 8 })).toBe('');
  });

  it('say what a length came to, in the units shown', () => {
    expect(sizedText(' 12 cm ', 26, 'stitches', 118.2, 'cm')).toBe('12 cm comes to 26 stitches, which is 11.8 cm.');
    expect(sizedText('0.1 in', 1, 'rows', 3.3, 'in')).toBe('0.1 in comes to 1 row, which is ⅛ in.');
  });

  it('say what steps come to that lead elsewhere', () => {
    expect(stepsMissText({ stitches: -1, rows: 1 }, { stitches: 2, rows: 8 })).toBe(
      'These steps come to 1 stitch in over 1 row and the edge has 2 stitches out over 8 rows, so the old steps stay: mend them, or move the far corner.',
    );
    expect(stepsMissText({ stitches: 0, rows: 8 }, { stitches: -2, rows: 8 })).toContain('no stitches over 8 rows and');
  });

  it('use the words of the country', () => {
    expect(stepsHelp(termsFor('US'))).toContain('bind off 3, 2, 2');
    expect(stepsHelp(termsFor('UK'))).toMatch(/cast off 3, 2, 2.*straight\.$/);
  });

  it('call a piece without a name by its id, and begin a sentence with a large letter', () => {
    expect(pieceName({ id: 'front', name: ' ' })).toBe('front');
    expect(OUTLINE_REFUSED.noRows({ id: 'cast-on' })).toBe('Cast on has no rows to work steps in: give it rows first.');
  });
});

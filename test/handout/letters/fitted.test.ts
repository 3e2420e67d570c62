import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../../src/handout/letters/face';
import { fits, fitted, graphemes } from '../../../src/handout/letters/fitted';
import { textWidth } from '../../../src/handout/letters/width';

const SIZE = 3;

describe('fitted', () => {
  it('leaves what fits as it is', () => {
    expect(fitted('Neckband', textWidth('Neckband', SIZE, 'bold'), SIZE, 'bold')).toBe('Neckband');
  });

  it('shortens at a letter, with no space before the ellipsis', () => {
    const room = textWidth('Round neck…', SIZE, 'regular');
    expect(fitted('Round neck pullover', room, SIZE, 'regular')).toBe('Round neck…');
    expect(fitted('Round neck pullover', room * 0.99, SIZE, 'regular')).toBe('Round nec…');
    expect(fitted('Round pullover', textWidth('Round …', SIZE, 'regular'), SIZE, 'regular')).toBe('Round…');
  });

  it('never parts a letter from its mark, nor a joined sign', () => {
    expect(graphemes('g\u0303👩‍👧a')).toEqual(['g\u0303', '👩‍👧', 'a']);
    const room = textWidth('👩‍👧…', SIZE, 'regular');
    expect(fitted('👩‍👧👩‍👧', room, SIZE, 'regular')).toBe('👩‍👧…');
  });

  it('leaves nothing where not even the ellipsis fits', () => {
    expect(fitted('Neckband', 0.1, SIZE, 'regular')).toBe('');
  });

  it('fits, and would not with one letter more', () => {
    let shortened = 0;
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }),
        fc.double({ min: 3, max: 60, noNaN: true }),
        fc.constantFrom(...FACES),
        (text, width, face) => {
          const short = fitted(text, width, SIZE, face);
          expect(fits(short, width, SIZE, face)).toBe(true);
          if (short === text) return;
          shortened++;
          const all = graphemes(text);
          const tries = all.map((_, i) => `${all.slice(0, i).join('').trimEnd()}…`);
          const best = tries.filter((one) => fits(one, width, SIZE, face)).at(-1);
          expect(short).toBe(best);
        },
      ),
    );
    expect(shortened).toBeGreaterThan(20);
  });
});

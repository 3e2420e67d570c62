import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { LIGHT, PATH_LOOK, TEXT_COLOUR, type Palette } from '../../src/renderer/palette';

const css = readFileSync(fileURLToPath(new URL('../../src/renderer/diagram.css', import.meta.url)), 'utf8');

/** Custom properties of each block that sets them, in order. */
const blocks = [...css.matchAll(/\{([^{}]*--draw-ink[^{}]*)\}/g)].map(([, inner]) =>
  Object.fromEntries(
    [...inner!.matchAll(/--draw-([a-z-]+):\s*([^;]+);/g)].map(([, name, value]) => [
      name!.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()),
      value!,
    ]),
  ),
) as unknown as (Palette & { lit: string })[];
const [light, dark, chosenDark, forced] = blocks;

/** Relative luminance of #rrggbb. Source: WCAG 2.2, "relative luminance" (https://www.w3.org/TR/WCAG22/). */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = parseInt(colour.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio. Source: WCAG 2.2, "contrast ratio". */
function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

describe('colours', () => {
  it('are the same in files and on the page in light', () => {
    const { lit, ...rest } = light!;
    expect(rest).toEqual(LIGHT);
    expect(lit).toMatch(/^#/);
  });

  it('are named in every scheme', () => {
    for (const scheme of [dark, chosenDark, forced]) expect(Object.keys(scheme!)).toEqual(Object.keys(light!));
    expect(chosenDark).toEqual(dark);
  });

  it('are given to every kind of mark by the page too', () => {
    for (const [role, look] of Object.entries(PATH_LOOK)) {
      expect(css, role).toMatch(new RegExp(`\\.drawing path\\.${role}[,\\s]`));
      expect(look.fill !== null || look.stroke !== null).toBe(true);
    }
    for (const role of Object.keys(TEXT_COLOUR))
      expect(css, role).toMatch(new RegExp(`\\.drawing text\\.${role}[,\\s]`));
  });
});

describe.each([
  ['light', light!, '#fbf8f1'],
  ['white paper', light!, '#ffffff'],
  ['dark', dark!, '#1c1a17'],
])('in %s', (_, palette, ground) => {
  it('words and numbers have a contrast of 4.5 at least, on the fabric and beside it', () => {
    for (const colour of [palette.ink, palette.quiet]) {
      expect(contrast(colour, palette.fabric)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(colour, palette.stitch)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(colour, ground)).toBeGreaterThanOrEqual(4.5);
    }
    expect(contrast(palette.onMarker, palette.marker)).toBeGreaterThanOrEqual(4.5);
  });

  it('marks have a contrast of 3 at least', () => {
    for (const colour of [palette.picked, palette.marker, palette.skipped, palette.ink]) {
      expect(contrast(colour, palette.fabric)).toBeGreaterThanOrEqual(3);
      expect(contrast(colour, ground)).toBeGreaterThanOrEqual(3);
    }
  });
});

it('knows contrast: black on white is 21, a colour on itself 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
  expect(contrast('#777777', '#777777')).toBe(1);
});

import { describe, expect, test } from 'vitest';
import { starterDesign, STARTERS, type StarterKind } from '../../src/piece/starters';
import { edgeName, measureLabel, starterEdgeName, starterText, starterWords, TERMS } from '../../src/text';

const KINDS = Object.keys(STARTERS) as StarterKind[];

describe('the names of starters', () => {
  test('no two are called alike, and each line is one sentence', () => {
    for (const terms of [TERMS.US, TERMS.UK]) {
      const texts = KINDS.map((kind) => starterText(kind, terms));
      expect(new Set(texts.map(({ title }) => title)).size).toBe(KINDS.length);
      for (const { line } of texts) expect(line).toMatch(/^[A-Z][^.]*\.$/);
    }
  });

  test.each(KINDS)('%s: no two of its measures and no two of its edges are called alike', (kind) => {
    for (const terms of ['US', 'UK'] as const) {
      const labels = STARTERS[kind].measures.map(({ key }) => measureLabel(key, TERMS[terms]));
      expect(new Set(labels).size).toBe(labels.length);
      const started = starterDesign(kind, {}, null, starterWords(kind, { terms, units: 'cm', hand: 'right' }));
      if (!started.ok) throw new Error(started.reason);
      const names = started.design.pieces[0]!.outline.map(edgeName);
      expect(new Set(names).size).toBe(names.length);
    }
  });

  test('are those of the country', () => {
    expect(starterEdgeName('bound-off', TERMS.US)).toBe('bound-off edge');
    expect(starterEdgeName('bound-off', TERMS.UK)).toBe('cast-off edge');
    expect(starterEdgeName('neck-center', TERMS.US)).toBe('center neck');
    expect(starterEdgeName('neck-center', TERMS.UK)).toBe('centre neck');
    expect(measureLabel('cap-height', TERMS.US)).toBe('Cap height');
    expect(measureLabel('cap-height', TERMS.UK)).toBe('Sleeve head height');
    expect(starterText('sleeve', TERMS.UK).line).toContain('sleeve head');
  });

  test('say the side first', () => {
    expect(starterEdgeName('armhole-left', TERMS.US)).toBe('left armhole');
    expect(starterEdgeName('front-edge', TERMS.US)).toBe('front edge');
    expect(starterEdgeName('constructor', TERMS.US)).toBe('constructor');
  });

  test('go into the design', () => {
    const words = starterWords('round-neck', { terms: 'UK', units: 'in', hand: 'left' });
    const started = starterDesign('round-neck', {}, null, words);
    expect(started).toMatchObject({
      ok: true,
      design: {
        name: 'Front with a round neck',
        terms: 'UK',
        units: 'in',
        hand: 'left',
        pieces: [{ id: 'front', name: 'Front' }],
        pickups: [{ id: 'neckband', name: 'Neckband' }],
      },
    });
  });
});

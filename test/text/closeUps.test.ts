import { describe, expect, it } from 'vitest';
import { CLOSE_UP_KINDS, closeUpCaption, needleText, termsFor } from '../../src/text';
import { planSample } from '../samples/sample';

const [us, uk] = [termsFor('US'), termsFor('UK')];

describe('captions of close-ups', () => {
  it.each(CLOSE_UP_KINDS)('%s has a title and one sentence in the terms of both countries', (kind) => {
    for (const terms of [us, uk]) {
      const { title, sentence } = closeUpCaption(kind, terms, 'row');
      expect(title).toMatch(/^[A-Z]/);
      expect(sentence).toMatch(/^[A-Z][^.]+\.$/);
    }
    const british = Object.values(closeUpCaption(kind, uk, 'row')).join(' ');
    expect(british).not.toMatch(/bind|bound|stockinette|selvage/i);
  });

  it('differ from one another', () => {
    const titles = CLOSE_UP_KINDS.map((kind) => closeUpCaption(kind, us, 'row').title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('agree with the written instructions', () => {
    const plan = planSample('blanket').pickups[0]!;
    const written = needleText(plan, us).join('\n').toLowerCase();
    for (const kind of ['bound-off', 'garter-bump', 'cast-on'] as const) {
      expect(written).toContain(closeUpCaption(kind, us, 'round').sentence.toLowerCase().slice(0, -1));
    }
  });

  it('say row or round', () => {
    expect(closeUpCaption('step-hole', us, 'round').sentence).toContain('first round');
  });
});

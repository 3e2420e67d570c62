import { describe, expect, test } from 'vitest';
import { abbreviationsIn, abbreviationsText, instructions, TERMS, voiceOf } from '../../src/text';
import { planSample, SAMPLES } from '../samples/sample';

const shorts = (text: string) => abbreviationsIn([text], TERMS.US).map((line) => line.split(':')[0]);

describe('abbreviations', () => {
  test('are those that a text uses, and no others', () => {
    expect(shorts('k3, *m1, k6; repeat from * 13 more times; m1, k3')).toEqual(['k', 'm1']);
    expect(shorts('(k1, k2tog) 25 times')).toEqual(['k', 'k2tog']);
    expect(shorts('rib 10, m1p, rib 9, p2tog')).toEqual(['m1p', 'p2tog', 'rib']);
    expect(shorts('pu&k 84 stitches: (4, skip 1) ×17, 3')).toEqual(['pu&k', '×']);
    expect(shorts('k2tog, ssk; s2kp2')).toEqual(['k2tog', 's2kp2', 'ssk']);
    expect(shorts('k2tog, sl2tog k1 psso, skpo')).toEqual(['k2tog', 'skpo', 'sl2tog k1 psso']);
    expect(shorts('Pick up and knit 84 stitches along the rib.')).toEqual([]);
    expect(abbreviationsText(['Work even.'], TERMS.US)).toBe('');
  });

  test('are said in the terms of the country', () => {
    expect(abbreviationsText(['pu&k 8'], TERMS.US)).toBe('Abbreviations. pu&k: pick up and knit.');
  });

  test.each(SAMPLES)('leave none of the instructions of %s unexplained', (name) => {
    const plan = planSample(name);
    for (const pickup of plan.pickups) {
      for (const form of ['long', 'short'] as const) {
        for (const terms of ['US', 'UK'] as const) {
          const paragraphs = instructions(pickup, voiceOf({ ...plan.design, terms }, { form }));
          const said = abbreviationsIn(paragraphs, TERMS[terms]).map((line) => line.split(':')[0]);
          const used = ['k2tog', 'p2tog', 'm1p', 'm1', 'pu&k', 'ssk', 'skpo', 's2kp2'].filter((short) =>
            paragraphs.some((text) => text.split(/[^\w&]+/).includes(short)),
          );
          expect(said).toEqual(expect.arrayContaining(used));
        }
      }
    }
  });
});

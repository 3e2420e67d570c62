import { describe, expect, test } from 'vitest';
import { sectionsText, tallyText } from '../../src/text';
import { along, plan, rectangle } from '../pickup/builders';

const long = { form: 'long' } as const;

describe('sectionsText', () => {
  test('says the running count at every marker and what lies between', () => {
    const made = plan(rectangle(30, 41), along(['right'], { target: 30, sections: { parts: 4 } }));
    expect(sectionsText(made, long)).toBe('Place 3 markers, after 8, 15 and 23 stitches: 4 sections of 8, 7, 8 and 7.');
    expect(sectionsText(made, { form: 'short' })).toBe('Markers after 8, 15, 23: 4 sections of 8, 7, 8 and 7.');
  });

  test('says a single marker, and what the first row leaves with the same in each', () => {
    const sections = { parts: 2, counts: 'same' };
    const made = plan(rectangle(30, 41), along(['right'], { target: 29, sections }));
    expect(sectionsText(made, long)).toBe(
      'Place a marker after 14 stitches: 2 sections of 14 each. The first row leaves 15 and 14 in them, 29 in all.',
    );
  });

  test('is empty where there is no marker', () => {
    expect(sectionsText(plan(rectangle(30, 41), along(['right'])), long)).toBe('');
  });
});

describe('tallyText', () => {
  test('counts sections of a kind', () => {
    expect(tallyText([36, 37, 36, 36, 37, 36])).toBe('4 of 36 and 2 of 37');
    expect(tallyText([27])).toBe('1 of 27');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileNameOf, type FileKind } from '../../src/text';

const HANDOUT: FileKind = { holds: 'handout', version: 'sheet', form: 'pdf' };
const nameOf = (design: string, pickup: string | null, kind: FileKind = HANDOUT) =>
  fileNameOf({ name: design }, pickup === null ? null : { name: pickup }, kind);

describe('the name of a file', () => {
  it.each([
    [HANDOUT, 'Round-neck pullover - Neckband - handout.pdf'],
    [{ holds: 'handout', version: 'exercise', form: 'pdf' }, 'Round-neck pullover - Neckband - exercise.pdf'],
    [{ holds: 'handout', version: 'answers', form: 'pdf' }, 'Round-neck pullover - Neckband - answers.pdf'],
    [{ holds: 'drawing', form: 'svg' }, 'Round-neck pullover - Neckband - drawing.svg'],
    [{ holds: 'drawing', form: 'png' }, 'Round-neck pullover - Neckband - drawing.png'],
    [{ holds: 'plan', form: 'csv' }, 'Round-neck pullover - Neckband - plan.csv'],
    [{ holds: 'instructions', form: 'html' }, 'Round-neck pullover - Neckband - instructions.html'],
  ] as const)('%j: %s', (kind, name) => {
    expect(nameOf('Round-neck pullover', 'Neckband', kind)).toBe(name);
  });

  it.each([
    ['Front / back: "try 2"?', 'Band', 'Front back try 2 - Band - handout.pdf'],
    ['..\\..\\etc/passwd', 'Band', 'etc passwd - Band - handout.pdf'],
    ['--help', 'Band', 'help - Band - handout.pdf'],
    ['Свитер', 'Горловина', 'Свитер - Горловина - handout.pdf'],
    ['セーター', '衿ぐり', 'セーター - 衿ぐり - handout.pdf'],
    ['Cafe\u0301\u202e\u200b', 'Band\n2', 'Café - Band 2 - handout.pdf'],
    ['', '?', 'Design - handout.pdf'],
    ['aux.v2', 'Band', 'Design aux.v2 - Band - handout.pdf'],
    ['Contour', 'Band', 'Contour - Band - handout.pdf'],
  ])('%j, %j: %s', (design, pickup, name) => {
    expect(nameOf(design, pickup)).toBe(name);
  });

  it('leaves the pick-up out where the file is about all', () => {
    expect(nameOf('Pullover', null, { holds: 'plan', form: 'csv' })).toBe('Pullover - plan.csv');
  });

  it('can be stored by every system, whatever the names', () => {
    const odd = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.constantFrom('CON', 'nul.txt', 'lpt1 .a', '.', '…', 'x'.repeat(300), '編'.repeat(90), '👩‍👩‍👧'.repeat(40)),
    );
    fc.assert(
      fc.property(odd, odd, (design, pickup) => {
        const name = nameOf(design, pickup);
        expect(Buffer.byteLength(name)).toBeLessThanOrEqual(255);
        expect(name).toMatch(/^[^\s.-][^<>:"/\\|?*\p{C}]* - handout\.pdf$/u);
        expect(name.split('.')[0]!.trim()).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)$/i);
        expect(Buffer.from(name).toString()).toBe(name);
      }),
      { numRuns: 300 },
    );
  });
});

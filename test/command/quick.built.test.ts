import { describe, expect, test } from 'vitest';
import { planDesign } from '../../src/pickup';
import { planDocument } from '../../src/text';
import { QUICK_CASES, commandWords } from '../published/quickCases';
import { readSample } from '../samples/sample';
import { edgewise } from './runner';

/** What was printed, on one line. */
const flowing = (text: string) => text.replace(/\s+/gu, ' ');

describe('a question without a file', () => {
  test.each(QUICK_CASES)('$id: $says [$title, $address]', ({ asks, shows, sections }) => {
    const { status, out, err } = edgewise(commandWords(asks));
    expect([status, err]).toEqual([0, '']);
    for (const words of shows) expect(flowing(out)).toContain(words);
    if (sections) {
      const rows = [...out.matchAll(/^ +(\d+) +(\d+) +\d+/gmu)];
      expect(rows.map(([, , count]) => Number(count))).toEqual(sections);
    }
  });

  test('gives the plan of its strip as json, as the sample of the same strip has it', () => {
    const { status, out } = edgewise(['place', '71', 'over', '88', 'rows', '--sections', '4', '--as', 'json']);
    expect(status).toBe(0);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(planDocument(planDesign(readSample('strip').design)))));
  });

  test('gives every opening as csv, and a drawing', () => {
    const asked = ['place', '71', 'over', '88'];
    expect(
      edgewise([...asked, '--as', 'csv'])
        .out.trimEnd()
        .split(/\r?\n/u),
    ).toHaveLength(88 + 1);
    expect(edgewise([...asked, '--as', 'svg']).out).toMatch(/^<\?xml [^>]*>\n<svg /u);
  });

  test('gives the first row as json', () => {
    const { out } = edgewise(['decrease', '39', 'over', '131', '--round', '--as', 'json']);
    const { pickups } = JSON.parse(out) as { pickups: { firstRow: object }[] };
    expect(pickups[0]?.firstRow).toEqual({
      ...{ from: 131, to: 92, text: '(k2, k2tog) 14 times, (k1, k2tog) 25 times' },
    });
  });

  test.each([
    ['more increases than stitches', ['increase', '31', 'over', '30'], 'ask for 30 at most'],
    ['zero rows', ['place', '71', 'over', '0', 'rows'], '0 is too few'],
    ['10,000 sections', ['place', '71', 'over', '88', '--sections', '10000'], '10000 is too many'],
    ['a target below 2', ['decrease', 'to', '1', 'over', '2'], 'keep 2 at least'],
    ['one stitch', ['place', '1', 'over', '88'], '1 is too few'],
    ['a number below nothing', ['place', '-3', 'over', '88'], '-3 is too few'],
    ['text for a number', ['place', 'lots', 'over', '88'], '“lots” is not a number'],
    ['places of a length alone', ['place', '71', 'over', '50', 'cm', '--as', 'svg'], 'add --gauge'],
  ] as const)('%s: 2, one line, nothing on standard output', (_, words, part) => {
    const { status, out, err } = edgewise(words);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^edgewise: [^\n]+\n$/u);
    expect(err).toContain(part);
  });
});

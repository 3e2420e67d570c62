import { describe, expect, test } from 'vitest';
import { CommandError } from '../../src/command/problem';
import { readWords } from '../../src/command/words';

const refused = (words: readonly string[]): CommandError => {
  try {
    readWords(words);
  } catch (error) {
    if (error instanceof CommandError) return error;
    throw error;
  }
  throw new Error(`accepted: ${words.join(' ')}`);
};

describe('the words of the command', () => {
  test('a task and a file, text unless said otherwise', () => {
    expect(readWords(['plan', 'a.json'])).toEqual({
      kind: 'do',
      task: 'plan',
      file: 'a.json',
      form: 'text',
      pickup: null,
      pages: null,
      dots: 300,
      out: null,
    });
  });

  test('options stand before or after the file, their value behind or after =', () => {
    expect(readWords(['plan', '--as=svg', 'a.json', '--pickup', 'neck', '--out', 'b.svg'])).toEqual({
      kind: 'do',
      task: 'plan',
      file: 'a.json',
      form: 'svg',
      pickup: 'neck',
      pages: null,
      dots: 300,
      out: 'b.svg',
    });
  });

  test('a dash is standard input, and after -- every word is a file', () => {
    expect(readWords(['check', '-'])).toMatchObject({ file: '-' });
    expect(readWords(['check', '--', '--as'])).toMatchObject({ file: '--as', form: 'text' });
  });

  test('help wins wherever it stands', () => {
    expect(readWords(['--help'])).toEqual({ kind: 'help' });
    expect(readWords(['plan', '--as', 'nonsense', '-h'])).toEqual({ kind: 'help' });
  });

  test('the pages of the handout, as the file has them unless said otherwise', () => {
    const pagesOf = (...words: string[]) => readWords(['plan', 'a.json', '--as', 'pdf', ...words]);
    expect(pagesOf()).toMatchObject({ form: 'pdf', pages: null });
    expect(pagesOf('--pages')).toMatchObject({ form: 'pdf', pages: {} });
    expect(pagesOf('--pages', '--paper=letter', '--orientation', 'landscape', '--answers')).toMatchObject({
      pages: { paper: 'Letter', orientation: 'landscape', version: 'answers' },
    });
    expect(pagesOf('--exercise', '--pages')).toMatchObject({ pages: { version: 'exercise' } });
  });

  test('a picture of 300 dots to the inch, or as many as are said', () => {
    const dotsOf = (...words: string[]) => readWords(['plan', 'a.json', '--as', 'png', ...words]);
    expect(dotsOf()).toMatchObject({ form: 'png', dots: 300, pages: null });
    expect(dotsOf('--resolution=36')).toMatchObject({ dots: 36 });
    expect(dotsOf('--pages', '--resolution', '1200', '--out', 'b.png')).toMatchObject({ dots: 1200, pages: {} });
  });

  test.each([
    [['place', '71', 'over', '88'], { place: 71, over: 88, unit: 'row', sections: null, spread: 'even' }],
    [
      ['place', '71 over 88 rows', '--sections', '4', '--grouped'],
      { place: 71, over: 88, unit: 'row', sections: 4, spread: 'grouped' },
    ],
    [['place', '115', 'over', '32', 'chains', '--gauge', '36'], { over: 32, unit: 'chain', per10cm: 36 }],
    [['place', '19', 'over', '4½"'], { over: 4.5 * 25.4, unit: 'length' }],
    [['place', '--grouped', '84', 'over', '40', 'cm'], { place: 84, over: 400, spread: 'grouped' }],
    [['increase', '4', 'over', '40'], { have: 40, change: 'increase', amount: 4, amountIs: 'by', round: false }],
    [
      ['decrease', 'to', '92', 'over', '131', 'sts', '--round'],
      { have: 131, change: 'decrease', amount: 92, amountIs: 'to', round: true },
    ],
    [['decrease', 'by', '39', 'over', '131'], { amount: 39, amountIs: 'by' }],
  ] as const)('%j asks %j', (words, question) => {
    expect(readWords(words)).toMatchObject({ kind: 'quick', form: 'text', out: null, question });
  });

  test.each([
    [[], 'no-command', 'say measure, plan or check'],
    [['draw', 'a.json'], 'unknown-command', '"draw"'],
    [['plan'], 'no-file', 'standard input'],
    [['plan', 'a.json', 'b.json'], 'too-many-files', '"b.json"'],
    [['plan', 'a.json', '--colour', 'red'], 'unknown-option', '"--colour"'],
    [['check', 'a.json', '--pickup', 'x'], 'unknown-option', '"--pickup"'],
    [['measure', 'a.json', '--as', 'svg'], 'unknown-form', 'text or json'],
    [['plan', 'a.json', '--as'], 'no-value', '--as needs a value'],
    [['plan', 'a.json', '--out='], 'no-value', '--out needs a value'],
    [['plan', 'a.json', '--as', 'svg', '--pages'], 'pages-form', "which --as svg can't hold: use --as pdf or png"],
    [['plan', 'a.json', '--pages'], 'pages-form', 'use --as pdf'],
    [['plan', 'a.json', '--as', 'pdf', '--paper', 'A4'], 'only-pages', '--paper is about the pages'],
    [['plan', 'a.json', '--exercise'], 'only-pages', 'add --pages with --as pdf or png'],
    [['plan', 'a.json', '--as', 'png', '--pages'], 'pages-out', 'add --out with a name, such as handout.png'],
    [['plan', 'a.json', '--as', 'svg', '--resolution', '300'], 'only-picture', 'add --as png'],
    [['plan', 'a.json', '--as', 'png', '--resolution'], 'no-value', '--resolution needs a value'],
    [['measure', 'a.json', '--resolution', '300'], 'unknown-option', '"--resolution"'],
    [['plan', 'a.json', '--as=png', '--resolution', 'fine'], 'unknown-resolution', 'from 36 to 1200, such as 300'],
    [['plan', 'a.json', '--as=png', '--resolution=35'], 'unknown-resolution', '--resolution 35 is no number of dots'],
    [['plan', 'a.json', '--as=png', '--resolution=1201'], 'unknown-resolution', 'a whole one'],
    [['plan', 'a.json', '--as=png', '--resolution=99.5'], 'unknown-resolution', 'a whole one'],
    [['plan', 'a.json', '--as=png', '--resolution=-300'], 'unknown-resolution', 'a whole one'],
    [['plan', 'a.json', '--as', 'pdf', '--pages', '--exercise', '--answers'], 'not-both', 'leave one out'],
    [
      ['plan', 'a.json', '--as=pdf', '--pages', '--paper', 'A5'],
      'unknown-value',
      '--paper A5 is not known: use A4 or Letter',
    ],
    [['plan', 'a.json', '--as=pdf', '--pages=2'], 'no-value-wanted', '--pages stands alone'],
    [['check', 'a.json', '--pages'], 'unknown-option', '"--pages"'],
    [['place', '71 over 88', '--as', 'pdf'], 'unknown-form', 'text, json, csv or svg'],
    [['place'], 'no-question', 'edgewise place 71 over 88 rows'],
    [['place', '71', 'over', '88', 'over', '2'], 'no-question', 'how many stitches over what'],
    [['place', '71', 'over', '88', 'apples'], 'unknown-measure', '"apples"'],
    [['place', 'some', 'over', '88', 'rows'], 'unanswered', '“some” is not a number'],
    [['place', '71', 'over', '88', '--sections', 'four'], 'unanswered', '--sections'],
    [['place', '71', 'over', '88', '--round'], 'unknown-option', '--grouped'],
    [['place', '71', 'over', '88', '--grouped=yes'], 'no-value-wanted', 'stands alone'],
    [['increase', '4'], 'no-question', 'edgewise increase 39 over 131'],
    [['increase', '4', 'over', 'many'], 'unanswered', '“many” is not a number'],
    [['decrease', '4', 'over', '40', '--as', 'svg'], 'unknown-form', 'text or json'],
    [['plan', 'a.json', '--as', 'csv', '--as', 'json'], 'twice', '--as is given twice'],
  ] as const)('%j is refused with the mend', (words, kind, part) => {
    const error = refused(words);
    expect(error.problem.kind).toBe(kind);
    expect(error.message).toContain(part);
    expect(error.message).not.toContain('\n');
  });
});

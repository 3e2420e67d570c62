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
    [['plan', 'a.json', '--as', 'csv', '--as', 'json'], 'twice', '--as is given twice'],
  ] as const)('%j is refused with the mend', (words, kind, part) => {
    const error = refused(words);
    expect(error.problem.kind).toBe(kind);
    expect(error.message).toContain(part);
    expect(error.message).not.toContain('\n');
  });
});

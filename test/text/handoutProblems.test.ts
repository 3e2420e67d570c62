import { expect, it } from 'vitest';
import { foreignLettersText } from '../../src/text';

it('says in one sentence which letters a PDF lacks, where, and what to do', () => {
  expect(foreignLettersText({ letters: ['編', 'み'], texts: ['編み'] })).toBe(
    'The PDF\'s letters lack "編" and "み", needed for "編み"; use print instead, or write it in Latin, Greek or Cyrillic letters.',
  );
});

it('sends those who use the command to the page', () => {
  expect(foreignLettersText({ letters: ['編'], texts: ['編'] }, 'pdf')).toBe(
    'the PDF\'s letters lack "編", needed for "編"; print from the page instead, or write it in Latin, Greek or Cyrillic letters',
  );
});

it('says the same of a picture', () => {
  expect(foreignLettersText({ letters: ['編'], texts: ['編'] }, 'png')).toBe(
    'the picture\'s letters lack "編", needed for "編"; save or print it from the page instead, or write it in Latin, Greek or Cyrillic letters',
  );
});

it('names no more than a few', () => {
  const letters = Array.from('一二三四五六七八九十');
  const sentence = foreignLettersText({ letters, texts: ['一二三四五', '六七八\n九十', '十'] });
  expect(sentence).toMatch(/"七", "八" and 2 more, needed for "一二三四五" and 2 other texts; use print instead/);
  expect(sentence).not.toContain('\n');
});

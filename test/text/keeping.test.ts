import { describe, expect, it } from 'vitest';
import {
  copyTitle,
  foundText,
  KEEPING,
  KEEPS,
  LASTING,
  linkLengthText,
  linkTooLongText,
  LINK,
  searchable,
  SHELF,
  whenText,
} from '../../src/text';

describe('the name of a copy', () => {
  it.each([
    ['Vest', [], 'Vest, copy'],
    ['Vest', ['Vest'], 'Vest, copy'],
    ['Vest', ['Vest, copy'], 'Vest, copy 2'],
    ['Vest, copy', ['Vest, copy', 'Vest, copy 2'], 'Vest, copy 3'],
    ['Vest, copy 2', [], 'Vest, copy'],
    ['Copy', [], 'Copy, copy'],
  ])('of %j among %j is %j', (name, taken, copy) => {
    expect(copyTitle(name, taken)).toBe(copy);
  });
});

describe('a search', () => {
  it.each([
    ['Gilet à côtes', 'COTES'],
    ['Ærø jumper', 'ærø'],
    ['Brønshøj', 'bronshoj'],
    ['Weiße Weste', 'WEISSE'],
    ['Ｆull width', 'full'],
  ])('finds %j by %j', (name, search) => {
    expect(searchable(name)).toContain(searchable(search));
  });

  it('does not find what is not there', () => {
    expect(searchable('Vest')).not.toContain(searchable('rest'));
    expect(foundText(0, 'rest')).toContain('“rest”');
    expect([foundText(1, 'v'), foundText(2, 'v')]).toEqual(['1 design', '2 designs']);
  });
});

describe('when a design was changed', () => {
  const now = Date.UTC(2025, 5, 15, 12);

  it('is told to the minute in the same year, and with the year in another', () => {
    expect(whenText(Date.UTC(2025, 4, 3, 12, 5), now)).toMatch(/^3 May, \d\d:05$/);
    expect(whenText(Date.UTC(2023, 4, 3, 12, 5), now)).toBe('3 May 2023');
  });
});

describe('a link', () => {
  it('is told by its length, with a warning where it gets long', () => {
    expect(linkLengthText(1226)).toBe('It is 1,226 characters long.');
    expect(linkLengthText(12_260)).toMatch(/^It is 12,260 characters long\. .*design file/);
  });

  it('that is too long names its length, the limit and another way', () => {
    expect(linkTooLongText(40_112, 32_000)).toMatch(/40,112.*32,000.*file/);
  });
});

it('every sentence is one that ends', () => {
  const words = new Set<string>([...Object.values(KEEPS), SHELF.here, SHELF.elsewhere]);
  const sentences = [
    ...Object.values(KEEPING),
    ...Object.values(LASTING),
    ...Object.values(LINK),
    ...Object.values(SHELF),
  ].filter((text) => text.split(' ').length > 5 && !words.has(text));
  expect(sentences.length).toBeGreaterThan(10);
  for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].*\.$/s);
});

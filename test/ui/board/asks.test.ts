import { afterEach, describe, expect, it } from 'vitest';
import type { Asked } from '../../../src/text';
import { askedBy } from '../../../src/ui/board/asks';

afterEach(() => document.body.replaceChildren());

function elements(html: string): HTMLElement[] {
  document.body.innerHTML = html;
  return [...document.querySelectorAll<HTMLElement>('[data-asks]')];
}

describe('what an element asks for', () => {
  it('is the kind that it names, at its place among those that ask for the same', () => {
    const [first, second, third] = elements(
      '<i data-asks="count"></i><i data-asks="wanted"></i><i data-asks="count"></i>',
    );
    expect(askedBy(first!)).toEqual({ of: 'count', edge: 0 });
    expect(askedBy(second!)).toEqual({ of: 'wanted', edge: 0 });
    expect(askedBy(third!)).toEqual({ of: 'count', edge: 1 });
  });

  it('is the place that it names, where it does', () => {
    expect(askedBy(elements('<i data-asks="ratio 3 1"></i>')[0]!)).toEqual({ of: 'ratio', edge: 3, ratio: 1 });
  });

  it('knows every kind', () => {
    const asked: Asked[] = [
      { of: 'length', edge: 0 },
      { of: 'places', edge: 0 },
      { of: 'wanted', edge: 0 },
      { of: 'count', edge: 0 },
      { of: 'stretch', edge: 0 },
      { of: 'total' },
      { of: 'all-wanted' },
      { of: 'first-row' },
      { of: 'gaps' },
      { of: 'free-edge' },
      { of: 'corner', corner: 0 },
      { of: 'choice', choice: 0 },
      { of: 'section', section: 0 },
      { of: 'running', section: 0 },
      { of: 'after', section: 0 },
    ];
    for (const one of asked) expect(askedBy(elements(`<i data-asks="${one.of}"></i>`)[0]!)).toEqual(one);
  });

  it('is nothing for words of another kind', () => {
    expect(askedBy(elements('<i data-asks="weather"></i>')[0]!)).toBeNull();
    expect(askedBy(elements('<i data-asks=""></i>')[0]!)).toBeNull();
  });
});

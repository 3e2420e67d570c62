import { describe, expect, it } from 'vitest';
import { ForeignLettersError, pictureSvg, type Page } from '../../../src/handout';
import type { DrawnElement } from '../../../src/renderer';
import { allOf, foreignIn, readStrictXml } from '../../renderer/strictXml';

const write = (text: string): DrawnElement => ({
  name: 'g',
  attributes: {},
  children: [{ name: 'text', attributes: { x: '1', y: '5', 'font-size': '4' }, children: [], text }],
});
const page = (...texts: string[]): Page => ({ width: 25.41, height: 50.8, elements: texts.map(write) });
const SIZE = { width: 300, height: 600 };

describe('a page as an SVG of so many dots', () => {
  it('has them exactly, and the sheet fills them', () => {
    const root = readStrictXml(pictureSvg(page('Neckband'), SIZE));
    expect(foreignIn(root)).toEqual([]);
    expect(root.attributes).toMatchObject({
      width: '300',
      height: '600',
      viewBox: '0 0 25.41 50.8',
      preserveAspectRatio: 'none',
    });
  });

  it('has its texts as they are drawn: accents joined, one space for several, no signs that draw nothing', () => {
    const all = allOf(readStrictXml(pictureSvg(page('Cafe\u0301\u3000 \u200bband & more'), SIZE)));
    const texts = all.filter(({ name }) => name === 'text');
    expect(texts.map(({ text }) => text)).toEqual(['Café band & more']);
  });

  it('is none where letters are missing: it tells them and their texts', () => {
    const drawn = () => pictureSvg(page('Neckband', '編み', 'み'), SIZE);
    expect(drawn).toThrow(ForeignLettersError);
    try {
      drawn();
    } catch (error) {
      expect(error).toMatchObject({ problem: { letters: ['編', 'み'], texts: ['編み', 'み'] } });
    }
  });
});

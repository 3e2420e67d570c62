import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Page } from '../../../src/handout';
import { pageElement, printPages } from '../../../src/ui/handout/print';

const page = (words: string): Page => ({
  width: 210,
  height: 297,
  elements: [{ name: 'text', attributes: { x: '20', y: '30', 'font-size': '4' }, children: [], text: words }],
});

const paper = () => document.querySelector('.printed-pages');

afterEach(() => {
  window.dispatchEvent(new Event('afterprint'));
  vi.unstubAllGlobals();
});

describe('printing', () => {
  it('lays out every page in true size while the browser prints, and takes it all away afterwards', () => {
    const before = document.head.querySelectorAll('style').length;
    const print = vi.fn(() => {
      expect(paper()?.children).toHaveLength(2);
    });
    vi.stubGlobal('print', print);
    printPages([page('one'), page('two')]);
    expect(print).toHaveBeenCalledTimes(1);
    expect(paper()?.firstElementChild?.getAttribute('width')).toBe('210mm');
    expect(document.head.lastElementChild?.textContent).toContain('size: 210mm 297mm');
    window.dispatchEvent(new Event('afterprint'));
    expect(paper()).toBeNull();
    expect(document.head.querySelectorAll('style')).toHaveLength(before);
  });

  it('prints nothing where there is no page', () => {
    const print = vi.fn();
    vi.stubGlobal('print', print);
    printPages([]);
    expect(print).not.toHaveBeenCalled();
    expect(paper()).toBeNull();
  });

  it('takes a name for words, whatever is in it', () => {
    const odd = '<script>alert(1)</script> & "half" ]]>';
    const element = pageElement(page(odd), 0, 1);
    expect(element.querySelector('text')?.textContent).toBe(odd);
    expect(element.querySelector('script')).toBeNull();
  });
});

import { pageSvg, type Page } from '../../handout';

/** A page as an element of the document: read as strict XML, so that nothing in a name can become anything else. */
export function pageElement(page: Page, index: number, pages: number): Element {
  const read = new DOMParser().parseFromString(pageSvg(page, index, pages), 'image/svg+xml');
  return document.importNode(read.documentElement, true);
}

/**
 * Prints pages in true size through the browser, each on a sheet of its own, and nothing else of what is on the screen.
 * The browser's own print window says when it is over.
 */
export function printPages(pages: readonly Page[]): void {
  const [first] = pages;
  if (!first) return;
  const paper = document.createElement('div');
  paper.className = 'printed-pages';
  paper.append(...pages.map((page, i) => pageElement(page, i, pages.length)));
  const style = document.createElement('style');
  style.textContent = `
    @page { size: ${first.width}mm ${first.height}mm; margin: 0; }
    .printed-pages { display: none; }
    @media print {
      body > :not(.printed-pages), dialog { display: none !important; }
      html, body { height: auto !important; margin: 0 !important; background: none !important; overflow: visible !important; }
      .printed-pages { display: block; }
      .printed-pages svg {
        display: block; break-after: page; break-inside: avoid; overflow: hidden;
        font-kerning: none; font-variant-ligatures: none;
        print-color-adjust: exact; -webkit-print-color-adjust: exact;
      }
      .printed-pages svg:last-child { break-after: auto; }
    }`;
  document.head.append(style);
  document.body.append(paper);
  const end = () => {
    paper.remove();
    style.remove();
  };
  addEventListener('afterprint', end, { once: true });
  print();
}

import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import type axe from 'axe-core';

const path = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What axe finds wrong with the page as it stands. It is brought in once for each page that is loaded. */
export async function faultsIn(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.addScriptTag({ path });
  return page.evaluate(async () => {
    const inPage = window as unknown as { axe: typeof axe };
    const { violations } = await inPage.axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      // Of what is well it need not name every place.
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}

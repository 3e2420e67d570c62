import type { Page } from '@playwright/test';
import axe from 'axe-core';

/** What axe finds wrong with the page as it stands. */
export async function faultsIn(page: Page): Promise<string[]> {
  await page.addScriptTag({ content: axe.source });
  return page.evaluate(async () => {
    const inPage = window as unknown as { axe: typeof axe };
    const { violations } = await inPage.axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}

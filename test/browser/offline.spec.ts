import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { chooseFile, drawing, openPage, sampleText } from './page';

test.use({ serviceWorkers: 'allow' });

/** A host with the built page on it, of which a newer version can be put there. */
class Host {
  #edition = 0;
  readonly #server: Server;

  constructor(from: string) {
    this.#server = createServer((request, response) => {
      const path = request.url ?? '/';
      void fetch(new URL(path.slice(1), from)).then(async (answer) => {
        const body = Buffer.from(await answer.arrayBuffer());
        response.writeHead(answer.status, {
          'content-type': answer.headers.get('content-type') ?? 'text/plain',
          'cache-control': 'no-cache',
        });
        response.end(path === '/sw.js' ? body.toString().replace(/"version":"/, `$&${this.#edition}-`) : body);
      });
    });
  }

  async open(): Promise<string> {
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}/`;
  }

  newVersion(): void {
    this.#edition += 1;
  }

  close(): void {
    this.#server.closeAllConnections();
    this.#server.close();
  }
}

/** How long a page may take to come up, ms. */
const COMING = { timeout: 20_000 } as const;

const line = (page: Page): Locator => page.getByRole('status').filter({ hasText: 'A new version is ready.' });
const view = (page: Page): Locator => page.getByRole('dialog', { name: 'At the needles' });
const caches = (page: Page): Promise<string[]> => page.evaluate(() => window.caches.keys());
/** Marks this very page, to see whether it was loaded anew. */
const mark = (page: Page): Promise<void> => page.evaluate(() => document.body.setAttribute('data-seen', 'yes'));
const askForUpdate = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });

test('the page works without a connection; a newer version comes only when it is asked for', async ({
  page,
  context,
  baseURL,
}) => {
  const host = new Host(baseURL!);
  try {
    const address = await host.open();
    await openPage(page, address);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await chooseFile(page, 'mine.json', sampleText('vest'));
    await expect(page.locator('.keeps')).toHaveText('kept in this browser');
    await page.getByRole('button', { name: 'At the needles' }).click();
    await expect(view(page)).toBeVisible();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
    const there = await view(page).getByTestId('now').textContent();
    const isThere = () => expect(view(page).getByTestId('now')).toHaveText(there!, COMING);

    await context.setOffline(true);
    await page.reload();
    await isThere();
    await page.keyboard.press('Escape');
    await expect(view(page)).toHaveCount(0);
    // Parts that were never opened are there too, and so are the samples.
    await page.keyboard.press('?');
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Designs' }).click();
    await page.getByRole('list', { name: 'Samples' }).getByRole('button', { name: 'Garter blanket' }).click();
    await expect(page).toHaveTitle(/low-tide blanket/);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await context.setOffline(false);

    const [before] = await caches(page);
    await page.getByRole('button', { name: 'At the needles' }).click();
    await isThere();
    host.newVersion();
    await mark(page);
    await askForUpdate(page);
    await expect(page.locator('[role="status"]', { hasText: 'A new version is ready.' })).toBeAttached(COMING);
    // It is told on the page beneath, and nothing happens to the knitter.
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    await isThere();
    await expect(page.locator('[data-seen]')).toBeAttached();
    await page.keyboard.press('Escape');
    await expect(view(page)).toHaveCount(0);
    await line(page).getByRole('button', { name: 'Later' }).click();
    await expect(line(page)).toHaveCount(0);
    expect(await caches(page)).toContain(before);

    await page.reload();
    await expect(line(page)).toBeVisible(COMING);
    await mark(page);
    await page.getByRole('button', { name: 'At the needles' }).click();
    await isThere();
    await page.keyboard.press('ArrowRight');
    const further = await view(page).getByTestId('now').textContent();
    await page.keyboard.press('Escape');
    await expect(view(page)).toHaveCount(0);
    await line(page).getByRole('button', { name: 'Reload now' }).click();
    await expect(page.locator('[data-seen]')).toHaveCount(0, COMING);
    await expect(drawing(page)).toBeVisible(COMING);
    await expect.poll(() => caches(page)).not.toContain(before);
    expect(await caches(page)).toHaveLength(1);
    await expect(page).toHaveTitle(/vest/i);
    await page.getByRole('button', { name: 'At the needles' }).click();
    await expect(view(page).getByTestId('now')).toHaveText(further!);
  } finally {
    host.close();
  }
});

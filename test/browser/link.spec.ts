import { expect, test, type Page } from '@playwright/test';
import { randomBytes } from 'node:crypto';
import { deflateSync } from 'node:zlib';
import { chooseFile, count, drawing, edgeRow, openPage, sampleText } from './page';

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Share as a link' });
const field = (page: Page) => dialog(page).getByRole('textbox', { name: 'The link' });

async function linkOf(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Link', exact: true }).click();
  const link = await field(page).inputValue();
  await page.keyboard.press('Escape');
  await expect(dialog(page)).toHaveCount(0);
  return link;
}

async function setCount(page: Page, value: string): Promise<void> {
  const place = edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ });
  await place.fill(value);
  await place.press('Enter');
  await expect(place).toHaveValue(value);
}

test('a design is shared as a link that holds it all, and opened from it as a work of its own', async ({
  page,
  browser,
}) => {
  await openPage(page);
  await setCount(page, '10');
  const target = await count(page).textContent();
  const link = await linkOf(page);
  const address = page.url();
  expect(link).toMatch(/#design=[\w-]{500,3000}$/);

  const stranger = await browser.newContext();
  const theirs = await stranger.newPage();
  const asked: string[] = [];
  theirs.on('request', (request) => asked.push(request.url()));
  await openPage(theirs, link);
  await expect(count(theirs)).toHaveText(target!);
  await expect(theirs).toHaveTitle(/harbour pullover/);
  await expect(theirs.locator('.keeps')).toHaveText('kept in this browser');
  // The address is plain again, so that a reload brings the work as it was changed since.
  expect(theirs.url()).toBe(address);
  await setCount(theirs, '9');
  await expect(theirs.locator('.keeps')).toHaveText('kept in this browser');
  await theirs.reload();
  await expect(edgeRow(theirs, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ })).toHaveValue('9');
  // Nothing but the page's own files was asked for, and the design was in none of the addresses.
  expect(asked.every((url) => url.startsWith(address) && !url.includes('design='))).toBe(true);
  await stranger.close();

  await test.step('it is also opened in a page that is open already, and by pasting it with words round it', async () => {
    await page.getByRole('button', { name: 'Designs' }).click();
    await page.getByRole('button', { name: 'Heel flap' }).click();
    await expect(page).toHaveTitle(/heel flap/);
    await page.evaluate((address) => (location.href = address), link);
    await expect(page).toHaveTitle(/harbour pullover/);
    expect(page.url()).not.toContain('#');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(page).toHaveTitle(/heel flap/);
    await page.evaluate((text) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', text);
      document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
    }, `Look at this: <${link}>.`);
    await expect(page).toHaveTitle(/harbour pullover/);
  });

  await test.step('one that was cut or holds no design is told of in one sentence, and the page goes on as ever', async () => {
    const part = deflateSync('{"format": "something else"}').toString('base64url');
    await page.goto('about:blank');
    await openPage(page, link.slice(0, -40));
    await expect(page.getByRole('alert')).toContainText('The link holds no whole design');
    await expect(drawing(page)).toBeVisible();
    expect(page.url()).not.toContain('#');
    // The same in a page that is open already.
    for (const [address, told] of [
      ['design=', 'The link holds no whole design'],
      ['design=AAAA', 'The link holds no whole design'],
      [`design=${part}`, 'What the link holds was not opened'],
    ] as const) {
      await page.getByRole('alert').getByRole('button').click();
      await expect(page.getByRole('alert')).toHaveCount(0);
      await page.evaluate((hash) => (location.hash = hash), address);
      await expect(page.getByRole('alert')).toContainText(told);
      await expect(drawing(page)).toBeVisible();
      expect(page.url()).not.toContain('#');
    }
  });
});

test('the link is told by its length and copied, or selected where there is no clipboard; too large is told of', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openPage(page);
  await page.keyboard.press('Control+Shift+l');
  const link = await field(page).inputValue();
  await expect(dialog(page)).toContainText(`${link.length.toLocaleString('en-US')} characters long`);
  await expect(dialog(page)).toContainText('Nothing is sent anywhere');
  const copy = dialog(page).getByRole('button', { name: 'Copy the link' });
  await copy.click();
  await expect(dialog(page).getByRole('status')).toHaveText('The link is on the clipboard.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);

  await test.step('without a clipboard it is selected', async () => {
    await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }));
    await copy.click();
    await expect(dialog(page).getByRole('status')).toContainText('is selected');
    const selected = await field(page).evaluate((area: HTMLTextAreaElement) => area.selectionEnd - area.selectionStart);
    expect(selected).toBe(link.length);
    await page.keyboard.press('Escape');
  });

  await test.step('of a design too large for a link it is told, with the file as another way', async () => {
    // A note of another hand's that no packing makes short.
    const note = randomBytes(40_000).toString('base64');
    await chooseFile(
      page,
      'large.json',
      sampleText('pullover').replace(/"name": "[^"]*"/, `"name": "Large", "note": "${note}"`),
    );
    await expect(page).toHaveTitle(/Large/);
    await page.getByRole('alert').getByRole('button').click();
    await page.getByRole('button', { name: 'Link', exact: true }).click();
    await expect(page.getByRole('alert')).toContainText(/link of [\d,]+ characters, and more than 32,000.*file/);
    await expect(dialog(page)).toHaveCount(0);
  });
});

test('a link that would unpack to no end is refused long before that', async ({ page }) => {
  await page.addInitScript(() => {
    const Real = DecompressionStream;
    Object.assign(window, { fed: 0 });
    class Counted {
      readonly readable: ReadableStream;
      readonly writable: WritableStream;
      constructor(format: CompressionFormat) {
        const gate = new TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>({
          transform: (chunk, controller) => {
            Object.assign(window, { fed: (window as unknown as { fed: number }).fed + chunk.length });
            controller.enqueue(chunk);
          },
        });
        this.writable = gate.writable;
        this.readable = gate.readable.pipeThrough(new Real(format));
      }
    }
    Object.assign(window, { DecompressionStream: Counted });
  });
  await openPage(page);
  const part = deflateSync(new Uint8Array(100 * 1024 * 1024)).toString('base64url');
  await page.evaluate((hash) => (location.hash = hash), `design=${part}`);
  await expect(page.getByRole('alert')).toContainText('holds more than any design does');
  expect(part.length).toBeGreaterThan(100_000);
  // A few kilobytes hold the 4 MiB that a design may have; the rest was never touched.
  const fed = await page.evaluate(() => (window as unknown as { fed: number }).fed);
  expect(fed).toBeGreaterThan(4000);
  expect(fed).toBeLessThan(20_000);
});

import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { chooseFile, count, drawing, edgeRow, openPage, sampleText } from './page';

const pullover = sampleText('pullover');

/** Drops a text on the page as a file. */
async function drop(page: Page, ...files: readonly (readonly [name: string, text: string])[]): Promise<void> {
  const data = await page.evaluateHandle((given) => {
    const transfer = new DataTransfer();
    for (const [name, text] of given) transfer.items.add(new File([text], name, { type: 'application/json' }));
    return transfer;
  }, files);
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
}

async function saveDesign(page: Page): Promise<{ name: string; text: string }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const saved = await download;
  return { name: saved.suggestedFilename(), text: readFileSync(await saved.path(), 'utf8') };
}

test('a design is saved under its name, and opened again it is the same', async ({ page }) => {
  await openPage(page);
  const { name, text } = await saveDesign(page);
  expect(name).toBe('marens-harbour-pullover.edgewise.json');
  await page.getByRole('button', { name: 'Designs' }).click();
  await page.getByRole('button', { name: 'Heel flap' }).click();
  await expect(page).toHaveTitle(/heel flap/);
  await chooseFile(page, name, text);
  await expect(page).toHaveTitle(/harbour pullover/);
  await expect(count(page)).toHaveText('84');
  expect((await saveDesign(page)).text).toBe(text);
});

test('a design file is opened by dropping it on the page', async ({ page }) => {
  await openPage(page);
  await drop(page, ['vest.edgewise.json', sampleText('vest')]);
  await expect(page).toHaveTitle(/lamplighter vest/);
});

test('opening is one step: undo brings back what was there', async ({ page }) => {
  await openPage(page);
  await drop(page, ['vest.edgewise.json', sampleText('vest')]);
  await expect(page).toHaveTitle(/lamplighter vest/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page).toHaveTitle(/harbour pullover/);
  await expect(count(page)).toHaveText('84');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(page).toHaveTitle(/lamplighter vest/);
});

test('a bad file is told of in one sentence and leaves the work as it was', async ({ page }) => {
  await openPage(page);
  const marks = drawing(page).locator('g.drawing');
  const before = await marks.innerHTML();
  for (const [text, why] of [
    ['not a design', /line 1/],
    ['{"format": "edgewise", "version": 99}', /version/],
    [pullover.replace('"from": [39, 0]', '"from": [39, 0.5]'), /whole/],
    ['', /empty/],
    [`{"x": "${'x'.repeat(5 * 1024 * 1024)}"}`, /MiB|large/],
  ] as const) {
    await chooseFile(page, 'mine.json', text);
    await expect(page.getByRole('alert')).toContainText('mine.json was not opened');
    await expect(page.getByRole('alert')).toContainText(why);
    await page.getByRole('alert').getByRole('button').click();
    await expect(page.getByRole('alert')).toHaveCount(0);
  }
  expect((await marks.innerHTML()) === before).toBe(true);
  await expect(page).toHaveTitle(/harbour pullover/);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
});

test('the same file can be opened again after it was mended', async ({ page }) => {
  await openPage(page);
  await chooseFile(page, 'vest.json', '{');
  await expect(page.getByRole('alert')).toBeVisible();
  await chooseFile(page, 'vest.json', sampleText('vest'));
  await expect(page).toHaveTitle(/lamplighter vest/);
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('of several files that are dropped, it is said what became of them; a drop without a file is none', async ({
  page,
}) => {
  await openPage(page);
  await drop(page, ['a.json', sampleText('vest')], ['b.json', pullover]);
  await expect(page.getByRole('alert')).toContainText(/Several files|only the first/);
  await drop(page);
  await expect(page.getByRole('alert')).toContainText(/not a file/);
});

test('a field of another hand is told of once and saved again', async ({ page }) => {
  await openPage(page);
  await chooseFile(page, 'mine.json', pullover.replace('"terms"', '"yarn": "sand", "terms"'));
  await expect(page.getByRole('alert')).toContainText('yarn');
  expect((await saveDesign(page)).text).toContain('"yarn": "sand"');
});

test.describe('what was done', () => {
  async function changeCount(page: Page): Promise<void> {
    const field = edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ });
    await field.fill('10');
    await field.press('Enter');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  }

  test('survives a reload', async ({ page }) => {
    await openPage(page);
    await changeCount(page);
    const target = await count(page).textContent();
    await page.reload();
    await expect(count(page)).toHaveText(target!);
    await expect(edgeRow(page, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ })).toHaveValue('10');
  });

  test('is there in another tab, and each tab comes back to its own', async ({ page, context }) => {
    await openPage(page);
    await changeCount(page);
    await page.waitForTimeout(700);
    const other = await context.newPage();
    await openPage(other);
    await expect(edgeRow(other, 'front', 'neck-center').getByRole('textbox', { name: /^Count/ })).toHaveValue('10');
    await drop(other, ['vest.edgewise.json', sampleText('vest')]);
    await expect(other).toHaveTitle(/lamplighter vest/);
    await other.waitForTimeout(700);
    await page.reload();
    await expect(page).toHaveTitle(/harbour pullover/);
    await other.reload();
    await expect(other).toHaveTitle(/lamplighter vest/);
  });

  test('that the browser will not keep is told of, and can be saved to a file', async ({ page }) => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await openPage(page);
    await changeCount(page);
    await expect(page.getByRole('alert')).toContainText(/save the design to a file/);
    expect((await saveDesign(page)).text).toContain('"count": 10');
  });

  test('is not lost with a store that is shut', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('shut', 'SecurityError');
        },
      });
    });
    await openPage(page);
    await expect(page.getByRole('alert')).toContainText(/save the design to a file/);
    await changeCount(page);
  });
});

test('a design that is pasted is opened, but not while words are being typed', async ({ page }) => {
  await openPage(page);
  const paste = (selector: string, text: string) =>
    page.locator(selector).evaluate((element, pasted) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', pasted);
      element.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
    }, text);
  await paste('body', '{ "format": "something else" }');
  await expect(page.getByRole('alert')).toContainText('What was pasted was not opened');
  await page.getByRole('alert').getByRole('button').click();
  await paste('input[autocomplete="off"] >> nth=0', sampleText('vest'));
  await expect(page).toHaveTitle(/harbour pullover/);
  await paste('body', sampleText('vest'));
  await expect(page).toHaveTitle(/lamplighter vest/);
});

test('a change that can not be planned leaves the last good plan, greyed with the reason, also after a reload', async ({
  page,
}) => {
  await openPage(page);
  const before = await count(page).textContent();
  const target = page.getByRole('textbox', { name: 'Wanted by the pattern' });
  await target.fill('900');
  await target.press('Enter');
  await expect(page.getByRole('alert')).toContainText('last plan that could be made');
  await expect(count(page)).toHaveText(before!);
  await page.waitForTimeout(700);
  await page.reload();
  await expect(count(page)).toHaveText(before!);
  await expect(page.getByRole('alert')).toHaveCount(0);
});
